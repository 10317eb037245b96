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

  /** The next half minute up, as closely as a watch is looked at beside hot work. */
  public Span halfMinutesUp() {
    return new Span(Math.ceil(minutes * 2 - 1e-9) / 2);
  }

  /** As it is said, but never less than it is: for what lasts at most so long. */
  public String roundedUp() {
    return new Span(Math.ceil(minutes / said() - 1e-6) * said()).text();
  }

  /** As it is said, but never more than it is: for what lasts at least so long. */
  public String roundedDown() {
    return new Span(Math.floor(minutes / said() + 1e-6) * said()).text();
  }

  /** The last figure of the text, in minutes: seconds, tenths, minutes, tenths of a day. */
  private double said() {
    double much = Math.abs(minutes);
    return much < 1 ? 1 / 60.0 : much < 10 ? 0.1 : much < 48 * 60 ? 1 : 144;
  }

  /**
   * To the minute, however long, so that what is written waits no less: {@code 53 min}, {@code 2 h
   * 14 min}.
   */
  public String toTheMinute() {
    long whole = (long) Math.ceil(minutes - 1e-9);
    String rest = whole % 60 == 0 ? "" : " " + whole % 60 + " min";
    return whole < 120 ? whole + " min" : whole / 60 + " h" + rest;
  }

  /**
   * To ten seconds up, as a watch tells them beside hot work: {@code 5 min 20 s}; from a quarter of
   * an hour on to the minute.
   */
  public String byTheWatch() {
    long seconds = (long) Math.ceil(minutes * 6 - 1e-9) * 10;
    if (seconds < 60) {
      return seconds + " s";
    }
    return minutes > 15 || seconds % 60 == 0
        ? toTheMinute()
        : seconds / 60 + " min " + seconds % 60 + " s";
  }

  @Override
  public double base() {
    return minutes;
  }

  @Override
  public String text() {
    return Numbers.span(minutes);
  }

  /** The same in all units. */
  @Override
  public String text(Measures units) {
    return text();
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
