package strikeoff.rulebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;
import static org.drools.model.DSL.declarationOf;
import static org.drools.model.DSL.globalOf;
import static org.drools.model.DSL.on;
import static org.drools.model.PatternDSL.pattern;
import static org.drools.model.PatternDSL.rule;

import java.util.List;
import java.util.Optional;
import org.drools.model.Drools;
import org.drools.model.Global;
import org.drools.model.Model;
import org.drools.model.Rule;
import org.drools.model.Variable;
import org.drools.model.functions.Predicate1;
import org.drools.model.impl.ModelImpl;
import org.drools.model.impl.RuleBuilder;
import org.drools.modelcompiler.consequence.DroolsImpl;
import org.junit.jupiter.api.Test;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.findings.AcceptEntry;
import strikeoff.findings.FailedRule;
import strikeoff.findings.Reported;
import strikeoff.findings.RuleInfo;
import strikeoff.findings.Severity;
import strikeoff.plan.Acceptance;
import strikeoff.rulebook.Rulebook.Judgement;

class RulebookTest {

  private static final String PACKAGE = "rules.trial";

  private static final Global<Reporter> REPORTER = globalOf(Reporter.class, PACKAGE, "reporter");

  /** A fact for the rules made here. */
  public record Gap(int mm, PlanPath path) implements Evidence {}

  private static final Gap GAP = new Gap(4, new PlanPath("placements"));

  @Test
  void loadsTheRulesOfTheBuildSortedById() {
    List<RuleInfo> rules = Rulebook.builtIn().rules();
    assertThat(rules).extracting(RuleInfo::id).isSorted().contains("acceptance/matches-nothing");
    assertThat(rules)
        .allSatisfy(rule -> assertThat(rule.summary() + rule.message()).doesNotContain("\""));
  }

  @Test
  void saysWhatABuiltInRuleFindsInItsOwnWords() {
    AcceptEntry idle =
        new AcceptEntry(
            new Acceptance(
                "drying/frame-on-wet-film",
                Optional.of("run[2]"),
                "tried",
                new PlanPath("accept[0]")),
            Optional.empty());
    Judgement judgement = Rulebook.builtIn().judge(List.of(idle));
    assertThat(judgement.failedRules()).isEmpty();
    assertThat(judgement.reported())
        .extracting(Reported::message)
        .containsExactly(
            "The plan accepts drying/frame-on-wet-film at step 3, but that rule finds nothing there.");
  }

  @Test
  void aRuleThatFailsTakesNoFindingFromTheOthers() {
    Rulebook rules =
        Rulebook.of(
            List.of(
                model(
                    made("trial/sound", "gap of {mm} mm", gap -> gap.mm() > 1),
                    made("trial/broken-condition", "never said", RulebookTest::failing),
                    failingConsequence(),
                    made("trial/unfillable", "gap of {cm} cm", gap -> gap.mm() > 1))));
    Judgement judgement = rules.judge(List.of(GAP));
    assertThat(judgement.reported())
        .extracting(r -> r.rule().id(), Reported::message)
        .containsExactly(tuple("trial/sound", "gap of 4 mm"));
    assertThat(judgement.failedRules())
        .extracting(FailedRule::rule)
        .containsExactly("trial/broken-condition", "trial/broken-consequence", "trial/unfillable");
    assertThat(judgement.failedRules().get(0).what()).contains("too deep");
    assertThat(judgement.failedRules().get(2).what()).contains("{cm}");
  }

  @Test
  void eachJudgementStartsAfresh() {
    Rulebook rules =
        Rulebook.of(List.of(model(made("trial/sound", "gap of {mm} mm", gap -> gap.mm() > 1))));
    assertThat(rules.judge(List.of(GAP)).reported()).hasSize(1);
    assertThat(rules.judge(List.of(GAP, GAP)).reported()).isNotEmpty();
    assertThat(rules.judge(List.of()).reported()).isEmpty();
  }

  @Test
  void readsMetadataWithoutQuotesAndTheLimitsOfTheRulesText() {
    RuleInfo info = RuleText.of(made("trial/sound", "a \\\"proud\\\" edge", gap -> true));
    assertThat(info.message()).isEqualTo("a \"proud\" edge");
    assertThat(info.severity()).isEqualTo(Severity.RISK);
    assertThat(info.limits()).containsExactly("trial/least");
    assertThat(info.family()).isEqualTo("trial");
  }

  @Test
  void findsLimitsHoweverTheyAreWritten() {
    assertThat(
            RuleText.limits(
                """
                Limit(name == "paste/life", $max : amount)
                $low : Limit( $min : amount, name=="fixing/weakest" )
                Limit (name == "paste/life")
                Limits(name == "not/this")
                """))
        .containsExactly("paste/life", "fixing/weakest");
  }

  @Test
  void refusesARuleOfAnotherForm() {
    assertThatThrownBy(() -> RuleText.of(made("trial/Odd Name", "m", gap -> true)))
        .hasMessageContaining("family/fault");
    assertThatThrownBy(() -> RuleText.of(made("other/sound", "m", gap -> true)))
        .hasMessageContaining("package rules.trial");
    assertThatThrownBy(
            () -> RuleText.of(made("trial/without-folder", "m", gap -> true)).limits().size())
        .hasMessageContaining("own folder");
    assertThatThrownBy(() -> RuleText.of(rule(PACKAGE, "trial/sound").build()))
        .hasMessageContaining("@severity");
    Model twice = model(made("trial/sound", "m", gap -> true));
    assertThatThrownBy(() -> Rulebook.of(List.of(twice, twice))).hasMessageContaining("two rules");
  }

  private static boolean failing(Gap gap) {
    throw new IllegalStateException("too deep at " + gap.mm());
  }

  private static Model model(Rule... rules) {
    ModelImpl model = new ModelImpl(PACKAGE);
    for (Rule rule : rules) {
      model.addRule(rule);
    }
    return model.addGlobal(REPORTER);
  }

  private static Rule made(String id, String message, Predicate1<Gap> condition) {
    Variable<Gap> gap = declarationOf(Gap.class);
    return described(id, message)
        .build(
            pattern(gap).expr(condition),
            on(gap, REPORTER)
                .execute(
                    (Drools drools, Gap found, Reporter reporter) ->
                        reporter.report(((DroolsImpl) drools).getRule(), found)));
  }

  private static Rule failingConsequence() {
    Variable<Gap> gap = declarationOf(Gap.class);
    return described("trial/broken-consequence", "never said")
        .build(pattern(gap), on(gap).execute(RulebookTest::failing));
  }

  private static RuleBuilder described(String id, String message) {
    return rule(PACKAGE, id)
        .metadata("severity", "\"risk\"")
        .metadata("summary", "\"s\"")
        .metadata("because", "\"b\"")
        .metadata("message", "\"" + message + "\"")
        .metadata("remedy", "\"r\"")
        .metadata("source", "\"common practice, no source\"");
  }
}
