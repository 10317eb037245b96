package strikeoff.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strikeoff.cli.Scenario.Outcome;
import strikeoff.cli.text.Plain;

/** As a teacher compares what came in twice. */
class CompareTest {

  @TempDir private Path folder;

  private static Outcome run(String... args) {
    return Scenario.run(Path.of("").toAbsolutePath(), Map.of(), List.of(args));
  }

  @Test
  void aClassesHandInsAreComparedInEightyColumns() {
    Outcome outcome = run("compare", "plans/class", "plans/class-second");
    assertThat(outcome.exit()).isEqualTo(1);
    assertThat(outcome.err()).isEmpty();
    assertThat(outcome.out())
        .contains(
            "otis.yaml: printable; was not printable\n",
            "  mended  STOP    drying/frame-on-wet-film\n",
            "  finishes: day 1, 14:30 → day 1, 15:34 (+64 min)\n",
            "ivo.yaml: gone; was printable\n",
            "  The 3 mistakes that kept it from being read are mended; what is new could not",
            "otis.yaml: printable; was not printable: mended 1 (1 stop), new 0, left 0\n",
            "sunniva.yaml: still not printable: mended 1 (1 stop), new 1 (1 stop), left 0\n",
            "5 mended, 3 left, 4 new.\n");
    assertThat(outcome.out().lines()).allMatch(line -> Plain.columns(line) <= 80);
  }

  @Test
  void twoFilesAreVersionsWhateverTheirNames() {
    Outcome outcome = run("compare", "plans/class/otis.yaml", "plans/class/ivo.yaml");
    assertThat(outcome.exit()).isZero();
    assertThat(outcome.out()).startsWith("plans/class/ivo.yaml: printable; was not printable\n");
  }

  @Test
  void nothingChangedIsSaidInTwoLines() {
    Outcome outcome = run("compare", "plans/class", "plans/class", "--fail-on=none");
    assertThat(outcome.exit()).isZero();
    assertThat(outcome.out()).matches("7 plans are as they were.\n0 mended, \\d+ left, 0 new.\n");
  }

  @Test
  void anEarlierRunsJsonStandsForItsPlans() throws IOException {
    String json = folder.resolve("old.json").toString();
    run("check", "plans/class", "-q", "-f", "json=" + json);
    assertThat(run("compare", json, "plans/class-second").out())
        .isEqualTo(run("compare", "plans/class", "plans/class-second").out());
    String page = folder.resolve("c.html").toString();
    Outcome both =
        run("compare", "plans/class", "plans/class-second", "-f", "json", "-f", "html=" + page);
    assertThat(both.out()).startsWith("{\n  \"format\": \"strikeoff.compare/1\"");
    assertThat(Files.readString(Path.of(page))).startsWith("<!doctype html>");
  }

  @Test
  void aBrokenPolicyKeepsOnlyPlansBelowItFromBeingCompared() throws IOException {
    for (String name : List.of("anna", "ben")) {
      Files.createDirectories(folder.resolve(name));
      Files.copy(Path.of("plans/first-border.yaml"), folder.resolve(name + "/" + name + ".yaml"));
    }
    Files.writeString(folder.resolve("anna/studio.yaml"), "studio: Mine\ntabel: 3 m\n");
    Outcome outcome = run("compare", folder.toString(), folder.toString(), "-v");
    assertThat(outcome.exit()).isEqualTo(4);
    assertThat(outcome.err().replaceAll("\\s+", " ")).contains("anna/studio.yaml:2:1: ");
    assertThat(outcome.out()).contains("anna.yaml: still not checked", "ben.yaml: ");
  }

  @Test
  void whatIsNotThereIsWrongUsage() {
    assertThat(run("compare", "plans/class", "nowhere").exit()).isEqualTo(2);
    assertThat(run("compare", "plans/class").exit()).isEqualTo(2);
    assertThat(run("compare", "plans/class", "plans/class", "-f", "sarif").err())
        .contains("no format is called “sarif”");
  }
}
