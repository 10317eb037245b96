package strikeoff.speech;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.locationtech.jts.geom.Coordinate;
import strikeoff.layout.Placement;
import strikeoff.plan.PrintPlan;
import strikeoff.units.Length;
import strikeoff.units.Measures;

/**
 * Says where frames and designs come to lie, as tapes on the table show it.
 *
 * @param railed true if stops are set along a rail
 * @param fits false for a cloth wider than the table: it is moved across for each frame, so that
 *     across only its own near edge counts
 */
public record TableSpeech(Measures units, boolean railed, boolean fits) {

  /** Which tapes a place is read on. */
  public enum Tape {
    ALONG,
    ACROSS,
    BOTH
  }

  public static TableSpeech of(PrintPlan plan) {
    return new TableSpeech(
        plan.measures(),
        plan.table().railed(),
        !plan.cloth().width().above(plan.table().width().mm()));
  }

  /**
   * What is measured from where, to stand before the places.
   *
   * @param askew true if of each only its middle is told
   * @param row true if all lie alike across, which {@link #across} tells
   */
  public String measured(boolean askew, boolean row) {
    String what =
        askew
            ? "Middle of the design"
            : "Frame's edge"
                + (railed ? ", for the stop" : "")
                + " · design's corner nearest start and near edge";
    return what
        + (inches() ? ", from " : ", cm from ")
        + "the table's start"
        + (row ? ":" : (inches() ? " and from " : "/") + near() + ":");
  }

  /** How all of a row lie. */
  public String across(String places) {
    return "Across, "
        + (inches() ? "" : "cm ")
        + "from the "
        + (fits ? "table" : "cloth")
        + "'s near edge: "
        + places
        + ".";
  }

  private String near() {
    return fits ? "its near edge" : "the cloth's near edge";
  }

  /** A place by the tapes. */
  public String at(Length along, Length across, Tape tape) {
    // A slash or a bare number beside fractions of an inch would read as another fraction.
    String unit = inches() ? " in" : "";
    return switch (tape) {
      case ALONG -> along.inColumn(units) + unit;
      case ACROSS -> across.inColumn(units) + unit;
      case BOTH ->
          along.inColumn(units)
              + (inches() ? " in along, " : "/")
              + across.inColumn(units)
              + (inches() ? " in across" : "");
    };
  }

  /** Of one placement the frame's places, by screens where they differ, and the design's. */
  public String of(Map<String, Set<String>> frames, String corner) {
    return frames.entrySet().stream()
            .map(
                f ->
                    f.getKey()
                        + (frames.size() == 1 ? "" : " (" + String.join(", ", f.getValue()) + ")"))
            .collect(Collectors.joining(", "))
        + " · "
        + corner;
  }

  /**
   * How numbers run where only the first and the last stand on a map.
   *
   * @param placements in the order of their numbers, at least one
   */
  public static String counted(List<Placement> placements) {
    if (placements.size() < 3) {
      return "";
    }
    List<Coordinate> steps = new ArrayList<>();
    for (int i = 1; i < placements.size(); i++) {
      Coordinate from = middle(placements.get(i - 1));
      Coordinate to = middle(placements.get(i));
      steps.add(new Coordinate(to.x - from.x, to.y - from.y));
    }
    // Between neighbours of a row the most steps are, whatever one step to the next row is.
    boolean along = most(steps, step -> Math.abs(step.x) >= Math.abs(step.y));
    boolean up = most(steps, step -> (along ? step.x : step.y) > 0);
    boolean oneRow = steps.stream().allMatch(step -> (along ? step.x : step.y) > 0 == up);
    Coordinate all = new Coordinate();
    steps.forEach(
        step -> {
          all.x += step.x;
          all.y += step.y;
        });
    String side = along ? end(up) : edge(up);
    if (oneRow) {
      return "Counted from " + side + ".";
    }
    return along
        ? "Counted from " + side + ", row by row from " + edge(all.y > 0) + "."
        : "Counted from " + side + ", column by column from " + end(all.x > 0) + ".";
  }

  private static boolean most(List<Coordinate> steps, Predicate<Coordinate> are) {
    return 2 * steps.stream().filter(are).count() > steps.size();
  }

  private static String end(boolean start) {
    return start ? "the start" : "the end";
  }

  private static String edge(boolean near) {
    return near ? "the near edge" : "the far edge";
  }

  private static Coordinate middle(Placement placement) {
    return placement.outline().getEnvelopeInternal().centre();
  }

  private boolean inches() {
    return Length.columnUnit(units).equals("in");
  }
}
