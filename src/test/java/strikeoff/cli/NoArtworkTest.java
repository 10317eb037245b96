package strikeoff.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strikeoff.artwork.DemoFilms;
import strikeoff.cli.Scenario.Outcome;

/** Commissioned work may be checked without its pictures going out. */
class NoArtworkTest {

  @TempDir private Path folder;

  @BeforeEach
  void curtains() throws IOException {
    Files.copy(Path.of("plans/estuary-curtains.yaml"), folder.resolve("curtains.yaml"));
    DemoFilms.layInto(folder);
  }

  private String page(String page, String... words) throws IOException {
    List<String> command = new ArrayList<>(List.of(words));
    Outcome outcome = Scenario.run(folder, Map.of("COLUMNS", "100"), command);
    assertThat(outcome.exit()).as(outcome.err()).isZero();
    return Files.readString(folder.resolve(page));
  }

  private static void holdsNoPicture(String page) {
    assertThat(page)
        .contains("they are no picture of it")
        .contains("What the films of heron print")
        .contains("films/heron-key.png")
        .doesNotContain("clipPath", "class=\"film\"", "All together");
  }

  @Test
  void checkWatchAndCompareLeavePicturesOutIfTold() throws IOException {
    holdsNoPicture(
        page("r/curtains.html", "check", "curtains.yaml", "--reports", "r", "--no-artwork"));
    holdsNoPicture(
        page(
            "w/curtains.html",
            "watch",
            "curtains.yaml",
            "--rounds",
            "1",
            "--reports",
            "w",
            "--no-artwork"));
    Files.writeString(
        folder.resolve("second.yaml"), Files.readString(folder.resolve("curtains.yaml")));
    holdsNoPicture(
        page(
            "c/before/curtains.html",
            "compare",
            "curtains.yaml",
            "second.yaml",
            "--reports",
            "c",
            "--no-artwork"));
  }

  @Test
  void aCacheKeepsPagesWithAndWithoutApart() throws IOException {
    String[] cached = {"check", "curtains.yaml", "--cache", "k", "--reports", "r"};
    assertThat(page("r/curtains.html", cached)).contains("clipPath");
    List<String> without = new ArrayList<>(List.of(cached));
    without.add("--no-artwork");
    holdsNoPicture(page("r/curtains.html", without.toArray(String[]::new)));
    assertThat(page("r/curtains.html", cached)).contains("clipPath");
  }

  /** An outline would be pages long; the plan's text has no longer figures than these. */
  @Test
  void jsonAndSarifHoldNamesAndFiguresOnly() throws IOException {
    page("r.json", "check", "curtains.yaml", "-f", "json=r.json", "-f", "sarif=r.sarif");
    for (String result : new String[] {"r.json", "r.sarif"}) {
      assertThat(Files.readString(folder.resolve(result)))
          .doesNotContainPattern("m-?\\d+ ?-?\\d+( ?-?\\d+){9}")
          .doesNotContainPattern("(-?\\d+,\\s*){12}");
    }
  }
}
