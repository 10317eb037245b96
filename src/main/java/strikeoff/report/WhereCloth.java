package strikeoff.report;

import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import strikeoff.check.Checked;
import strikeoff.day.ClothLies;
import strikeoff.day.Doing;
import strikeoff.day.Impression;
import strikeoff.day.Moment;
import strikeoff.day.Task;
import strikeoff.day.facts.Timeline;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Seam;
import strikeoff.plan.Step;
import strikeoff.speech.DaySpeech;
import strikeoff.speech.SheetSpeech;
import strikeoff.speech.StepSpeech;
import strikeoff.units.Length;

/** Says where the cloth is, for whoever comes to the table with a sheet in hand. */
final class WhereCloth {

  private static final Set<Task.Kind> LAYS = EnumSet.of(Task.Kind.LOAD, Task.Kind.MOVE);

  private static final Set<Task.Kind> TAKES_UP =
      EnumSet.of(Task.Kind.SEW, Task.Kind.FIX, Task.Kind.RINSE, Task.Kind.WASH, Task.Kind.HEAT_SET);

  private final PrintPlan plan;
  private final Timeline run;
  private final List<ClothLies> places;

  WhereCloth(Checked.Judged judged) {
    this.plan = judged.plan();
    this.run = judged.facts().timeline();
    this.places = run.clothLies();
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
                    "The cloth"
                        + SheetSpeech.open(loose(moment))
                        + " has been on the table since "
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
    return places.stream().filter(lies -> lies.work().compareTo(work) == 0).findFirst();
  }

  /** Where it lies under a print. */
  ClothLies under(Impression print) {
    return places.stream()
        .filter(lies -> lies.from().compareTo(print.laid()) <= 0)
        .reduce((one, later) -> later)
        .orElseThrow();
  }

  /**
   * Marks by which it is moved before it is laid anew, from its start, each once; where the table
   * comes to begin at its start or before that, none is needed.
   *
   * @param laid when it is laid
   */
  List<Length> marks(Moment laid) {
    Moment next =
        run.tasks().stream()
            .filter(t -> t.kind() == Task.Kind.LOAD && t.start().compareTo(laid) > 0)
            .map(Task::start)
            .min(Moment::compareTo)
            .orElse(run.finish());
    return run.tasks().stream()
        .filter(t -> t.start().compareTo(laid) >= 0 && t.start().compareTo(next) <= 0)
        .filter(t -> t.doing() instanceof Doing.MoveCloth)
        .map(t -> ((Doing.MoveCloth) t.doing()).to())
        .filter(to -> to.above(0))
        .sorted()
        .distinct()
        .toList();
  }

  /** Where loose boards go for what is printed then; nothing of a table without any. */
  List<String> boards(ClothLies lies) {
    return plan.table().stations().stream()
        .filter(boards -> !boards.fixed())
        .map(boards -> SheetSpeech.boards(boards, lies, plan.measures()))
        .toList();
  }

  /** Loose widths that a stretch of an open cloth is put together of, as it lies. */
  List<String> widths(ClothLies lies, boolean laid) {
    return loose(lies.work()).stream()
        .filter(seam -> !lies.onTable(seam.at()).below(0))
        .filter(seam -> lies.onTable(seam.at()).below(plan.table().length().mm()))
        .map(
            seam ->
                laid
                    ? SheetSpeech.loose(seam, lies, plan.measures())
                    : SheetSpeech.meets(seam, lies, plan.measures()))
        .toList();
  }

  /** Seams of an open cloth between its start and its end that nobody has sewn by then. */
  List<Seam> loose(Moment moment) {
    Length end = plan.cloth().length();
    return plan.seams().values().stream()
        .filter(seam -> !plan.cloth().closed() && !seam.sewnBefore())
        .filter(seam -> seam.at().above(0) && seam.at().below(end.mm()))
        .filter(seam -> !isSewn(seam, moment))
        .toList();
  }

  private boolean isSewn(Seam seam, Moment moment) {
    return run.tasks().stream()
        .filter(t -> t.kind() == Task.Kind.SEW && t.end().compareTo(moment) <= 0)
        .anyMatch(
            t ->
                plan.step(t.step())
                    .filter(s -> s instanceof Step.Sew sew && sew.seam().equals(seam.name()))
                    .isPresent());
  }

  /** How to bring a mark to the table's start. */
  String mark(Length mark, Moment moment) {
    List<Seam> past =
        loose(moment).stream()
            .filter(seam -> mark.above(seam.at().mm()))
            .sorted(Comparator.comparing(Seam::at).reversed())
            .toList();
    return SheetSpeech.mark(mark, past, made(mark, moment), plan.measures());
  }

  /** When it was laid and got a mark. */
  private Optional<Moment> made(Length mark, Moment moment) {
    return run.tasks().stream()
        .filter(task -> task.kind() == Task.Kind.LOAD && task.start().compareTo(moment) <= 0)
        .map(Task::start)
        .max(Moment::compareTo)
        .filter(laid -> SheetSpeech.isTold(mark, marks(laid)));
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
