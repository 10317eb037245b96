package strikeoff.propose;

/**
 * Before when nothing can be done.
 *
 * @param plain seconds after the opening of day 1, by night as by day
 * @param worked how many of them are work, which is done in opening hours
 * @param because what keeps it there
 */
record Soonest(long plain, long worked, Bound.Binding because) {

  /** The later of two before which nothing can be done. */
  Soonest or(Soonest other) {
    return other != null && other.plain > plain ? other : this;
  }

  Soonest orSooner(Soonest other) {
    return other.plain < plain ? other : this;
  }
}
