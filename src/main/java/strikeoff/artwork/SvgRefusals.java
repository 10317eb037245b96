package strikeoff.artwork;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What of SVG a film can't have, and what whoever drew it does instead. */
final class SvgRefusals {

  private static final String LETTERS = "convert letters to outlines";
  private static final String TONES =
      "a film is dark or clear: draw plain areas, or save it as PNG";
  private static final String STROKES = "expand strokes to outlines";
  private static final String NOTHING_RUNS = "nothing runs or moves here: delete it";
  private static final String SOLID = "a film is dark or clear: make it solid";
  private static final String APPLY = "apply it to the outlines";

  private static final Map<String, String> ELEMENTS =
      Map.ofEntries(
          Map.entry("text", LETTERS),
          Map.entry("flowRoot", LETTERS),
          Map.entry("font", LETTERS),
          Map.entry("image", "trace it, or save the whole film as PNG"),
          Map.entry("foreignObject", "delete it"),
          Map.entry("script", NOTHING_RUNS),
          Map.entry("animate", NOTHING_RUNS),
          Map.entry("animateTransform", NOTHING_RUNS),
          Map.entry("animateMotion", NOTHING_RUNS),
          Map.entry("set", NOTHING_RUNS),
          Map.entry("filter", TONES),
          Map.entry("mask", TONES),
          Map.entry("linearGradient", TONES),
          Map.entry("radialGradient", TONES),
          Map.entry("pattern", "draw each of its copies"),
          Map.entry("marker", STROKES),
          Map.entry("a", "take the link off what is in it"));

  /** Attributes and properties that draw something else than the outline says. */
  private static final Map<String, String> PROPERTIES =
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
          Map.entry("clip", APPLY),
          Map.entry("requiredFeatures", "delete it"),
          Map.entry("requiredExtensions", "delete it"),
          Map.entry("systemLanguage", "delete it"));

  private static final Set<String> OPACITIES = Set.of("opacity", "fill-opacity", "stroke-opacity");

  /** Such values are as if nothing were said. */
  private static final Set<String> USUAL = Set.of("", "none", "normal", "auto", "inherit");

  private static final Set<String> SHAPING =
      Set.of(
          "id",
          "class",
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
          "transform",
          "viewBox",
          "preserveAspectRatio",
          "fill",
          "fill-rule",
          "fill-opacity",
          "stroke",
          "stroke-width",
          "stroke-linecap",
          "stroke-linejoin",
          "stroke-miterlimit",
          "stroke-opacity",
          "clip-path",
          "clip-rule",
          "clipPathUnits",
          "display",
          "visibility",
          "overflow",
          "color");

  private static final Pattern REMARK = Pattern.compile("/\\*.*?\\*/", Pattern.DOTALL);
  private static final Pattern BLOCK = Pattern.compile("\\{([^{}]*)\\}");
  private static final Pattern PLAIN_NAMES = Pattern.compile("[\\w\\-.#,\\s]*");
  private static final Pattern WHOLE = Pattern.compile("\\s*(1(\\.0*)?|100%|0(\\.0*)?|0%)\\s*");
  private static final Pattern ONE = Pattern.compile("\\s*(1(\\.0*)?|100%)\\s*");

  private SvgRefusals() {}

  /** Why an element isn't taken in. */
  static String ofElement(String name) {
    return ELEMENTS.getOrDefault(name, "convert it to plain outlines, or delete it");
  }

  /** True of attributes that shape what is drawn; others are an editor's own. */
  static boolean shapes(String attribute) {
    return SHAPING.contains(attribute);
  }

  /** Why an attribute or a property isn't taken in; empty if it is, or says nothing. */
  static Optional<String> ofAttribute(String name, String value) {
    String plain = value.strip();
    if (name.toLowerCase(Locale.ROOT).startsWith("on")) {
      return Optional.of(NOTHING_RUNS);
    }
    if (OPACITIES.contains(name)) {
      boolean can = (name.equals("opacity") ? ONE : WHOLE).matcher(plain).matches();
      return can ? Optional.empty() : Optional.of(SOLID);
    }
    if (PROPERTIES.containsKey(name)) {
      return USUAL.contains(plain) ? Optional.empty() : Optional.of(PROPERTIES.get(name));
    }
    if (plain.contains("url(")) {
      boolean local = name.equals("clip-path") && plain.matches("url\\(\\s*[\"']?#.*");
      return local
          ? Optional.empty()
          : Optional.of(
              name.equals("fill") || name.equals("stroke")
                  ? TONES
                  : "name only what is in this drawing");
    }
    return Optional.empty();
  }

  /** What a {@code style} attribute holds that isn't taken in, and why. */
  static Map<String, String> inStyle(String style) {
    Map<String, String> refused = new LinkedHashMap<>();
    String plain = REMARK.matcher(style).replaceAll(" ");
    if (plain.indexOf('\\') >= 0 || plain.indexOf('@') >= 0) {
      refused.put("style", "write it without “@” and “\\”");
    }
    for (String declaration : plain.split(";")) {
      int colon = declaration.indexOf(':');
      if (colon > 0) {
        String name = declaration.substring(0, colon).strip();
        String value = declaration.substring(colon + 1).replace("!important", "");
        ofAttribute(name, value).ifPresent(why -> refused.put(name, why));
      }
    }
    return refused;
  }

  /** The same of a style sheet. */
  static Map<String, String> inSheet(String sheet) {
    Map<String, String> refused = new LinkedHashMap<>();
    String plain = REMARK.matcher(sheet).replaceAll(" ");
    if (plain.indexOf('\\') >= 0 || plain.indexOf('@') >= 0) {
      refused.put("style", "write it without “@” and “\\”");
    }
    if (!PLAIN_NAMES.matcher(BLOCK.matcher(plain).replaceAll(" ")).matches()) {
      refused.putIfAbsent("style", "choose by names of classes alone, or write it into the shapes");
    }
    Matcher block = BLOCK.matcher(plain);
    while (block.find()) {
      refused.putAll(inStyle(block.group(1)));
    }
    return refused;
  }
}
