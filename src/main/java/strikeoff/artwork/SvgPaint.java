package strikeoff.artwork;

import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Colours of a drawing: those that are known to be drawn as CSS Color Level 3 has them. */
final class SvgPaint {

  private static final String COLOUR = "write it as #000 or #fff";

  private static final Pattern HEX =
      Pattern.compile("#(?:[0-9a-f]{3}|[0-9a-f]{4}|[0-9a-f]{6}|[0-9a-f]{8})");
  private static final String PART = "\\s*([0-9]{1,3}(?:\\.[0-9]+)?)(%?)\\s*";
  private static final Pattern RGB =
      Pattern.compile(
          "rgba?\\(" + PART + "," + PART + "," + PART + "(?:,\\s*([0-9]*\\.?[0-9]+)\\s*)?\\)");

  /** CSS Color Level 3, 4.3. */
  private static final Set<String> NAMES =
      Set.of(
          ("aliceblue antiquewhite aqua aquamarine azure beige bisque black blanchedalmond blue"
                  + " blueviolet brown burlywood cadetblue chartreuse chocolate coral"
                  + " cornflowerblue cornsilk crimson cyan darkblue darkcyan darkgoldenrod darkgray"
                  + " darkgreen darkgrey darkkhaki darkmagenta darkolivegreen darkorange darkorchid"
                  + " darkred darksalmon darkseagreen darkslateblue darkslategray darkslategrey"
                  + " darkturquoise darkviolet deeppink deepskyblue dimgray dimgrey dodgerblue"
                  + " firebrick floralwhite forestgreen fuchsia gainsboro ghostwhite gold goldenrod"
                  + " gray green greenyellow grey honeydew hotpink indianred indigo ivory khaki"
                  + " lavender lavenderblush lawngreen lemonchiffon lightblue lightcoral lightcyan"
                  + " lightgoldenrodyellow lightgray lightgreen lightgrey lightpink lightsalmon"
                  + " lightseagreen lightskyblue lightslategray lightslategrey lightsteelblue"
                  + " lightyellow lime limegreen linen magenta maroon mediumaquamarine mediumblue"
                  + " mediumorchid mediumpurple mediumseagreen mediumslateblue mediumspringgreen"
                  + " mediumturquoise mediumvioletred midnightblue mintcream mistyrose moccasin"
                  + " navajowhite navy oldlace olive olivedrab orange orangered orchid"
                  + " palegoldenrod palegreen paleturquoise palevioletred papayawhip peachpuff peru"
                  + " pink plum powderblue purple red rosybrown royalblue saddlebrown salmon"
                  + " sandybrown seagreen seashell sienna silver skyblue slateblue slategray"
                  + " slategrey snow springgreen steelblue tan teal thistle tomato turquoise violet"
                  + " wheat white whitesmoke yellow yellowgreen")
              .split(" "));

  private SvgPaint() {}

  /** A colour as its name or #rrggbb, or {@code none}. */
  static String plain(String text) throws SvgNotDrawn {
    String paint = text.strip().toLowerCase(Locale.ROOT);
    if (paint.equals("none") || paint.equals("transparent")) {
      return "none";
    }
    if (NAMES.contains(paint)) {
      return paint;
    }
    if (HEX.matcher(paint).matches()) {
      return hex(paint.substring(1));
    }
    Matcher rgb = RGB.matcher(paint);
    if (rgb.matches()) {
      return rgb(rgb);
    }
    throw new SvgNotDrawn(paint.contains("url(") ? SvgRefusals.TONES : COLOUR);
  }

  private static String hex(String digits) throws SvgNotDrawn {
    String all = digits.length() > 4 ? digits : digits.replaceAll("(.)", "$1$1");
    if (all.length() == 8) {
      if (all.endsWith("00")) {
        return "none";
      }
      if (!all.endsWith("ff")) {
        throw new SvgNotDrawn(SvgRefusals.SOLID);
      }
    }
    return "#" + all.substring(0, 6);
  }

  private static String rgb(Matcher rgb) throws SvgNotDrawn {
    if (rgb.group(7) != null) {
      double alpha = Double.parseDouble(rgb.group(7));
      if (alpha <= 0) {
        return "none";
      }
      if (alpha < 1) {
        throw new SvgNotDrawn(SvgRefusals.SOLID);
      }
    }
    StringBuilder hex = new StringBuilder("#");
    for (int i = 1; i < 7; i += 2) {
      boolean percent = !rgb.group(i + 1).isEmpty();
      if (percent == rgb.group(2).isEmpty()) {
        throw new SvgNotDrawn(COLOUR);
      }
      double part = Double.parseDouble(rgb.group(i)) * (percent ? 2.55 : 1);
      hex.append(String.format(Locale.ROOT, "%02x", Math.min(255, Math.round(part))));
    }
    return hex.toString();
  }
}
