package strikeoff.units;

import java.util.regex.Pattern;

/** Brings the ways of typing one thing together, and quotes foreign text safely in messages. */
public final class Script {

  private static final Pattern SPACES =
      Pattern.compile("[\\s\\u00a0\\u2000-\\u200a\\u202f\\u3000]+");
  private static final Pattern AROUND_SLASH = Pattern.compile(" ?/ ?(?=[a-zA-Z])");
  private static final Pattern AFTER_DIGIT = Pattern.compile("(?<=\\d)(?=[½¼¾⅓⅔⅛⅜⅝⅞])");
  private static final int SHOWN = 40;

  private Script() {}

  /**
   * One kind of space, micro sign, minus, fraction and power; so thin and no-break spaces, {@code
   * m²} and {@code m^2}, both micro signs, {@code ½} and {@code 1/2} read alike.
   */
  static String plain(String written) {
    String text = written.length() > 200 ? written.substring(0, 200) : written;
    if (isPlain(text)) {
      return text;
    }
    text = SPACES.matcher(text).replaceAll(" ").strip();
    text = text.replace('\u03bc', '\u00b5').replace('\u2212', '-');
    text = text.replace("^2", "2").replace("²", "2").replace("^3", "3").replace("³", "3");
    text = AFTER_DIGIT.matcher(text).replaceAll(" ");
    text = text.replace("½", "1/2").replace("¼", "1/4").replace("¾", "3/4");
    text = text.replace("⅓", "1/3").replace("⅔", "2/3").replace("⅛", "1/8");
    text = text.replace("⅜", "3/8").replace("⅝", "5/8").replace("⅞", "7/8");
    text = text.replace("⁄", "/").replace("º", "°").replace("° ", "°");
    return AROUND_SLASH.matcher(text).replaceAll("/");
  }

  /** True for what most people write most of the time, such as {@code 12.5 cm} or {@code 20 °C}. */
  private static boolean isPlain(String text) {
    char last = ' ';
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      boolean one = c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z' || c >= '0' && c <= '9';
      boolean plain = one || c == '.' || c == '%' || c == '\u00b5' || c == '\u00b0';
      boolean closeUp = c == '/' && last != ' ';
      boolean apart = c == ' ' && last != ' ' && last != '/' && last != '\u00b0';
      if (!plain && !closeUp && !apart) {
        return false;
      }
      last = c;
    }
    return last != ' ';
  }

  /** For a message: short, on one line, control characters shown as a box. */
  public static String quoted(String written) {
    StringBuilder shown = new StringBuilder();
    int[] points = written.codePoints().limit(SHOWN + 1L).toArray();
    for (int i = 0; i < Math.min(points.length, SHOWN); i++) {
      int c = points[i];
      int type = Character.getType(c);
      boolean unseen =
          Character.isISOControl(c)
              || type == Character.FORMAT
              || type == Character.SURROGATE
              || type == Character.LINE_SEPARATOR
              || type == Character.PARAGRAPH_SEPARATOR;
      shown.appendCodePoint(unseen ? 0x25a1 : c);
    }
    return "“" + shown + (points.length > SHOWN ? "…" : "") + "”";
  }
}
