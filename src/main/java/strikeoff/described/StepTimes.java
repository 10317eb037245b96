package strikeoff.described;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import strikeoff.day.Moment;
import strikeoff.day.Task;
import strikeoff.day.facts.Timeline;
import strikeoff.plan.Step;

/** When the steps of a run begin and end, by the tasks that they are made of. */
final class StepTimes {

  private final Map<Integer, Moment> begins = new HashMap<>();
  private final Map<Integer, Moment> ends = new HashMap<>();

  static StepTimes of(List<Step> run, Timeline timeline) {
    StepTimes times = new StepTimes();
    for (Task task : timeline.tasks()) {
      times.begins.merge(task.step(), task.start(), (a, b) -> a.compareTo(b) < 0 ? a : b);
      times.ends.merge(task.step(), task.end(), Moment::later);
    }
    Moment last = timeline.start();
    for (Step step : run) {
      times.begins.putIfAbsent(step.number(), last);
      times.ends.putIfAbsent(step.number(), last);
      last = times.ends(step);
    }
    return times;
  }

  Moment begins(Step step) {
    return begins.get(step.number());
  }

  Moment ends(Step step) {
    return ends.get(step.number());
  }
}
