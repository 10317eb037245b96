package strikeoff.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import strikeoff.findings.Finding;
import strikeoff.findings.RuleInfo;

/** What every rule says on its own example, as far as a machine can hear that it is plain. */
class PlainWordsTest {

  private static final Checker CHECKER = Checker.builtIn();

  /** A plural in brackets, one of many, gaps, doubled stops, what a program says of itself. */
  private static final Pattern CLUMSY =
      Pattern.compile(
          "\\(s\\)"
              + "|(?<![\\d.,–] ?)\\b1 (prints|copies|screens|pairs|films|lays|repeats|columns|motifs|pulls)\\b"
              + "|  |\\.\\.| [.,;:]|\\{|}|NaN|null|not stated|without bound");

  @TestFactory
  Stream<DynamicTest> everyRuleSpeaksPlainly() {
    return CHECKER.rules().rules().stream()
        .map(rule -> DynamicTest.dynamicTest(rule.id(), () -> plain(rule)));
  }

  private static void plain(RuleInfo rule) {
    Example example = Example.packaged(rule.id());
    Checked checked = CHECKER.of(example).check("example.yaml", example.firingText());
    assertThat(checked).isInstanceOf(Checked.Judged.class);
    for (Finding finding : ((Checked.Judged) checked).findings()) {
      if (finding.rule().id().equals(rule.id())) {
        sentence(finding.message());
        sentence(finding.remedy().replaceAll("`[^`]*`", "this"));
      }
    }
    sentence(rule.because());
    assertThat(rule.summary()).doesNotContainPattern(CLUMSY).doesNotEndWith(".");
  }

  private static void sentence(String text) {
    assertThat(text).doesNotContainPattern(CLUMSY).endsWith(".");
  }
}
