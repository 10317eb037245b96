package strikeoff.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strikeoff.cli.Scenario.Outcome;

/** What a teacher prints and hands back. */
class HandBackTest {

  @TempDir private Path folder;

  @BeforeEach
  void collectAClass() throws IOException {
    for (String name : List.of("mina", "otis", "uma")) {
      Files.createDirectories(folder.resolve("class"));
      Files.copy(
          Path.of("plans/class/" + name + ".yaml"), folder.resolve("class/" + name + ".yaml"));
    }
    Files.createDirectories(folder.resolve("again"));
    Files.copy(Path.of("plans/class-second/otis.yaml"), folder.resolve("again/otis.yaml"));
    Files.writeString(
        folder.resolve("class/studio.yaml"),
        "studio: Saturday class\nmarks:\n  full: 20\n  stop: 4\n  risk: 2\n  advice: 0.5\n");
  }

  private Outcome run(String... words) {
    return Scenario.run(folder, Map.of(), List.of(words));
  }

  private Document page(String name) throws IOException {
    return Jsoup.parse(Files.readString(folder.resolve(name)));
  }

  private List<String> pages(String in) throws IOException {
    try (Stream<Path> all = Files.list(folder.resolve(in))) {
      return all.map(p -> p.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  void eachPupilGetsAPageWithVerdictPointsLinesAndRoomForWords() throws IOException {
    Outcome outcome = run("check", "class", "again", "--reports", "out", "--hand-back");
    assertThat(outcome.err()).isEmpty();
    assertThat(pages("out"))
        .containsExactly(
            "index.html",
            "mina.html",
            "otis-2.html",
            "otis.html",
            "pupil-mina.html",
            "pupil-otis.html",
            "pupil-uma.html",
            "rules.html",
            "uma.html");

    Document otis = page("out/pupil-otis.html");
    assertThat(otis.select(".handed")).hasSize(2);
    assertThat(otis.select(".handed .verdict").eachText())
        .satisfiesExactly(
            first -> assertThat(first).startsWith("Not printable: 1 stop"),
            second -> assertThat(second).startsWith("Printable"));
    assertThat(otis.select(".handed h1 a").eachAttr("href"))
        .containsExactly("otis.html", "otis-2.html");
    assertThat(otis.select(".handed textarea")).hasSize(2);
    String yaml = Files.readString(folder.resolve("class/otis.yaml"));
    assertThat(otis.selectFirst(".handed").select(".finding.stop .quote code").eachText())
        .isNotEmpty()
        .allSatisfy(line -> assertThat(yaml).contains(line));
    assertThat(otis.selectFirst(".handed").select(".right li").eachText())
        .contains("Mesh, frames and squeegees suit the designs.")
        .doesNotContain("No frame comes down on a film that is too wet.");

    assertThat(page("out/index.html").select(".pupils tbody a").eachAttr("href"))
        .containsExactly("pupil-mina.html", "pupil-otis.html", "pupil-uma.html");
    assertThat(page("out/index.html").select(".pupils tbody a").eachText())
        .containsExactly("Mina", "Otis", "Uma");
  }

  @Test
  void pointsAreToldWithWhatTheyWereTakenFor() throws IOException {
    run("check", "class", "--reports", "out", "--hand-back");
    assertThat(page("out/pupil-otis.html").select(".points").text())
        .matches("Points: [\\d.]+ of 20\\. Taken: 4 for “.+”.*\\.");
  }

  @Test
  void whatCannotBeReadIsToldByLineAndColumn() throws IOException {
    run("check", "class", "--reports", "out", "--hand-back");
    Document uma = page("out/pupil-uma.html");
    assertThat(uma.select(".finding h3").eachText())
        .hasSize(3)
        .allSatisfy(place -> assertThat(place).matches("Line \\d+, column \\d+.*"));
    String yaml = Files.readString(folder.resolve("class/uma.yaml"));
    assertThat(uma.select(".finding .quote code").eachText())
        .hasSize(3)
        .allSatisfy(line -> assertThat(yaml).contains(line));
    assertThat(uma.select(".right")).isEmpty();
  }

  @Test
  void namesLeadNowhereAndSayNothingOfTheirOwn() throws IOException {
    List<String> names =
        List.of(
            "../../../up",
            "<img src=x onerror=alert(1)>",
            "mina",
            "MINA",
            "你好",
            "con",
            "\u202Etuo");
    for (int i = 0; i < names.size(); i++) {
      String plan = Files.readString(Path.of("plans/class/mina.yaml"));
      Files.writeString(
          folder.resolve("class/p" + i + ".yaml"),
          plan.replaceFirst(
              "by: Mina", "by: \"" + names.get(i).replace("\u202E", "\\\\u202E") + "\""));
    }
    Files.writeString(
        folder.resolve("class/pupil-mina.yaml"), Files.readString(Path.of("plans/class/ivo.yaml")));
    run("check", "class", "--reports", "out", "--hand-back");
    assertThat(pages(".")).allSatisfy(name -> assertThat(name).doesNotEndWith(".html"));
    assertThat(pages("out"))
        .allSatisfy(name -> assertThat(name).matches("[a-z0-9-]+\\.html"))
        .contains("pupil-mina.html", "pupil-mina-2.html", "pupil-up.html", "pupil-con.html");
    // The plan of that name has its own page.
    assertThat(page("out/pupil-mina.html").select(".handed")).isEmpty();
    for (String page : pages("out")) {
      assertThat(page("out/" + page).select("img, [onerror]")).as(page).isEmpty();
      assertThat(Files.readString(folder.resolve("out/" + page))).doesNotContain("\u202E");
    }
  }

  @Test
  void partsAreHandedBackByWhoJoinsThemWithTheSameBytes() throws IOException {
    run("check", "class", "again", "--reports", "whole", "--hand-back");
    run("check", "class", "again", "--part", "1/2", "--reports", "parts", "-f", "json=1.json");
    run("check", "class", "again", "--part", "2/2", "--reports", "parts", "-f", "json=2.json");
    run("join", "1.json", "2.json", "--reports", "parts", "--hand-back");
    assertThat(pages("parts")).isEqualTo(pages("whole"));
    for (String page : pages("whole")) {
      assertThat(Files.readString(folder.resolve("parts/" + page)))
          .as(page)
          .isEqualTo(Files.readString(folder.resolve("whole/" + page)));
    }
    // Pages of pupils who are gone go.
    run("check", "class/mina.yaml", "--reports", "whole");
    assertThat(pages("whole")).containsExactly("index.html", "mina.html", "rules.html");
  }

  @Test
  void aCachedRunHandsBackTheSame() throws IOException {
    for (String out : List.of("one", "two")) {
      run("check", "class", "--reports", out, "--hand-back", "--cache", "kept");
    }
    assertThat(Files.readString(folder.resolve("two/pupil-otis.html")))
        .isEqualTo(Files.readString(folder.resolve("one/pupil-otis.html")));
  }

  @Test
  void someRulesAloneCallNothingRight() throws IOException {
    run("check", "class", "--reports", "out", "--hand-back", "--only", "drying");
    Document otis = page("out/pupil-otis.html");
    assertThat(otis.select(".right")).isEmpty();
    assertThat(otis.text()).contains("rules");
  }

  @Test
  void itGoesWithReportsOfAWholeBatch() {
    for (String words :
        List.of(
            "check class --hand-back",
            "check class --hand-back --reports out --part 1/2",
            "join none.json --hand-back")) {
      Outcome outcome = run(words.split(" "));
      assertThat(outcome.exit()).as(words).isEqualTo(2);
      assertThat(outcome.err()).contains("--hand-back ");
    }
    assertThat(Arrays.asList(folder.toFile().list())).doesNotContain("out");
  }
}
