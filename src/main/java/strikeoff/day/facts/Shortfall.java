package strikeoff.day.facts;

/**
 * What a run lacks to be printable, by kind, in seconds; all zero for one that lacks nothing that
 * the clock knows of.
 *
 * @param framesOnWet how much too early frames are laid on films, over all pairs
 * @param clothUpWet how much too early the cloth is moved on or taken up, over all steps
 * @param afterClosing how long people work after the room closes, over all days
 * @param inMesh how much too long paste stands in screens
 * @param tooOld how much too old pastes are when they are printed last
 * @param overGaps how many frames lie over a gap between boards
 * @param neverStarts how many steps wait for what never comes
 * @param notThere how many kinds of equipment are asked for that the room doesn't have
 */
public record Shortfall(
    long framesOnWet,
    long clothUpWet,
    long afterClosing,
    long inMesh,
    long tooOld,
    int overGaps,
    int neverStarts,
    int notThere) {

  /** Counts for a step that never starts, in seconds: more than any wait. */
  private static final long NEVER = 100_000;

  /** Counts for a frame over a gap, in seconds. */
  private static final long A_FRAME = 300;

  public boolean isNothing() {
    return seconds() == 0;
  }

  /** All kinds together. */
  public long seconds() {
    return framesOnWet
        + clothUpWet
        + afterClosing
        + inMesh
        + tooOld
        + A_FRAME * overGaps
        + NEVER * (neverStarts + notThere);
  }
}
