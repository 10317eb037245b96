package strikeoff.propose;

import strikeoff.layout.Footprint;
import strikeoff.units.Span;

/**
 * One impression, in seconds at the soonest.
 *
 * @param takes from fetching the frame to lifting it
 * @param frame from then on until a frame may lie on it
 * @param lift until the cloth may be lifted
 * @param fix until it may be fixed; zero if the first of the last steps waits for no such film
 */
record PrintTimes(Footprint print, long takes, long frame, long lift, long fix) {

  /** Never more than the clock counts. */
  static long seconds(Span span) {
    return (long) Math.floor(span.seconds() + 1e-6);
  }

  int placement() {
    return print.placement().id();
  }

  double from() {
    return print.frame().getEnvelopeInternal().getMinX();
  }

  double to() {
    return print.frame().getEnvelopeInternal().getMaxX();
  }
}
