package strikeoff.studio;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Supplier;
import strikeoff.findings.Finding;
import strikeoff.findings.PointsGiven;
import strikeoff.findings.PolicyChange;
import strikeoff.findings.Reported;
import strikeoff.findings.RuleInfo;
import strikeoff.findings.Severity;
import strikeoff.plan.yaml.Stock;
import strikeoff.policy.Default;
import strikeoff.policy.Limit;
import strikeoff.policy.Policy;
import strikeoff.policy.UsualRecipe;
import strikeoff.units.Measures;

/**
 * What is in force for a plan: the policy files above it, the nearest having the last word.
 *
 * @param policy limits and defaults, tables unchanged
 * @param files names of the files, from the top down; empty if there is none
 * @param marks how plans are marked, by the nearest file that says so
 * @param limits those that are not as they come with the program
 */
public record Studio(
    Policy policy,
    Map<String, Setting<Severity>> severities,
    Map<String, Setting<String>> off,
    List<Setting<Accepting>> accepting,
    Stock stock,
    List<String> files,
    List<ChangedLimit> limits,
    Optional<Setting<Marks>> marks) {

  public Studio {
    limits = List.copyOf(limits);
    severities = Map.copyOf(severities);
    off = Map.copyOf(off);
    accepting = List.copyOf(accepting);
    files = List.copyOf(files);
  }

  /** No policy file. */
  public static Studio plain(Policy builtIn) {
    return new Studio(
        builtIn, Map.of(), Map.of(), List.of(), Stock.NONE, List.of(), List.of(), Optional.empty());
  }

  /**
   * Lays files over one another.
   *
   * @param files from the top down; those under one that holds below count for nothing
   */
  public static Studio of(Policy builtIn, List<StudioFile> files) {
    Map<String, Limit> limits = new LinkedHashMap<>(builtIn.limits());
    Map<String, ChangedLimit> changed = new TreeMap<>();
    Map<String, Default<?>> defaults = new LinkedHashMap<>(builtIn.defaults());
    Map<String, Setting<Severity>> severities = new LinkedHashMap<>();
    Map<String, Setting<String>> off = new LinkedHashMap<>();
    List<Setting<Accepting>> accepting = new ArrayList<>();
    Stock stock = Stock.NONE;
    Map<UsualRecipe.For, UsualRecipe> recipes = new EnumMap<>(UsualRecipe.For.class);
    Optional<Setting<Marks>> marks = Optional.empty();
    List<String> names = new ArrayList<>();
    for (StudioFile file : files) {
      limits.putAll(file.limits());
      file.limits()
          .forEach(
              (name, l) ->
                  changed.put(name, new ChangedLimit(file.name(), builtIn.limit(name), l)));
      defaults.putAll(file.defaults());
      severities.putAll(file.severities());
      off.putAll(file.off());
      // A severity set further down wants the rule judged again.
      file.severities().keySet().stream()
          .filter(rule -> !file.off().containsKey(rule))
          .forEach(off::remove);
      file.accepting().ifPresent(accepting::add);
      stock = stock.under(file.stock());
      recipes.putAll(file.recipes());
      marks = file.marks().or(nearest(marks));
      names.add(file.name());
      if (file.holdsBelow()) {
        break;
      }
    }
    Policy policy =
        new Policy(limits, defaults, builtIn.groups(), builtIn.fibres(), builtIn.substances())
            .with(recipes);
    changed.values().removeIf(ChangedLimit::isNone);
    return new Studio(
        policy, severities, off, accepting, stock, names, List.copyOf(changed.values()), marks);
  }

  private static <T> Supplier<Optional<T>> nearest(Optional<T> known) {
    return () -> known;
  }

  /** A limit that a file sets. */
  record ChangedLimit(String file, Limit before, Limit after) {

    boolean isNone() {
      return before.value().text().equals(after.value().text());
    }

    PolicyChange told(Measures units) {
      return new PolicyChange(
          file,
          before.name(),
          before.value().text(units),
          after.value().text(units),
          OptionalInt.empty());
    }
  }

  /**
   * What the policy makes of what rules found, by rule, then the limits behind it.
   *
   * @param found with the severities that come with the program, rules that are off included
   * @param units to tell limits in
   */
  public List<PolicyChange> changes(List<Reported> found, Measures units) {
    Map<String, RuleInfo> rules = new TreeMap<>();
    Map<String, Set<Object>> findings = new HashMap<>();
    for (Reported one : found) {
      RuleInfo rule = one.rule();
      if (isOff(rule.id()) || counted(rule).severity() != rule.severity()) {
        rules.put(rule.id(), rule);
        findings
            .computeIfAbsent(rule.id(), id -> new HashSet<>())
            .add(List.of(one.message(), one.remedy(), one.judged().path()));
      }
    }
    List<PolicyChange> changes = new ArrayList<>();
    for (RuleInfo rule : rules.values()) {
      boolean isOff = isOff(rule.id());
      changes.add(
          new PolicyChange(
              (isOff ? off : severities).get(rule.id()).where(),
              rule.id(),
              rule.severity().text(),
              isOff ? PolicyChange.OFF : counted(rule).severity().text(),
              OptionalInt.of(findings.get(rule.id()).size())));
    }
    limits.forEach(limit -> changes.add(limit.told(units)));
    return changes;
  }

  /** What a plan gets here; empty where nobody marks plans. */
  public Optional<PointsGiven> points(List<Finding> findings) {
    return marks.map(m -> m.value().of(findings, m.where()));
  }

  /** The rule as it counts here. */
  public RuleInfo counted(RuleInfo rule) {
    Setting<Severity> severity = severities.get(rule.id());
    return severity == null ? rule : rule.counted(severity.value());
  }

  public boolean isOff(String rule) {
    return off.containsKey(rule);
  }

  /** What rules found, without the rules that are off, each counted as it counts here. */
  public List<Reported> counted(List<Reported> found) {
    return found.stream()
        .filter(r -> !isOff(r.rule().id()))
        .map(
            r ->
                new Reported(
                    counted(r.rule()),
                    r.message(),
                    r.remedy(),
                    r.edits(),
                    r.judged(),
                    r.evidence()))
        .toList();
  }

  /** Where it is said that a rule's findings can't be accepted; a file can only narrow others. */
  public Optional<String> bars(String rule) {
    return accepting.stream().filter(s -> !s.value().allows(rule)).map(Setting::where).findFirst();
  }
}
