package strikeoff.sequence;

import java.util.ArrayList;
import java.util.List;
import strikeoff.day.facts.Timeline;
import strikeoff.evidence.Evidence;
import strikeoff.layout.Layout;
import strikeoff.plan.PrintPlan;
import strikeoff.policy.Policy;

/**
 * Facts about the order of work on the cloth. Facts about prints need a run that prints; a plan
 * that only lays out has none of them, and a run that forgets to print misses every placement.
 */
public record Sequence(List<Evidence> evidence) {

  public Sequence {
    evidence = List.copyOf(evidence);
  }

  public static Sequence of(PrintPlan plan, Layout layout, Timeline timeline, Policy policy) {
    List<Evidence> evidence = new ArrayList<>(Traps.of(plan, layout, policy));
    evidence.addAll(new KeyLikeness(plan, layout, policy).facts());
    evidence.addAll(Landings.facts(plan, layout, timeline.impressions(), policy));
    if (!timeline.impressions().isEmpty()) {
      Course course = new Course(plan, timeline);
      evidence.addAll(new MediaPasses(plan, course, layout, policy).facts());
      evidence.addAll(new AfterTreatment(course, plan, policy).facts());
      evidence.addAll(new FirstWash(plan, course, policy).facts());
      evidence.addAll(new ColourOrder(plan, course).facts());
      evidence.addAll(new AnchorOrder(plan, course, layout).facts());
      evidence.addAll(new SeamOrder(plan, course, layout).facts());
    }
    if (!plan.run().isEmpty()) {
      evidence.addAll(new Coverage(plan, new Course(plan, timeline), layout).facts());
    }
    return new Sequence(evidence);
  }
}
