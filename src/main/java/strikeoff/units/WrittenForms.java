package strikeoff.units;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Regular expressions for quantities as plans may hold them, for schemas that editors read. They
 * are made of the same units that {@link Quantities} reads, and use only what the expressions of
 * Java and of ECMAScript have in common. They can't tell what is too large or adds up wrongly.
 */
public final class WrittenForms {

  private static final String SPACE = "[\\s\\u00a0\\u2000-\\u200a\\u202f\\u3000]";
  private static final String NUMBER =
      "(?:[0-9]+(?:\\.[0-9]+)?|\\.[0-9]+"
          + "|(?:[0-9]+"
          + SPACE
          + "+)?[0-9]+[/⁄][0-9]+"
          + "|(?:[0-9]+"
          + SPACE
          + "*)?[½¼¾⅓⅔⅛⅜⅝⅞])";
  private static final String SOMETHING = "(?=.*[1-9½¼¾⅓⅔⅛⅜⅝⅞])";
  private static final String SIGN = "[-+−]?";
  private static final String PLUS = "\\+?";

  private WrittenForms() {}

  /** A quantity of that kind, below zero where {@link Quantities} takes that. */
  public static String of(Class<? extends Quantity> type) {
    Dimension dimension = Dimension.of(type);
    return whole(quantity(dimension, dimension.signed() ? SIGN : PLUS));
  }

  /** A quantity of that kind, more than nothing. */
  public static String aboveZero(Class<? extends Quantity> type) {
    return whole(SOMETHING + quantity(Dimension.of(type), PLUS));
  }

  /** A quantity of that kind on either side of zero. */
  public static String signed(Class<? extends Quantity> type) {
    return whole(quantity(Dimension.of(type), SIGN));
  }

  /** A mass or a volume. */
  public static String amount() {
    return whole(
        "(?:" + quantity(Dimension.MASS, PLUS) + "|" + quantity(Dimension.VOLUME, PLUS) + ")");
  }

  /** A size such as {@code 54 x 74 cm}. */
  public static String size() {
    return pair(PLUS, SPACE + "*[x×X]" + SPACE + "*|" + SPACE + "+by" + SPACE + "+");
  }

  /** A place such as {@code 12 cm, -5 cm}. */
  public static String place() {
    return pair(SIGN, SPACE + "*," + SPACE + "+|" + SPACE + "*;" + SPACE + "*");
  }

  /** The first of two may leave its unit to the second. */
  private static String pair(String sign, String between) {
    String length = quantity(Dimension.LENGTH, sign);
    return whole("(?:" + length + "|" + sign + NUMBER + ")(?:" + between + ")" + length);
  }

  private static String whole(String expression) {
    return "^" + SPACE + "*" + expression + SPACE + "*$";
  }

  private static String quantity(Dimension dimension, String sign) {
    String one = NUMBER + SPACE + "*(?:" + units(dimension) + ")";
    return sign + one + (dimension.adds() ? "(?:" + SPACE + "*" + one + ")*" : "");
  }

  private static String units(Dimension dimension) {
    if (dimension == Dimension.RATIO) {
      return "(?::1)?";
    }
    List<String> spellings = Units.spellings(dimension);
    return spellings.stream()
        .sorted(Comparator.comparing(String::length).reversed().thenComparing(s -> s))
        .map(WrittenForms::unit)
        .collect(Collectors.joining("|"));
  }

  private static String unit(String spelling) {
    StringBuilder form = new StringBuilder();
    for (int i = 0; i < spelling.length(); i++) {
      form.append(letter(spelling.charAt(i)));
    }
    return form.toString();
  }

  private static String letter(char c) {
    if (c >= 'a' && c <= 'z') {
      return "[" + c + (char) (c - 'a' + 'A') + "]";
    }
    return switch (c) {
      case ' ' -> SPACE + "+";
      case '/' -> SPACE + "*/" + SPACE + "*";
      case '2' -> "(?:2|²|\\^2)";
      case '3' -> "(?:3|³|\\^3)";
      case '.' -> "\\.";
      case 'µ' -> "[µμ]";
      case '°' -> "[°º]" + SPACE + "*";
      default -> String.valueOf(c);
    };
  }
}
