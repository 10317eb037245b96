package strikeoff.units;

import java.util.Optional;
import java.util.regex.Pattern;

/** Ways of writing that are clear to people and yet not read, each with its own words. */
final class Habits {

  private static final Pattern DECIMAL_COMMA = Pattern.compile("(\\d),(\\d)");
  private static final Pattern POWER_OF_TEN =
      Pattern.compile("[-+]?\\d+(?:\\.\\d*)?[eE][-+]?\\d+(?![a-zA-Z]).*");
  private static final Pattern CLOCK = Pattern.compile("(\\d{1,2}):(\\d{2})");
  private static final Pattern DATE =
      Pattern.compile("\\d{4}-\\d{1,2}-\\d{1,2}|\\d{1,2}[-.]\\d{1,2}[-.]\\d{4}");
  private static final Pattern BETWEEN =
      Pattern.compile("[\\d.]+ ?[^\\d]*?(?:-|–|to) ?[\\d.]+ ?\\D*");

  private Habits() {}

  /**
   * What is wrong with a text that shows one of them; empty if it doesn't.
   *
   * @param text plain
   * @param written as it was written, to be quoted
   */
  static Optional<String> words(String text, String written, Dimension dimension) {
    if (text.indexOf(',') >= 0 && DECIMAL_COMMA.matcher(text).find()) {
      return Optional.of(
          Script.quoted(written)
              + " has a comma; write decimals with a point and thousands without a mark, such as "
              + Script.quoted(DECIMAL_COMMA.matcher(text).replaceAll("$1.$2")));
    }
    if (text.indexOf(':') > 0 && CLOCK.matcher(text).matches() && dimension == Dimension.SPAN) {
      return Optional.of(
          Script.quoted(written)
              + " has a colon; "
              + dimension.expected()
              + " was expected; did you mean "
              + CLOCK.matcher(text).replaceAll("$1 h $2 min")
              + "?");
    }
    if (text.indexOf('-') > 0 && DATE.matcher(text).matches()) {
      return Optional.of(
          Script.quoted(written) + " is a date; " + dimension.expected() + " was expected");
    }
    if (text.endsWith(",") || text.endsWith(";")) {
      return Optional.of(
          Script.quoted(written)
              + " ends with a “"
              + text.charAt(text.length() - 1)
              + "”; leave it out");
    }
    boolean e = text.indexOf('e') >= 0 || text.indexOf('E') >= 0;
    if (e && POWER_OF_TEN.matcher(text).matches()) {
      return Optional.of(
          Script.quoted(written)
              + " is a power of ten; "
              + dimension.expected()
              + " was expected, written out");
    }
    boolean between = text.indexOf('-') >= 0 || text.indexOf('–') >= 0 || text.contains("to");
    if (between && BETWEEN.matcher(text).matches()) {
      return Optional.of(
          Script.quoted(written) + " is a range; one value is needed, " + dimension.expected());
    }
    return Optional.empty();
  }
}
