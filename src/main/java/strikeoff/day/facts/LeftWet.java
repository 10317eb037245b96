package strikeoff.day.facts;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import strikeoff.day.Breaks;
import strikeoff.day.Moment;
import strikeoff.day.Task;
import strikeoff.document.Edit;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.evidence.Tie;
import strikeoff.plan.DyeFixing;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Step;
import strikeoff.policy.Limit;
import strikeoff.units.Span;

/**
 * Wet cloth that still holds loose dye, between two of its baths: out of the soak and not rinsed,
 * or rinsed and not washed. What steam fixed comes out dry enough to hang.
 *
 * @param step number of the step out of which it comes
 * @param rinsed true if it only waits for the wash
 * @param over when that step is done
 * @param until when the next bath begins
 * @param next number of the step that is
 * @param lies how long it lies there; zero if it hangs to dry meanwhile
 * @param night number of the step that is the night over which it lies; empty without one
 * @param first number of the step with which those baths begin that follow each other
 * @param needs how long all of them take, without what lies between
 * @param dry a wait before the first of them with which no break comes between the two; zero if
 *     none does
 * @param most how long it may lie before it is told
 */
public record LeftWet(
    int step,
    boolean rinsed,
    Moment over,
    Moment until,
    int next,
    Span lies,
    Optional<Integer> night,
    int first,
    Span needs,
    Span dry,
    Limit most,
    PlanPath path,
    List<Related> related)
    implements Evidence {

  public LeftWet {
    related = List.copyOf(related);
  }

  /** True if it lies so from one day to another. */
  public boolean overnight() {
    return night.isPresent();
  }

  /** True if it lies so over a break, for longer than is told by nobody. */
  boolean overBreak() {
    return dry.minutes() > 0 && lies.minutes() > most.amount();
  }

  /**
   * One for each two baths of which the second follows the first.
   *
   * @param tasks in order of start
   */
  static List<LeftWet> all(List<Task> tasks, PrintPlan plan, Limit most) {
    List<LeftWet> all = new ArrayList<>();
    boolean loose = false;
    Task before = null;
    List<Task> cloth = tasks.stream().filter(task -> isTreated(task, plan)).toList();
    for (int i = 0; i < cloth.size(); i++) {
      Task task = cloth.get(i);
      boolean cleans = task.kind() == Task.Kind.RINSE || task.kind() == Task.Kind.WASH;
      if (loose && cleans && before != null) {
        all.add(of(before, task, cloth, plan, most));
      }
      loose = task.kind() == Task.Kind.FIX || loose && task.kind() != Task.Kind.WASH;
      before = wets(task, plan) && task.kind() != Task.Kind.WASH ? task : null;
    }
    return all;
  }

  /** The step before which a day may end, so that no cloth lies wet overnight, instead of one. */
  static int dryBefore(int step, List<Task> tasks, PrintPlan plan) {
    List<Task> cloth = tasks.stream().filter(task -> isTreated(task, plan)).toList();
    for (int i = 1; i < cloth.size(); i++) {
      if (cloth.get(i).step() == step) {
        return head(cloth, i, plan).step();
      }
    }
    return step;
  }

  /** A batch lies by itself. */
  private static boolean isTreated(Task task, PrintPlan plan) {
    return task.onCloth() || task.kind() == Task.Kind.FIX && plan.step(task.step()).isPresent();
  }

  private static boolean wets(Task task, PrintPlan plan) {
    return task.kind() == Task.Kind.RINSE
        || task.kind() == Task.Kind.WASH
        || task.kind() == Task.Kind.FIX
            && plan.step(task.step())
                .filter(step -> step instanceof Step.Fix fix && fix.how() == DyeFixing.SOAK)
                .isPresent();
  }

  /** The first of the baths that lead up to one on the same day, with no other step between. */
  private static Task head(List<Task> cloth, int at, PrintPlan plan) {
    int first = at;
    while (first > 0
        && wets(cloth.get(first), plan)
        && wets(cloth.get(first - 1), plan)
        && cloth.get(first - 1).kind() != Task.Kind.WASH
        && cloth.get(first - 1).end().day() == cloth.get(first).start().day()) {
      first--;
    }
    return cloth.get(first);
  }

  private static LeftWet of(Task from, Task to, List<Task> cloth, PrintPlan plan, Limit most) {
    Task first = head(cloth, cloth.indexOf(from), plan);
    int last = cloth.indexOf(to);
    while (cloth.get(last).kind() != Task.Kind.WASH
        && last + 1 < cloth.size()
        && (cloth.get(last + 1).kind() == Task.Kind.RINSE
            || cloth.get(last + 1).kind() == Task.Kind.WASH)) {
      last++;
    }
    double needs = 0;
    for (Task bath : cloth.subList(cloth.indexOf(first), last + 1)) {
      needs += bath.end().since(bath.start()).seconds();
    }
    Optional<Integer> night = Optional.empty();
    boolean hangs = false;
    for (int number = from.step() + 1; number < to.step(); number++) {
      Step between = plan.step(number).orElseThrow();
      night = between instanceof Step.EndOfDay ? Optional.of(number) : night;
      hangs |= between instanceof Step.Dry;
    }
    boolean rests =
        night.isEmpty()
            && new Breaks(plan.hours()).within(from.end().seconds(), to.start().seconds()) > 0;
    return new LeftWet(
        from.step(),
        from.kind() == Task.Kind.RINSE,
        from.end(),
        to.start(),
        to.step(),
        hangs ? new Span(0) : to.start().since(from.end()),
        night,
        first.step(),
        Span.ofSeconds((long) needs),
        new Span(rests ? Math.ceil(to.start().since(from.start()).minutes()) : 0),
        most,
        from.path(),
        List.of(new Related(Tie.HOURS, plan.hours().path())));
  }

  /** The night before the first bath, or a wait there, as edits of the plan. */
  public List<List<Edit>> edits() {
    PlanPath before = Step.path(first);
    if (night.isPresent()) {
      return List.of(List.of(new Edit.Move(Step.path(night.get()), before)));
    }
    return dry.minutes() > 0
        ? List.of(List.of(new Edit.Insert(before, "dry: " + dry.text())))
        : List.of();
  }
}
