package strikeoff.studio;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import strikeoff.findings.Reported;
import strikeoff.findings.RuleInfo;
import strikeoff.findings.Severity;
import strikeoff.plan.yaml.Stock;
import strikeoff.policy.Default;
import strikeoff.policy.Limit;
import strikeoff.policy.Policy;

/**
 * What is in force for a plan: the policy files above it, the nearest having the last word.
 *
 * @param policy limits and defaults, tables unchanged
 * @param files names of the files, from the top down; empty if there is none
 */
public record Studio(
    Policy policy,
    Map<String, Setting<Severity>> severities,
    Map<String, Setting<String>> off,
    List<Setting<Accepting>> accepting,
    Stock stock,
    List<String> files) {

  public Studio {
    severities = Map.copyOf(severities);
    off = Map.copyOf(off);
    accepting = List.copyOf(accepting);
    files = List.copyOf(files);
  }

  /** No policy file. */
  public static Studio plain(Policy builtIn) {
    return new Studio(builtIn, Map.of(), Map.of(), List.of(), Stock.NONE, List.of());
  }

  /**
   * Lays files over one another.
   *
   * @param files from the top down; those under one that holds below count for nothing
   */
  public static Studio of(Policy builtIn, List<StudioFile> files) {
    Map<String, Limit> limits = new LinkedHashMap<>(builtIn.limits());
    Map<String, Default> defaults = new LinkedHashMap<>(builtIn.defaults());
    Map<String, Setting<Severity>> severities = new LinkedHashMap<>();
    Map<String, Setting<String>> off = new LinkedHashMap<>();
    List<Setting<Accepting>> accepting = new ArrayList<>();
    Stock stock = Stock.NONE;
    List<String> names = new ArrayList<>();
    for (StudioFile file : files) {
      limits.putAll(file.limits());
      defaults.putAll(file.defaults());
      severities.putAll(file.severities());
      off.putAll(file.off());
      // A severity set further down wants the rule judged again.
      file.severities().keySet().stream()
          .filter(rule -> !file.off().containsKey(rule))
          .forEach(off::remove);
      file.accepting().ifPresent(accepting::add);
      stock = stock.under(file.stock());
      names.add(file.name());
      if (file.holdsBelow()) {
        break;
      }
    }
    Policy policy =
        new Policy(limits, defaults, builtIn.groups(), builtIn.fibres(), builtIn.substances());
    return new Studio(policy, severities, off, accepting, stock, names);
  }

  /** The rule as it counts here. */
  public RuleInfo counted(RuleInfo rule) {
    Setting<Severity> severity = severities.get(rule.id());
    return severity == null
        ? rule
        : new RuleInfo(
            rule.id(),
            severity.value(),
            rule.summary(),
            rule.because(),
            rule.message(),
            rule.remedy(),
            rule.source(),
            rule.limits());
  }

  public boolean isOff(String rule) {
    return off.containsKey(rule);
  }

  /** What rules found, without the rules that are off, each counted as it counts here. */
  public List<Reported> counted(List<Reported> found) {
    return found.stream()
        .filter(r -> !isOff(r.rule().id()))
        .map(
            r -> new Reported(counted(r.rule()), r.message(), r.remedy(), r.judged(), r.evidence()))
        .toList();
  }

  /** Where it is said that a rule's findings can't be accepted; a file can only narrow others. */
  public Optional<String> bars(String rule) {
    return accepting.stream().filter(s -> !s.value().allows(rule)).map(Setting::where).findFirst();
  }
}
