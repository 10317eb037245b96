package strikeoff.report;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import strikeoff.check.Checked;
import strikeoff.day.ClothLies;
import strikeoff.day.Moment;
import strikeoff.day.Task;
import strikeoff.day.facts.Timeline;
import strikeoff.plan.PrintPlan;
import strikeoff.speech.DaySpeech;
import strikeoff.speech.StepSpeech;
import strikeoff.units.Length;

/** Says where the cloth is, for whoever comes to the table with a sheet in hand. */
final class WhereCloth {

  private static final Set<Task.Kind> LAYS = EnumSet.of(Task.Kind.LOAD, Task.Kind.MOVE);

  private static final Set<Task.Kind> TAKES_UP =
      EnumSet.of(Task.Kind.SEW, Task.Kind.FIX, Task.Kind.RINSE, Task.Kind.WASH, Task.Kind.HEAT_SET);

  private final PrintPlan plan;
  private final Timeline run;

  WhereCloth(Checked.Judged judged) {
    this.plan = judged.plan();
    this.run = judged.facts().timeline();
  }

  /** Where it lies at a moment, or since when it is off the table; empty if it was never laid. */
  String at(Moment moment) {
    Task last = null;
    boolean laid = false;
    for (Task task : run.tasks()) {
      if (task.start().compareTo(moment) < 0) {
        boolean lays = LAYS.contains(task.kind());
        laid |= lays;
        last = lays || TAKES_UP.contains(task.kind()) ? task : last;
      }
    }
    if (!laid) {
      return "";
    }
    return LAYS.contains(last.kind())
        ? laidBy(last.start())
            .map(
                lies ->
                    "The cloth has been on the table since "
                        + lies.from().text()
                        + ": "
                        + lies(lies)
                        + ".")
            .orElse("")
        : "The cloth has been off the table since "
            + last.start().text()
            + ", for "
            + step(last)
            + ".";
  }

  private String step(Task task) {
    return plan.step(task.step())
        .map(step -> "step " + task.step() + ", " + StepSpeech.title(step, plan.measures()))
        .orElseThrow();
  }

  /** Where it lies after the laying or moving that began then. */
  Optional<ClothLies> laidBy(Moment work) {
    return run.clothLies().stream().filter(lies -> lies.work().compareTo(work) == 0).findFirst();
  }

  /** Along the table, and across it where the cloth has room on both sides. */
  String lies(ClothLies lies) {
    Length near = plan.table().nearEdgeOf(plan.cloth());
    String across =
        near.above(0)
            ? ", its near edge " + near.text(plan.measures()) + " from the table's"
            : near.below(0)
                ? ", its near edge hanging "
                    + near.times(-1).text(plan.measures())
                    + " over the table's"
                : ", its near edge along the table's";
    return DaySpeech.text(lies, plan.measures()) + across;
  }
}
