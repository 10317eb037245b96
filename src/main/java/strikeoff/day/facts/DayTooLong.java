package strikeoff.day.facts;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import strikeoff.day.Doing;
import strikeoff.day.Moment;
import strikeoff.day.Task;
import strikeoff.document.Edit;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Step;
import strikeoff.units.Measures;
import strikeoff.units.Span;

/**
 * A day on which people work after the room closes, or before it opens next.
 *
 * @param day from 1; work before the opening belongs to the day before
 * @param opens when it opened
 * @param closes when the room closes
 * @param ends when the last work ends
 * @param over by how much
 * @param step the step whose work is the first that ends after closing time
 * @param title that step in a few words
 * @param remedy what makes the day shorter
 * @param moved the steps that it is about, before each of which the day may end
 * @param atRest the longest time after closing in which nobody works though work is still to come;
 *     empty if people work without a break until the end
 */
public record DayTooLong(
    int day,
    Moment opens,
    Moment closes,
    Moment ends,
    Span over,
    int step,
    String title,
    Remedy remedy,
    List<Integer> moved,
    Optional<Rest> atRest,
    PlanPath path,
    List<Related> related)
    implements Evidence {

  /** What makes a day shorter. */
  public enum Remedy {
    /** The day ends before the step, or before each of two, which then fit into others. */
    NEXT_DAY,
    /** A print step is parted. */
    SPLIT,
    /** No step can be moved or parted. */
    SHORTEN
  }

  /**
   * Says whether a day that ends before each of some steps, by their numbers, ends in time, what is
   * late now is in time on any day, and fewer days are too long than now.
   */
  interface Trial {
    boolean helps(int day, List<Integer> before, List<Integer> late, int daysTooLong);
  }

  /**
   * Nobody works.
   *
   * @param from when the last work before it ends, or the room closes
   * @param until when work goes on
   * @param what what the cloth lies in meanwhile
   * @param step the step that goes on then
   * @param begins true if that step begins then
   * @param finishing true if nothing is mixed or printed after it that day
   * @param works true if what the cloth lies in works on it further: a bath, steam, or a batch of
   *     wool or silk
   * @param opens when the room opens next after that
   */
  public record Rest(
      Moment from,
      Moment until,
      Optional<Doing> what,
      int step,
      String title,
      boolean begins,
      boolean finishing,
      boolean works,
      Moment opens) {}

  public DayTooLong {
    moved = List.copyOf(moved);
    related = List.copyOf(related);
  }

  /** The clock at closing time; midnight as the end of its day. */
  public String closing() {
    return closes.day() > day ? "24:00" : closes.clock();
  }

  /** How long people stay after closing time until hands rest longest. */
  public Span stays() {
    return atRest.map(rest -> rest.from().since(closes)).orElse(over);
  }

  /** How long hands rest then; zero if people work without a break until the end. */
  public Span rests() {
    return atRest.map(rest -> rest.until().since(rest.from())).orElse(new Span(0));
  }

  /** True if what comes after the rest can as well begin in the morning: rinsing, or washing. */
  public boolean parts() {
    return atRest.filter(rest -> rest.begins() && rest.finishing()).isPresent();
  }

  /** True if it can, and nothing works on the cloth until then. */
  public boolean harmless() {
    return parts() && !atRest.get().works();
  }

  /**
   * How long people are needed after closing time: until hands rest longest, or until the cloth is
   * out of what works on it.
   */
  public Span needed() {
    return atRest
        .filter(Rest::works)
        .map(rest -> rest.until().since(closes))
        .orElseGet(this::stays);
  }

  /** What the cloth lies in works on it, as a sentence with a blank before it; or nothing. */
  public String working() {
    return atRest
        .filter(Rest::works)
        .map(rest -> " Left lying so until the morning, it would come to harm.")
        .orElse("");
  }

  /** True if that step, by its number, is at work too late. */
  boolean is(int number) {
    return step == number || atRest.filter(rest -> rest.step() == number).isPresent();
  }

  /**
   * @param tasks in order of start
   * @param tender true for cloth that a batch harms in the end
   */
  static List<DayTooLong> all(List<Task> tasks, PrintPlan plan, boolean tender, Trial trial) {
    Map<Integer, List<Task>> late = new TreeMap<>();
    for (Task task : tasks) {
      int session = Session.of(task.start(), plan.hours());
      if (task.worked() && task.end().compareTo(closes(session, plan)) > 0) {
        late.computeIfAbsent(session, s -> new ArrayList<>()).add(task);
      }
    }
    // Seconds are told by nobody: who ends in the minute of closing ends in time.
    late.entrySet()
        .removeIf(
            day ->
                day.getValue().stream()
                    .noneMatch(t -> t.end().isMinutesAfter(closes(day.getKey(), plan))));
    List<DayTooLong> all = new ArrayList<>();
    Rests rests = late.isEmpty() ? null : Rests.of(tasks, plan, tender);
    late.forEach((session, work) -> all.add(of(session, work, late.size(), rests, plan, trial)));
    return all;
  }

  private static DayTooLong of(
      int session, List<Task> late, int days, Rests rests, PrintPlan plan, Trial trial) {
    Moment closes = closes(session, plan);
    Moment ends = closes;
    for (Task task : late) {
      ends = ends.later(task.end());
    }
    Task first = late.get(0);
    Optional<Rest> rest = rests.longest(closes, late);
    // To go on in the morning is enough if nobody worked after closing time until then.
    int goesOn = rest.map(Rest::step).orElse(first.step());
    Optional<List<Integer>> helps =
        Stream.of(List.of(goesOn), List.of(first.step()), List.of(first.step(), goesOn))
            .filter(steps -> steps.stream().distinct().count() == steps.size())
            .filter(steps -> trial.helps(session, steps, List.of(first.step(), goesOn), days))
            .findFirst();
    List<Integer> moved = helps.orElse(List.of(first.step()));
    return new DayTooLong(
        session,
        opens(session, plan),
        closes,
        ends,
        ends.since(closes),
        first.step(),
        title(first, plan),
        helps.isPresent()
            ? Remedy.NEXT_DAY
            : plan.print(first.step()).isPresent() ? Remedy.SPLIT : Remedy.SHORTEN,
        moved,
        rest,
        first.path(),
        List.of(new Related("the hours", plan.hours().path())));
  }

  /**
   * When hands rest, worked out from all tasks once for all days.
   *
   * @param waited of what is waited for up to a start, that start included, what ends last
   * @param begun when the work of each step begins
   */
  private record Rests(
      PrintPlan plan,
      boolean tender,
      NavigableMap<Moment, Task> waited,
      Map<Integer, Moment> begun) {

    /**
     * @param tasks in order of start
     */
    static Rests of(List<Task> tasks, PrintPlan plan, boolean tender) {
      Map<Integer, Moment> begun = new HashMap<>();
      tasks.stream().filter(Task::worked).forEach(t -> begun.putIfAbsent(t.step(), t.start()));
      NavigableMap<Moment, Task> waited = new TreeMap<>();
      for (Task task : tasks) {
        if (task.waits()) {
          Task last = waited.isEmpty() ? task : waited.lastEntry().getValue();
          waited.put(task.start(), task.end().compareTo(last.end()) > 0 ? task : last);
        }
      }
      return new Rests(plan, tender, waited, begun);
    }

    Optional<Rest> longest(Moment closes, List<Task> late) {
      Moment at = closes;
      Moment from = closes;
      Task next = null;
      for (Task task : late) {
        boolean more =
            next == null || task.start().since(at).compareTo(next.start().since(from)) > 0;
        if (task.start().compareTo(at) > 0 && more) {
          from = at;
          next = task;
        }
        at = at.later(task.end());
      }
      if (next == null) {
        return Optional.empty();
      }
      Moment until = next.start();
      boolean finishing =
          late.stream()
              .filter(task -> task.start().compareTo(until) >= 0)
              .noneMatch(task -> task.kind() == Task.Kind.PRINT || task.kind() == Task.Kind.MIX);
      return Optional.of(between(from, next, finishing));
    }

    /** A bath and steam work on any cloth. */
    private boolean works(Task task) {
      return plan.step(task.step())
          .filter(Step.Fix.class::isInstance)
          .map(Step.Fix.class::cast)
          .filter(fix -> tender || fix.how() != Step.Fixing.BATCH)
          .isPresent();
    }

    private Rest between(Moment from, Task next, boolean finishing) {
      Optional<Task> lies =
          Optional.ofNullable(waited.lowerEntry(next.start()))
              .map(Map.Entry::getValue)
              .filter(task -> task.end().compareTo(from) > 0);
      int morning = Session.of(next.start(), plan.hours()) + 1;
      return new Rest(
          from,
          next.start(),
          lies.map(Task::doing),
          next.step(),
          title(next, plan),
          begun.get(next.step()).compareTo(next.start()) >= 0,
          finishing,
          lies.filter(this::works).isPresent(),
          opens(morning, plan));
    }
  }

  private static String title(Task task, PrintPlan plan) {
    return plan.step(task.step())
        .map(step -> step.title(plan.measures()))
        .orElseGet(() -> task.doing().text(plan.measures()));
  }

  /** What to change, as an instruction without a full stop. */
  public String mending() {
    String open = "open the room " + over.wholeMinutesUp().text() + " longer";
    String before =
        moved.stream().map(step -> "before step " + step).collect(Collectors.joining(" and one "));
    return switch (remedy) {
      case NEXT_DAY ->
          "Write `- end of day` "
              + before
              + atRest
                  .filter(rest -> moved.equals(List.of(rest.step())))
                  .map(rest -> ", which then begins " + rest.opens().when())
                  .orElse(", or " + open);
      case SPLIT ->
          "Split step "
              + moved.get(0)
              + " by `only:` or `colours:` into several steps with `- end of day` between them, let"
              + " others help with `by:`, or "
              + open;
      case SHORTEN -> "Leave some of the day's work to another run, or " + open;
    };
  }

  /** The day's end as edits of the plan: before the steps that it is about. */
  public List<List<Edit>> edits() {
    List<Edit> ends = new ArrayList<>();
    for (int number : moved) {
      ends.add(new Edit.Insert(new PlanPath("run").item(number - 1), "end of day"));
    }
    return List.of(ends);
  }

  /** What happens after closing time, for a sentence that ends there; empty without a rest. */
  public String goesOn(Measures units) {
    return atRest
        .map(
            rest ->
                (stays().minutes() > 0 ? "From " + rest.from().clock() : "After that")
                    + " nobody works"
                    + rest.what().map(what -> " (" + what.text(units) + ")").orElse("")
                    + " until step "
                    + rest.step()
                    + " ("
                    + rest.title()
                    + ")"
                    + (rest.begins() ? " begins " : " goes on ")
                    + rest.until().when())
        .orElse("");
  }

  private static Moment opens(int day, PrintPlan plan) {
    return Moment.of(day, plan.hours().of(day).opens());
  }

  private static Moment closes(int day, PrintPlan plan) {
    return Moment.of(day, plan.hours().of(day).closes());
  }
}
