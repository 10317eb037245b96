package strikeoff.day;

import java.util.ArrayList;
import java.util.List;
import strikeoff.document.GivenUp;
import strikeoff.plan.Begins;
import strikeoff.units.Span;

/**
 * What was done so far, and until when everybody and everything is taken. Tasks are booked in the
 * order of the plan; a step never begins before the one written before it has begun.
 */
final class Daybook {

  private final Bookings bookings = new Bookings();
  private final List<Task> tasks = new ArrayList<>();
  private final HeldUp heldUp = new HeldUp();
  private final int most;
  private final long opened;
  private final Breaks breaks;
  private long floor;

  /** Before this second nothing of a step that begins when it can begins. */
  private long free;

  /** True while such a step is worked. */
  private boolean aside;

  private long stepBegan = Long.MAX_VALUE;

  /**
   * @param opened when the room opens on the first day
   * @param breaks in which no work begins
   * @param most tasks before the simulation gives up
   */
  Daybook(long opened, Breaks breaks, int most) {
    this.breaks = breaks;
    this.opened = opened;
    this.floor = opened;
    this.free = opened;
    this.most = most;
  }

  /** The next step is worked, beside the one before or after it. */
  void nextStep(Begins begins) {
    if (aside) {
      heldUp.backInTurn();
    } else if (stepBegan != Long.MAX_VALUE) {
      floor = Math.max(floor, stepBegan);
      heldUp.nextStep();
    }
    stepBegan = Long.MAX_VALUE;
    aside = begins == Begins.WHEN_FREE;
    if (aside) {
      heldUp.aside();
    } else if (begins == Begins.WHEN_DONE) {
      afterAll();
    }
  }

  /** Not before all that was begun is done; screens may be drying still. */
  private void afterAll() {
    int last = HeldUp.NOBODY;
    long ends = floor;
    for (int i = 0; i < tasks.size(); i++) {
      long end = tasks.get(i).end().seconds();
      if (tasks.get(i).kind() != Task.Kind.DRY_SCREEN && end > ends) {
        ends = end;
        last = i;
      }
    }
    if (last != HeldUp.NOBODY) {
      floor = ends;
      heldUp.doneWith(last);
    }
  }

  long opened() {
    return opened;
  }

  /** Before this second nothing of the present step begins. */
  long floor() {
    return aside ? free : floor;
  }

  List<Task> tasks() {
    return tasks;
  }

  boolean full() {
    return tasks.size() >= most;
  }

  /** What each task had to wait for, by its index. */
  HeldUp heldUp() {
    return heldUp;
  }

  /** When all of them are free for the present step; hands do not begin in a break. */
  long start(List<Resource> held) {
    return start(held, floor());
  }

  /** The same, not before a second. */
  long start(List<Resource> held, long notBefore) {
    long free = Math.max(bookings.start(held, floor()), notBefore);
    long over = over(free);
    boolean hands = over > free && held.stream().anyMatch(r -> r.kind() == Resource.Kind.PERSON);
    return hands ? over : free;
  }

  /** When work begins that could begin at a second but for a break. */
  long over(long second) {
    return breaks.over(second);
  }

  /** When one is free; the start of time if it was never held. */
  long freeAt(Resource resource) {
    return bookings.freeAt(resource);
  }

  /** Books a task as soon as everything it holds is free. */
  Task add(Entry entry, List<Resource> held, long seconds) {
    return add(entry, held, start(held), seconds);
  }

  Task add(Entry entry, List<Resource> held, long start, long seconds) {
    GivenUp.ifAsked();
    long free = bookings.start(held, floor());
    // Who comes back from a break was held up by what went on until then.
    long ready = breaks.over(free) == start ? free : start;
    heldUp.add(held, ready, bookings, start < stepBegan);
    long end = bookings.hold(held, start, seconds);
    stepBegan = Math.min(stepBegan, start);
    Task task = entry.from(start, end);
    tasks.add(task);
    return task;
  }

  /** Takes a resource for what is booked already, without a task of its own. */
  void take(Resource resource, long from, long until) {
    bookings.hold(List.of(resource), from, until - from);
  }

  /** Nothing begins until the room opens again, and the next step not before. */
  void close(Entry entry, List<Resource> everything, long from, long opens) {
    floor = opens;
    free = opens;
    add(entry, everything, from, opens - from);
    stepBegan = opens;
  }

  /** Whole seconds, rounded up, so that nothing takes less than the plan says. */
  static long seconds(Span span) {
    return new Moment(0).plus(new Span(Math.min(Math.max(0, span.minutes()), 1e9))).seconds();
  }
}
