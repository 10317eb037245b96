package strikeoff.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicContainer;
import org.junit.jupiter.api.DynamicNode;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import strikeoff.check.Example.Mark;
import strikeoff.findings.Finding;
import strikeoff.findings.RuleInfo;
import strikeoff.findings.Severity;

/**
 * Every rule against its example: the plan fires exactly the marked rules at exactly the marked
 * lines, and in its near twin the rule is silent.
 */
class ExamplePlansTest {

  private static final Checker CHECKER = Checker.builtIn();

  @TestFactory
  Stream<DynamicNode> everyRule() {
    return CHECKER.rules().rules().stream().map(ExamplePlansTest::both);
  }

  private static DynamicNode both(RuleInfo rule) {
    return DynamicContainer.dynamicContainer(
        rule.id(),
        List.of(
            DynamicTest.dynamicTest(rule.id() + " fires", () -> fires(rule)),
            DynamicTest.dynamicTest(rule.id() + " is silent in the twin", () -> silent(rule))));
  }

  private static void fires(RuleInfo rule) {
    Example example = Example.packaged(rule.id());
    List<Finding> found = findings(rule, example.firingText());
    assertThat(example.marks())
        .as("an example marks where its own rule fires")
        .extracting(Mark::rule)
        .contains(rule.id());
    Set<String> expected = new TreeSet<>();
    example.marks().forEach(mark -> expected.add(told(mark)));
    Set<String> actual = new TreeSet<>();
    for (Finding finding : found) {
      Mark mark = mark(finding);
      // Advice that nobody marked may stand beside the fault that is shown.
      if (finding.severity() != Severity.ADVICE || example.marks().contains(mark)) {
        actual.add(told(mark));
      }
    }
    assertThat(actual).as(() -> words(rule, found)).isEqualTo(expected);
  }

  private static void silent(RuleInfo rule) {
    Example example = Example.packaged(rule.id());
    List<Finding> found = findings(rule, example.twinText());
    assertThat(found)
        .as(() -> words(rule, found))
        .extracting(finding -> finding.rule().id())
        .doesNotContain(rule.id());
    List<String> fresh = new ArrayList<>();
    for (Finding finding : found) {
      if (finding.severity() != Severity.ADVICE && !example.marks().contains(mark(finding))) {
        fresh.add(told(mark(finding)));
      }
    }
    assertThat(fresh).as(() -> words(rule, found)).isEmpty();
  }

  private static List<Finding> findings(RuleInfo rule, String plan) {
    String file = "rules/" + rule.id() + "/example.yaml";
    Checked checked = CHECKER.of(Example.packaged(rule.id())).check(file, plan);
    if (checked instanceof Checked.Unreadable unreadable) {
      StringBuilder problems = new StringBuilder();
      unreadable
          .problems()
          .forEach(
              p ->
                  problems
                      .append("\n")
                      .append(file)
                      .append(":")
                      .append(p.position())
                      .append(" ")
                      .append(p.path())
                      .append(": ")
                      .append(p.message()));
      throw new AssertionError("the plan can't be read:" + problems);
    }
    if (checked instanceof Checked.Failed failed) {
      throw new AssertionError(failed.what() + "\n" + failed.trace());
    }
    Checked.Judged judged = (Checked.Judged) checked;
    assertThat(judged.failedRules()).isEmpty();
    return judged.findings();
  }

  private static Mark mark(Finding finding) {
    return new Mark(finding.rule().id(), finding.place().position().line());
  }

  private static String told(Mark mark) {
    return "line " + mark.line() + ": " + mark.rule();
  }

  private static String words(RuleInfo rule, List<Finding> found) {
    Set<String> words = new LinkedHashSet<>();
    words.add("the example of " + rule.id() + " has these findings:");
    for (Finding finding : found) {
      words.add(told(mark(finding)) + ": " + finding.message() + " | " + finding.remedy());
    }
    return String.join("\n", words);
  }
}
