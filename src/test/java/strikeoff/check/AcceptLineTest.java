package strikeoff.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import strikeoff.findings.Finding;
import strikeoff.findings.RuleInfo;
import strikeoff.plan.Acceptance;

/** What a finding says to write, written into the plan as it stands, accepts that finding. */
class AcceptLineTest {

  private static final Checker CHECKER = Checker.builtIn();

  @TestFactory
  Stream<DynamicTest> whatEachRulesExampleIsToldToWrite() {
    return CHECKER.rules().rules().stream()
        .map(RuleInfo::id)
        .filter(id -> !Example.packaged(id).firingText().contains("\naccept:"))
        .map(
            id ->
                DynamicTest.dynamicTest(
                    id,
                    () -> {
                      Example example = Example.packaged(id);
                      pasted(CHECKER.of(example), id, example.firingText());
                    }));
  }

  @Test
  void whatADemoPlanIsToldToWrite() throws IOException {
    String text = Files.readString(Path.of("plans/mistakes/moved-wet.yaml"));
    assertThat(pasted(CHECKER, "drying/", text)).isPositive();
  }

  @Test
  void aStepCountsFromOneAsFindingsDo() {
    String plan = Example.packaged("drying/frame-on-wet-film").firingText();
    Checked.Judged judged = (Checked.Judged) CHECKER.check("plan.yaml", plan);
    Finding found =
        judged.findings().stream()
            .filter(f -> f.rule().id().equals("drying/frame-on-wet-film"))
            .findFirst()
            .orElseThrow();
    String machine = found.place().path().text();
    int step = Integer.parseInt(machine.replaceAll(".*run\\[(\\d+)].*", "$1")) + 1;
    assertThat(found.acceptLine().orElseThrow())
        .startsWith("- {rule: drying/frame-on-wet-film, at: step " + step);
    for (String at : List.of("step " + step, "\"" + machine + "\"", "'step " + step + "'")) {
      String accept =
          "accept:\n  - {rule: " + found.rule().id() + ", at: " + at + ", because: x}\n";
      Checked.Judged again = (Checked.Judged) CHECKER.check("plan.yaml", plan + accept);
      assertThat(again.findings())
          .filteredOn(f -> f.rule().id().equals(found.rule().id()))
          .anyMatch(f -> f.accepted().isPresent());
    }
    // In block form nothing needs quotes.
    String block = "accept:\n  - rule: " + found.rule().id() + "\n    at: " + machine;
    assertThat(CHECKER.check("plan.yaml", plan + block + "\n    because: x\n"))
        .isInstanceOf(Checked.Judged.class);
  }

  @Test
  void aSlipInTheStepIsAnsweredWithTheNearestOne() {
    String plan = Example.packaged("drying/frame-on-wet-film").firingText();
    Checked checked =
        CHECKER.check(
            "plan.yaml", plan + "accept:\n  - {rule: paste/short, at: stepp 1, because: x}\n");
    assertThat(((Checked.Unreadable) checked).problems())
        .singleElement()
        .satisfies(p -> assertThat(p.message()).contains("did you mean “step 1”?"));
  }

  /** Pastes each line by itself; how many of the rule's own there were. */
  private static int pasted(Checker checker, String rule, String plan) {
    Checked.Judged judged = (Checked.Judged) checker.check("plan.yaml", plan);
    int own = 0;
    for (Finding finding : judged.findings()) {
      if (finding.rule().id().startsWith(rule) && finding.acceptLine().isPresent()) {
        own++;
        String text = plan + "\naccept:\n  " + finding.acceptLine().get() + "\n";
        Checked again = checker.check("plan.yaml", text);
        assertThat(again).as(finding.acceptLine().get()).isInstanceOf(Checked.Judged.class);
        assertThat(((Checked.Judged) again).findings())
            .filteredOn(f -> f.rule().equals(finding.rule()))
            .filteredOn(f -> f.message().equals(finding.message()))
            .extracting(f -> f.accepted().map(Acceptance::because).orElse("not accepted"))
            .contains("your reason");
      }
    }
    return own;
  }
}
