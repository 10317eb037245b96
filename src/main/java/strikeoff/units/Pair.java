package strikeoff.units;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * Two lengths that belong together: along the cloth, then across it. Written {@code 54 x 74 cm} for
 * a size and {@code 12 cm, 5 cm} for a place.
 */
public record Pair(Length along, Length across) {

  private static final Pattern TIMES = Pattern.compile("\\s*[x×X]\\s*|\\s+by\\s+");
  private static final Pattern COMMA = Pattern.compile("\\s*,\\s+|\\s*;\\s*");
  private static final Pattern NUMBER_ONLY = Pattern.compile("[-+−]?[\\d.]+(?:[ /]*[\\d/]+)?");

  /** A size such as {@code 54 x 74 cm}; a unit given once holds for both. */
  public static Parsed<Pair> size(String written) {
    return parse(written, TIMES, "a size such as 54 x 74 cm (along the cloth x across it)", false);
  }

  /** A place such as {@code 12 cm, -5 cm}; values may lie below zero. */
  public static Parsed<Pair> place(String written) {
    return parse(
        written, COMMA, "a place such as 12 cm, 5 cm (along the cloth, then across it)", true);
  }

  private static Parsed<Pair> parse(
      String written, Pattern between, String expected, boolean signed) {
    String text = Script.plain(written);
    String[] parts = between.split(text, -1);
    if (parts.length != 2 || parts[0].isBlank() || parts[1].isBlank()) {
      return Parsed.refused(expected + " was expected; " + Script.quoted(written) + " is not one");
    }
    String second = parts[1].strip();
    String first = parts[0].strip();
    if (NUMBER_ONLY.matcher(first).matches() && NUMBER_ONLY.matcher(second).matches()) {
      return Parsed.refused(Script.quoted(written) + " has no unit; " + expected + " was expected");
    }
    if (NUMBER_ONLY.matcher(first).matches()) {
      first += " " + second.replaceFirst("^[-+]?[\\d./ ]+", "");
    }
    Parsed<Length> along = length(first, signed);
    if (along instanceof Parsed.Refused<Length> r) {
      return Parsed.refused(r.message());
    }
    Parsed<Length> across = length(second, signed);
    if (along instanceof Parsed.Value<Length> one && across instanceof Parsed.Value<Length> other) {
      List<WrittenIn> both = new ArrayList<>(one.written());
      both.addAll(other.written());
      return new Parsed.Value<>(
          new Pair(one.value(), other.value()), one.note().or(other::note), both);
    }
    return across.map(w -> new Pair(along.toOptional().orElseThrow(), w));
  }

  private static Parsed<Length> length(String text, boolean signed) {
    return signed
        ? Quantities.parseSigned(text, Length.class)
        : Quantities.parse(text, Length.class);
  }
}
