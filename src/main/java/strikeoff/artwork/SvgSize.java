package strikeoff.artwork;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.stream.XMLStreamReader;

/**
 * How large a drawing is, by its root element: read here, since libraries round millimetres to
 * points of a screen.
 *
 * @param mm its width and height, in mm; empty if it is given in points of a screen or not at all
 * @param box the rectangle of its own coordinates that is drawn: left, top, width, height
 */
record SvgSize(Optional<double[]> mm, double[] box) {

  private static final double MM_PER_INCH = 25.4;

  /** Points of a screen an inch (CSS Values and Units Level 3, 5.2). */
  private static final double PER_INCH = 96;

  private static final Map<String, Double> MM =
      Map.of(
          "mm",
          1.0,
          "cm",
          10.0,
          "q",
          0.25,
          "in",
          MM_PER_INCH,
          "pt",
          MM_PER_INCH / 72,
          "pc",
          MM_PER_INCH / 6);

  private static final Pattern LENGTH =
      Pattern.compile("\\s*([0-9]{0,9}(?:\\.[0-9]{1,9})?)\\s*(mm|cm|[qQ]|in|pt|pc|px|)\\s*");

  /** Shapes that differ by more are no rounding. */
  private static final double ALIKE = 0.005;

  /** Reads the root element, on which the reader stands. */
  static SvgSize of(XMLStreamReader root) throws UnreadablePicture {
    String width = SvgSaid.attribute(root, "width");
    String height = SvgSaid.attribute(root, "height");
    Optional<Length> along = length(width);
    Optional<Length> across = length(height);
    String said = SvgSaid.attribute(root, "viewBox");
    if (said == null && (along.isEmpty() || across.isEmpty())) {
      throw new UnreadablePicture(
          "this drawing says neither its width and height nor its viewBox; save it with"
              + " a width and a height in mm");
    }
    double[] box =
        said == null ? new double[] {0, 0, along.get().points(), across.get().points()} : box(said);
    Optional<double[]> mm =
        along.isPresent() && across.isPresent() && along.get().real() && across.get().real()
            ? Optional.of(new double[] {along.get().mm(), across.get().mm()})
            : Optional.empty();
    SvgSize size = new SvgSize(mm, box);
    String ratio = SvgSaid.attribute(root, "preserveAspectRatio");
    boolean stretched = ratio != null && ratio.strip().startsWith("none");
    if (mm.isPresent() && !stretched && !size.isShapedAs(mm.get()[0], mm.get()[1])) {
      throw new UnreadablePicture(
          "the width and height of this drawing are of another shape than its viewBox; save it"
              + " again");
    }
    return size;
  }

  /** True if its coordinates are as long for their width. */
  boolean isShapedAs(double along, double across) {
    return Math.abs(box[2] / box[3] / (along / across) - 1) <= ALIKE;
  }

  private record Length(double number, String unit) {

    /** False for points of a screen, which are as large as the screen makes them. */
    boolean real() {
      return MM.containsKey(unit);
    }

    double mm() {
      return number * MM.get(unit);
    }

    double points() {
      return real() ? mm() / MM_PER_INCH * PER_INCH : number;
    }
  }

  private static Optional<Length> length(String text) throws UnreadablePicture {
    if (text == null || text.strip().endsWith("%") || text.strip().equals("auto")) {
      return Optional.empty();
    }
    Matcher matcher = LENGTH.matcher(text);
    if (!matcher.matches()
        || matcher.group(1).isEmpty()
        || Double.parseDouble(matcher.group(1)) <= 0) {
      throw new UnreadablePicture(
          "this drawing has no width or height that can be read; write them as 340mm, 34cm, 13.4in or"
              + " 964pt");
    }
    return Optional.of(
        new Length(
            Double.parseDouble(matcher.group(1)), matcher.group(2).toLowerCase(Locale.ROOT)));
  }

  private static double[] box(String text) throws UnreadablePicture {
    String[] numbers = text.strip().split("[\\s,]+");
    double[] box = new double[4];
    try {
      for (int i = 0; i < 4 && numbers.length == 4; i++) {
        box[i] = Double.parseDouble(numbers[i]);
      }
    } catch (NumberFormatException e) {
      box[2] = 0;
    }
    double most = 1e9;
    boolean sane = box[2] > 1 / most && box[3] > 1 / most && box[2] < most && box[3] < most;
    if (!sane || !(Math.abs(box[0]) < most) || !(Math.abs(box[1]) < most)) {
      throw new UnreadablePicture(
          "the viewBox of this drawing is none; it holds left, top, width and height, as 0 0 340 520");
    }
    return box;
  }
}
