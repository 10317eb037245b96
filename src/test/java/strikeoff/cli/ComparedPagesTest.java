package strikeoff.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The page of a comparison, with the pages that it compares. */
class ComparedPagesTest {

  @TempDir private Path folder;

  private Scenario.Outcome run(String... words) {
    return Scenario.run(Path.of("").toAbsolutePath(), Map.of(), List.of(words));
  }

  private Document page() throws IOException {
    return Jsoup.parse(Files.readString(folder.resolve("index.html")));
  }

  @Test
  void bothVersionsLieBesideAndAreLinkedTo() throws IOException {
    run("compare", "plans/class", "plans/class-second", "--reports", folder.toString());
    Document page = page();
    List<String> links = page.select(".versions a").eachAttr("href");
    assertThat(links)
        .contains("before/otis.html", "now/otis.html", "before/ivo.html")
        .doesNotContain("now/ivo.html")
        .allSatisfy(link -> assertThat(folder.resolve(link)).exists());
    assertThat(Files.readString(folder.resolve("before/otis.html"))).contains(": not printable<");
    assertThat(Files.readString(folder.resolve("now/otis.html"))).contains(": printable<");
    assertThat(page.selectFirst("h1").text()).isEqualTo("class → class-second");
  }

  @Test
  void whatIsMendedIsCalmAndEachRuleSaysWhatItFinds() throws IOException {
    run("compare", "plans/class", "plans/class-second", "--reports", folder.toString());
    Document page = page();
    assertThat(page.select(".finding.mended h4 bdi").eachText()).isNotEmpty();
    for (org.jsoup.nodes.Element finding : page.select(".finding:has(h4)")) {
      assertThat(finding.select("h4 bdi").text()).matches("[A-Z\\d].{8,}");
      assertThat(finding.select(".behind code").text()).matches("[a-z]+/[a-z-]+");
    }
  }

  @Test
  void namesAreToldNotWhereADiskHoldsThem() throws IOException {
    for (String version : List.of("first", "second")) {
      Files.createDirectories(folder.resolve(version));
      Files.copy(Path.of("plans/class/otis.yaml"), folder.resolve(version + "/otis.yaml"));
    }
    run(
        "compare",
        folder.resolve("first/otis.yaml").toString(),
        folder.resolve("second/otis.yaml").toString(),
        "--reports",
        folder.toString());
    Document page = page();
    assertThat(page.selectFirst("h1").text()).isEqualTo("first/otis.yaml → second/otis.yaml");
    assertThat(page.outerHtml()).doesNotContain(folder.toString());
  }

  @Test
  void jsonHasNoPages() throws IOException {
    String json = folder.resolve("old.json").toString();
    String pages = folder.resolve("pages").toString();
    run("check", "plans/class", "-q", "--reports", pages, "-f", "json=" + json);
    run("compare", json, "plans/class-second", "--reports", folder.toString());
    assertThat(page().select(".versions a").eachAttr("href"))
        .isNotEmpty()
        .allSatisfy(link -> assertThat(link).startsWith("now/"));
    assertThat(folder.resolve("before")).doesNotExist();
  }

  @Test
  void whatSomebodyElseWroteStays() throws IOException {
    Files.writeString(folder.resolve("index.html"), "mine");
    Scenario.Outcome outcome =
        run("compare", "plans/class", "plans/class-second", "--reports", folder.toString());
    assertThat(outcome.exit()).isEqualTo(4);
    assertThat(outcome.err()).contains("index.html");
    assertThat(Files.readString(folder.resolve("index.html"))).isEqualTo("mine");
  }
}
