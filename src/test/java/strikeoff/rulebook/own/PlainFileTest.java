package strikeoff.rulebook.own;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The form that plain rules must have before the compiler sees them. */
class PlainFileTest {

  private static final String SOUND =
      """
      package rules.bench

      rule "bench/too-fine"
          @severity("risk") @summary("s") @because("b")
          @message("m") @remedy("r") @source("common practice, no source")
      when
          Limit(name == "bench/finest", $most : amount)
      then
      end
      rule "bench/too-coarse"
          @severity("risk") @summary("s") @because("b")
          @message("m") @remedy("r") @source("common practice, no source")
      when
          Limit(name == "bench/coarsest", $least : amount)
      then
      """;

  private final List<RuleMistake> mistakes = new ArrayList<>();

  private PlainFile read(String text) {
    return PlainFile.of(new RuleFile("rules/bench/own.drl", "bench", text), mistakes);
  }

  private List<String> told() {
    return mistakes.stream().map(RuleMistake::text).toList();
  }

  @Test
  void eachRuleHasItsLinesAndTheLimitsThatItReadsItself() {
    PlainFile file = read(SOUND + "end\n");
    assertThat(told()).isEmpty();
    assertThat(file.rules())
        .extracting(OwnRule::id)
        .containsExactly("bench/too-fine", "bench/too-coarse");
    OwnRule first = file.rules().get(0);
    assertThat(first.file()).isEqualTo("rules/bench/own.drl");
    assertThat(first.line()).isEqualTo(3);
    assertThat(first.text()).hasSize(7).startsWith("rule \"bench/too-fine\"").endsWith("end");
    assertThat(first.limits()).containsExactly("bench/finest");
    OwnRule second = file.rules().get(1);
    assertThat(second.line()).isEqualTo(10);
    assertThat(second.text()).hasSize(7).endsWith("end");
    assertThat(second.limits()).containsExactly("bench/coarsest");
    assertThat(file.source().lines()).startsWith(1, 2, 3).hasSize(16).endsWith(16);
    assertThat(file.source().drl()).isEqualTo(SOUND + "end\n");
  }

  @Test
  void aLastRuleWithoutItsEndIsTakenToTheEndOfTheFile() {
    assertThat(read(SOUND).rules().get(1).text()).hasSize(6).endsWith("then");
  }

  @Test
  void anotherPackageOrNoneIsTold() {
    read(SOUND.replace("rules.bench", "rules.house"));
    assertThat(told())
        .containsExactly("rules/bench/own.drl:1: “package rules.bench” was expected at the top");
    mistakes.clear();
    read(SOUND.replace("package rules.bench", ""));
    assertThat(told())
        .containsExactly("rules/bench/own.drl:1: “package rules.bench” was expected at the top");
  }

  @Test
  void aRuleIsCalledByItsFolderAndAFault() {
    read(SOUND.replace("bench/too-fine", "house/too-fine"));
    assertThat(told())
        .containsExactly(
            "rules/bench/own.drl:3: a rule of this folder is called “bench/what-is-wrong”, in"
                + " small letters; “house/too-fine” isn't");
    mistakes.clear();
    read(SOUND.replace("bench/too-coarse", "bench/Too coarse"));
    assertThat(mistakes).extracting(RuleMistake::line).containsExactly(10);
  }

  @Test
  void everythingThatARuleMustSayIsAskedForAtItsHead() {
    read(SOUND.replaceFirst("@summary\\(\"s\"\\)", "").replaceFirst("@source", "// source"));
    assertThat(told())
        .containsExactly(
            "rules/bench/own.drl:3: the rule has no @summary(\"…\")",
            "rules/bench/own.drl:3: the rule has no @source(\"…\")");
  }

  @Test
  void aFileWithoutARuleIsTold() {
    read("package rules.bench\n");
    assertThat(told()).containsExactly("rules/bench/own.drl: no rule “bench/…” is here");
  }
}
