package strikeoff.units;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** The one place that turns a number into text; always a decimal point, never a locale. */
public final class Numbers {

  private static final long[] POWERS = {1, 10, 100, 1000, 10_000, 100_000, 1_000_000};

  /** Below it the middle between two scaled numbers is exact enough to tell a tie from none. */
  private static final double SMALL = 1e9;

  private Numbers() {}

  static void requireFinite(double value, String what) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException(what + " must be a finite number, not " + value);
    }
  }

  /** At most {@code decimals} decimals, trailing zeros dropped. */
  public static String plain(double value, int decimals) {
    if (Math.abs(value) * POWERS[decimals] < SMALL) {
      return text(value < 0, rounded(Math.abs(value), decimals), decimals);
    }
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
    if (rounded.signum() == 0) {
      return "0";
    }
    return rounded.stripTrailingZeros().toPlainString();
  }

  /** With just so many decimals, rounded like the others. */
  public static String fixed(double value, int decimals) {
    if (Math.abs(value) * POWERS[decimals] < SMALL && decimals > 0) {
      long scaled = rounded(Math.abs(value), decimals);
      String digits = Long.toString(POWERS[decimals] + scaled % POWERS[decimals]).substring(1);
      return (value < 0 && scaled > 0 ? "-" : "") + scaled / POWERS[decimals] + "." + digits;
    }
    return BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP).toPlainString();
  }

  /**
   * How many of the last decimal's units a small value has, ties away from zero. A tie is what is
   * written as one: the double nearest to 1.005 lies below it, and yet becomes 1.01.
   */
  private static long rounded(double value, int decimals) {
    long below = (long) Math.floor(value * POWERS[decimals]);
    double tie = (below + 0.5) / POWERS[decimals];
    return value >= tie ? below + 1 : below;
  }

  private static String text(boolean negative, long scaled, int decimals) {
    if (scaled == 0) {
      return "0";
    }
    StringBuilder text = new StringBuilder(20);
    text.append(negative ? "-" : "").append(scaled / POWERS[decimals]);
    long rest = scaled % POWERS[decimals];
    if (rest > 0) {
      text.append('.');
    }
    for (int left = decimals - 1; rest > 0; left--) {
      text.append(rest / POWERS[left]);
      rest %= POWERS[left];
    }
    return text.toString();
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
