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
 * @param lateSteps numbers of the steps whose work is the first after closing time on some day
 * @param tasks in order of start
 * @param impressions in order of laying
 */
public record Rehearsed(
    Moment finish,
    Span worked,
    Shortfall shortfall,
    List<TooSoon> tooSoon,
    List<Integer> lateSteps,
    List<Task> tasks,
    List<Impression> impressions) {

  public Rehearsed {
    tooSoon = List.copyOf(tooSoon);
    lateSteps = List.copyOf(lateSteps);
    tasks = Collections.unmodifiableList(tasks);
    impressions = Collections.unmodifiableList(impressions);
  }

  /** The same with other work after closing. */
  Rehearsed late(long afterClosing, List<Integer> steps) {
    Shortfall other =
        new Shortfall(
            shortfall.framesOnWet(),
            shortfall.clothUpWet(),
            afterClosing,
            shortfall.inMesh(),
            shortfall.tooOld(),
            shortfall.overGaps(),
            shortfall.neverStarts(),
            shortfall.notThere());
    return new Rehearsed(finish, worked, other, tooSoon, steps, tasks, impressions);
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
}
