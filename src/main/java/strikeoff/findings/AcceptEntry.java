package strikeoff.findings;

import java.util.Optional;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.plan.Acceptance;

/**
 * An entry of the plan's {@code accept}.
 *
 * @param bar the file and line of the studio's policy that lets no plan accept that rule, so that
 *     the entry counts for nothing; empty if none does
 */
public record AcceptEntry(Acceptance acceptance, Optional<String> bar) implements Evidence {

  /** The rule whose findings it accepts. */
  public String rule() {
    return acceptance.rule();
  }

  /** True if the studio's policy lets no plan accept that rule. */
  public boolean barred() {
    return bar.isPresent();
  }

  /** The file and line that says so. */
  public String policy() {
    return bar.orElse("");
  }

  /** Where it looks for a finding. */
  public String where() {
    return acceptance
        .at()
        .map(place -> "at " + new PlanPath(place).spoken())
        .orElse("anywhere in the plan");
  }

  @Override
  public PlanPath path() {
    return acceptance.path();
  }
}
