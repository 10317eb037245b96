package strikeoff.units;

/**
 * A unit and its steps, as the tables of {@link Scale} put it together; nothing changes it after
 * that.
 */
final class Rung {

  private static final double EXACT = 1e-6;

  private final String symbol;
  private final double size;
  private final double from;
  private int fractions = 1;
  private int decimals;
  private double step = 1;
  private double safeStep;
  private double onlyWhole;
  private double zero;
  private String restIn = "";
  private double restSize;
  private boolean hasPlural;
  private String between = " ";

  /**
   * @param size in the base unit
   * @param from the least that is told in it, in the base unit
   */
  Rung(String symbol, double size, double from) {
    this.symbol = symbol;
    this.size = size;
    this.from = from;
  }

  /** The finest fractions that are told as such. */
  Rung fractions(int finest) {
    fractions = finest;
    return this;
  }

  /** As many are told if the value has no more. */
  Rung decimals(int most) {
    decimals = most;
    return this;
  }

  /** Between what is told otherwise, in the unit. */
  Rung step(double steps) {
    step = steps;
    return safeStep(steps);
  }

  /** The same where it must be no less, or no more, than the value. */
  Rung safeStep(double steps) {
    safeStep = steps;
    return this;
  }

  /** Told in this unit only if a whole number of such parts. */
  Rung onlyWhole(double part) {
    onlyWhole = part;
    return step(part);
  }

  /** Where the base unit's zero lies. */
  Rung zero(double at) {
    zero = at;
    return this;
  }

  /** What is left of whole units is told in another. */
  Rung withRest(String unit, double unitSize) {
    restIn = unit;
    restSize = unitSize;
    return this;
  }

  Rung plural() {
    hasPlural = true;
    return this;
  }

  /** The number and the unit without a space between. */
  Rung closeUp() {
    between = "";
    return this;
  }

  /** Whether such a value is told in it. */
  boolean takes(double base) {
    return Math.abs(base) >= from * (1 - EXACT / 10)
        && (onlyWhole == 0 || isWhole(amount(base) / onlyWhole))
        && (restIn.isEmpty() || base >= 0);
  }

  /** Between two that are told one after the other, in the base unit. */
  double stepSize() {
    return step * size;
  }

  private double amount(double base) {
    return base / size + zero;
  }

  private double base(double amount) {
    return (amount - zero) * size;
  }

  /** The value in the base unit as it is told. */
  double rounded(double base, Scale.To to) {
    if (isPlain(base)) {
      return base;
    }
    double amount = amount(base);
    return switch (to) {
      case NEAREST -> base(Math.rint(amount / step) * step);
      case UP -> base(Math.ceil(amount / safeStep - EXACT) * safeStep);
      case DOWN -> base(Math.floor(amount / safeStep + EXACT) * safeStep);
    };
  }

  /** True if it is a plain fraction or decimal of the unit. */
  boolean isPlain(double base) {
    double amount = amount(base);
    if (!restIn.isEmpty()) {
      return isWhole(amount / step);
    }
    return isWhole(amount * fractions) || isWhole(amount * Math.pow(10, decimals));
  }

  private static boolean isWhole(double value) {
    return Math.abs(value - Math.rint(value)) < EXACT;
  }

  String text(double base) {
    double amount = amount(base);
    if (restIn.isEmpty()) {
      return number(amount) + between + symbol + (hasPlural && amount > 1 + EXACT ? "s" : "");
    }
    double whole = Math.floor(amount + EXACT);
    String rest = Numbers.plain((base - whole * size) / restSize, 1);
    return Numbers.plain(whole, 0)
        + between
        + symbol
        + (rest.equals("0") ? "" : " " + rest + " " + restIn);
  }

  private String number(double amount) {
    if (!isWhole(amount * fractions)) {
      return Numbers.plain(amount, decimals);
    }
    long parts = Math.round(Math.abs(amount) * fractions);
    long whole = parts / fractions;
    long rest = parts % fractions;
    String sign = amount < 0 && parts > 0 ? "-" : "";
    if (rest == 0) {
      return sign + whole;
    }
    long common = commonDivisor(rest, fractions);
    String fraction = rest / common + "/" + fractions / common;
    return sign + (whole == 0 ? fraction : whole + " " + fraction);
  }

  private static long commonDivisor(long a, long b) {
    return b == 0 ? a : commonDivisor(b, a % b);
  }
}
