package strikeoff.timeline;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import strikeoff.plan.Evidence;
import strikeoff.plan.Medium;
import strikeoff.plan.PlanPath;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Step;
import strikeoff.units.Span;

/**
 * Screens that stand with paste in the mesh until they print again, or until a step of the plan
 * washes them out; told once for each step and medium, by the longest stand. Screens that are
 * washed without a step, right after their last use, don't stand.
 *
 * @param step the step in which they are used again, or washed
 * @param medium what stands in them
 * @param screens their names, in the order of use
 * @param longest the longest stand
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

  /** The steps to write, each with its place. */
  public String toWrite() {
    return String.join("; ", washSteps.stream().map(WashStep::text).toList());
  }

  /**
   * @param longerThan stands that are worth telling, by medium
   */
  static List<IdleScreen> all(
      Timeline.Day day, PrintPlan plan, ToDoubleFunction<Medium> longerThan) {
    Map<Integer, Step> steps = new LinkedHashMap<>();
    plan.run().forEach(step -> steps.put(step.number(), step));
    Map<Integer, Moment> washingBegins = new LinkedHashMap<>();
    Map<Integer, Moment> printed = new LinkedHashMap<>();
    Map<String, Impression> lastUse = new LinkedHashMap<>();
    Map<String, List<Stand>> stands = new LinkedHashMap<>();
    for (Task task : day.run().tasks()) {
      Stand stand = null;
      if (task.kind() == Task.Kind.WASH_SCREEN) {
        Impression before = lastUse.remove(task.screen().orElseThrow());
        if (steps.get(task.step()) instanceof Step.WashScreen && before != null) {
          // Who washes several lays them in water first: the later ones don't stand dry meanwhile.
          Moment begins = washingBegins.computeIfAbsent(task.step(), s -> task.start());
          // Without the step it would be washed when its print step is done, and not before.
          Moment done = printed.get(before.step());
          stand = new Stand(before, done, begins, task.step(), task.path());
        }
      } else if (task.impression().isPresent()) {
        Impression now = day.impressions().get(task.impression().getAsInt());
        printed.merge(now.step(), now.lifted(), Moment::later);
        Impression before = lastUse.put(now.footprint().screen().name(), now);
        if (before != null) {
          stand = new Stand(before, before.lifted(), now.laid(), now.step(), now.path());
        }
      }
      if (stand != null && stand.needless().minutes() > longerThan.applyAsDouble(stand.medium())) {
        stands
            .computeIfAbsent(stand.step + " " + stand.medium(), k -> new ArrayList<>())
            .add(stand);
      }
    }
    List<IdleScreen> all = new ArrayList<>();
    stands.values().forEach(s -> all.add(tell(s, plan)));
    return all;
  }

  private static IdleScreen tell(List<Stand> stands, PrintPlan plan) {
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
        longest.screen(),
        longest.before.lifted(),
        longest.until,
        new Span(washing),
        washSteps(stands, plan),
        longest.path,
        List.of(new Related("last used", longest.before.path())));
  }

  private static List<WashStep> washSteps(List<Stand> stands, PrintPlan plan) {
    Map<Integer, Set<String>> afterStep = new LinkedHashMap<>();
    Map<Integer, Boolean> within = new LinkedHashMap<>();
    for (Stand stand : stands) {
      int last = stand.before.step();
      afterStep.computeIfAbsent(last, s -> new LinkedHashSet<>()).add(stand.screen());
      within.merge(last, last == stand.step, Boolean::logicalOr);
    }
    List<WashStep> steps = new ArrayList<>();
    afterStep.forEach(
        (step, screens) ->
            steps.add(
                new WashStep(List.copyOf(screens), washer(step, plan), step, within.get(step))));
    return steps;
  }

  /** Who washes up after a step, if it isn't whom a step of washing takes anyway. */
  private static String washer(int number, PrintPlan plan) {
    for (Step step : plan.run()) {
      if (step.number() == number && step instanceof Step.Print print) {
        String first = plan.crew().names().get(0);
        return print.washes().or(print::by).filter(who -> !who.equals(first)).orElse("");
      }
    }
    return "";
  }

  /**
   * A screen between two uses.
   *
   * @param could from when it could have been washed
   */
  private record Stand(Impression before, Moment could, Moment until, int step, PlanPath path) {
    Span needless() {
      return until.since(could);
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
