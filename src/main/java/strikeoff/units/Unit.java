package strikeoff.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;

/**
 * A unit as people write it, with its exact size.
 *
 * @param symbol how the tool writes it
 * @param times size in the dimension's base unit is {@code times / over}; both exact
 * @param zero where its zero lies, counted in this unit (32 for °F)
 * @param note what is taken for granted when it is written so, for example which cup
 */
record Unit(
    Dimension dimension,
    String symbol,
    BigDecimal times,
    BigDecimal over,
    BigDecimal zero,
    Optional<String> note) {

  static Unit of(Dimension dimension, String symbol, String times) {
    return of(dimension, symbol, times, "1");
  }

  static Unit of(Dimension dimension, String symbol, String times, String over) {
    return new Unit(
        dimension,
        symbol,
        new BigDecimal(times),
        new BigDecimal(over),
        BigDecimal.ZERO,
        Optional.empty());
  }

  Unit noted(String words) {
    return new Unit(dimension, symbol, times, over, zero, Optional.of(words));
  }

  Unit withZero(String at) {
    return new Unit(dimension, symbol, times, over, new BigDecimal(at), note);
  }

  /** An amount of this unit in the base unit. */
  BigDecimal toBase(Amount amount) {
    BigDecimal above =
        amount.numerator().subtract(zero.multiply(amount.denominator())).multiply(times);
    BigDecimal below = amount.denominator().multiply(over);
    // Most quantities need no division, and a division costs more than all the rest of reading one.
    return below.equals(BigDecimal.ONE)
        ? above.round(MathContext.DECIMAL128)
        : above.divide(below, MathContext.DECIMAL128);
  }
}
