package strikeoff.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import strikeoff.findings.RuleInfo;
import strikeoff.findings.Sources;
import strikeoff.policy.Glossary;
import strikeoff.policy.Limit;
import strikeoff.policy.Policy;
import strikeoff.report.drawing.MarkShapes;
import strikeoff.report.page.Cell;
import strikeoff.report.page.RulesPage;

/** Puts the page of all rules together. */
final class RulesPages {

  private RulesPages() {}

  static RulesPage of(List<RuleInfo> rules, Policy policy) {
    Map<String, List<RulesPage.Rule>> families = new LinkedHashMap<>();
    for (RuleInfo rule : rules) {
      families.computeIfAbsent(rule.family(), f -> new ArrayList<>()).add(rule(rule, policy));
    }
    return new RulesPage(
        Assets.head(PageMark.CHECK, "Rules that judge print plans", Assets.PLAN_SCRIPT),
        rules.size() + " rules in " + families.size() + " families.",
        families.entrySet().stream()
            .map(e -> new RulesPage.Family(e.getKey(), e.getValue()))
            .toList(),
        Glossary.all().entrySet().stream().map(e -> Cell.of(e.getKey(), e.getValue())).toList());
  }

  private static RulesPage.Rule rule(RuleInfo rule, Policy policy) {
    List<Cell> limits = new ArrayList<>();
    for (String name : rule.limits()) {
      Limit limit = policy.limits().get(name);
      if (limit != null) {
        limits.add(Cell.of(name + ": " + limit.value().text(), limit.why()));
      }
    }
    return new RulesPage.Rule(
        rule.id(),
        rule.severity().text(),
        MarkShapes.icon(rule.severity()),
        rule.summary(),
        rule.because(),
        Sources.shown(rule.source()),
        limits);
  }
}
