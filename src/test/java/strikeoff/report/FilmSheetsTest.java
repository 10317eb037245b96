package strikeoff.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import strikeoff.check.Checker;

/** What a page shows of films. */
class FilmSheetsTest {

  private static final Path CURTAINS = Path.of("plans/estuary-curtains.yaml");

  private static Document page(Path beside, String text) {
    Checker checker = Checker.builtIn().beside(beside);
    return Jsoup.parse(HtmlReport.plan(checker.check("plan.yaml", text)));
  }

  private static Document curtains(String find, String put) throws IOException {
    String text = Files.readString(CURTAINS);
    assertThat(text).contains(find);
    return page(CURTAINS, text.replace(find, put));
  }

  @Test
  void eachDesignShowsItsFilmsAndAllOfThemTogether() throws IOException {
    Document page = curtains("plan:", "plan:");
    Element films = page.selectFirst("#films");
    assertThat(films.select("h3").eachText())
        .containsExactly("heron, 34 cm by 52 cm", "reeds, 30 cm by 22 cm", "shell, 8 cm by 7 cm");
    assertThat(films.selectFirst(".films").select("strong").eachText())
        .containsExactly("1 rust", "2 slate blue", "3 ink (key)", "All together");
    // ImageMagick 6 counts 17.465 % of the film's points as black: 308.8 of 1768 cm².
    assertThat(films.selectFirst(".films").text()).contains("308.8 cm² (17.5 %)");
    assertThat(films.select("svg[aria-label]")).hasSameSizeAs(films.select("svg"));
    assertThat(films.select(".off, circle")).isEmpty();
    assertThat(films.select("caption").eachText())
        .contains("What the films of shell print", "How the colours of reeds meet");
    assertThat(films.text()).contains("films/reeds-key.png");
  }

  @Test
  void whatLiesOverAnotherColourIsNotToldAsMeetingNowhere() throws IOException {
    Element films = curtains("plan:", "plan:").selectFirst("#films");
    Element heron = films.select("caption:contains(colours of heron)").first().parent();
    assertThat(heron.select("tr:contains(rust and ink)").text())
        .containsPattern("(lies inside|over each other) ?[\\d.]+ (mm|cm)²");
    assertThat(films.select("caption:contains(films of heron)").first().parent().text())
        .containsPattern("mm ?over [\\d.]+ (cm|m), for instance at [\\d.]+ (cm|mm) from the left");
    assertThat(films.text())
        .contains("the bar is 5 mm long")
        .containsPattern("[\\d.]+ to [\\d.]+ cm from the left, ")
        .doesNotContainPattern("[\\d.]+ mm to [\\d.]+ cm from");
  }

  @Test
  void whatThePlanSaysOtherwiseStandsBesideIt() throws IOException {
    Document page =
        curtains("artwork: films/heron-blue.png", "artwork: films/heron-blue.png, covers: 38 %");
    assertThat(page.select("#films .off").eachText())
        .containsExactly("the plan says 671.8 cm² (38 %)");
    assertThat(page.select("#films table").first().text()).contains("the plan says 671.8 cm²");
  }

  /** The example's gap runs down the middle of a film of 5 by 5 cm. */
  @Test
  void aFindingIsRingedWhereItLies() throws IOException {
    Path example = Path.of("rules/artwork/gap-fills-in/example.yaml");
    Document page = page(example, Files.readString(example));
    String number =
        page.select(".finding").stream()
            .filter(f -> f.text().contains("artwork/gap-fills-in"))
            .map(f -> f.id().replace("finding-", ""))
            .findFirst()
            .orElseThrow();
    Element ring = page.selectFirst("#films circle.ring");
    assertThat(Double.parseDouble(ring.attr("cx"))).isCloseTo(25, within(0.5));
    assertThat(Double.parseDouble(ring.attr("cy"))).isBetween(5.0, 45.0);
    assertThat(page.select("#films .mark text").eachText()).containsExactly(number);
    assertThat(page.select("#films .legend a").eachAttr("href"))
        .containsExactly("#finding-" + number);
    assertThat(page.select("#films circle.ring")).hasSize(1);
  }

  @Test
  void groundBetweenColoursIsShownFromNear() throws IOException {
    Path example = Path.of("rules/artwork/colours-do-not-meet/example.yaml");
    Document page = page(example, Files.readString(example));
    assertThat(page.select("#films figcaption").eachText())
        .anyMatch(words -> words.contains("0.5 mm of ground lie between them"))
        // The ink lies to the right of the strip, and away from it the strip widens.
        .anyMatch(words -> words.startsWith("ink laid off by 1 mm to the right "));
  }

  @Test
  void anEdgeThatOnlyTouchesIsShownFromNearAndLapsByNothing() throws IOException {
    Path example = Path.of("rules/artwork/colours-butt/example.yaml");
    Document page = page(example, Files.readString(example));
    assertThat(page.select("#films figcaption").eachText())
        .anyMatch(words -> words.contains("0 mm of lap: they only touch here"));
    assertThat(page.select("#films table").text()).contains("0 mm", "3.4 cm");
  }

  @Test
  void whereAFilmPrintsIsToldInOneUnit() throws IOException {
    Path example = Path.of("rules/artwork/colours-butt/example.yaml");
    assertThat(page(example, Files.readString(example)).select("#films table").text())
        .contains("0.5 to 2.5 cm from the left, 0.8 to 4.2 cm from the near edge");
  }

  @Test
  void whatWasTakenForEachFilmIsListed() throws IOException {
    assertThat(curtains("plan:", "plan:").selectFirst("#assumed").text())
        .contains("the resolution of a film", "150/in", "the film's file")
        .contains("the tone of a film that prints", "how a film is looked at");
  }
}
