package strikeoff.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import strikeoff.artwork.DemoFilms;
import strikeoff.check.Checked;
import strikeoff.check.Checker;
import strikeoff.document.Bounds;
import strikeoff.document.Position;
import strikeoff.document.Problem;
import strikeoff.findings.Finding;
import strikeoff.report.HtmlReport;
import strikeoff.report.json.JsonReading;
import strikeoff.report.json.JsonReport;
import strikeoff.report.outcome.Outcome;
import strikeoff.report.outcome.Results;
import strikeoff.report.sarif.SarifReport;

/** What must hold of any input, however it came about. */
final class Expectations {

  /** Small, so that more inputs are tried; the bounds themselves have tests of their own. */
  static final Bounds BOUNDS =
      Bounds.USUAL.with(
          Map.of("kib", 64, "placements", 400, "steps", 60, "impressions", 1500, "findings", 20));

  private static final Checker CHECKER = Checker.builtIn(BOUNDS).with(DemoFilms.beside());

  private Expectations() {}

  static Checker checker() {
    return CHECKER;
  }

  /** At least one problem, each at a place that is there, in order, and in words. */
  static void told(List<Problem> problems, byte[] input) {
    assertThat(problems).isNotEmpty().isSortedAccordingTo(Problem.ORDER);
    for (Problem problem : problems) {
      within(problem.position(), input);
      assertThat(problem.message()).isNotBlank();
    }
  }

  /** A whole check ends in a verdict with every output, and never in a fault of the tool. */
  static void checked(byte[] plan) {
    Checked checked = CHECKER.check("plan.yaml", new ByteArrayInputStream(plan));
    if (checked instanceof Checked.Failed failed) {
      throw new AssertionError(failed.what() + "\n" + failed.trace());
    }
    if (checked instanceof Checked.Judged judged) {
      assertThat(judged.failedRules()).as("rules that failed").isEmpty();
      assertThat(judged.findings()).isSortedAccordingTo(Finding.ORDER);
    }
    assertThat(HtmlReport.plan(checked)).startsWith("<!doctype html>");
    Results results =
        new Results(
            "0",
            "fuzz",
            Optional.empty(),
            1,
            CHECKER.rules().rules(),
            List.of(Outcome.of(checked, 1, Optional.empty()).supplied(checked)));
    String json = JsonReport.text(results);
    assertThat(JsonReading.of(json)).isInstanceOf(JsonReading.Read.class);
    assertThat(SarifReport.text(results)).isNotBlank();
  }

  private static void within(Position at, byte[] input) {
    int lines = 1;
    for (byte b : input) {
      // As YAML has it, a carriage return may end a line; so this is the most there can be.
      lines += b == '\n' || b == '\r' ? 1 : 0;
    }
    assertThat(at.line()).isBetween(1, lines + 1);
    assertThat(at.column()).isBetween(1, input.length + 2);
  }
}
