package strikeoff.report;

import java.util.EnumSet;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import strikeoff.check.Checked;
import strikeoff.day.Impression;
import strikeoff.day.Moment;
import strikeoff.day.Reached;
import strikeoff.day.Task;
import strikeoff.day.facts.Timeline;
import strikeoff.plan.Medium;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Step;
import strikeoff.plan.Until.Dryness;

/** Finds where a run counts on films that dry overnight, which somebody feels in the morning. */
final class Mornings {

  private static final Set<Task.Kind> TAKES_UP =
      EnumSet.of(Task.Kind.MOVE, Task.Kind.SEW, Task.Kind.FIX, Task.Kind.HEAT_SET);

  /** After these no film dries any more as it was printed. */
  private static final Set<Task.Kind> ENDS =
      EnumSet.of(Task.Kind.FIX, Task.Kind.RINSE, Task.Kind.WASH, Task.Kind.HEAT_SET);

  private final PrintPlan plan;
  private final Timeline run;

  /** The first step of each day that counts on films which dried overnight. */
  private final Map<Integer, Morning> mornings = new HashMap<>();

  private record Morning(int step, Dryness needed) {}

  Mornings(Checked.Judged judged) {
    this.plan = judged.plan();
    this.run = judged.facts().timeline();
    for (Task task : run.tasks()) {
      if (TAKES_UP.contains(task.kind()) && !mornings.containsKey(task.start().day())) {
        plan.step(task.step())
            .flatMap(Step::needs)
            .filter(needed -> driedOvernight(task, needed))
            .ifPresent(
                needed -> mornings.put(task.start().day(), new Morning(task.step(), needed)));
      }
    }
  }

  /** True if films that it needs dry were not surely so when the room closed last. */
  private boolean driedOvernight(Task task, Dryness needed) {
    Optional<Moment> closed =
        run.tasks().stream()
            .filter(t -> t.kind() == Task.Kind.CLOSED && t.end().compareTo(task.start()) <= 0)
            .map(Task::start)
            .reduce(Moment::later);
    return closed.isPresent()
        && run.impressions().stream()
            .filter(i -> i.lifted().compareTo(closed.get()) <= 0)
            .filter(i -> concerns(task, i) && !endedBefore(task, i))
            .map(i -> i.film().in(needed))
            .anyMatch(film -> countsOnNight(film, closed.get()));
  }

  private static boolean countsOnNight(Reached film, Moment closed) {
    return film.slow().compareTo(closed) > 0
        && film.felt().filter(at -> at.day() > closed.day()).isEmpty();
  }

  /** Heat and baths ask for their own medium alone. */
  private static boolean concerns(Task task, Impression film) {
    Medium medium = film.footprint().paste().medium();
    return task.kind() == Task.Kind.FIX
        ? medium == Medium.DYE
        : task.kind() != Task.Kind.HEAT_SET || medium == Medium.PAINT;
  }

  private boolean endedBefore(Task task, Impression film) {
    return run.tasks().stream()
        .filter(t -> ENDS.contains(t.kind()) && t.start().compareTo(film.lifted()) >= 0)
        .anyMatch(t -> t.start().compareTo(task.start()) < 0 && concerns(t, film));
  }

  /** What to feel before a step of that day, as a question; empty if it counts on no night. */
  Optional<String> before(int step, int day) {
    return Optional.ofNullable(mornings.get(day))
        .filter(morning -> morning.step() == step)
        .map(
            morning ->
                "Feel: dry "
                    + (morning.needed() == Dryness.FIX_SAFE ? "through?" : "enough to lift?"));
  }
}
