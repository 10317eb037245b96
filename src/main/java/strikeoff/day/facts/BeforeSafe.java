package strikeoff.day.facts;

import strikeoff.day.Moment;
import strikeoff.day.Reached;
import strikeoff.units.Span;

/**
 * How long before a film is safe something is done to it.
 *
 * @param quick if it dries quickly; not above zero if that is in time
 * @param ordinary on an ordinary day, likewise
 * @param slow if it dries slowly
 */
public record BeforeSafe(Span quick, Span ordinary, Span slow) {

  /** By when it may be done against when it is. */
  public static BeforeSafe of(Reached safe, Moment done) {
    return new BeforeSafe(
        safe.earliest().since(done), safe.best().since(done), safe.latest().since(done));
  }

  /** As people say it: {@code about 53 min too early (9 min if it dries fast, …)}. */
  public String text() {
    if (ordinary.seconds() <= 0) {
      return "in time on an ordinary day, " + said(slow) + " too early if it dries slowly";
    }
    if (few(slow)) {
      return "about when it is safe";
    }
    if (few(ordinary)) {
      return "about when it is safe on an ordinary day, "
          + said(slow)
          + " too early if it dries slowly";
    }
    return "about "
        + said(ordinary)
        + " too early ("
        + (quick.seconds() > 0 ? said(quick) : "in time")
        + " if it dries fast, "
        + said(slow)
        + " if slowly)";
  }

  /** Nobody times a frame to the second. */
  private static boolean few(Span span) {
    return span.seconds() < A_FEW;
  }

  /** No more exactly than anybody could keep to. */
  private static String said(Span span) {
    if (span.seconds() >= Reached.NEVER.seconds() / 2.0) {
      return "for ever";
    }
    if (few(span)) {
      return "a few seconds";
    }
    return span.minutes() < 1
        ? Span.ofSeconds(Math.ceil(span.seconds() / A_FEW) * A_FEW).text()
        : new Span(Math.rint(span.minutes())).text();
  }

  private static final double A_FEW = 10;
}
