package strikeoff.rulebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import strikeoff.findings.FailedRule;
import strikeoff.plan.PlanPath;
import strikeoff.rulebook.OwnBookTest.Gap;
import strikeoff.rulebook.Rulebook.Judgement;
import strikeoff.rulebook.own.OwnRules;
import strikeoff.rulebook.own.RuleCache;
import strikeoff.rulebook.own.RuleFile;
import strikeoff.rulebook.own.RuleMistake;
import strikeoff.rulebook.own.RuleMistakes;

/** Ways in which a file of own rules once passed a gate that it should not. */
class OwnBookHolesTest {

  private static final String RULE =
      """
      rule "bench/sound"
          @severity("risk")
          @summary("s")
          @because("b.")
          @message("gap of {mm} mm.")
          @remedy("r.")
          @source("common practice, no source")
      when
          $gap : OwnBookTest.Gap(mm > 1)
      then
          reporter.report(drools.getRule(), $gap);
      end
      """;

  private static final String HEAD =
      """
      package rules.bench
      import strikeoff.rulebook.OwnBookTest
      global strikeoff.rulebook.Reporter reporter
      """;

  private static Rulebook book(String text) throws RuleMistakes {
    OwnRules rules =
        OwnRules.of(List.of(new RuleFile("rules/bench/own.drl", "bench", text)), RuleCache.NONE);
    return Rulebook.builtIn().with(rules, 5);
  }

  private static List<String> told(String text) {
    RuleMistakes wrong = catchThrowableOfType(RuleMistakes.class, () -> book(text));
    assertThat(wrong).as("refused: %s", text).isNotNull();
    return wrong.all().stream().map(RuleMistake::text).toList();
  }

  private static List<FailedRule> faults(String text) throws RuleMistakes {
    Judgement judgement = book(text).judge(List.of(), List.of(new Gap(4, new PlanPath("run[0]"))));
    assertThat(judgement.reported()).isEmpty();
    return judgement.failedRules();
  }

  /** The parser sees the package of a built-in family where the eye sees the studio's own. */
  @Test
  void aBuiltInStopIsNotWeakenedFromAComment() {
    String weakened =
        RULE.replace("bench/sound", "layout/cloth-too-short").replace("rule \"", "/**/ rule \"");
    String commented =
        "/*\n" + HEAD + RULE + "*/\n" + HEAD.replace("rules.bench", "rules.layout") + weakened;
    assertThat(told(commented))
        .contains(
            "rules/bench/own.drl:1: “package rules.bench” was expected at the top",
            "rules/bench/own.drl:5: “bench/sound” stands in a comment or a text; take it out");
  }

  @Test
  void aRuleThatIsNotSeenAtItsLineIsNamed() {
    assertThat(told(HEAD + RULE + "/**/ " + RULE.replace("bench/sound", "bench/hidden")))
        .containsExactly(
            "rules/bench/own.drl: the rule “bench/hidden” was expected on a line that begins with"
                + " rule \"bench/what-is-wrong\"");
  }

  @Test
  void factsThatGrowOldAskAClock() {
    assertThat(
            told(HEAD + "declare Seen\n  @role(event)\n  @expires(1s)\n  mm : int\nend\n" + RULE))
        .contains("rules/bench/own.drl: a rule can't ask a clock; “@expires” would have it do so");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "throw new RuntimeException() { public String toString() { return \"\"; } };",
        "throw new RuntimeException() { public String toString() { return null; } };",
        "throw new RuntimeException() { public String toString() { throw this; } };",
        "throw new Exception(\"\");",
        "try { while (true) { reporter.report(drools.getRule(), $gap); } } catch (Error e) { }"
      })
  void aRuleThatFailsWithoutAWordStillFails(String consequence) throws RuleMistakes {
    String failing = RULE.replace("reporter.report(drools.getRule(), $gap);", consequence);
    Judgement judgement =
        book(HEAD + failing).judge(List.of(), List.of(new Gap(4, new PlanPath("run[0]"))));
    assertThat(judgement.failedRules()).hasSize(1);
    assertThat(judgement.failedRules().get(0).what()).matches("\\S+.* \\(.*own.drl:4\\)");
    assertThat(judgement.reported()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"path.text", "mm.", "getClass", "path", "hashCode", "related"})
  void aMessageSaysValuesOfItsFactsAndNothingBeyondThem(String gap) throws RuleMistakes {
    String text = HEAD + RULE.replace("{mm}", "{" + gap + "}");
    if (gap.contains(".")) {
      assertThat(told(text)).singleElement().asString().contains("own.drl:4: {" + gap + "} can't");
    } else {
      assertThat(faults(text))
          .singleElement()
          .satisfies(
              f -> assertThat(f.what()).isEqualTo("{" + gap + "}: no fact given has such a value"));
    }
  }

  @Test
  void wordsMayAgreeWithAValue() throws RuleMistakes {
    Judgement judgement =
        book(HEAD + RULE.replace("gap of {mm} mm.", "{mm} mm {mm:is|are} too much."))
            .judge(List.of(), List.of(new Gap(4, new PlanPath("run[0]"))));
    assertThat(judgement.failedRules()).isEmpty();
    assertThat(judgement.reported())
        .singleElement()
        .satisfies(r -> assertThat(r.message()).isEqualTo("4 mm are too much."));
  }
}
