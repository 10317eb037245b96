package strikeoff.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import strikeoff.care.Caution;
import strikeoff.care.Hazard;
import strikeoff.check.Checked;
import strikeoff.check.Checker;
import strikeoff.day.facts.RunFigures;
import strikeoff.day.facts.TableDay;
import strikeoff.day.facts.Timeline;
import strikeoff.speech.HazardSpeech;
import strikeoff.units.Span;

/** What a page says of the run in one place it says in all of them. */
class PagesAgreeTest {

  private static final Checker CHECKER = Checker.builtIn();

  @TestFactory
  Stream<DynamicTest> timesAndSetsAgreeOnEveryDemoPage() throws IOException {
    try (Stream<Path> files = Files.walk(Path.of("plans"))) {
      List<Path> plans = files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList();
      return plans.stream()
          .map(file -> CHECKER.check(file, file.getFileName().toString()))
          .filter(Checked.Judged.class::isInstance)
          .map(Checked.Judged.class::cast)
          .filter(judged -> !judged.facts().timeline().impressions().isEmpty())
          .map(judged -> DynamicTest.dynamicTest(judged.file(), () -> agrees(judged)));
    }
  }

  private static void agrees(Checked.Judged judged) {
    Document page = Jsoup.parse(HtmlReport.plan(judged));
    Timeline run = judged.facts().timeline();
    List<TableDay> days =
        run.evidence().stream()
            .filter(RunFigures.class::isInstance)
            .flatMap(f -> ((RunFigures) f).days().stream())
            .toList();
    assertThat(fact(page, "Starts")).startsWith(run.start().text());
    String finish = run.finish().text();
    assertThat(fact(page, "Ends")).startsWith(finish);
    double work = days.stream().mapToDouble(d -> d.handsOn().minutes()).sum();
    double waiting = days.stream().mapToDouble(d -> d.waiting().minutes()).sum();
    assertThat(fact(page, "Work")).isEqualTo(new Span(work).text());
    assertThat(fact(page, "Waiting")).isEqualTo(new Span(waiting).text());

    List<Element> rows = rows(page, "Work ends");
    assertThat(rows).hasSameSizeAs(days);
    String lastWork = rows.get(rows.size() - 1).child(2).text();
    String day = "day " + days.get(days.size() - 1).day();
    assertThat(fact(page, "Ends"))
        .as("the last day's work ends with the run, or it is said when")
        .satisfiesAnyOf(
            ends -> assertThat(ends).startsWith(day + ", " + lastWork),
            ends -> assertThat(ends).contains("work ends " + lastWork),
            ends -> assertThat(ends).contains("work ends " + day + ", " + lastWork));

    cautionsAgree(judged, page);
    assertThat(rows(page, "Table left").stream().map(r -> r.child(0).text()).distinct())
        .hasSize(Integer.parseInt(fact(page, "Sets")));
  }

  /** Each caution stands on the page and on the sheets of its steps, and no other does. */
  private static void cautionsAgree(Checked.Judged judged, Document page) {
    List<Caution> cautions = judged.facts().care().cautions();
    String care = page.select(".cautions").text();
    String sheets = page.select(".sheet .mind").text();
    for (Hazard hazard : Hazard.values()) {
      boolean there = cautions.stream().anyMatch(c -> c.hazard() == hazard);
      assertThat(care.contains(HazardSpeech.text(hazard)))
          .as("%s on the page", hazard)
          .isEqualTo(there);
      assertThat(sheets.contains(HazardSpeech.brief(hazard)))
          .as("%s on a sheet", hazard)
          .isEqualTo(there);
    }
    page.select(".sheet").stream()
        .forEach(
            sheet -> assertThat(sheet.text()).contains("The safety data sheets of dyes, paints"));
  }

  private static String fact(Document page, String name) {
    return page.select("dt").stream()
        .filter(dt -> dt.text().equals(name))
        .findFirst()
        .map(Element::nextElementSibling)
        .map(Element::text)
        .orElseThrow();
  }

  private static List<Element> rows(Document page, String heading) {
    Optional<Element> table =
        page.select("table").stream()
            .filter(t -> t.select("thead th").eachText().contains(heading))
            .findFirst();
    return table.orElseThrow().select("tbody tr");
  }

  private static final String FAR =
      """
      plan: Far along the cloth
      cloth: {length: 4 m, width: 60 cm, washed: yes}
      table: {length: 1.2 m, width: 1.2 m}
      handling: {lay: 10.00001 s}
      screens:
        star: {frame: 44 x 44 cm, image: 20 x 20 cm, mesh: 43/cm}
      pastes:
        ink: {medium: paint, colour: black, mixed before: 1 h}
      designs:
        star: {size: 20 x 20 cm, separations: [{screen: star, paste: ink, covers: 40 %}]}
      placements:
        stars: {design: star, at: "300 cm, 20 cm"}
      run:
        - print: stars
      """;

  /** Its frame begins at 288 cm; all of the cloth's 60 cm lie on the table. */
  @Test
  void theFirstTableIsDrawnWhereTheClothIsLaidAndTheSheetSaysWhere() {
    Checked.Judged far = (Checked.Judged) CHECKER.check("far.yaml", FAR);
    Document page = Jsoup.parse(HtmlReport.plan(far));
    assertThat(page.select("rect.table")).extracting(r -> r.attr("x")).containsExactly("2880");
    assertThat(page.select(".sheet").text()).contains("the cloth's mark of 288 cm at the table's");
  }

  /** A hundredth of a millisecond more than 10 s is 10 s: 10 + 2 · 10 + 10 s from 9:15. */
  @Test
  void noTimeIsRoundedUpToTheNextSecond() {
    Checked.Judged far = (Checked.Judged) CHECKER.check("far.yaml", FAR);
    assertThat(far.facts().timeline().impressions().get(0).lifted().seconds())
        .isEqualTo((9 * 60 + 15) * 60 + 40);
  }
}
