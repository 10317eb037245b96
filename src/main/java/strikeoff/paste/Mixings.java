package strikeoff.paste;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import strikeoff.plan.Paste;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Step;
import strikeoff.timeline.Moment;
import strikeoff.timeline.Task;
import strikeoff.timeline.Timeline;

/** When each paste is mixed. */
record Mixings(PrintPlan plan, Timeline timeline) {

  /** One mixing of one paste. */
  record Mixing(Step.Mix step, Moment ready) {}

  /** The mix steps of a paste, in order. */
  List<Mixing> of(String paste) {
    List<Mixing> mixings = new ArrayList<>();
    for (Step step : plan.run()) {
      if (step instanceof Step.Mix mix && mix.pastes().contains(paste)) {
        ready(mix, paste).ifPresent(at -> mixings.add(new Mixing(mix, at)));
      }
    }
    return mixings;
  }

  /** How many batches the run has: mix steps, or one that was mixed before. */
  int batches(Paste paste) {
    int mixed = of(paste.name()).size();
    return mixed == 0 && paste.mixedBefore().isPresent() ? 1 : mixed;
  }

  /** One task for each paste, or one for the whole step: then all are ready at its end. */
  private Optional<Moment> ready(Step.Mix mix, String paste) {
    List<Task> tasks =
        timeline.tasks().stream()
            .filter(t -> t.step() == mix.number() && t.kind() == Task.Kind.MIX)
            .toList();
    if (tasks.size() == mix.pastes().size()) {
      return Optional.of(tasks.get(mix.pastes().indexOf(paste)).end());
    }
    return tasks.stream().map(Task::end).max(Moment::compareTo);
  }

  /** When the paste used at a moment became ready: its latest mixing before, or before day 1. */
  Optional<Moment> readyBefore(Paste paste, Moment use) {
    return of(paste.name()).stream()
        .map(Mixing::ready)
        .filter(ready -> ready.compareTo(use) <= 0)
        .max(Moment::compareTo)
        .or(() -> paste.mixedBefore().map(this::beforeDayOne));
  }

  private Moment beforeDayOne(strikeoff.units.Span before) {
    return new Moment(timeline.start().seconds() - Math.round(before.seconds()));
  }
}
