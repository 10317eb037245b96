package strikeoff.mend;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import strikeoff.check.Checked;
import strikeoff.check.Checker;
import strikeoff.check.Example;
import strikeoff.document.Bounds;
import strikeoff.document.Position;
import strikeoff.document.Replacement;
import strikeoff.findings.Finding;
import strikeoff.findings.Mend;
import strikeoff.findings.RuleInfo;
import strikeoff.findings.Severity;

class EditTrialsTest {

  private static final Checker CHECKER = Checker.builtIn();

  private static Checked.Judged judged(Checker checker, String text) {
    Checked checked = checker.check("plan.yaml", text);
    assertThat(checked).as(text).isInstanceOf(Checked.Judged.class);
    return (Checked.Judged) checked;
  }

  /** Told or not, each finding that goes is one less. */
  @Test
  void whatIsCutFromTheTellingStillCounts() throws IOException {
    String text = Files.readString(Path.of("plans/mistakes/moved-wet.yaml"));
    Checker one = Checker.builtIn(Bounds.USUAL.with(Map.of("findings", 1)));
    Checked.Judged all = (Checked.Judged) EditTrials.tried(judged(CHECKER, text), CHECKER);
    Checked.Judged few = (Checked.Judged) EditTrials.tried(judged(one, text), one);
    String rule = "drying/moved-before-lift-safe";
    assertThat(count(all, rule)).isGreaterThan(1);
    assertThat(all.findings()).anyMatch(f -> f.rule().id().equals(rule) && !f.mends().isEmpty());
    assertThat(few.findings()).anyMatch(f -> f.rule().id().equals(rule) && !f.mends().isEmpty());
  }

  /** The bath of the example holds little; it is written by another of soda's or salt's names. */
  @ParameterizedTest
  @CsvSource({
    "fixing/soda-too-weak, soda ash, sodium carbonate",
    "fixing/soda-too-weak, soda ash, soda crystals",
    "fixing/soak-without-salt, salt, sodium chloride"
  })
  void aBathIsFilledUpUnderTheNameThatItHas(String rule, String name, String other) {
    String text = Example.packaged(rule).firingText();
    List<String> lines = new ArrayList<>();
    for (String each : List.of(name, other)) {
      String named = text.replace(name + ":", each + ":");
      Checked.Judged checked = (Checked.Judged) EditTrials.tried(judged(CHECKER, named), CHECKER);
      Finding finding =
          checked.findings().stream().filter(f -> f.rule().id().equals(rule)).findFirst().get();
      assertThat(finding.mends()).as(named).isNotEmpty();
      lines.add(String.join("\n", finding.mends().get(0).hunks().get(0).come()));
    }
    if (text.contains(name + ":")) {
      assertThat(lines.get(1)).contains(other + ": ").doesNotContain(name + ": ");
      assertThat(lines.get(0)).contains(name + ": ");
    }
  }

  /** A rule that says how its finding is mended mends its own example, in each way it offers. */
  @TestFactory
  Stream<DynamicTest> everyRuleThatKnowsAnEditMendsItsExample() {
    return CHECKER.rules().rules().stream()
        .filter(rule -> !rule.mend().isEmpty())
        .map(rule -> DynamicTest.dynamicTest(rule.id(), () -> mends(rule)));
  }

  private static void mends(RuleInfo rule) {
    Checker checker = CHECKER.of(Example.packaged(rule.id()));
    String text = Example.packaged(rule.id()).firingText();
    Checked.Judged before = judged(checker, text);
    List<Finding> found =
        ((Checked.Judged) EditTrials.tried(before, checker))
            .findings().stream().filter(f -> f.rule().id().equals(rule.id())).toList();
    assertThat(found).isNotEmpty();
    assertThat(found).allMatch(f -> !f.mends().isEmpty(), "offers a tried mend");
    for (Finding finding : found) {
      for (Mend mend : finding.mends()) {
        Checked.Judged after = judged(checker, made(text, mend.changes()));
        assertThat(count(after, rule.id())).isLessThan(count(before, rule.id()));
        assertThat(stops(after).entrySet())
            .allMatch(e -> e.getValue() <= stops(before).getOrDefault(e.getKey(), 0L));
        assertThat(after.facts().timeline().finish().text())
            .isEqualTo(mend.end().orElse(before.facts().timeline().finish().text()));
        assertThat(made(text, mend.hunks(), 0)).isEqualTo(made(text, mend.changes()).strip());
      }
    }
  }

  private static long count(Checked.Judged judged, String rule) {
    return judged.findings().stream().filter(f -> f.rule().id().equals(rule)).count();
  }

  private static Map<String, Long> stops(Checked.Judged judged) {
    return judged
        .of(Severity.STOP)
        .collect(Collectors.groupingBy(f -> f.rule().id(), Collectors.counting()));
  }

  /** As an editor makes them: from the last to the first, by line and column. */
  private static String made(String text, List<Replacement> changes) {
    List<Replacement> all = new ArrayList<>(changes);
    java.util.Collections.reverse(all);
    all.sort((a, b) -> b.from().compareTo(a.from()));
    StringBuilder made = new StringBuilder(text);
    for (Replacement change : all) {
      made.replace(offset(text, change.from()), offset(text, change.to()), change.text());
    }
    return made.toString();
  }

  private static int offset(String text, Position position) {
    int at = 0;
    for (int line = 1; line < position.line(); line++) {
      at = text.indexOf('\n', at) + 1;
    }
    return at + position.column() - 1;
  }

  /** As a printer makes them: whole lines. */
  private static String made(String text, List<Mend.Hunk> hunks, int first) {
    List<String> lines = new ArrayList<>(text.lines().toList());
    for (int i = hunks.size() - 1; i >= first; i--) {
      Mend.Hunk hunk = hunks.get(i);
      List<String> there = lines.subList(hunk.line() - 1, hunk.line() - 1 + hunk.gone().size());
      assertThat(there).isEqualTo(hunk.gone());
      there.clear();
      lines.addAll(hunk.line() - 1, hunk.come());
    }
    return String.join("\n", lines).strip();
  }

  @Test
  void whatBringsANewStopOrLeavesTheFindingIsNotOffered() {
    Checker checker = CHECKER;
    Example example = Example.packaged("fixing/bath-too-hot");
    Checked.Judged before = judged(checker, example.firingText());
    assertThat(before.findings()).allMatch(f -> f.mends().isEmpty());
    Checked.Judged tried = (Checked.Judged) EditTrials.tried(before, checker);
    assertThat(tried.findings()).extracting(Finding::message).isEqualTo(messages(before));
    Finding hot =
        tried.findings().stream()
            .filter(f -> f.rule().id().equals("fixing/bath-too-hot"))
            .findFirst()
            .orElseThrow();
    assertThat(hot.mends()).hasSize(1);
    assertThat(hot.mends().get(0).hunks().get(0).come().get(0).strip())
        .isEqualTo("temperature: 40 °C");
  }

  /** Or each trial would try in turn whatever its own findings ask for. */
  @Test
  void theLongerAPlanTheFewerOfItsMendsAreTried() throws Exception {
    String accept =
        IntStream.range(0, 4000)
            .mapToObj(i -> "  - {rule: seams/ridge-under-squeegee, because: tried " + i + "}\n")
            .collect(Collectors.joining());
    Checked.Judged judged =
        judged(
            CHECKER, Files.readString(Path.of("plans/first-border.yaml")) + "accept:\n" + accept);
    assertThat(((Checked.Judged) EditTrials.tried(judged, CHECKER)).findings())
        .filteredOn(finding -> !finding.mends().isEmpty())
        .hasSizeBetween(1, 3);
  }

  @Test
  void whatIsTriedTriesNothingItself() {
    String plan = Example.packaged("drying/frame-on-wet-film").firingText();
    Checked.Judged usual = judged(CHECKER, plan);
    Checked.Judged bare = judged(CHECKER.withoutTrials(), plan);
    assertThat(messages(bare)).isEqualTo(messages(usual));
    assertThat(remedies(usual)).anyMatch(remedy -> remedy.contains("the run then ends"));
    assertThat(remedies(bare)).noneMatch(remedy -> remedy.contains("the run then ends"));
  }

  private static List<String> remedies(Checked.Judged judged) {
    return judged.findings().stream().map(Finding::remedy).toList();
  }

  private static List<String> messages(Checked.Judged judged) {
    return judged.findings().stream().map(Finding::message).toList();
  }
}
