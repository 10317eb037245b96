package strikeoff.artwork;

import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

/** What of SVG a film can have, and what whoever drew the rest does instead. */
final class SvgRefusals {

  static final String TONES = "a film is dark or clear: draw plain areas, or save it as PNG";
  static final String SOLID = "a film is dark or clear: make it solid";
  static final String CUT = "cut the shapes themselves, or save the film as PNG";
  static final String OUTSIDE = "nothing outside of this drawing is read: delete it";
  static final String NOTHING_RUNS = "nothing runs or moves here: delete it";

  private static final String LETTERS = "convert letters to outlines";
  private static final String STROKES = "expand strokes to outlines";
  private static final String APPLY = "apply it to the outlines";
  private static final String UNKNOWN = "isn't drawn here: flatten the drawing, or delete it";

  private static final Map<String, String> ELEMENTS =
      Map.ofEntries(
          Map.entry("text", LETTERS),
          Map.entry("flowRoot", LETTERS),
          Map.entry("image", "trace it, or save the whole film as PNG"),
          Map.entry("foreignObject", "delete it"),
          Map.entry("switch", "take what is shown out of it"),
          Map.entry("script", NOTHING_RUNS),
          Map.entry("animate", NOTHING_RUNS),
          Map.entry("animateTransform", NOTHING_RUNS),
          Map.entry("animateMotion", NOTHING_RUNS),
          Map.entry("set", NOTHING_RUNS));

  /** Are drawn only where something names them, which is refused. */
  static final Set<String> NEVER_DRAWN =
      Set.of(
          "title",
          "desc",
          "metadata",
          "view",
          "linearGradient",
          "radialGradient",
          "pattern",
          "filter",
          "mask",
          "marker",
          "color-profile",
          "cursor",
          "font",
          "font-face");

  private static final Map<String, String> STRANGE =
      Map.ofEntries(
          Map.entry("filter", TONES),
          Map.entry("mask", TONES),
          Map.entry("mix-blend-mode", TONES),
          Map.entry("marker", STROKES),
          Map.entry("marker-start", STROKES),
          Map.entry("marker-mid", STROKES),
          Map.entry("marker-end", STROKES),
          Map.entry("stroke-dasharray", STROKES),
          Map.entry("vector-effect", STROKES),
          Map.entry("transform-origin", APPLY),
          Map.entry("transform-box", APPLY),
          Map.entry("clip", APPLY));

  /** Such values of the strange are as if nothing were said. */
  private static final Set<String> USUAL = Set.of("none", "normal", "auto");

  /** Change no outline. */
  private static final Pattern HARMLESS =
      Pattern.compile(
          "-.+|(font|text|letter|word|line|writing|color-(rendering|interpolation|profile)|flood"
              + "|lighting|stop|solid|shape|image|enable|white|baseline|dominant|alignment|unicode"
              + "|glyph|inline|pointer)-[a-z-]+|color|color-interpolation|color-rendering"
              + "|direction|kerning|cursor|isolation|stroke-dashoffset|font|text-decoration");

  private static final Pattern HARMLESS_ATTRIBUTES =
      Pattern.compile(
          "version|baseProfile|content(Script|Style)Type|zoomAndPan|data-.*|aria-.*|role|tabindex"
              + "|lang|space|pathLength|name|focusable|target");

  private static final Set<String> GEOMETRY =
      Set.of(
          "d",
          "x",
          "y",
          "width",
          "height",
          "rx",
          "ry",
          "r",
          "cx",
          "cy",
          "x1",
          "y1",
          "x2",
          "y2",
          "points",
          "viewBox",
          "preserveAspectRatio",
          "clipPathUnits",
          "transform");

  private static final Map<String, Pattern> WORDS = new HashMap<>();

  static {
    WORDS.put("fill-rule", Pattern.compile("nonzero|evenodd"));
    WORDS.put("clip-rule", Pattern.compile("nonzero|evenodd"));
    WORDS.put("stroke-linecap", Pattern.compile("butt|round|square"));
    WORDS.put("stroke-linejoin", Pattern.compile("miter|round|bevel"));
    WORDS.put("overflow", Pattern.compile("visible|hidden"));
    WORDS.put("visibility", Pattern.compile("visible|hidden|collapse"));
    WORDS.put("display", Pattern.compile("none|inline|block"));
    WORDS.put(
        "clip-path",
        Pattern.compile(
            "none|url\\(\\s*(?:#[^\\s\"'()]+|\"#[^\\s\"'()]+\"|'#[^\\s\"'()]+')\\s*\\)"));
    WORDS.put("paint-order", Pattern.compile("normal|fill( .*)?|markers( fill( stroke)?)?"));
  }

  private static final Pattern WHOLE = Pattern.compile("1(\\.0*)?|100%");
  private static final Pattern NOTHING = Pattern.compile("0(\\.0*)?|\\.0+|0%");

  private SvgRefusals() {}

  /** Why an element isn't taken in. */
  static String ofElement(String name) {
    return ELEMENTS.getOrDefault(name, UNKNOWN);
  }

  /** True of attributes that say where and how large. */
  static boolean places(String attribute) {
    return GEOMETRY.contains(attribute);
  }

  /** Requires that an attribute, which is no property, draws nothing. */
  static void requireHarmless(String attribute) throws SvgNotDrawn {
    if (attribute.toLowerCase(java.util.Locale.ROOT).startsWith("on")) {
      throw new SvgNotDrawn(NOTHING_RUNS);
    }
    if (!HARMLESS_ATTRIBUTES.matcher(attribute).matches()) {
      throw new SvgNotDrawn(UNKNOWN);
    }
  }

  /** True of what may stand in a style as well. */
  static boolean isProperty(String name) {
    return name.equals("fill")
        || name.equals("stroke")
        || name.equals("stroke-width")
        || name.equals("stroke-miterlimit")
        || name.endsWith("opacity")
        || WORDS.containsKey(name)
        || STRANGE.containsKey(name)
        || HARMLESS.matcher(name).matches();
  }

  /** A property's value as it is drawn; empty if it draws nothing else than without it. */
  static String property(String name, String value, double hundred) throws SvgNotDrawn {
    String plain = value.strip();
    switch (name) {
      case "fill", "stroke":
        return SvgPaint.plain(plain);
      case "stroke-width":
        double width = SvgNumbers.length(plain, hundred);
        if (width < 0) {
          throw new SvgNotDrawn("no stroke is narrower than 0: write how wide it is");
        }
        return SvgNumbers.text(width);
      case "stroke-miterlimit":
        double limit = SvgNumbers.length(plain, Double.NaN);
        if (limit < 1) {
          throw new SvgNotDrawn("write a number of at least 1");
        }
        return SvgNumbers.text(limit);
      case "opacity", "fill-opacity", "stroke-opacity":
        if (!WHOLE.matcher(plain).matches() && !NOTHING.matcher(plain).matches()) {
          throw new SvgNotDrawn(SOLID);
        }
        return WHOLE.matcher(plain).matches() ? "1" : "0";
      default:
        break;
    }
    if (WORDS.containsKey(name)) {
      if (!WORDS.get(name).matcher(plain).matches()) {
        throw new SvgNotDrawn(
            name.equals("clip-path")
                ? CUT
                : "“" + clear(plain) + "” isn't drawn here: flatten the drawing");
      }
      return plain;
    }
    if (STRANGE.containsKey(name)) {
      if (!USUAL.contains(plain)) {
        throw new SvgNotDrawn(STRANGE.get(name));
      }
      return "";
    }
    if (!HARMLESS.matcher(name).matches()) {
      throw new SvgNotDrawn(UNKNOWN);
    }
    return "";
  }

  /** True of an opacity that leaves nothing. */
  static boolean isNothing(String opacity) {
    return NOTHING.matcher(opacity.strip()).matches();
  }

  /** Short enough for a sentence, and without what could break it. */
  private static String clear(String text) {
    String shown = text.replaceAll("[^\\w #.,%()-]", "?");
    return shown.length() > 30 ? shown.substring(0, 30) + "…" : shown;
  }
}
