package strikeoff.report.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.UnaryOperator;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import strikeoff.report.HtmlReport;
import strikeoff.report.json.SchemaCheck;
import strikeoff.report.outcome.DemoResults;
import strikeoff.report.outcome.Found;
import strikeoff.report.outcome.Outcome;

class ComparisonTest {

  private static final Comparison CLASS =
      Comparison.of(
          DemoResults.only(hands("class", "ivo", "otis", "sunniva", "tobias", "uma", "vigo")),
          DemoResults.only(hands("class-second", "otis", "sunniva", "tobias", "uma", "vigo")));

  private static String text(String file) {
    try {
      return Files.readString(Path.of("plans/" + file + ".yaml"));
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  private static Outcome[] hands(String folder, String... names) {
    Outcome[] plans = new Outcome[names.length];
    for (int i = 0; i < names.length; i++) {
      plans[i] =
          DemoResults.of(i + 1, folder + "/" + names[i] + ".yaml", text(folder + "/" + names[i]));
    }
    return plans;
  }

  private static PlanChange of(String name) {
    return CLASS.plans().stream()
        .filter(p -> p.name().equals(name + ".yaml"))
        .findFirst()
        .orElseThrow();
  }

  private static PlanChange changed(String file, UnaryOperator<String> edit) {
    return Comparison.of(
            DemoResults.only(DemoResults.of(1, "a.yaml", text(file))),
            DemoResults.only(DemoResults.of(1, "b.yaml", edit.apply(text(file)))))
        .plans()
        .get(0);
  }

  private static List<String> rules(List<Found> findings) {
    return findings.stream().map(Found::rule).toList();
  }

  @Test
  void theSecondHandInsShowWhatTheyMendedAndBroke() {
    assertThat(rules(of("otis").mended())).containsExactly("drying/frame-on-wet-film");
    assertThat(of("otis").verdict()).isEqualTo("printable; was not printable");
    assertThat(rules(of("tobias").mended())).containsExactly("fixing/heat-set-too-early");
    assertThat(rules(of("vigo").mended()))
        .containsExactly("cloth/dye-on-unsuited-fibre", "drying/frame-on-wet-neighbour");
    assertThat(of("ivo").verdict()).isEqualTo("gone; was printable");
    assertThat(of("uma").verdict()).isEqualTo("not printable; was unreadable");
  }

  /** The same rule at another paste is another fault: one is mended, one is new. */
  @Test
  void oneRuleAtTwoPlacesIsTwoFaults() {
    PlanChange sunniva = of("sunniva");
    assertThat(sunniva.mended())
        .extracting(Found::key)
        .containsExactly("paste/short at pastes.pale sand.amount");
    assertThat(sunniva.fresh())
        .extracting(Found::key)
        .contains("paste/short at pastes.rust.amount");
    assertThat(sunniva.figures())
        .containsExactly(
            new Change("mixed pale sand", "12 g", "125 g", "+113 g"),
            new Change("mixed rust", "115 g", "8 g", "−107 g"));
  }

  /** Tobias lets the paint dry through before the iron, and the run ends so much later. */
  @Test
  void theFinishMovesByTheWaitThatWasAdded() {
    assertThat(of("tobias").figures())
        .contains(
            new Change("finishes", "day 1, 14:30", "day 1, 15:34", "+64 min"),
            new Change("waiting", "2 h 30 min", "3 h 34 min", "+64 min"));
  }

  @Test
  void findingsAreKnownAgainWhereverTheirLinesStand() {
    for (String file : List.of("class/otis", "mistakes/paint-for-dye", "mistakes/soda-in-paste")) {
      PlanChange change =
          changed(
              file,
              plan ->
                  "# One line\n# and another.\n" + plan.replace("run:\n", "run:\n\n  # Now.\n"));
      assertThat(change.left()).as(file).isNotEmpty();
      assertThat(change.mended()).as(file).isEmpty();
      assertThat(change.fresh()).as(file).isEmpty();
      assertThat(change.same()).as(file).isTrue();
    }
  }

  @Test
  void aStepPutBeforeOthersMakesNoFaultOfThemNew() {
    PlanChange change =
        changed("class/otis", plan -> plan.replace("  - print:", "  - dry: 5 min\n  - print:"));
    assertThat(rules(change.left())).contains("drying/frame-on-wet-film");
    assertThat(rules(change.fresh())).doesNotContain("drying/frame-on-wet-film");
  }

  @Test
  void aSmallerSeriesShowsInLaysAndPaste() {
    PlanChange change = changed("class/otis", plan -> plan.replace("series: 3", "series: 2"));
    assertThat(change.figures())
        .contains(
            new Change("placements", "3", "2", "−1"),
            new Change("lays", "6", "4", "−2"),
            new Change("lays of shell ribs", "3", "2", "−1"));
    assertThat(change.figures()).extracting(Change::name).contains("need of rust");
  }

  @Test
  void whatCannotBeReadAnyMoreMendsNothing() {
    PlanChange change = changed("class/otis", plan -> plan.replace("run:", "runn:"));
    assertThat(change.mended()).isEmpty();
    assertThat(change.mistakes()).isNotEmpty();
    assertThat(change.verdict()).isEqualTo("unreadable; was not printable");
  }

  @Test
  void theJsonIsValidByItsSchema() throws IOException {
    try (InputStream in = CompareJson.class.getResourceAsStream("compare-schema.json")) {
      SchemaCheck check = SchemaCheck.of(new String(in.readAllBytes(), StandardCharsets.UTF_8));
      String json = CompareJson.text(CLASS);
      assertThat(check.json(json)).isEmpty();
      assertThat(check.json(CompareJson.text(Comparison.of(DemoResults.all(), DemoResults.only()))))
          .isEmpty();
      assertThat(check.json(json.replace("\"mended\"", "\"mendet\""))).isNotEmpty();
    }
  }

  @Test
  void thePageHoldsEachPlanAndNothingHostile() {
    Document page = Jsoup.parse(HtmlReport.comparison(CLASS));
    assertThat(page.select("section")).hasSameSizeAs(CLASS.plans());
    assertThat(page.select(".finding"))
        .hasSize((int) (CLASS.mended() + CLASS.left() + CLASS.fresh()));
    assertThat(page.text()).contains("+64 min", "printable; was not printable");
    Document hostile =
        Jsoup.parse(HtmlReport.comparison(Comparison.of(DemoResults.only(), DemoResults.all())));
    assertThat(hostile.select("b")).isEmpty();
    assertThat(hostile.text()).contains("<b a=\"x\">&amp;]]>");
  }
}
