package strikeoff.rulebook.own;

import java.util.Locale;
import java.util.Optional;
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
  CLOCK("16:00", null),
  NAME("“reeds”", null),
  ANSWER("yes", null);

  private final String example;
  private final Class<? extends Quantity> type;

  Kind(String example, Class<? extends Quantity> type) {
    this.example = example;
    this.type = type;
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

  /** What may stand in the gap at all, so that a sentence's next words aren't taken for it. */
  String regex() {
    return switch (this) {
      case NAME -> "(\"[^\"]*\"|“[^”]*”|\\S+)";
      case CLOCK, ANSWER -> "(\\S+)";
      default -> "(\\S+(?:\\s\\S+){0,3}?)";
    };
  }

  /** As the engine compares it: in base units, or quoted. */
  Parsed<String> read(String text) {
    return switch (this) {
      case CLOCK -> clock(text);
      case NAME -> Parsed.value(quoted(text.replaceAll("^[\"“]|[\"”]$", "")));
      case ANSWER -> answer(text);
      default -> Quantities.parseSigned(text, type).map(q -> number(q.base()));
    };
  }

  private static Parsed<String> clock(String text) {
    if (!text.matches("([01]?\\d|2[0-3]):[0-5]\\d")) {
      return Parsed.refused("a time of day such as 16:00 was expected; “" + text + "” is none");
    }
    String[] parts = text.split(":");
    return Parsed.value(number(Integer.parseInt(parts[0]) * 60 + Integer.parseInt(parts[1])));
  }

  private static Parsed<String> answer(String text) {
    return switch (text) {
      case "yes", "true" -> Parsed.value("true");
      case "no", "false" -> Parsed.value("false");
      default -> Parsed.refused("yes or no was expected; “" + text + "” is neither");
    };
  }

  /** A string as Java and the rules' language write it. */
  static String quoted(String text) {
    return '"' + text.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
  }

  private static String number(double value) {
    return new java.math.BigDecimal(Double.toString(value)).toPlainString();
  }
}
