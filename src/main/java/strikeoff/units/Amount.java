package strikeoff.units;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A number as people write it: {@code 1.5}, {@code 1/2}, {@code 1 1/2}, {@code 1½}. A fraction, so
 * that a third of a cup is exact until it is measured out.
 */
final class Amount {

  /** At the start of a text; digits are bounded, so that matching and computing stay quick. */
  static final Pattern START =
      Pattern.compile(
          "(?<sign>[-+]?)(?:(?:(?<whole>\\d{1,15}) )?(?<num>\\d{1,9})/(?<den>\\d{1,9})"
              + "|(?<decimal>\\d{1,15}(?:\\.\\d{1,15})?|\\.\\d{1,15}))(?![\\d.,]|/\\d)");

  private Amount() {}

  /** What {@link #START} found, signed; empty where it divides by zero. */
  static Optional<Fraction> of(Matcher m) {
    double sign = m.group("sign").equals("-") ? -1 : 1;
    if (m.group("decimal") != null) {
      Fraction decimal = Fraction.decimal(m.group("decimal"));
      return Optional.of(new Fraction(sign * decimal.of(), decimal.over()));
    }
    double den = Fraction.whole(m.group("den"));
    if (den == 0) {
      return Optional.empty();
    }
    double whole = m.group("whole") == null ? 0 : Fraction.whole(m.group("whole"));
    return Optional.of(new Fraction(sign * (whole * den + Fraction.whole(m.group("num"))), den));
  }
}
