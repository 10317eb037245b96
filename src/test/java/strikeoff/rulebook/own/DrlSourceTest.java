package strikeoff.rulebook.own;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** A mistake that the compiler finds is told at the line that the writer sees. */
class DrlSourceTest {

  private static final RuleFile FILE = new RuleFile("rules/bench/two.drl", "bench", "");

  private static final List<String> LINES =
      List.of(
          "package rules.bench", // 1
          "", // 2
          "rule \"bench/first\"", // 3
          "when", // 4
          "  $a : Gap(mm > 1)", // 5
          "then", // 6
          "end", // 7
          "// between them", // 8
          "  rule \"bench/second\"", // 9
          "when", // 10
          "  $b : Gap(mmm > 2)", // 11
          "then", // 12
          "  end"); // 13

  /** Each line came from the line ten below, as if the file had a heading. */
  private static final DrlSource SOURCE =
      new DrlSource(
          FILE,
          String.join("\n", LINES) + "\n",
          IntStream.rangeClosed(11, 10 + LINES.size()).boxed().toList());

  private static int lineOf(String text, int line) {
    return SOURCE.lineOf(new OwnCompiler.Refusal(text, line, Optional.empty()));
  }

  @Test
  void aRuleAloneKeepsItsHeadAndItsLines() {
    List<DrlSource> alone = SOURCE.ruleByRule();
    assertThat(alone).hasSize(2);
    List<String> first = alone.get(0).drl().lines().toList();
    List<String> second = alone.get(1).drl().lines().toList();
    assertThat(first).hasSameSizeAs(LINES);
    assertThat(first.subList(0, 8)).isEqualTo(LINES.subList(0, 8));
    assertThat(first.subList(8, 13)).containsOnly("");
    assertThat(second.subList(0, 2)).isEqualTo(LINES.subList(0, 2));
    assertThat(second.subList(2, 7)).containsOnly("");
    assertThat(second.subList(7, 13)).isEqualTo(LINES.subList(7, 13));
    assertThat(alone).allSatisfy(one -> assertThat(one.lines()).isEqualTo(SOURCE.lines()));
    assertThat(alone).allSatisfy(one -> assertThat(one.drl()).endsWith("\n"));
  }

  @Test
  void theLineThatTheCompilerNamesIsTheFilesLine() {
    assertThat(lineOf("unknown", 1)).isEqualTo(11);
    assertThat(lineOf("unknown", 5)).isEqualTo(15);
    assertThat(lineOf("unknown", 13)).as("the last one").isEqualTo(23);
  }

  @Test
  void withoutALineTheTextThatItQuotesIsLookedFor() {
    assertThat(lineOf("can't parse: mmm > 2", 0)).isEqualTo(21);
    assertThat(lineOf("can't parse: mm > 1", 0)).isEqualTo(15);
    assertThat(lineOf("can't parse: mm > 1", 14)).as("a line that isn't there").isEqualTo(15);
    assertThat(lineOf("twice: can't parse: mmm > 2", -1)).isEqualTo(21);
  }

  @Test
  void elseTheLastRuleIsMeant() {
    assertThat(lineOf("nothing that stands there", 0)).isEqualTo(19);
    assertThat(lineOf("ends in a colon: ", 0)).as("quotes nothing").isEqualTo(19);
    assertThat(SOURCE.ruleByRule().get(0).lineOf(new OwnCompiler.Refusal("?", 0, Optional.empty())))
        .isEqualTo(13);
  }
}
