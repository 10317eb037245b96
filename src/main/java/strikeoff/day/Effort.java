package strikeoff.day;

/**
 * How much work the clock takes on for one plan before it tells what it has by then. None of it is
 * a matter of the trade, so none is a limit that a studio could set; each is far beyond what a day
 * at a table needs, and keeps a plan from costing more than it is worth.
 *
 * @param tasks pieces of work after which a run is not followed any more, which is then told: a
 *     crew that prints for a month makes a tenth of it
 * @param contacts frames on wet films that are noted: so many are enough to know that a run is
 *     wrong
 * @param trials impressions that are simulated again to try what findings ask for, in all; a remedy
 *     beyond them is reckoned from the shortfall alone, and tells no finish
 * @param ways impressions that are simulated again for one run, to find who had better stay out of
 *     a print step: all choices of six people on a day of thirty impressions, of four on one of a
 *     hundred and thirty. Of more choices those that leave the fewest out are tried
 */
public record Effort(int tasks, int contacts, long trials, long ways) {

  public static final Effort USUAL = new Effort(250_000, 50_000, 100_000, 2_000);

  /** The same without trying what findings ask for. */
  public Effort withoutTrials() {
    return new Effort(tasks, contacts, 0, ways);
  }

  /**
   * Sets that are looked at to choose where the cloth is laid. Each is held against all before it,
   * so that looking further costs with the square; on a table of ten metres lie forty frames of
   * half a metre, with their next colours laid over them.
   */
  static final int SETS_AHEAD = 60;

  /**
   * How often a wait is made longer by what is still missing. The first is reckoned from the
   * shortfall and nearly always right; the second mends what shifts with it.
   */
  public static final int LONGER_WAITS = 4;

  /** The same where waits before it are made longer too, each of which shifts those after it. */
  public static final int LONGER_WAITS_TOGETHER = 6;
}
