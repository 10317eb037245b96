package strikeoff.bath;

import java.util.ArrayList;
import java.util.List;
import strikeoff.plan.Evidence;
import strikeoff.plan.PrintPlan;
import strikeoff.policy.Policy;
import strikeoff.timeline.Timeline;

/**
 * How the run fixes its colours.
 *
 * @param soaks every soda bath
 * @param evidence all facts about fixing that rules judge, the baths among them
 */
public record Fixing(List<Soak> soaks, List<Evidence> evidence) {

  public Fixing {
    soaks = List.copyOf(soaks);
    evidence = List.copyOf(evidence);
  }

  public static Fixing of(PrintPlan plan, Timeline timeline, Policy policy) {
    Work work = new Work(plan, timeline, policy);
    List<Soak> soaks = new Soaks(work).all();
    List<Evidence> evidence = new ArrayList<>(soaks);
    evidence.addAll(new Warmths(work).all());
    evidence.addAll(new Dyes(work).all());
    evidence.addAll(new Heats(work).all());
    evidence.addAll(new Wetness(work).all());
    return new Fixing(soaks, evidence);
  }
}
