package strikeoff.units;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** The one place that turns a number into text; always a decimal point, never a locale. */
final class Numbers {

  private Numbers() {}

  static void requireFinite(double value, String what) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException(what + " must be a finite number, not " + value);
    }
  }

  /** At most {@code decimals} decimals, trailing zeros dropped. */
  static String plain(double value, int decimals) {
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
    if (rounded.signum() == 0) {
      return "0";
    }
    return rounded.stripTrailingZeros().toPlainString();
  }

  static String span(double minutes) {
    if (Math.abs(minutes) < 1 && minutes != 0) {
      return plain(minutes * 60, 0) + " s";
    }
    if (Math.abs(minutes) < 10) {
      return plain(minutes, 1) + " min";
    }
    long whole = Math.round(minutes);
    if (Math.abs(whole) < 120) {
      return whole + " min";
    }
    long hours = whole / 60;
    long rest = Math.abs(whole % 60);
    if (Math.abs(hours) >= 48) {
      return plain(minutes / 1440, 1) + " days";
    }
    return rest == 0 ? hours + " h" : hours + " h " + rest + " min";
  }
}
