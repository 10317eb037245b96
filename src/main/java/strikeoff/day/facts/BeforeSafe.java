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
}
