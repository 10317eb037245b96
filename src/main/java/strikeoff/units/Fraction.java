package strikeoff.units;

/**
 * A fraction of two whole numbers. Exact while both stay below 2<sup>53</sup>, so that its {@link
 * #value} is the double nearest to what was written, and right to some 15 digits beyond.
 *
 * <p>Not of {@code BigDecimal}: reading a quantity is what a plan's reading spends most on, and
 * fifteen digits are more than any scale shows.
 *
 * @param over never zero
 */
record Fraction(double of, double over) {

  static final Fraction ZERO = new Fraction(0, 1);

  /**
   * Reads digits with at most one point among them.
   *
   * @throws NumberFormatException if there is anything else
   */
  static Fraction decimal(String digits) {
    int point = digits.indexOf('.');
    if (point < 0) {
      return new Fraction(whole(digits), 1);
    }
    String decimals = digits.substring(point + 1);
    return new Fraction(
        whole(digits.substring(0, point) + decimals), whole("1" + "0".repeat(decimals.length())));
  }

  /**
   * Reads digits.
   *
   * @throws NumberFormatException if there is anything else, or nothing
   */
  static double whole(String digits) {
    return digits.length() < 19 ? Long.parseLong(digits) : Double.parseDouble(digits);
  }

  Fraction times(Fraction other) {
    return new Fraction(of * other.of, over * other.over);
  }

  Fraction plus(Fraction other) {
    return over == other.over
        ? new Fraction(of + other.of, over)
        : new Fraction(of * other.over + other.of * over, over * other.over);
  }

  Fraction minus(Fraction other) {
    return plus(new Fraction(-other.of, other.over));
  }

  /** Divides by a fraction that is not zero, in lowest terms. */
  Fraction dividedBy(Fraction other) {
    double top = of * other.over;
    double bottom = over * other.of;
    double common = commonDivisor(top, bottom);
    return new Fraction(top / common, bottom / common);
  }

  private static double commonDivisor(double a, double b) {
    return b == 0 ? a : commonDivisor(b, a % b);
  }

  double value() {
    return of / over;
  }
}
