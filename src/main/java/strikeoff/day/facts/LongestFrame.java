package strikeoff.day.facts;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import strikeoff.day.AboutStep;
import strikeoff.day.DayRun;
import strikeoff.day.Impression;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Tie;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Screen;
import strikeoff.plan.Step;
import strikeoff.policy.Limit;
import strikeoff.policy.Policy;
import strikeoff.units.Length;

/**
 * The longest frame that a print step lays, and how many people there are to lay it.
 *
 * @param step its number
 * @param doing the step itself
 * @param screen whose frame it is
 * @param side the frame's longer side
 * @param most how long one that a single person lays may be
 * @param hands people of the crew
 */
public record LongestFrame(
    int step,
    Step doing,
    String screen,
    Length side,
    Limit most,
    int hands,
    PlanPath path,
    List<Related> related)
    implements AboutStep {

  public LongestFrame {
    related = List.copyOf(related);
  }

  /** True if nobody else is there to take the other end. */
  public boolean alone() {
    return hands == 1;
  }

  static List<LongestFrame> all(DayRun day, PrintPlan plan, Policy policy) {
    List<LongestFrame> all = new ArrayList<>();
    Map<Integer, List<Impression>> byStep = day.byStep();
    for (Step step : plan.run()) {
      Screen longest = null;
      for (Impression impression : byStep.getOrDefault(step.number(), List.of())) {
        Screen screen = impression.footprint().screen();
        longest = longest == null || side(screen) > side(longest) ? screen : longest;
      }
      if (longest != null) {
        all.add(
            new LongestFrame(
                step.number(),
                step,
                longest.name(),
                new Length(side(longest)),
                policy.table().longestHandFrame(),
                plan.crew().names().size(),
                step.path(),
                List.of(
                    new Related(Tie.SCREEN, longest.path()),
                    new Related(Tie.CREW, plan.crew().path()))));
      }
    }
    return all;
  }

  private static double side(Screen screen) {
    return Math.max(screen.frameLength().mm(), screen.frameWidth().mm());
  }
}
