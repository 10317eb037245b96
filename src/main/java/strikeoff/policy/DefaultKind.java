package strikeoff.policy;

import java.util.Optional;
import strikeoff.units.Parsed;
import strikeoff.units.Quantities;
import strikeoff.units.Quantity;
import strikeoff.units.Ratio;
import strikeoff.units.Script;

/**
 * What a default has to be.
 *
 * @param type a quantity, {@code Integer}, {@code Boolean}, or {@code String} for words
 * @param least of a number, or of a quantity in its base unit; empty for what is just not negative
 * @param most likewise
 * @param aboveZero whether nothing is too little
 */
public record DefaultKind(
    Class<?> type, Optional<Double> least, Optional<Double> most, boolean aboveZero) {

  /** Whether it is more than words, so that others can be held against it. */
  public boolean isMeasured() {
    return type != String.class;
  }

  /**
   * A default of this kind.
   *
   * @param text its value as a plan would write it
   */
  public Parsed<Default<?>> read(String name, String text, String source) {
    return value(text).map(value -> new Default<>(name, value, text, source));
  }

  private Parsed<?> value(String text) {
    if (type == String.class) {
      return Parsed.value(text);
    }
    if (type == Boolean.class) {
      return text.equals("yes") || text.equals("no")
          ? Parsed.value(text.equals("yes"))
          : Parsed.refused("yes or no was expected; " + Script.quoted(text) + " is neither");
    }
    return type == Integer.class ? number(text) : quantity(text, type.asSubclass(Quantity.class));
  }

  private Parsed<Integer> number(String text) {
    Parsed<Ratio> parsed = Quantities.parse(text, Ratio.class);
    if (parsed instanceof Parsed.Refused<Ratio> refused) {
      return Parsed.refused(refused.message());
    }
    boolean whole = text.matches("\\d{1,9}");
    return whole && isWithin(Integer.parseInt(text))
        ? Parsed.value(Integer.parseInt(text))
        : Parsed.refused(
            "a whole number from "
                + Math.round(least.orElseThrow())
                + " to "
                + Math.round(most.orElseThrow())
                + " was expected; "
                + Script.quoted(text)
                + " is none");
  }

  private <Q extends Quantity> Parsed<Q> quantity(String text, Class<Q> kind) {
    Parsed<Q> parsed = Quantities.parse(text, kind);
    Optional<Double> base = parsed.toOptional().map(Quantity::base);
    if (base.filter(b -> aboveZero && b <= 0).isPresent()) {
      return Parsed.refused(Quantities.expected(kind) + " was expected, more than nothing");
    }
    return base.filter(b -> !isWithin(b)).isPresent()
        ? Parsed.refused(
            Script.quoted(text)
                + " is beyond what it can be, "
                + Quantities.of(kind, least.orElseThrow()).text()
                + " to "
                + Quantities.of(kind, most.orElseThrow()).text())
        : parsed;
  }

  private boolean isWithin(double value) {
    return least.stream().allMatch(l -> value >= l) && most.stream().allMatch(m -> value <= m);
  }
}
