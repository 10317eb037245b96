package strikeoff.propose;

import java.util.Optional;
import strikeoff.day.Moment;

/** Who waits for a proposal. Several searches ask and tell it at once. */
public interface Onlooker {

  /** Waits to the end and looks at nothing. */
  Onlooker PATIENT =
      new Onlooker() {
        @Override
        public boolean hasEnough() {
          return false;
        }

        @Override
        public void sees(long tried, Optional<Moment> best) {
          // Nobody looks.
        }
      };

  /** True once the best run so far is wanted; stays so. */
  boolean hasEnough();

  /**
   * Told before each run is tried, so it must cost next to nothing.
   *
   * @param tried runs so far, of all searches
   * @param best when the best run of one search ends
   */
  void sees(long tried, Optional<Moment> best);
}
