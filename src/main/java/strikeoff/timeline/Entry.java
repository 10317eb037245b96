package strikeoff.timeline;

import java.util.Optional;
import java.util.OptionalInt;
import strikeoff.plan.PlanPath;
import strikeoff.plan.Step;

/** A task to be booked: all of it but when. */
record Entry(
    int step,
    PlanPath path,
    Task.Kind kind,
    String what,
    Optional<String> person,
    Optional<String> helper,
    Optional<String> screen,
    Optional<Resource> piece,
    OptionalInt set,
    OptionalInt impression) {

  /**
   * @param step null for what is done before the first step
   */
  static Entry of(Step step, Task.Kind kind, String what) {
    return new Entry(
        step == null ? 0 : step.number(),
        step == null ? PlanPath.ROOT : step.path(),
        kind,
        what,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        OptionalInt.empty(),
        OptionalInt.empty());
  }

  static Entry print(Step step, String what, String person, String screen, int set, int id) {
    return new Entry(
        step.number(),
        step.path(),
        Task.Kind.PRINT,
        what,
        Optional.of(person),
        Optional.empty(),
        Optional.of(screen),
        Optional.empty(),
        OptionalInt.of(set),
        OptionalInt.of(id));
  }

  Entry by(String who) {
    return new Entry(
        step, path, kind, what, Optional.of(who), helper, screen, piece, set, impression);
  }

  Entry with(Optional<String> second) {
    return new Entry(step, path, kind, what, person, second, screen, piece, set, impression);
  }

  Entry screen(String name) {
    return new Entry(
        step, path, kind, what, person, helper, Optional.of(name), piece, set, impression);
  }

  Entry piece(Resource taken) {
    return new Entry(
        step, path, kind, what, person, helper, screen, Optional.of(taken), set, impression);
  }

  /** Whoever does this stands waiting for a piece of equipment first. */
  Entry queue(Resource wanted, String words) {
    return new Entry(
        step,
        path,
        Task.Kind.QUEUE,
        words,
        person,
        helper,
        screen,
        Optional.of(wanted),
        set,
        impression);
  }

  Task from(long start, long end) {
    return new Task(
        step,
        kind,
        what,
        new Moment(start),
        new Moment(end),
        person,
        helper,
        screen,
        piece,
        set,
        impression,
        path);
  }
}
