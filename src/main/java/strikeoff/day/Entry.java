package strikeoff.day;

import java.util.Optional;
import java.util.OptionalInt;
import strikeoff.document.PlanPath;
import strikeoff.plan.Step;

/** A task to be booked: all of it but when. */
record Entry(
    int step,
    PlanPath path,
    Task.Kind kind,
    Doing doing,
    Optional<String> person,
    Optional<String> helper,
    Optional<String> screen,
    Optional<Resource> piece,
    OptionalInt set,
    OptionalInt impression) {

  /**
   * @param step null for what is done before the first step
   */
  static Entry of(Step step, Task.Kind kind, Doing doing) {
    return new Entry(
        step == null ? 0 : step.number(),
        step == null ? PlanPath.ROOT : step.path(),
        kind,
        doing,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        OptionalInt.empty(),
        OptionalInt.empty());
  }

  static Entry print(Step step, Doing doing, String person, String screen, int set, int id) {
    return new Entry(
        step.number(),
        step.path(),
        Task.Kind.PRINT,
        doing,
        Optional.of(person),
        Optional.empty(),
        Optional.of(screen),
        Optional.empty(),
        OptionalInt.of(set),
        OptionalInt.of(id));
  }

  Entry by(String who) {
    return new Entry(
        step, path, kind, doing, Optional.of(who), helper, screen, piece, set, impression);
  }

  Entry with(Optional<String> second) {
    return new Entry(step, path, kind, doing, person, second, screen, piece, set, impression);
  }

  Entry screen(String name) {
    return new Entry(
        step, path, kind, doing, person, helper, Optional.of(name), piece, set, impression);
  }

  Entry piece(Resource taken) {
    return new Entry(
        step, path, kind, doing, person, helper, screen, Optional.of(taken), set, impression);
  }

  /** Whoever does this stands waiting for a piece of equipment first. */
  Entry queue(Resource wanted, Doing wait) {
    return new Entry(
        step,
        path,
        Task.Kind.QUEUE,
        wait,
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
        doing,
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
