package strikeoff.day.facts;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import strikeoff.day.Moment;
import strikeoff.day.Task;
import strikeoff.plan.Paste;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Step;
import strikeoff.units.Span;

/** When each paste is mixed. */
public final class Mixings {

  private final Moment start;
  private final Map<String, List<Batch>> byPaste = new HashMap<>();

  public Mixings(PrintPlan plan, Timeline timeline) {
    this(plan, timeline.tasks(), timeline.start());
  }

  /**
   * @param all what is done in the run, in any order within a step but that of its pastes
   * @param start when the run starts
   */
  Mixings(PrintPlan plan, List<Task> all, Moment start) {
    this.start = start;
    Map<Integer, List<Task>> tasks = new HashMap<>();
    for (Task task : all) {
      if (task.kind() == Task.Kind.MIX) {
        tasks.computeIfAbsent(task.step(), step -> new ArrayList<>()).add(task);
      }
    }
    for (Step step : plan.run()) {
      if (step instanceof Step.Mix mix) {
        List<Task> own = tasks.getOrDefault(mix.number(), List.of());
        for (String paste : new LinkedHashSet<>(mix.pastes())) {
          task(mix, paste, own)
              .ifPresent(task -> add(paste, new Batch(mix, task.start(), task.end())));
        }
      }
    }
  }

  private void add(String paste, Batch batch) {
    byPaste.computeIfAbsent(paste, name -> new ArrayList<>()).add(batch);
  }

  /** One mixing of one paste. */
  public record Batch(Step.Mix step, Moment begins, Moment ready) {}

  /** The mix steps of a paste, in order. */
  public List<Batch> of(String paste) {
    return Collections.unmodifiableList(byPaste.getOrDefault(paste, List.of()));
  }

  /** How many batches the run has: mix steps, or one that was mixed before. */
  public int batches(Paste paste) {
    int mixed = of(paste.name()).size();
    return mixed == 0 && paste.mixedBefore().isPresent() ? 1 : mixed;
  }

  /** One task for each paste, or one for the whole step: then all are ready at its end. */
  private static Optional<Task> task(Step.Mix mix, String paste, List<Task> tasks) {
    if (tasks.size() == mix.pastes().size()) {
      return Optional.of(tasks.get(mix.pastes().indexOf(paste)));
    }
    return tasks.stream().max(Comparator.comparing(Task::end));
  }

  /** When the paste used at a moment became ready: its latest mixing before, or before day 1. */
  public Optional<Moment> readyBefore(Paste paste, Moment use) {
    return of(paste.name()).stream()
        .map(Batch::ready)
        .filter(ready -> ready.compareTo(use) <= 0)
        .max(Moment::compareTo)
        .or(() -> paste.mixedBefore().map(this::beforeDayOne));
  }

  private Moment beforeDayOne(Span before) {
    return new Moment(start.seconds() - Math.round(before.seconds()));
  }
}
