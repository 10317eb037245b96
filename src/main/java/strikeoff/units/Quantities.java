package strikeoff.units;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;
import java.util.stream.Stream;

/**
 * Reads quantities as people write them: {@code 19 in}, {@code 1 1/2 cups}, {@code 1 h 30 min},
 * {@code 180 g/m²}. Never throws; what cannot be read comes back as words for the writer.
 */
public final class Quantities {

  /** Nobody writes a longer one; it bounds the work on hostile input. */
  private static final int LONGEST = 60;

  private static final int MOST_PARTS = 4;

  /** More are not kept, however many plans there are. */
  private static final int MOST_KEPT = 4096;

  /** What one plan says, others say too: a class writes {@code 3 min} a thousand times. */
  private static final Map<String, Parsed<Quantity>> KEPT = new ConcurrentHashMap<>();

  private Quantities() {}

  /**
   * Reads a quantity. Values below zero are refused except for temperatures and angles.
   *
   * @param type the quantity that belongs at this place
   */
  public static <Q extends Quantity> Parsed<Q> parse(String text, Class<Q> type) {
    Dimension dimension = Dimension.of(type);
    return parse(text, type, dimension, dimension.signed());
  }

  /** Reads a quantity that may lie below zero, such as an offset to the left. */
  public static <Q extends Quantity> Parsed<Q> parseSigned(String text, Class<Q> type) {
    return parse(text, type, Dimension.of(type), true);
  }

  /** Reads a mass or a volume, as recipes give either. */
  public static Parsed<Quantity> parseAmount(String text) {
    Parsed<Mass> mass = parse(text, Mass.class);
    if (mass instanceof Parsed.Value<Mass> v) {
      return v.map(q -> q);
    }
    Parsed<Volume> volume = parse(text, Volume.class);
    if (volume instanceof Parsed.Value<Volume> v) {
      return v.map(q -> q);
    }
    String words = ((Parsed.Refused<Mass>) mass).message();
    return Parsed.refused(
        words.replace(Dimension.MASS.expected(), "a mass such as 90 g or a volume such as 500 ml"));
  }

  /** Reads a quantity of whatever dimension its unit has; a plain number is a ratio. */
  public static Parsed<Quantity> parseAny(String text) {
    for (Dimension d : Dimension.values()) {
      Parsed<? extends Quantity> parsed = parse(text, d.type(), d, true);
      if (parsed instanceof Parsed.Value<? extends Quantity> v) {
        return v.map(q -> q);
      }
    }
    return Parsed.refused(Script.quoted(text) + " is no quantity with a unit that is known");
  }

  /** The name of what a quantity measures, for {@link #of}. */
  public static String dimension(Quantity quantity) {
    return Dimension.of(quantity.getClass()).name();
  }

  /**
   * A quantity from its number in the base unit.
   *
   * @throws IllegalArgumentException if no dimension has that name
   */
  public static Quantity of(String dimension, double base) {
    return Dimension.valueOf(dimension).make(base);
  }

  /** A quantity from its number in the base unit. */
  public static Quantity of(Class<? extends Quantity> type, double base) {
    return Dimension.of(type).make(base);
  }

  /** As {@code a length such as 40 cm}, for messages. */
  public static String expected(Class<? extends Quantity> type) {
    return Dimension.of(type).expected();
  }

  private static <Q extends Quantity> Parsed<Q> parse(
      String written, Class<Q> type, Dimension dimension, boolean signed) {
    String text = Script.plain(written);
    if (text.isEmpty()) {
      return Parsed.refused(dimension.expected() + " was expected, and nothing stands here");
    }
    if (text.length() > LONGEST) {
      return Parsed.refused(
          Script.quoted(written)
              + " is too long to be read; "
              + dimension.expected()
              + " was expected");
    }
    Optional<String> habit = Habits.words(text, written, dimension);
    if (habit.isPresent()) {
      return Parsed.refused(habit.get());
    }
    return kept(text, written, dimension, signed).map(type::cast);
  }

  private static Parsed<Quantity> kept(
      String text, String written, Dimension dimension, boolean signed) {
    // No text that is read begins with a letter.
    String key = (signed ? "s" : "u") + (char) ('A' + dimension.ordinal()) + text;
    Parsed<Quantity> kept = KEPT.get(key);
    if (kept != null) {
      return kept;
    }
    Parsed<Quantity> read = sum(text, written, dimension, signed);
    // A refusal quotes what was written, which may differ where the text is alike.
    if (read instanceof Parsed.Value<Quantity> && KEPT.size() < MOST_KEPT) {
      KEPT.put(key, read);
    }
    return read;
  }

  private static Parsed<Quantity> sum(
      String text, String written, Dimension dimension, boolean signed) {
    String rest = text;
    Fraction total = Fraction.ZERO;
    Unit last = null;
    Optional<String> note = Optional.empty();
    for (int part = 0; !rest.isEmpty(); part++) {
      Matcher number = Amount.START.matcher(rest);
      if (!number.lookingAt()) {
        return Parsed.refused(
            part == 0 ? noNumber(rest, written, dimension) : noSum(written, dimension));
      }
      Optional<Fraction> amount = Amount.of(number);
      if (amount.isEmpty()) {
        return Parsed.refused(
            Script.quoted(written) + " divides by zero; " + dimension.expected() + " was expected");
      }
      String tail = rest.substring(number.end()).strip();
      int next = last == null || dimension.adds() ? nextNumber(tail) : tail.length();
      String name = tail.substring(0, next).strip();
      Parsed<Unit> found = unit(name, written, dimension, text);
      if (found instanceof Parsed.Refused<Unit> r) {
        return Parsed.refused(r.message());
      }
      Unit unit = ((Parsed.Value<Unit>) found).value();
      if (part > 0
          && (!dimension.adds()
              || unit.size().value() >= last.size().value()
              || part >= MOST_PARTS)) {
        return Parsed.refused(noSum(written, dimension));
      }
      note = note.or(unit::note);
      total = total.plus(unit.toBase(amount.get()));
      last = unit;
      rest = tail.substring(next).strip();
    }
    return inBounds(total, written, dimension, signed, note, last);
  }

  private static Parsed<Quantity> inBounds(
      Fraction total,
      String written,
      Dimension dimension,
      boolean signed,
      Optional<String> note,
      Unit unit) {
    double base = total.value();
    if (!signed && base < 0) {
      return Parsed.refused(
          Script.quoted(written) + " lies below zero; " + dimension.expected() + " was expected");
    }
    if (dimension == Dimension.TEMPERATURE && base < -273.15) {
      return Parsed.refused(Script.quoted(written) + " lies below absolute zero, −273.15 °C");
    }
    if (Math.abs(base) > dimension.largest()) {
      return Parsed.refused(
          Script.quoted(written)
              + " is larger than any print room needs; "
              + dimension.expected()
              + " was expected");
    }
    // Turns −0 into 0, so that equal values look alike.
    return new Parsed.Value<>(dimension.make(base + 0.0), note, writtenIn(unit, base));
  }

  /** Nothing is nothing in any unit, and tells of no habit. */
  private static List<WrittenIn> writtenIn(Unit unit, double base) {
    return unit == null || base == 0 && unit.dimension() != Dimension.TEMPERATURE
        ? List.of()
        : Stream.concat(
                unit.dimension().kind(base).stream(),
                unit.isYard() ? Stream.of(MeasureKind.CLOTH_LENGTH) : Stream.of())
            .map(kind -> new WrittenIn(kind, unit.system()))
            .toList();
  }

  private static Parsed<Unit> unit(String name, String written, Dimension dimension, String text) {
    if (name.isEmpty()) {
      return dimension == Dimension.RATIO
          ? Parsed.value(PLAIN)
          : Parsed.refused(
              Script.quoted(written)
                  + " has no unit; "
                  + dimension.expected()
                  + " was expected"
                  + (dimension == Dimension.SHARE ? percent(text) : ""));
    }
    if (dimension == Dimension.RATIO && name.equals(":1")) {
      return Parsed.value(PLAIN);
    }
    Optional<Unit> found = Units.find(name, dimension);
    if (found.isEmpty()) {
      String nearest =
          Spelling.nearest(name, Units.spellings(dimension))
              .or(() -> Spelling.nearest(name, Units.spellings()))
              .flatMap(s -> Units.find(s, dimension))
              .map(u -> "; did you mean " + u.symbol() + "?")
              .orElse("");
      return Parsed.refused(
          Script.quoted(name)
              + " is not a unit that is known; "
              + dimension.expected()
              + " was expected"
              + nearest);
    }
    Dimension is = found.get().dimension();
    if (is == Dimension.ANGLE && dimension == Dimension.TEMPERATURE) {
      return Parsed.refused(Script.quoted(written) + " does not say which degrees; write °C or °F");
    }
    return is == dimension
        ? Parsed.value(found.get())
        : Parsed.refused(
            dimension.expected() + " was expected; " + Script.quoted(written) + " is " + is.noun());
  }

  /** A share without its sign: {@code 9} is 9 %, and {@code 0.09} most likely too. */
  private static String percent(String text) {
    double number = Double.parseDouble(text.matches("\\d+(?:\\.\\d+)?") ? text : "0");
    if (number <= 0 || number > 100) {
      return "";
    }
    Share share = new Share(text.startsWith("0.") ? number : number / 100);
    return "; did you mean " + share.text() + "?";
  }

  private static final Unit PLAIN = Unit.of(Dimension.RATIO, "", "1");

  /** Where the next part of a sum begins: a digit after a unit's letters. */
  private static int nextNumber(String tail) {
    boolean letters = false;
    for (int i = 0; i < tail.length(); i++) {
      char c = tail.charAt(i);
      boolean digit = c >= '0' && c <= '9';
      // The 2 of m2 or yd2 is no new part.
      if (digit && letters && (tail.charAt(i - 1) == ' ' || !power(tail, i))) {
        return i;
      }
      letters |= !digit && c != ' ';
    }
    return tail.length();
  }

  private static boolean power(String tail, int i) {
    char c = tail.charAt(i);
    boolean ends = i + 1 == tail.length() || tail.charAt(i + 1) == ' ';
    return (c == '2' || c == '3') && ends || tail.charAt(i - 1) == ':';
  }

  private static String noNumber(String rest, String written, Dimension dimension) {
    // A spoon without a number is one spoon in speech only; asking costs little.
    return Units.find(rest, dimension).filter(u -> u.dimension() == dimension).isPresent()
        ? Script.quoted(written) + " has no number; " + dimension.expected() + " was expected"
        : dimension.expected() + " was expected; " + Script.quoted(written) + " is not one";
  }

  private static String noSum(String written, Dimension dimension) {
    return Script.quoted(written)
        + " cannot be read as one value; "
        + dimension.expected()
        + " was expected";
  }
}
