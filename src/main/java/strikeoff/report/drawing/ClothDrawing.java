package strikeoff.report.drawing;

import gg.jte.Content;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Envelope;
import strikeoff.colour.Swatches;
import strikeoff.day.facts.Timeline;
import strikeoff.layout.Layout;
import strikeoff.plan.PrintPlan;
import strikeoff.units.Length;
import strikeoff.units.MeasureKind;
import strikeoff.units.Measures;
import strikeoff.units.UnitSystem;

/**
 * The cloth to scale, in millimetres. It is drawn once; windows onto it show all of it where there
 * is room and stretch by stretch on a narrow screen.
 *
 * @param drawn the drawing itself, to stand hidden on the page
 * @param wide windows for a wide page, from the start of the cloth
 * @param narrow windows for a narrow page
 */
public record ClothDrawing(Content drawn, List<Content> wide, List<Content> narrow) {

  /** What a window shows at most, in millimetres along the cloth. */
  private static final double WIDE_STRETCH = 4800;

  private static final double NARROW_STRETCH = 1300;

  /** Letters as a share of a window's length: about 12 px on 1100 px, and 11 px on 300 px. */
  private static final double WIDE_LETTER = 0.0115;

  private static final double NARROW_LETTER = 0.037;

  /** A frame that lies farther out is cut off by the window: the finding tells of it. */
  private static final double FARTHEST_OUT = 450;

  public ClothDrawing {
    wide = List.copyOf(wide);
    narrow = List.copyOf(narrow);
  }

  public static ClothDrawing of(
      PrintPlan plan,
      Layout layout,
      Timeline timeline,
      Swatches swatches,
      ColourSigns signs,
      List<Mark> marks) {
    Envelope shown = shown(plan, layout);
    double letter = stretch(shown.getWidth(), WIDE_STRETCH) * WIDE_LETTER;
    Svg drawn =
        Svg.of("svg")
            .with("class", "defs")
            .with("width", 0)
            .with("height", 0)
            .with("aria-hidden", "true")
            .with("focusable", "false");
    ClothParts parts = new ClothParts(plan, layout, timeline, swatches, signs, letter);
    parts.symbols().forEach(drawn::add);
    drawn.add(parts.cloth(marks).with("id", "cloth"));
    return new ClothDrawing(
        drawn,
        windows(plan, shown, WIDE_STRETCH, WIDE_LETTER),
        windows(plan, shown, NARROW_STRETCH, NARROW_LETTER));
  }

  private static Envelope shown(PrintPlan plan, Layout layout) {
    double width = plan.cloth().width().mm();
    double length = plan.cloth().length().mm();
    Envelope shown = new Envelope(0, length, 0, width);
    layout.placements().forEach(p -> shown.expandToInclude(p.outline().getEnvelopeInternal()));
    layout.footprints().forEach(f -> shown.expandToInclude(f.frame().getEnvelopeInternal()));
    return shown.intersection(
        new Envelope(-FARTHEST_OUT, length + FARTHEST_OUT, -FARTHEST_OUT, width + FARTHEST_OUT));
  }

  private static double stretch(double whole, double most) {
    return whole / Math.ceil(whole / most);
  }

  private static List<Content> windows(
      PrintPlan plan, Envelope shown, double most, double letterShare) {
    double stretch = stretch(shown.getWidth(), most);
    int count = (int) Math.max(1, Math.round(shown.getWidth() / stretch));
    double letter = stretch * letterShare;
    double top = plan.cloth().width().mm() - shown.getMaxY() - 2.2 * letter;
    double height = shown.getHeight() + 4.6 * letter;
    List<Content> windows = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      double from = shown.getMinX() + i * stretch;
      double left = i == 0 ? 3.4 * letter : 0.6 * letter;
      Svg window = Svg.window(from - left, top, stretch + left + 0.8 * letter, height);
      window
          .with("class", "cloth")
          .with("role", "img")
          .with("aria-label", label(plan, from, from + stretch, count))
          .add(Svg.use("cloth").with("font-size", letter));
      windows.add(window);
    }
    return windows;
  }

  private static String label(PrintPlan plan, double from, double to, int count) {
    Map<String, Integer> counts = new LinkedHashMap<>();
    plan.arrangements().keySet().forEach(name -> counts.put(name, 0));
    String cloth =
        "The cloth, "
            + plan.cloth().length().clothText(plan.measures())
            + " by "
            + plan.cloth().width().text(plan.measures())
            + ", with "
            + String.join(", ", counts.keySet());
    return count == 1
        ? cloth
        : cloth
            + "; from "
            + place(plan, Math.max(0, from))
            + " to "
            + place(plan, Math.min(plan.cloth().length().mm(), to));
  }

  private static String place(PrintPlan plan, double mm) {
    Measures units = plan.measures();
    return units.of(MeasureKind.LENGTH) == UnitSystem.METRIC
        ? Svg.number(mm / 1000) + " m"
        : new Length(mm).text(units);
  }
}
