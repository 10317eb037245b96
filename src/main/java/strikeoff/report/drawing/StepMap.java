package strikeoff.report.drawing;

import java.util.Comparator;
import java.util.List;
import java.util.Set;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import strikeoff.layout.Layout;
import strikeoff.layout.Placement;
import strikeoff.plan.PrintPlan;
import strikeoff.units.Numbers;

/**
 * The whole cloth, small, with the placements of one job filled and numbered: for whoever has to
 * find them on the table. The start lies at the left, the near edge below.
 */
public final class StepMap {

  /** What a sheet of A4 or Letter leaves between its edges, in millimetres. */
  private static final double WIDEST = 184;

  /** Units of the drawing in a millimetre of paper. */
  private static final double UNITS = 10;

  /** Around the cloth, for the half of a line that lies outside it. */
  private static final double EDGE = 4;

  /** Eight points, in the drawing's units: less is read by nobody. */
  private static final double SMALLEST = 8 * 25.4 / 72 * UNITS;

  private static final double LARGEST = 7 * UNITS;

  /** Of a digit's height, in letters of that size, and its width. */
  private static final double HIGH = 0.75;

  private static final double WIDE = 0.6;

  private final List<Placement> all;
  private final List<Placement> own;
  private final double length;
  private final double width;
  private final double scale;

  private StepMap(PrintPlan plan, Layout layout, Set<Integer> printed, double most) {
    this.all = layout.placements();
    this.own =
        all.stream()
            .filter(placement -> printed.contains(placement.id()))
            .sorted(Comparator.comparingInt(Placement::number))
            .toList();
    this.length = plan.cloth().length().mm();
    this.width = plan.cloth().width().mm();
    this.scale = Math.min(WIDEST * UNITS / length, most * UNITS / width);
  }

  /**
   * @param printed ids of the job's placements
   * @param most how high it may be on paper, mm; it is never wider than a page
   */
  public static Svg of(PrintPlan plan, Layout layout, Set<Integer> printed, double most) {
    return new StepMap(plan, layout, printed, most).drawn();
  }

  /**
   * Placements in the order of their numbers if these find no room in them all, so that only the
   * first and the last are numbered; else nothing.
   */
  public static List<Placement> counted(
      PrintPlan plan, Layout layout, Set<Integer> printed, double most) {
    StepMap map = new StepMap(plan, layout, printed, most);
    return map.own.stream().allMatch(p -> map.letter(p) >= SMALLEST) ? List.of() : map.own;
  }

  private Svg drawn() {
    double right = length * scale + 2 * EDGE;
    Svg map =
        Svg.window(-EDGE, -EDGE, right, width * scale + 2 * EDGE)
            .with("class", "map")
            .with("width", Numbers.fixed(right / UNITS, 1) + "mm")
            .with("preserveAspectRatio", "xMinYMid")
            .with("role", "img")
            .with("aria-label", "Where it is printed on the cloth, the start at the left");
    map.add(Svg.rect(0, 0, length * scale, width * scale).with("class", "cloth"));
    for (Placement placement : all) {
      map.add(
          Svg.path(outline(placement)).with("class", own.contains(placement) ? "own" : "other"));
    }
    boolean each = own.stream().allMatch(placement -> letter(placement) >= SMALLEST);
    for (Placement placement : own) {
      if (each || placement == own.get(0) || placement == own.get(own.size() - 1)) {
        map.add(number(placement));
      }
    }
    return map;
  }

  private Svg number(Placement placement) {
    Envelope at = placement.outline().getEnvelopeInternal();
    double letter = Math.max(SMALLEST, letter(placement));
    return Svg.text(
            at.centre().x * scale,
            (width - at.centre().y) * scale + HIGH / 2 * letter,
            Integer.toString(placement.number()))
        .with("font-size", letter)
        .with("text-anchor", "middle");
  }

  /** The size of type in which a number fills its placement. */
  private double letter(Placement placement) {
    Envelope at = placement.outline().getEnvelopeInternal();
    int digits = Integer.toString(placement.number()).length();
    double fits = Math.min(at.getHeight() / HIGH, at.getWidth() / WIDE / digits) * scale;
    return Math.min(LARGEST, fits);
  }

  private String outline(Placement placement) {
    StringBuilder path = new StringBuilder();
    for (Coordinate corner : placement.outline().getCoordinates()) {
      path.append(path.isEmpty() ? 'M' : 'L')
          .append(Svg.pair(corner.x * scale, (width - corner.y) * scale));
    }
    return path.append('Z').toString();
  }
}
