package strikeoff.report;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import strikeoff.day.Moment;
import strikeoff.day.Task;
import strikeoff.day.facts.Timeline;
import strikeoff.report.page.Stage;
import strikeoff.units.Measures;
import strikeoff.units.Numbers;

/** The states of the cloth to step through: one after each colour of a set, and each other work. */
final class Stages {

  /** What changes the look of the cloth or the place where it lies. */
  private static final Set<Task.Kind> SHOWN =
      EnumSet.of(
          Task.Kind.LOAD,
          Task.Kind.PRINT,
          Task.Kind.MOVE,
          Task.Kind.SEW,
          Task.Kind.FIX,
          Task.Kind.RINSE,
          Task.Kind.WASH,
          Task.Kind.HEAT_SET);

  private Stages() {}

  static List<Stage> of(Timeline run, Measures units) {
    List<Stage> stages = new ArrayList<>();
    for (WorkBlock work : WorkBlock.of(run)) {
      if (SHOWN.contains(work.kind())) {
        stages.add(
            new Stage(
                minute(work.start()),
                minute(work.end()),
                work.start().text() + "–" + WorkWords.clock(work.end(), work.start().day()),
                step(work) + WorkWords.title(work, units)));
      }
    }
    return stages;
  }

  /** As findings count; the cloth is laid before the first step. */
  private static String step(WorkBlock work) {
    int step = work.first().step();
    return step == 0 ? "" : "step " + step + ": ";
  }

  private static String minute(Moment moment) {
    return Numbers.fixed(moment.seconds() / 60.0, 2);
  }
}
