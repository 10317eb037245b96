package strikeoff.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import strikeoff.plan.PrintPlan;
import strikeoff.report.page.Stage;
import strikeoff.timeline.Moment;
import strikeoff.timeline.Timeline;

/** The states of the cloth to step through: one after each block of work. */
final class Stages {

  private Stages() {}

  static List<Stage> of(PrintPlan plan, Timeline run) {
    List<Stage> stages = new ArrayList<>();
    for (Work work : Work.of(run)) {
      stages.add(
          new Stage(
              minute(work.end()),
              work.start().text() + "–" + endText(work),
              WorkWords.title(plan, work)));
    }
    return stages;
  }

  private static String endText(Work work) {
    return work.start().day() == work.end().day() ? work.end().clock() : work.end().text();
  }

  private static String minute(Moment moment) {
    return String.format(Locale.ROOT, "%.2f", moment.seconds() / 60.0);
  }
}
