package strikeoff.report.json;

import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import strikeoff.check.Verdict;
import strikeoff.report.outcome.Found;
import strikeoff.report.outcome.Outcome;
import strikeoff.report.outcome.Results;

/**
 * What the parts of results say of one another. Somebody who changes a verdict by hand, or a
 * program that loses findings on the way, must not get a batch through a gate.
 */
final class Consistency {

  private Consistency() {}

  /**
   * Does nothing if all agree.
   *
   * @param tree the results as they stand in the file
   * @param results the same, read
   * @throws Tree.Unfit at the first place that contradicts another
   */
  static void check(Tree tree, Results results) {
    Set<String> rules = new HashSet<>();
    for (Tree rule : tree.at("rules").list(t -> t)) {
      if (!rules.add(rule.at("id").text())) {
        throw rule.at("id").unfit("another id", "since a rule before it has this one");
      }
    }
    for (Tree plan : tree.at("plans").list(t -> t)) {
      int number = plan.at("number").count(1);
      if (number > results.size()) {
        throw plan.at("number")
            .unfit("a number up to " + results.size(), "since the batch has so many plans");
      }
      if (!results.part().map(part -> part.holds(number)).orElse(true)) {
        throw plan.at("number").unfit("a number of part " + results.part().get(), "not " + number);
      }
      plan.at("failedRules").list(t -> t).forEach(fault -> listed(fault.at("rule"), rules));
      findings(plan, rules);
    }
    for (Map.Entry<String, Long> count : JsonReport.counts(results).entrySet()) {
      Tree told = tree.at("summary").at(count.getKey());
      if (told.count(0) != count.getValue()) {
        throw told.unfit(String.valueOf(count.getValue()), "since that many stand in “plans”");
      }
    }
  }

  private static void findings(Tree plan, Set<String> rules) {
    Set<String> keys = new HashSet<>();
    for (Tree found : plan.at("findings").list(t -> t)) {
      listed(found.at("rule"), rules);
      if (!keys.add(found.at("key").text())) {
        throw found.at("key").unfit("another key", "since a finding before it has this one");
      }
    }
  }

  private static void listed(Tree rule, Set<String> rules) {
    if (!rules.contains(rule.text())) {
      throw rule.unfit("one of the ids in “rules”", "not another");
    }
  }

  /**
   * Does nothing if the verdict is what follows from the rest.
   *
   * @param tree the plan as it stands in the file
   * @param plan the same, read
   * @throws Tree.Unfit if it isn't
   */
  static void verdict(Tree tree, Outcome plan) {
    Verdict due = due(plan);
    if (plan.verdict() != due) {
      throw tree.at("verdict")
          .unfit(
              "“" + FormatWords.of(due) + "”",
              "by the plan's findings, mistakes, failed rules and failure");
    }
  }

  private static Verdict due(Outcome plan) {
    if (plan.failure().isPresent()) {
      return Verdict.NOT_CHECKED;
    }
    if (!plan.mistakes().isEmpty()) {
      return Verdict.UNREADABLE;
    }
    if (plan.findings().stream().anyMatch(Found::blocks)) {
      return Verdict.NOT_PRINTABLE;
    }
    return plan.failedRules().isEmpty() ? Verdict.PRINTABLE : Verdict.NOT_CHECKED;
  }
}
