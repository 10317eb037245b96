package strikeoff.check;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import strikeoff.findings.RuleInfo;
import strikeoff.policy.yaml.PolicyReader;

/**
 * Finds a studio's own rules that nothing answered to in a whole batch. Perhaps all is well;
 * perhaps the rule asks for what its writer didn't mean, and a gate stands open.
 */
public final class SilentRules {

  /** One plan tells nothing of a rule. */
  private static final int FEWEST_PLANS = 2;

  private final Set<String> heard = new HashSet<>();
  private int plans;

  /** Counts in a plan that was judged. */
  public void add(Set<String> ofOnePlan) {
    plans++;
    heard.addAll(ofOnePlan);
  }

  /**
   * What the printer should know, if there is something.
   *
   * @param rules all that judged; not asked for if there were too few plans to tell
   */
  public Optional<String> sentence(Supplier<List<RuleInfo>> rules) {
    if (plans < FEWEST_PLANS) {
      return Optional.empty();
    }
    List<String> silent = of(rules.get(), heard);
    if (silent.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        "Of the studio's own rules, "
            + String.join(", ", silent)
            + " found nothing in any of these "
            + plans
            + " plans; look whether they ask for what was meant.");
  }

  /**
   * Ids of own rules that were never heard of.
   *
   * @param rules all that judged
   * @param heard ids of rules that found something, or failed
   */
  public static List<String> of(List<RuleInfo> rules, Collection<String> heard) {
    List<String> builtIn = PolicyReader.families();
    List<String> silent = new ArrayList<>();
    for (RuleInfo rule : rules) {
      String family = rule.id().substring(0, rule.id().indexOf('/'));
      if (!builtIn.contains(family) && !heard.contains(rule.id())) {
        silent.add(rule.id());
      }
    }
    return silent.stream().sorted().toList();
  }
}
