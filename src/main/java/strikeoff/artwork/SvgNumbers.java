package strikeoff.artwork;

import java.awt.geom.AffineTransform;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Lengths, lists of points and transforms of a drawing, by the grammar of SVG 2 and no looser. */
final class SvgNumbers {

  /** Beyond, numbers of 32 bits no longer tell a point from the next. */
  static final double MOST = 1e6;

  static final String NUMBER = "[+-]?(?:[0-9]+(?:\\.[0-9]+)?|\\.[0-9]+)(?:[eE][+-]?[0-9]{1,3})?";

  private static final String PLAIN = "write it as a plain number";

  private static final Pattern LENGTH = Pattern.compile("(" + NUMBER + ")(px|mm|cm|in|pt|pc|%)?");
  private static final Pattern POINTS = Pattern.compile("\\G[\\s,]*(" + NUMBER + ")");
  private static final Pattern TRANSFORM =
      Pattern.compile("\\G[\\s,]*([A-Za-z]+)\\s*\\(([^()]*)\\)");

  /** Points of a screen (CSS Values and Units Level 3, 6.2). */
  private static final Map<String, Double> UNITS =
      Map.of("px", 1.0, "mm", 96 / 25.4, "cm", 96 / 2.54, "in", 96.0, "pt", 96 / 72.0, "pc", 16.0);

  private SvgNumbers() {}

  /** A number that is neither too large nor none. */
  static double number(String text) throws SvgNotDrawn {
    double number = Double.parseDouble(text);
    if (!(Math.abs(number) <= MOST)) {
      throw new SvgNotDrawn("write no number beyond 1000000");
    }
    return number;
  }

  /**
   * @param hundred what 100% is; not a number if that isn't known
   */
  static double length(String text, double hundred) throws SvgNotDrawn {
    Matcher matcher = LENGTH.matcher(text.strip());
    if (!matcher.matches()) {
      throw new SvgNotDrawn(PLAIN);
    }
    double number = number(matcher.group(1));
    String unit = matcher.group(2);
    if ("%".equals(unit)) {
      if (Double.isNaN(hundred)) {
        throw new SvgNotDrawn(PLAIN);
      }
      return number * hundred / 100;
    }
    return unit == null ? number : number * UNITS.get(unit);
  }

  static String text(double number) {
    return BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
  }

  /** Numbers with spaces or commas between them. */
  static List<Double> list(String text) throws SvgNotDrawn {
    List<Double> all = new ArrayList<>();
    String plain = text.strip();
    Matcher matcher = POINTS.matcher(plain);
    int end = 0;
    while (end < plain.length() && matcher.find()) {
      all.add(number(matcher.group(1)));
      end = matcher.end();
    }
    if (end < plain.length()) {
      throw new SvgNotDrawn("its numbers break off: save the drawing again");
    }
    return all;
  }

  static String points(String text) throws SvgNotDrawn {
    List<Double> all = list(text);
    if (all.size() % 2 != 0) {
      throw new SvgNotDrawn("its last point has no second number: save the drawing again");
    }
    StringBuilder points = new StringBuilder();
    all.forEach(n -> points.append(text(n)).append(' '));
    return points.toString().strip();
  }

  /** A list of transforms as one matrix. */
  static String transform(String text) throws SvgNotDrawn {
    AffineTransform all = new AffineTransform();
    String plain = text.strip();
    Matcher matcher = TRANSFORM.matcher(plain);
    int end = 0;
    while (end < plain.length()) {
      if (!matcher.find()) {
        throw new SvgNotDrawn("it can't be read: apply it to the outlines");
      }
      all.concatenate(one(matcher.group(1), list(matcher.group(2))));
      end = matcher.end();
    }
    double[] matrix = new double[6];
    all.getMatrix(matrix);
    StringBuilder written = new StringBuilder("matrix(");
    for (double each : matrix) {
      if (!(Math.abs(each) <= MOST)) {
        throw new SvgNotDrawn("write no number beyond 1000000");
      }
      written.append(written.length() > 7 ? " " : "").append(text(each));
    }
    if (Math.abs(all.getDeterminant()) < 1e-12) {
      throw new SvgNotDrawn("it leaves nothing of what is in it: delete that");
    }
    return written.append(')').toString();
  }

  private static AffineTransform one(String name, List<Double> numbers) throws SvgNotDrawn {
    double[] n = numbers.stream().mapToDouble(Double::doubleValue).toArray();
    int count = n.length;
    if (name.equals("matrix") && count == 6) {
      return new AffineTransform(n);
    }
    if (name.equals("translate") && (count == 1 || count == 2)) {
      return AffineTransform.getTranslateInstance(n[0], count == 1 ? 0 : n[1]);
    }
    if (name.equals("scale") && (count == 1 || count == 2)) {
      return AffineTransform.getScaleInstance(n[0], n[count - 1]);
    }
    if (name.equals("rotate") && (count == 1 || count == 3)) {
      return AffineTransform.getRotateInstance(
          Math.toRadians(n[0]), count == 1 ? 0 : n[1], count == 1 ? 0 : n[2]);
    }
    if (name.equals("skewX") && count == 1) {
      return AffineTransform.getShearInstance(Math.tan(Math.toRadians(n[0])), 0);
    }
    if (name.equals("skewY") && count == 1) {
      return AffineTransform.getShearInstance(0, Math.tan(Math.toRadians(n[0])));
    }
    throw new SvgNotDrawn("it can't be read: apply it to the outlines");
  }
}
