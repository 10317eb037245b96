package strikeoff.report.outcome;

import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import strikeoff.check.SilentRules;
import strikeoff.check.Verdict;
import strikeoff.findings.Narrowed;
import strikeoff.findings.RuleInfo;

/**
 * What came of a batch.
 *
 * @param version of the program
 * @param title what the batch is: the files and folders that were named
 * @param part which part of the batch, if it is not the whole
 * @param size plans in the whole batch
 * @param narrowed which rules were left out, if not all were asked
 * @param baseline the file of an earlier run that findings were held against, if any
 * @param rules all that judged, by id
 * @param plans by their number in the batch
 */
public record Results(
    String version,
    String title,
    Optional<Part> part,
    int size,
    Optional<Narrowed> narrowed,
    Optional<String> baseline,
    List<RuleInfo> rules,
    List<Outcome> plans) {

  /** What all rules judged, held against no earlier run. */
  public Results(
      String version,
      String title,
      Optional<Part> part,
      int size,
      List<RuleInfo> rules,
      List<Outcome> plans) {
    this(version, title, part, size, Optional.empty(), Optional.empty(), rules, plans);
  }

  public Results {
    rules = rules.stream().sorted(Comparator.comparing(RuleInfo::id)).toList();
    plans = plans.stream().sorted(Comparator.comparingInt(Outcome::number)).toList();
  }

  /** The same of another part of the batch, or of all of it. */
  public Results with(Optional<Part> another, List<Outcome> itsPlans) {
    return new Results(version, title, another, size, narrowed, baseline, rules, itsPlans);
  }

  /** The rules, by id. */
  public Map<String, RuleInfo> rulesById() {
    Map<String, RuleInfo> byId = new LinkedHashMap<>();
    rules.forEach(rule -> byId.put(rule.id(), rule));
    return byId;
  }

  /** What each rule finds, in a few words, by its id. */
  public Map<String, String> summaries() {
    Map<String, String> summaries = new LinkedHashMap<>();
    rules.forEach(rule -> summaries.put(rule.id(), rule.summary()));
    return summaries;
  }

  /** Own rules that found nothing in any of the plans, and failed on none, by id. */
  public List<String> silent() {
    Set<String> heard = new HashSet<>();
    for (Outcome plan : plans) {
      plan.findings().forEach(found -> heard.add(found.rule()));
      plan.failedRules().forEach(fault -> heard.add(fault.rule()));
    }
    return SilentRules.of(rules, heard);
  }

  public long count(Verdict verdict) {
    return plans.stream().filter(p -> p.verdict() == verdict).count();
  }

  /** True if every plan could be read and judged by every rule. */
  public boolean complete() {
    return plans.stream()
        .allMatch(
            p -> p.mistakes().isEmpty() && p.failedRules().isEmpty() && p.failure().isEmpty());
  }
}
