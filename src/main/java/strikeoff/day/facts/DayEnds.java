package strikeoff.day.facts;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.IntUnaryOperator;
import java.util.stream.Stream;
import strikeoff.day.Doing;
import strikeoff.day.Moment;
import strikeoff.day.Task;
import strikeoff.evidence.Evidence.Related;
import strikeoff.evidence.Tie;
import strikeoff.plan.DyeFixing;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Step;
import strikeoff.units.Span;

/** Works out how each day's work ends. */
final class DayEnds {

  private DayEnds() {}

  /**
   * The days on which somebody works, in their order.
   *
   * @param tasks in order of start
   * @param tender true for cloth that a batch harms in the end
   */
  static List<DayEnd> all(List<Task> tasks, PrintPlan plan, boolean tender, DayEnd.Trial trial) {
    Map<Integer, Task> last = new TreeMap<>();
    for (Task task : tasks) {
      if (task.worked()) {
        last.merge(
            TableDay.of(task.start(), plan.hours()),
            task,
            (one, other) -> other.end().compareTo(one.end()) > 0 ? other : one);
      }
    }
    Map<Integer, DayEnd> all = new TreeMap<>();
    last.forEach((day, task) -> all.put(day, inTime(day, task, plan)));
    late(tasks, plan, tender, trial).forEach(late -> all.put(late.day(), late));
    return List.copyOf(all.values());
  }

  /** The days on which somebody works after closing, as far as they can be told without trying. */
  static List<DayEnd> late(List<Task> tasks, PrintPlan plan) {
    return late(tasks, plan, false, DayEnd.Trial.NONE);
  }

  private static List<DayEnd> late(
      List<Task> tasks, PrintPlan plan, boolean tender, DayEnd.Trial trial) {
    Map<Integer, List<Task>> late = new TreeMap<>();
    for (Task task : tasks) {
      int number = TableDay.of(task.start(), plan.hours());
      if (task.worked() && task.end().compareTo(closes(number, plan)) > 0) {
        late.computeIfAbsent(number, s -> new ArrayList<>()).add(task);
      }
    }
    // Seconds are told by nobody: who ends in the minute of closing ends in time.
    late.entrySet()
        .removeIf(
            day ->
                day.getValue().stream()
                    .noneMatch(t -> t.end().isMinutesAfter(closes(day.getKey(), plan))));
    List<DayEnd> all = new ArrayList<>();
    Rests rests = late.isEmpty() ? null : Rests.of(tasks, plan, tender);
    late.forEach(
        (number, work) ->
            all.add(
                of(
                    number,
                    work,
                    late.size(),
                    rests,
                    s -> LeftWet.dryBefore(s, tasks, plan),
                    plan,
                    trial)));
    return all;
  }

  private static DayEnd inTime(int number, Task last, PrintPlan plan) {
    return new DayEnd(
        number,
        opens(number, plan),
        closes(number, plan),
        last.end(),
        new Span(0),
        last.step(),
        work(last, plan),
        Optional.empty(),
        List.of(),
        Optional.empty(),
        last.path(),
        List.of(new Related(Tie.HOURS, plan.hours().path())));
  }

  private static DayEnd of(
      int number,
      List<Task> late,
      int days,
      Rests rests,
      IntUnaryOperator dryBefore,
      PrintPlan plan,
      DayEnd.Trial trial) {
    Moment closes = closes(number, plan);
    Moment ends = closes;
    for (Task task : late) {
      ends = ends.later(task.end());
    }
    Task first = late.get(0);
    Optional<DayEnd.Rest> rest = rests.longest(closes, late);
    // To go on in the morning is enough if nobody worked after closing time until then.
    int goesOn = dryBefore.applyAsInt(rest.map(DayEnd.Rest::step).orElse(first.step()));
    int begins = dryBefore.applyAsInt(first.step());
    Optional<List<Integer>> helps =
        Stream.of(List.of(goesOn), List.of(begins), List.of(begins, goesOn))
            .filter(steps -> steps.stream().distinct().count() == steps.size())
            .filter(steps -> trial.helps(number, steps, List.of(begins, goesOn), days))
            .findFirst();
    List<Integer> moved = helps.orElse(List.of(first.step()));
    return new DayEnd(
        number,
        opens(number, plan),
        closes,
        ends,
        ends.since(closes),
        first.step(),
        work(first, plan),
        Optional.of(
            helps.isPresent()
                ? DayEnd.Remedy.NEXT_DAY
                : plan.print(first.step()).isPresent()
                    ? DayEnd.Remedy.SPLIT
                    : DayEnd.Remedy.SHORTEN),
        moved,
        rest,
        first.path(),
        List.of(new Related(Tie.HOURS, plan.hours().path())));
  }

  /**
   * When hands rest, worked out from all tasks once for all days.
   *
   * @param waited of what is waited for up to a start, that start included, what ends last
   * @param begun when the work of each step begins
   */
  private record Rests(
      PrintPlan plan,
      boolean tender,
      NavigableMap<Moment, Task> waited,
      Map<Integer, Moment> begun) {

    /**
     * @param tasks in order of start
     */
    static Rests of(List<Task> tasks, PrintPlan plan, boolean tender) {
      Map<Integer, Moment> begun = new HashMap<>();
      tasks.stream().filter(Task::worked).forEach(t -> begun.putIfAbsent(t.step(), t.start()));
      NavigableMap<Moment, Task> waited = new TreeMap<>();
      for (Task task : tasks) {
        if (task.waits()) {
          Task last = waited.isEmpty() ? task : waited.lastEntry().getValue();
          waited.put(task.start(), task.end().compareTo(last.end()) > 0 ? task : last);
        }
      }
      return new Rests(plan, tender, waited, begun);
    }

    Optional<DayEnd.Rest> longest(Moment closes, List<Task> late) {
      Moment at = closes;
      Moment from = closes;
      Task next = null;
      for (Task task : late) {
        boolean more =
            next == null || task.start().since(at).compareTo(next.start().since(from)) > 0;
        if (task.start().compareTo(at) > 0 && more) {
          from = at;
          next = task;
        }
        at = at.later(task.end());
      }
      if (next == null) {
        return Optional.empty();
      }
      Moment until = next.start();
      boolean finishing =
          late.stream()
              .filter(task -> task.start().compareTo(until) >= 0)
              .noneMatch(task -> task.kind() == Task.Kind.PRINT || task.kind() == Task.Kind.MIX);
      return Optional.of(between(from, next, finishing));
    }

    /** A bath and steam work on any cloth. */
    private boolean works(Task task) {
      return plan.step(task.step())
          .filter(Step.Fix.class::isInstance)
          .map(Step.Fix.class::cast)
          .filter(fix -> tender || fix.how() != DyeFixing.BATCH)
          .isPresent();
    }

    private DayEnd.Rest between(Moment from, Task next, boolean finishing) {
      Optional<Task> lies =
          Optional.ofNullable(waited.lowerEntry(next.start()))
              .map(Map.Entry::getValue)
              .filter(task -> task.end().compareTo(from) > 0);
      int morning = TableDay.of(next.start(), plan.hours()) + 1;
      return new DayEnd.Rest(
          from,
          next.start(),
          lies.map(Task::doing),
          next.step(),
          work(next, plan),
          begun.get(next.step()).compareTo(next.start()) >= 0,
          finishing,
          lies.filter(this::works).isPresent(),
          opens(morning, plan));
    }
  }

  /** The step that a task belongs to; what is done where it belongs to none. */
  private static Doing work(Task task, PrintPlan plan) {
    return plan.step(task.step()).<Doing>map(Doing.OfStep::new).orElseGet(task::doing);
  }

  private static Moment opens(int day, PrintPlan plan) {
    return Moment.opens(day, plan.hours());
  }

  private static Moment closes(int day, PrintPlan plan) {
    return Moment.closes(day, plan.hours());
  }
}
