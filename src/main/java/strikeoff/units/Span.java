package strikeoff.units;

/** A stretch of time in minutes. */
public record Span(double minutes) implements Quantity, Comparable<Span> {

  /**
   * @throws IllegalArgumentException if the value is not finite
   */
  public Span {
    Numbers.requireFinite(minutes, "Span");
  }

  public static Span ofSeconds(double seconds) {
    return new Span(seconds / 60);
  }

  public double seconds() {
    return minutes * 60;
  }

  public double hours() {
    return minutes / 60;
  }

  public Span plus(Span other) {
    return new Span(minutes + other.minutes);
  }

  /** The next whole minute up, since nobody waits a fraction on purpose. */
  public Span wholeMinutesUp() {
    return new Span(Math.ceil(minutes - 1e-9));
  }

  @Override
  public double base() {
    return minutes;
  }

  @Override
  public String text() {
    return Numbers.span(minutes);
  }

  @Override
  public int compareTo(Span other) {
    return Double.compare(minutes, other.minutes);
  }

  @Override
  public String toString() {
    return text();
  }
}
