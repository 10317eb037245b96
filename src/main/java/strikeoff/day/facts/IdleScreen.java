package strikeoff.day.facts;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import strikeoff.day.Moment;
import strikeoff.day.Printed;
import strikeoff.day.Simulation;
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
 * told once for each step and medium, by the longest stand. Who feels films waits for longer where
 * they dry slowly, and screens stand for as long: paint that stands too long then alone is told
 * too. It is let stand no longer on such a day, though damp air spares it as well: its films are
 * slow by what was laid down and what the cloth takes up as much as by the air, and a mesh takes up
 * nothing. A dye's film is slow by the air alone, which then dries its paste in a mesh as slowly.
 *
 * @param step the step in which they are used again, or washed
 * @param medium what stands in them
 * @param screens their names, in the order of use
 * @param slow true if they stand too long only where films dry slowly; the other figures are those
 *     of that day then
 * @param longest the longest stand
 * @param slowly how long a screen of them stands at the most where films dry slowly; no less than
 *     the longest
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
    boolean slow,
    Span longest,
    Span slowly,
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

  /**
   * @param ordinary the run on an ordinary day
   * @param slow the same run where films dry slowly
   */
  static List<IdleScreen> all(
      Simulation.Run ordinary, Simulation.Run slow, PrintPlan plan, Policy policy) {
    Function<Medium, Limit> most = policy.drying()::inMesh;
    Map<String, List<Stand>> stands = tooLong(ordinary, most);
    Map<String, List<Stand>> slowly = slow == ordinary ? stands : ofPaint(slow, most);
    List<IdleScreen> all = new ArrayList<>();
    stands.forEach(
        (key, each) -> {
          Span longest = longest(each).span();
          Span then = slowly.containsKey(key) ? longest(slowly.get(key)).span() : longest;
          all.add(tell(each, false, then.compareTo(longest) > 0 ? then : longest, plan, most));
        });
    slowly.forEach(
        (key, each) -> {
          if (!stands.containsKey(key)) {
            all.add(tell(each, true, longest(each).span(), plan, most));
          }
        });
    return all;
  }

  /** Those of an ordinary day. */
  static List<IdleScreen> all(Simulation.Run run, PrintPlan plan, Policy policy) {
    return all(run, run, plan, policy);
  }

  /**
   * How much too long paint stands where films dry slowly, over all steps.
   *
   * @return seconds
   */
  static double slowlyOver(Simulation.Run slow, Policy policy) {
    Function<Medium, Limit> most = policy.drying()::inMesh;
    return ofPaint(slow, most).values().stream()
        .mapToDouble(each -> longest(each).span().seconds())
        .map(seconds -> seconds - 60 * most.apply(Medium.PAINT).amount())
        .sum();
  }

  private static Map<String, List<Stand>> ofPaint(
      Simulation.Run slow, Function<Medium, Limit> most) {
    Map<String, List<Stand>> stands = tooLong(slow, most);
    stands.values().removeIf(each -> each.get(0).medium() != Medium.PAINT);
    return stands;
  }

  /** Stands that are too long, by step and medium. */
  private static Map<String, List<Stand>> tooLong(
      Simulation.Run run, Function<Medium, Limit> most) {
    Map<Integer, Moment> lifted = new LinkedHashMap<>();
    run.printed()
        .forEach(p -> lifted.merge(p.step().number(), new Moment(p.lifted()), Moment::later));
    Map<String, Printed> lastUse = new LinkedHashMap<>();
    Map<String, List<Stand>> stands = new LinkedHashMap<>();
    Moment inWater = null;
    for (Task task : run.tasks()) {
      Stand stand = null;
      if (task.kind() == Task.Kind.WASH_SCREEN) {
        // Who washes several lays them in water first: the later ones don't stand dry meanwhile.
        inWater = inWater == null ? task.start() : inWater;
        Printed before = lastUse.remove(task.screen().orElseThrow());
        if (before != null) {
          stand = Stand.of(before, lifted, new Moment(before.lifted()).later(inWater), task);
        }
      } else if (task.kind() != Task.Kind.DRY_SCREEN && task.kind() != Task.Kind.QUEUE) {
        inWater = null;
      }
      if (task.impression().isPresent()) {
        Printed now = run.printed().get(task.impression().getAsInt());
        Printed before = lastUse.put(now.footprint().screen().name(), now);
        if (before != null) {
          stand = Stand.of(before, lifted, new Moment(now.laid()), task);
        }
      }
      if (stand != null && stand.span().minutes() > most.apply(stand.medium()).amount()) {
        stands
            .computeIfAbsent(stand.step + " " + stand.medium(), k -> new ArrayList<>())
            .add(stand);
      }
    }
    return stands;
  }

  private static Stand longest(List<Stand> stands) {
    Stand longest = stands.get(0);
    for (Stand stand : stands) {
      longest = stand.span().compareTo(longest.span()) > 0 ? stand : longest;
    }
    return longest;
  }

  private static IdleScreen tell(
      List<Stand> stands, boolean slow, Span slowly, PrintPlan plan, Function<Medium, Limit> most) {
    Stand longest = longest(stands);
    Set<String> screens = new LinkedHashSet<>();
    stands.forEach(stand -> screens.add(stand.screen()));
    double washing =
        screens.size() * plan.handling().washScreen().minutes()
            + plan.handling().dryScreen().minutes();
    return new IdleScreen(
        longest.step,
        longest.medium(),
        List.copyOf(screens),
        slow,
        longest.span(),
        slowly,
        most.apply(longest.medium()),
        longest.screen(),
        longest.lifted(),
        longest.until,
        new Span(washing),
        washSteps(stands, plan, most),
        longest.path,
        List.of(new Related(Tie.LAST_USED, longest.before.step().path())));
  }

  private static List<WashStep> washSteps(
      List<Stand> stands, PrintPlan plan, Function<Medium, Limit> most) {
    Map<Integer, Map<WashStep.When, Set<String>>> afterStep = new LinkedHashMap<>();
    for (Stand stand : stands) {
      afterStep
          .computeIfAbsent(stand.before.step().number(), s -> new LinkedHashMap<>())
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
      Printed before,
      Moment printed,
      Moment until,
      int step,
      PlanPath path,
      boolean alike,
      boolean washed) {

    static Stand of(Printed before, Map<Integer, Moment> printed, Moment until, Task ends) {
      return new Stand(
          before,
          printed.get(before.step().number()),
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
      boolean sameStep = step == before.step().number();
      boolean tooLongWithin = printed.since(lifted()).minutes() > most;
      if (sameStep ? alike : !tooLongWithin) {
        return sameStep ? WashStep.When.WITHIN_STEP : WashStep.When.AFTER_STEP;
      }
      return WashStep.When.BETWEEN_COLOURS;
    }

    Moment lifted() {
      return new Moment(before.lifted());
    }

    Span span() {
      return until.since(lifted());
    }

    String screen() {
      return before.footprint().screen().name();
    }

    Medium medium() {
      return before.footprint().paste().medium();
    }
  }
}
