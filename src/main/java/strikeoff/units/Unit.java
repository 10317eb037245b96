package strikeoff.units;

import java.util.Optional;
import java.util.regex.Pattern;

/**
 * A unit as people write it, with its exact size.
 *
 * @param symbol how the tool writes it
 * @param size in the dimension's base unit, exact
 * @param zero where its zero lies, counted in this unit (32 for °F)
 * @param note what is taken for granted when it is written so, for example which cup
 */
record Unit(
    Dimension dimension, String symbol, Fraction size, Fraction zero, Optional<String> note) {

  private static final Pattern CUSTOMARY =
      Pattern.compile(
          "(US )?(gal|qt|pt|cup|fl oz|tbsp|tsp)|in²?|ft|yd²?|oz|lb|oz/.*|/in|ft/min|°F");

  static Unit of(Dimension dimension, String symbol, String times) {
    return of(dimension, symbol, times, "1");
  }

  static Unit of(Dimension dimension, String symbol, String times, String over) {
    return new Unit(
        dimension,
        symbol,
        Fraction.decimal(times).dividedBy(Fraction.decimal(over)),
        Fraction.ZERO,
        Optional.empty());
  }

  /** Whose unit it is, going by its symbol. */
  UnitSystem system() {
    if (symbol.contains("imp ")) {
      return UnitSystem.IMPERIAL;
    }
    return CUSTOMARY.matcher(symbol).matches() ? UnitSystem.US : UnitSystem.METRIC;
  }

  boolean isYard() {
    return symbol.equals("yd");
  }

  Unit noted(String words) {
    return new Unit(dimension, symbol, size, zero, Optional.of(words));
  }

  Unit withZero(String at) {
    return new Unit(dimension, symbol, size, Fraction.decimal(at), note);
  }

  /** An amount of this unit in the base unit. */
  Fraction toBase(Fraction amount) {
    return amount.minus(zero).times(size);
  }
}
