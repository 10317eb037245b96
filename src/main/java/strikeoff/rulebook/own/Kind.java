package strikeoff.rulebook.own;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import strikeoff.units.AirSpeed;
import strikeoff.units.Angle;
import strikeoff.units.Area;
import strikeoff.units.ArealMass;
import strikeoff.units.Concentration;
import strikeoff.units.Length;
import strikeoff.units.Mass;
import strikeoff.units.MeshCount;
import strikeoff.units.Parsed;
import strikeoff.units.Quantities;
import strikeoff.units.Quantity;
import strikeoff.units.Ratio;
import strikeoff.units.Share;
import strikeoff.units.Span;
import strikeoff.units.Temperature;
import strikeoff.units.Volume;

/** What stands at a gap of a sentence, and how the engine compares it. */
enum Kind {
  LENGTH("40 cm", Length.class),
  AREA("380 cm²", Area.class),
  MASS("90 g", Mass.class),
  VOLUME("500 ml", Volume.class),
  TIME("35 min", Span.class),
  TEMPERATURE("60 °C", Temperature.class),
  SHARE("50 %", Share.class),
  WEIGHT("180 g/m²", ArealMass.class),
  CONCENTRATION("38 g/L", Concentration.class),
  MESH("43/cm", MeshCount.class),
  SPEED("0.3 m/s", AirSpeed.class),
  ANGLE("90°", Angle.class),
  NUMBER("6", Ratio.class),
  CLOCK("16:00", (Class<? extends Quantity>) null),
  /** What a plan calls something. */
  NAME("“a name”", (Class<? extends Quantity>) null),
  PASTE("“rust”", (Class<? extends Quantity>) null),
  SCREEN("“small fine”", (Class<? extends Quantity>) null),
  DESIGN("“reeds”", (Class<? extends Quantity>) null),
  ARRANGEMENT("“border”", (Class<? extends Quantity>) null),
  SEAM("“centre”", (Class<? extends Quantity>) null),
  /** Of these all words are known. */
  GROUP("DCT", KnownWords::groups),
  FIBRE("linen", KnownWords::fibres),
  SUBSTANCE("“soda ash”", KnownWords::substances),
  MEDIUM("paint", KnownWords::media),
  STEP("“wash”", KnownWords::steps),
  BATH("“steam”", KnownWords::baths),
  FIX("“steam”", KnownWords::fixing),
  AIR("“fan”", KnownWords::airs),
  RESOURCE("“sink”", KnownWords::resources),
  PROTECTION("“heat gloves”", KnownWords::protections),
  PLACING("“border”", KnownWords::placings),
  ANSWER("yes", (Class<? extends Quantity>) null);

  /** A quantity of more words is none. */
  private static final int MOST_WORDS = 4;

  /** What conversions of units and sums leave, beside one. */
  private static final double ROUNDING = 1e-9;

  private static final List<String> IN_WORDS =
      List.of(
          "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven",
          "twelve");

  private final String example;
  private final Class<? extends Quantity> type;
  private final Supplier<KnownWords> source;
  private KnownWords known;

  Kind(String example, Class<? extends Quantity> type) {
    this.example = example;
    this.type = type;
    this.source = null;
  }

  Kind(String example, Supplier<KnownWords> source) {
    this.example = example;
    this.type = null;
    this.source = source;
  }

  /** The words that are known of this kind, if all are. */
  synchronized Optional<KnownWords> known() {
    if (known == null && source != null) {
      known = source.get();
    }
    return Optional.ofNullable(known);
  }

  /** True for what can be more or less. */
  boolean isOrdered() {
    return type != null || this == CLOCK;
  }

  /** True for what can be added up, and be greatest. */
  boolean isAmount() {
    return type != null;
  }

  /** True for names and words. */
  boolean isText() {
    return !isOrdered() && this != ANSWER;
  }

  /** Two amounts that differ by no more than this are the same, in base units. */
  double tolerance(double a, double b) {
    double larger = Math.max(Math.abs(a), Math.abs(b));
    return this == LENGTH ? Length.tolerance(larger) : ROUNDING * larger;
  }

  /** The kind that a gap names: {@code length}, {@code length2}. */
  static Optional<Kind> of(String gap) {
    String plain = gap.replaceAll("[0-9]+$", "").toUpperCase(Locale.ROOT);
    for (Kind kind : values()) {
      if (kind.name().equals(plain)) {
        return Optional.of(kind);
      }
    }
    return Optional.empty();
  }

  /** The kind of a quantity. */
  static Optional<Kind> of(Class<?> type) {
    for (Kind kind : values()) {
      if (kind.type != null && kind.type == type) {
        return Optional.of(kind);
      }
    }
    return Optional.empty();
  }

  /** As a teacher might write it. */
  String example() {
    return example;
  }

  /**
   * What may stand in the gap from a word on: how many words it takes, and what they mean or why
   * they mean nothing. What means something comes first.
   */
  List<Read> at(Tokens line, int from) {
    if (from >= line.size()) {
      return List.of();
    }
    if (isText()) {
      return List.of(name(line, from, known()));
    }
    int most = type == null ? 1 : MOST_WORDS;
    List<Read> read = new ArrayList<>();
    List<Read> refused = new ArrayList<>();
    for (int words = 1; words <= most && from + words <= line.size(); words++) {
      Parsed<Object> value = read(line.slice(from, from + words));
      (value instanceof Parsed.Refused ? refused : read).add(new Read(words, value));
      if (line.get(from + words - 1).comma()) {
        break;
      }
    }
    read.addAll(refused);
    return read;
  }

  /** Some words in a gap. */
  record Read(int words, Parsed<Object> value) {}

  /** A name of several words stands in quotes, unless it is known. */
  static Read name(Tokens line, int from, Optional<KnownWords> known) {
    if (!line.get(from).isQuoted()) {
      for (String phrase : known.map(KnownWords::phrases).orElse(List.of())) {
        String[] words = phrase.split(" ");
        if (line.at(from, words)) {
          return new Read(words.length, word(phrase, known));
        }
      }
    }
    return new Read(1, word(line.get(from).text(), known));
  }

  /** In base units, as a text, or as yes or no. */
  Parsed<Object> read(String text) {
    if (isText()) {
      return word(text, known());
    }
    return switch (this) {
      case CLOCK -> clock(text);
      case ANSWER -> answer(text);
      case NUMBER ->
          IN_WORDS.contains(text)
              ? Parsed.value((double) IN_WORDS.indexOf(text) + 1)
              : quantity(text);
      default -> quantity(text);
    };
  }

  private Parsed<Object> quantity(String text) {
    Parsed<Object> read = Quantities.parseSigned(text, type).map(Quantity::base);
    return read instanceof Parsed.Value<Object> value && (Double) value.value() < 0 && !isSigned()
        ? Parsed.refused("“" + text + "” is below zero, which nothing here ever is")
        : read;
  }

  /** True for what can be below zero. */
  private boolean isSigned() {
    return this == TEMPERATURE || this == ANGLE;
  }

  /** So much of it, in base units; of what has no unit a plain number. */
  Quantity amount(double base) {
    return Quantities.of(type == null ? Ratio.class : type, base);
  }

  /** A name as it is written; of known words, what facts call it. */
  static Parsed<Object> word(String text, Optional<KnownWords> known) {
    String bare = text.replaceAll("^[\"“]|[\"”]$", "");
    if (bare.isBlank()) {
      return Parsed.refused("a name was expected; nothing stands between the quotes");
    }
    return known.map(words -> words.read(bare)).orElse(Parsed.value(bare)).map(word -> word);
  }

  private static Parsed<Object> clock(String text) {
    if (!text.matches("([01]?\\d|2[0-3]):[0-5]\\d")) {
      return Parsed.refused("a time of day such as 16:00 was expected; “" + text + "” is none");
    }
    String[] parts = text.split(":");
    return Parsed.value((double) (Integer.parseInt(parts[0]) * 60 + Integer.parseInt(parts[1])));
  }

  private static Parsed<Object> answer(String text) {
    return switch (text) {
      case "yes", "true" -> Parsed.value(true);
      case "no", "false" -> Parsed.value(false);
      default -> Parsed.refused("yes or no was expected; “" + text + "” is neither");
    };
  }
}
