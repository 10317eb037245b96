package strikeoff.care;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import strikeoff.bath.Fixing;
import strikeoff.evidence.Evidence;
import strikeoff.evidence.Tie;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Protection;
import strikeoff.plan.Step;
import strikeoff.policy.Policy;

/**
 * What can hurt in the run.
 *
 * @param cautions in the order of the run
 * @param evidence the same by hazard, for rules
 */
public record Care(List<Caution> cautions, List<Evidence> evidence) {

  public Care {
    cautions = List.copyOf(cautions);
    evidence = List.copyOf(evidence);
  }

  public static Care of(PrintPlan plan, Fixing fixing, Policy policy) {
    List<Caution> cautions = new Lookout(plan, fixing, policy).all();
    return new Care(cautions, exposures(cautions, plan));
  }

  private static boolean named(Caution caution, PrintPlan plan) {
    return plan.step(caution.step()).flatMap(Step::by).isPresent();
  }

  /** One for each hazard, since one missing mask is one fault however many steps need it. */
  private static List<Evidence> exposures(List<Caution> cautions, PrintPlan plan) {
    Map<Hazard, List<Caution>> byHazard = new EnumMap<>(Hazard.class);
    cautions.forEach(c -> byHazard.computeIfAbsent(c.hazard(), h -> new ArrayList<>()).add(c));
    List<Protection> lacking =
        cautions.stream().flatMap(c -> c.missing().stream()).distinct().sorted().toList();
    List<Evidence> exposures = new ArrayList<>();
    byHazard.forEach(
        (hazard, all) ->
            exposures.add(
                new Exposure(
                    hazard,
                    all.stream().map(Caution::where).distinct().toList(),
                    all.stream().flatMap(c -> c.substances().stream()).distinct().toList(),
                    all.get(0).missing(),
                    lacking,
                    plan.crew().children(),
                    all.stream().allMatch(c -> named(c, plan)),
                    all.stream()
                        .skip(1)
                        .map(c -> new Evidence.Related(Tie.HERE_TOO, c.path()))
                        .toList(),
                    all.get(0).path())));
    return exposures;
  }
}
