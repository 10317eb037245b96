package strikeoff.checks;

/**
 * A value from outside the project that a model must meet.
 *
 * @param quantity what is compared, with its unit: {@code pH}, {@code soda ash, g/L}
 * @param conditions under which the source gives it
 * @param value as the source gives it
 * @param tolerance largest accepted difference, in the value's unit; the source's own where it
 *     states one
 * @param source author, year, table; or {@code common practice, no source}
 * @param status how well the value is known
 * @param range true if the source gives a range and no single value
 * @param off why our value lies outside the tolerance, where it does; empty for rows that hold
 */
public record CheckRow(
    String quantity,
    String conditions,
    double value,
    double tolerance,
    String source,
    Status status,
    boolean range,
    String off) {

  public CheckRow(
      String quantity,
      String conditions,
      double value,
      double tolerance,
      String source,
      Status status) {
    this(quantity, conditions, value, tolerance, source, status, false, "");
  }

  public CheckRow {
    if (!Double.isFinite(value) || !(tolerance >= 0)) {
      throw new IllegalArgumentException(quantity + ": " + value + " ± " + tolerance);
    }
    if (quantity.isBlank() || conditions.isBlank() || source.isBlank()) {
      throw new IllegalArgumentException("a row without quantity, conditions or source");
    }
  }

  /** A source that gives a range and no single value: anything inside it is right. */
  public static CheckRow within(
      double low, double high, String quantity, String conditions, String source, Status status) {
    return new CheckRow(
        quantity,
        conditions,
        (low + high) / 2,
        (high - low) / 2 * (1 + 1e-12),
        source,
        status,
        true,
        "");
  }

  /** The same row, which we miss and say so. */
  public CheckRow missed(String why) {
    return new CheckRow(quantity, conditions, value, tolerance, source, status, range, why);
  }

  public boolean isMissed() {
    return !off.isEmpty();
  }

  public boolean holdsFor(double computed) {
    return Math.abs(computed - value) <= tolerance;
  }

  /** How well a value is known. */
  public enum Status {
    /** Read in the source or in a copy of it. */
    PUBLISHED("published"),
    /** Worked out from published constants or by a published program. */
    COMPUTED("computed from published constants"),
    /** A habit of the trade. */
    COMMON_PRACTICE("common practice, no source"),
    /** Not looked up. */
    FROM_MEMORY("from memory");

    private final String text;

    Status(String text) {
      this.text = text;
    }

    public String text() {
      return text;
    }
  }
}
