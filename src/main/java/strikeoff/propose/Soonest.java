package strikeoff.propose;

/**
 * Before when nothing can be done.
 *
 * @param plain seconds after work can begin, by night as by day
 * @param worked how many of them are work, which is done in opening hours
 * @param after how many come after all that work, while the last film dries
 * @param because what keeps it there
 */
record Soonest(long plain, long worked, long after, Bound.Binding because) {}
