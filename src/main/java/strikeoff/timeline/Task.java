package strikeoff.timeline;

import java.util.Optional;
import java.util.OptionalInt;
import strikeoff.plan.PlanPath;

/**
 * Anything that takes time in the run, for charts and for the day sheets.
 *
 * @param step number of the step it belongs to
 * @param what a few words
 * @param set which set of a print step, from 1
 * @param impression id of the impression, for kind PRINT
 */
public record Task(
    int step,
    Kind kind,
    String what,
    Moment start,
    Moment end,
    Optional<String> person,
    Optional<String> screen,
    OptionalInt set,
    OptionalInt impression,
    PlanPath path) {

  /** What is done. */
  public enum Kind {
    LOAD,
    MIX,
    PRINT,
    WAIT,
    MOVE,
    WASH_SCREEN,
    DRY_SCREEN,
    SEW,
    FIX,
    RINSE,
    WASH,
    HEAT_SET,
    CLOSED
  }
}
