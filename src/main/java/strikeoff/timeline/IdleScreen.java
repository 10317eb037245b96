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
import strikeoff.units.Span;

/**
 * Screens that stand with paste in the mesh between two impressions; told once for each step and
 * medium, by the longest stand.
 *
 * @param step the step in which they are used again
 * @param medium what stands in them
 * @param screens their names, in the order of use
 * @param longest the longest stand
 * @param screen the one that stands longest
 * @param from when its frame was lifted
 * @param until when it is laid again
 * @param washing time to wash out and dry all of them, one person washing
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
    PlanPath path,
    List<Related> related)
    implements Evidence {

  public IdleScreen {
    screens = List.copyOf(screens);
    related = List.copyOf(related);
  }

  /** True for paint, which dries in the mesh much sooner than dye paste. */
  public boolean paint() {
    return medium == Medium.PAINT;
  }

  /**
   * @param longerThan stands that are worth telling, by medium
   */
  static List<IdleScreen> all(
      Timeline.Day day, PrintPlan plan, ToDoubleFunction<Medium> longerThan) {
    Map<String, Impression> lastUse = new LinkedHashMap<>();
    Map<String, List<Stand>> stands = new LinkedHashMap<>();
    for (Task task : day.run().tasks()) {
      if (task.kind() == Task.Kind.WASH_SCREEN) {
        lastUse.remove(task.screen().orElseThrow());
      } else if (task.impression().isPresent()) {
        Impression now = day.impressions().get(task.impression().getAsInt());
        String screen = now.footprint().screen().name();
        Impression before = lastUse.put(screen, now);
        Medium medium = now.footprint().paste().medium();
        if (before != null
            && now.laid().since(before.lifted()).minutes() > longerThan.applyAsDouble(medium)) {
          stands
              .computeIfAbsent(now.step() + " " + medium, k -> new ArrayList<>())
              .add(new Stand(before, now));
        }
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
      screens.add(stand.after.footprint().screen().name());
      longest = stand.span().compareTo(longest.span()) > 0 ? stand : longest;
    }
    double washing =
        screens.size() * plan.handling().washScreen().minutes()
            + plan.handling().dryScreen().minutes();
    return new IdleScreen(
        longest.after.step(),
        longest.after.footprint().paste().medium(),
        List.copyOf(screens),
        longest.span(),
        longest.after.footprint().screen().name(),
        longest.before.lifted(),
        longest.after.laid(),
        new Span(washing),
        longest.after.path(),
        List.of(new Related("last used", longest.before.path())));
  }

  private record Stand(Impression before, Impression after) {
    Span span() {
      return after.laid().since(before.lifted());
    }
  }
}
