package strikeoff.day.facts;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import strikeoff.day.DayRun;
import strikeoff.day.Impression;
import strikeoff.day.Moment;
import strikeoff.day.Task;
import strikeoff.day.WashStep;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.evidence.Tie;
import strikeoff.plan.Begins;
import strikeoff.plan.Medium;
import strikeoff.plan.PrintOrder;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.PrintStep;
import strikeoff.policy.Limit;
import strikeoff.policy.Policy;
import strikeoff.units.Span;

/**
 * Screens that stand with paste in the mesh until they print again, or until they are washed out;
 * told once for each step and medium, by the longest stand.
 *
 * @param step the step in which they are used again, or washed
 * @param medium what stands in them
 * @param screens their names, in the order of use
 * @param longest the longest stand
 * @param most how long its paste may stand in the mesh
 * @param screen the one that stands longest
 * @param from when its frame was lifted
 * @param until when it is laid again, or the washing begins
 * @param washing time to wash out and dry all of them, one person washing
 * @param washSteps what to write into the plan and where, so that they don't stand
 */
public record IdleScreen(
    int step,
    Medium medium,
    List<String> screens,
    Span longest,
    Limit most,
    String screen,
    Moment from,
    Moment until,
    Span washing,
    List<WashStep> washSteps,
    PlanPath path,
    List<Related> related)
    implements Evidence {

  public IdleScreen {
    screens = List.copyOf(screens);
    washSteps = List.copyOf(washSteps);
    related = List.copyOf(related);
  }

  /** True for paint, which dries in the mesh much sooner than dye paste. */
  public boolean paint() {
    return medium == Medium.PAINT;
  }

  static List<IdleScreen> all(DayRun day, PrintPlan plan, Policy policy) {
    Function<Medium, Limit> most = policy.drying()::inMesh;
    Map<Integer, Moment> printed = new LinkedHashMap<>();
    day.impressions().forEach(i -> printed.merge(i.step(), i.lifted(), Moment::later));
    Map<String, Impression> lastUse = new LinkedHashMap<>();
    Map<String, List<Stand>> stands = new LinkedHashMap<>();
    Moment inWater = null;
    for (Task task : day.run().tasks()) {
      Stand stand = null;
      if (task.kind() == Task.Kind.WASH_SCREEN) {
        // Who washes several lays them in water first: the later ones don't stand dry meanwhile.
        inWater = inWater == null ? task.start() : inWater;
        Impression before = lastUse.remove(task.screen().orElseThrow());
        if (before != null) {
          stand = Stand.of(before, printed, before.lifted().later(inWater), task);
        }
      } else if (task.kind() != Task.Kind.DRY_SCREEN && task.kind() != Task.Kind.QUEUE) {
        inWater = null;
      }
      if (task.impression().isPresent()) {
        Impression now = day.impressions().get(task.impression().getAsInt());
        Impression before = lastUse.put(now.footprint().screen().name(), now);
        if (before != null) {
          stand = Stand.of(before, printed, now.laid(), task);
        }
      }
      if (stand != null && stand.span().minutes() > most.apply(stand.medium()).amount()) {
        stands
            .computeIfAbsent(stand.step + " " + stand.medium(), k -> new ArrayList<>())
            .add(stand);
      }
    }
    List<IdleScreen> all = new ArrayList<>();
    stands.values().forEach(s -> all.add(tell(s, plan, most)));
    return all;
  }

  private static IdleScreen tell(List<Stand> stands, PrintPlan plan, Function<Medium, Limit> most) {
    Stand longest = stands.get(0);
    Set<String> screens = new LinkedHashSet<>();
    for (Stand stand : stands) {
      screens.add(stand.screen());
      longest = stand.span().compareTo(longest.span()) > 0 ? stand : longest;
    }
    double washing =
        screens.size() * plan.handling().washScreen().minutes()
            + plan.handling().dryScreen().minutes();
    return new IdleScreen(
        longest.step,
        longest.medium(),
        List.copyOf(screens),
        longest.span(),
        most.apply(longest.medium()),
        longest.screen(),
        longest.before.lifted(),
        longest.until,
        new Span(washing),
        washSteps(stands, plan, most),
        longest.path,
        List.of(new Related(Tie.LAST_USED, longest.before.path())));
  }

  private static List<WashStep> washSteps(
      List<Stand> stands, PrintPlan plan, Function<Medium, Limit> most) {
    Map<Integer, Map<WashStep.When, Set<String>>> afterStep = new LinkedHashMap<>();
    for (Stand stand : stands) {
      afterStep
          .computeIfAbsent(stand.before.step(), s -> new LinkedHashMap<>())
          .computeIfAbsent(
              stand.when(most.apply(stand.medium()).amount()), w -> new LinkedHashSet<>())
          .add(stand.screen());
    }
    List<WashStep> steps = new ArrayList<>();
    afterStep.forEach(
        (step, byTime) ->
            byTime.forEach(
                (when, screens) ->
                    steps.add(
                        new WashStep(
                            List.copyOf(screens),
                            when == WashStep.When.BETWEEN_COLOURS
                                ? Optional.empty()
                                : washer(step, plan),
                            step,
                            when,
                            when == WashStep.When.BETWEEN_COLOURS
                                ? plan.print(step).map(p -> changes(p, plan)).orElse(List.of())
                                : List.of()))));
    return steps;
  }

  /** Who washes up after a step, if it isn't whom a step of washing takes anyway. */
  private static Optional<String> washer(int number, PrintPlan plan) {
    String first = plan.crew().names().get(0);
    return plan.print(number)
        .flatMap(print -> print.washes().or(print::by))
        .filter(who -> !who.equals(first));
  }

  /**
   * What else a step needs for its screens to be washed between colours: to be printed by one
   * person, colour by colour, who washes them.
   */
  private static List<WashStep.Change> changes(PrintStep print, PrintPlan plan) {
    List<WashStep.Change> changes = new ArrayList<>();
    String printer = print.by().orElse(plan.crew().names().get(0));
    if (!print.also().isEmpty()) {
      changes.add(new WashStep.Change(WashStep.What.PRINTED_BY, Optional.of(printer)));
    }
    if (print.begins() == Begins.WHEN_FREE) {
      changes.add(new WashStep.Change(WashStep.What.NO_BEGINS, Optional.empty()));
    }
    if (print.order() == PrintOrder.BY_STATION) {
      changes.add(new WashStep.Change(WashStep.What.ORDER_BY_COLOUR, Optional.empty()));
    }
    if (print.washes().isPresent() && !print.washes().get().equals(printer)) {
      changes.add(new WashStep.Change(WashStep.What.WASHED_BY, Optional.of(printer)));
    }
    return changes;
  }

  /**
   * A screen between two uses, or between the last one and the sink.
   *
   * @param printed when the last print of the step was lifted that left it
   * @param alike whether it is printed with again next, no other screen between
   * @param washed whether the stand ends in the sink
   */
  private record Stand(
      Impression before,
      Moment printed,
      Moment until,
      int step,
      PlanPath path,
      boolean alike,
      boolean washed) {

    static Stand of(Impression before, Map<Integer, Moment> printed, Moment until, Task ends) {
      return new Stand(
          before,
          printed.get(before.step()),
          until,
          ends.step(),
          ends.path(),
          ends.impression().isPresent() && ends.impression().getAsInt() == before.id() + 1,
          ends.kind() == Task.Kind.WASH_SCREEN);
    }

    /**
     * When to wash it: after its step if it stands too long from there on only, else within it.
     *
     * @param most minutes that it may stand
     */
    WashStep.When when(double most) {
      boolean sameStep = step == before.step();
      boolean tooLongWithin = printed.since(before.lifted()).minutes() > most;
      if (sameStep ? alike : !tooLongWithin) {
        return sameStep ? WashStep.When.WITHIN_STEP : WashStep.When.AFTER_STEP;
      }
      return WashStep.When.BETWEEN_COLOURS;
    }

    Span span() {
      return until.since(before.lifted());
    }

    String screen() {
      return before.footprint().screen().name();
    }

    Medium medium() {
      return before.footprint().paste().medium();
    }
  }
}
