package strikeoff.day.facts;

import java.util.Collections;
import java.util.List;
import strikeoff.day.Impression;
import strikeoff.day.Moment;
import strikeoff.day.Task;
import strikeoff.units.Span;

/**
 * What a run comes to that was only tried.
 *
 * @param finish when its last task ends
 * @param worked opening hours from the first opening to the finish, nights left out
 * @param shortfall what it lacks
 * @param tooSoon each place where somebody is too early
 * @param tooOld each batch of paste that is printed for longer than it lives
 * @param lateSteps numbers of the steps whose work is the first after closing time on some day
 * @param leftInBath each soak and each steaming that a break makes longer
 * @param leftWet each time that cloth with loose dye lies wet over a break
 * @param tasks in order of start
 * @param impressions in order of laying
 */
public record Rehearsed(
    Moment finish,
    Span worked,
    Shortfall shortfall,
    List<TooSoon> tooSoon,
    List<TooOld> tooOld,
    List<Integer> lateSteps,
    List<LeftInBath> leftInBath,
    List<LeftWet> leftWet,
    List<Task> tasks,
    List<Impression> impressions) {

  public Rehearsed {
    tooSoon = List.copyOf(tooSoon);
    tooOld = List.copyOf(tooOld);
    lateSteps = List.copyOf(lateSteps);
    leftInBath = List.copyOf(leftInBath);
    leftWet = List.copyOf(leftWet);
    tasks = Collections.unmodifiableList(tasks);
    impressions = Collections.unmodifiableList(impressions);
  }

  /** The same on a day with other work after closing, and other screens that stand too long. */
  Rehearsed on(long afterClosing, List<Integer> steps, long inMesh) {
    Shortfall other =
        new Shortfall(
            shortfall.framesOnWet(),
            shortfall.clothUpWet(),
            afterClosing,
            inMesh,
            shortfall.tooOld(),
            shortfall.overGaps(),
            shortfall.neverStarts(),
            shortfall.notThere());
    return new Rehearsed(
        finish, worked, other, tooSoon, tooOld, steps, leftInBath, leftWet, tasks, impressions);
  }

  /** Seconds for which cloth lies over a break in a bath, or wet between two. */
  public double liesFor() {
    return leftInBath.stream().mapToDouble(left -> left.longer().seconds()).sum()
        + leftWet.stream().mapToDouble(left -> left.lies().seconds()).sum();
  }

  /** True if it does so at all. */
  public boolean lies() {
    return !leftInBath.isEmpty() || !leftWet.isEmpty();
  }

  /** True if something is done too early, too late or not at all, or cloth lies over a break. */
  public boolean lacks() {
    return !shortfall.isNothing() || lies();
  }

  /** What is done too early. */
  public enum What {
    FRAME_ON_WET,
    CLOTH_UP
  }

  /**
   * A film is touched before it is surely safe.
   *
   * @param before number of the step that printed it; 0 where it is more than one
   * @param step number of the step that touches it
   * @param by how much too early
   */
  public record TooSoon(What what, int before, int step, Span by) {}

  /**
   * A batch of paste is printed when it is too old.
   *
   * @param step number of the first step that does so
   * @param within true if that step begins to print it in time
   * @param seconds by how much its last print is too late
   */
  public record TooOld(String paste, int step, boolean within, long seconds) {

    TooOld by(long later) {
      return new TooOld(paste, step, within, later);
    }
  }
}
