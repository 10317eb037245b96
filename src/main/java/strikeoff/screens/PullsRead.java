package strikeoff.screens;

import java.util.Optional;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.plan.Design;
import strikeoff.policy.Limit;
import strikeoff.policy.Policy;

/**
 * The pulls of a separation as they were read.
 *
 * @param pulls for one impression
 * @param most pulls that anybody makes, by the policy
 * @param meant the same with a figure less; empty if that is too many as well
 * @param path of the pulls
 */
public record PullsRead(
    String design, String screen, int pulls, Limit most, Optional<Integer> meant, PlanPath path)
    implements Evidence {

  static PullsRead of(Design design, Design.Separation separation, Policy policy) {
    Limit most = policy.screens().mostPulls();
    int less = separation.pulls() / 10;
    return new PullsRead(
        design.name(),
        separation.screen(),
        separation.pulls(),
        most,
        Optional.of(less).filter(n -> n >= 1 && n <= most.amount()),
        separation.path().key("pulls"));
  }
}
