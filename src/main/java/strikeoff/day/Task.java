package strikeoff.day;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import strikeoff.document.PlanPath;

/**
 * Anything that takes time in the run, for charts and for the day sheets.
 *
 * @param step number of the step it belongs to
 * @param doing what is done, or waited for
 * @param person who does it, or who stands waiting for a piece of equipment
 * @param helper who lends a hand where a frame takes two people
 * @param piece the piece of equipment that it takes up, or that is waited for
 * @param set which set of a print step, from 1
 * @param impression id of the impression, for kind PRINT
 */
public record Task(
    int step,
    Kind kind,
    Doing doing,
    Moment start,
    Moment end,
    Optional<String> person,
    Optional<String> helper,
    Optional<String> screen,
    Optional<Resource> piece,
    OptionalInt set,
    OptionalInt impression,
    PlanPath path) {

  /** Everybody whose hands it takes, or who stands waiting. */
  public List<String> people() {
    if (person.isEmpty()) {
      return helper.map(List::of).orElse(List.of());
    }
    return helper.map(other -> List.of(person.get(), other)).orElse(List.of(person.get()));
  }

  /** True if somebody works on it; false also for somebody who stands in a queue. */
  public boolean worked() {
    return person.isPresent() && kind != Kind.QUEUE;
  }

  /** True if the cloth waits, or lies batched, and nobody need stand by. */
  public boolean waits() {
    return kind == Kind.WAIT || kind == Kind.FIX && person.isEmpty();
  }

  /** True if something is done to the cloth. */
  public boolean onCloth() {
    return switch (kind) {
      case MIX, WAIT, QUEUE, WASH_SCREEN, DRY_SCREEN, CLOSED -> false;
      case LOAD, PRINT, MOVE, SEW, FIX, RINSE, WASH, HEAT_SET -> true;
    };
  }

  /** The part of it between two moments; it must have one. */
  public Task within(Moment from, Moment to) {
    return new Task(
        step,
        kind,
        doing,
        start.later(from),
        end.compareTo(to) < 0 ? end : to,
        person,
        helper,
        screen,
        piece,
        set,
        impression,
        path);
  }

  /** What is done. */
  public enum Kind {
    LOAD,
    MIX,
    PRINT,
    /** The cloth waits, and who works on it; with a person if she holds a hair-dryer. */
    WAIT,
    /**
     * Somebody, or else a screen, waits for a piece of equipment that the room has too few of,
     * while others may work.
     */
    QUEUE,
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
