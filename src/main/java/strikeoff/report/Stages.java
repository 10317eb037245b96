package strikeoff.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import strikeoff.report.page.Stage;
import strikeoff.timeline.Moment;
import strikeoff.timeline.Task;
import strikeoff.timeline.Timeline;

/** The states of the cloth to step through: one after each colour of a set, and each other work. */
final class Stages {

  private Stages() {}

  static List<Stage> of(Timeline run) {
    List<Stage> stages = new ArrayList<>();
    for (Work work : Work.of(run)) {
      if (work.kind() != Task.Kind.WAIT && work.kind() != Task.Kind.MOVE) {
        stages.add(
            new Stage(
                minute(work.end()),
                work.start().text() + "–" + WorkWords.clock(work.end(), work.start().day()),
                WorkWords.title(work)));
      }
    }
    return stages;
  }

  private static String minute(Moment moment) {
    return String.format(Locale.ROOT, "%.2f", moment.seconds() / 60.0);
  }
}
