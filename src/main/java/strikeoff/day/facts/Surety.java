package strikeoff.day.facts;

import strikeoff.day.Moment;
import strikeoff.day.Reached;

/** For how slow a day waits must be long enough. */
public enum Surety {
  /** For slow drying too: the time that one day in ten exceeds. */
  SURE,
  /** For an ordinary day: every second day is slower. */
  LIKELY;

  /** By when a film is counted on to be in a state. */
  Moment counted(Reached reached) {
    return this == SURE ? reached.latest() : reached.best();
  }
}
