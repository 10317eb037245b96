package strikeoff.units;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A number as people write it: {@code 1.5}, {@code 1/2}, {@code 1 1/2}, {@code 1½}. A fraction, so
 * that a third of a cup is exact until it is measured out.
 */
record Amount(BigDecimal numerator, BigDecimal denominator) {

  /** At the start of a text; digits are bounded, so that matching and computing stay quick. */
  static final Pattern START =
      Pattern.compile(
          "(?<sign>[-+]?)(?:(?:(?<whole>\\d{1,15}) )?(?<num>\\d{1,9})/(?<den>\\d{1,9})"
              + "|(?<decimal>\\d{1,15}(?:\\.\\d{1,15})?|\\.\\d{1,15}))(?![\\d.,]|/\\d)");

  static Amount of(Matcher m) {
    BigDecimal sign = m.group("sign").equals("-") ? BigDecimal.ONE.negate() : BigDecimal.ONE;
    if (m.group("decimal") != null) {
      return new Amount(new BigDecimal(m.group("decimal")).multiply(sign), BigDecimal.ONE);
    }
    BigDecimal den = new BigDecimal(m.group("den"));
    BigDecimal num = new BigDecimal(m.group("num"));
    if (m.group("whole") != null) {
      num = num.add(new BigDecimal(m.group("whole")).multiply(den));
    }
    return new Amount(num.multiply(sign), den);
  }

  /** Signed, or empty where the denominator is zero. */
  static Optional<Amount> safely(Matcher m) {
    if (m.group("den") != null && new BigDecimal(m.group("den")).signum() == 0) {
      return Optional.empty();
    }
    return Optional.of(of(m));
  }
}
