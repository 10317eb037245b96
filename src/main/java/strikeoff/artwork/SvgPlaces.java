package strikeoff.artwork;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Where a part of a drawing is and how large, in plain numbers of its own coordinates. */
final class SvgPlaces {

  static final Set<String> SHAPES =
      Set.of("path", "rect", "circle", "ellipse", "line", "polyline", "polygon");

  private static final Map<String, List<String>> LENGTHS =
      Map.of(
          "rect", List.of("x", "y", "width", "height", "rx", "ry"),
          "circle", List.of("cx", "cy", "r"),
          "ellipse", List.of("cx", "cy", "rx", "ry"),
          "line", List.of("x1", "y1", "x2", "y2"),
          "use", List.of("x", "y", "width", "height"),
          "svg", List.of("x", "y", "width", "height"));

  private static final Set<String> TURNED = Set.of("g", "a", "use");
  private static final Set<String> NOT_BELOW_NOTHING = Set.of("width", "height", "rx", "ry", "r");
  private static final Set<String> UP = Set.of("y", "cy", "y1", "y2", "height", "ry");
  private static final Set<String> ALONG = Set.of("x", "cx", "x1", "x2", "width", "rx");

  private final double[] box;

  /**
   * @param box whose hundredths percentages are; not numbers if that isn't known
   */
  SvgPlaces(double[] box) {
    this.box = box;
  }

  /** What 100% of a length is that lies neither along nor across. */
  double hundred() {
    return Math.hypot(box[0], box[1]) / Math.sqrt(2);
  }

  private double hundred(String name) {
    return ALONG.contains(name) ? box[0] : UP.contains(name) ? box[1] : hundred();
  }

  /** One attribute as it is drawn; empty if it has no effect on such an element. */
  String plain(String element, String name, String value) throws SvgNotDrawn {
    if (name.equals("transform")) {
      if (TURNED.contains(element) || SHAPES.contains(element)) {
        return value.isBlank() || value.strip().equals("none") ? "" : SvgNumbers.transform(value);
      }
      throw new SvgNotDrawn("apply it to the outlines");
    }
    if (name.equals("d") && element.equals("path")) {
      return SvgPath.plain(value);
    }
    if (name.equals("points") && element.startsWith("poly")) {
      return SvgNumbers.points(value);
    }
    if (LENGTHS.getOrDefault(element, List.of()).contains(name)) {
      double length = SvgNumbers.length(value, hundred(name));
      if (length < 0 && NOT_BELOW_NOTHING.contains(name)) {
        throw new SvgNotDrawn("nothing is narrower than 0: write its size");
      }
      return SvgNumbers.text(length);
    }
    boolean view = element.equals("svg") || element.equals("symbol");
    if (view && name.equals("viewBox")) {
      List<Double> four = SvgNumbers.list(value);
      if (four.size() != 4 || four.get(2) <= 0 || four.get(3) <= 0) {
        throw new SvgNotDrawn("write left, top, width and height, as 0 0 340 520");
      }
      return value.strip();
    }
    if (view && name.equals("preserveAspectRatio")) {
      if (!value.strip().matches("xMidYMid( +meet)?")) {
        throw new SvgNotDrawn("isn't drawn here: take it off, or flatten the drawing");
      }
      return "";
    }
    if (element.equals("clipPath")
        && name.equals("clipPathUnits")
        && !value.strip().equals("userSpaceOnUse")) {
      throw new SvgNotDrawn(SvgRefusals.CUT);
    }
    return "";
  }

  /** What only several attributes together say. */
  static Map<String, String> together(String element, Map<String, String> said) throws SvgNotDrawn {
    Map<String, String> all = new LinkedHashMap<>(said);
    if (element.equals("rect")) {
      corners(all);
    }
    if (element.equals("ellipse") && all.containsKey("rx") != all.containsKey("ry")) {
      throw new SvgNotDrawn("write both its “rx” and its “ry”");
    }
    if (element.equals("svg") && !(all.containsKey("width") && all.containsKey("height"))) {
      throw new SvgNotDrawn("write its width and height, or take out what is in it");
    }
    if (element.equals("symbol") && !all.containsKey("viewBox")) {
      throw new SvgNotDrawn("give it a viewBox, or make it a group");
    }
    return all;
  }

  /** SVG 2, 10.2: each that isn't said is as the other, none is longer than half a side. */
  private static void corners(Map<String, String> rect) {
    String along = rect.remove("rx");
    String across = rect.remove("ry");
    if (along == null && across == null) {
      return;
    }
    double rx = Double.parseDouble(along == null ? across : along);
    double ry = Double.parseDouble(across == null ? along : across);
    rx = Math.min(rx, Double.parseDouble(rect.getOrDefault("width", "0")) / 2);
    ry = Math.min(ry, Double.parseDouble(rect.getOrDefault("height", "0")) / 2);
    if (rx > 0 && ry > 0) {
      rect.put("rx", SvgNumbers.text(rx));
      rect.put("ry", SvgNumbers.text(ry));
    }
  }
}
