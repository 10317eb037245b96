package strikeoff.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import strikeoff.cli.Scenario.Outcome;

@Timeout(60)
class WatchTest {

  @TempDir private Path folder;

  private CompletableFuture<Outcome> watching(int rounds) {
    return CompletableFuture.supplyAsync(
        () ->
            Scenario.run(
                folder,
                Map.of(),
                List.of("watch", "plans", "--reports", "out", "--rounds", "" + rounds)));
  }

  private void until(String file, String holds) throws IOException, InterruptedException {
    Path path = folder.resolve(file);
    while (!Files.exists(path) || !Files.readString(path).contains(holds)) {
      Thread.sleep(20);
    }
  }

  @Test
  void aSavedPlanIsCheckedAgainAndItsReportsRefreshed() throws Exception {
    Path plans = Files.createDirectory(folder.resolve("plans"));
    Files.copy(Path.of("plans/class/ivo.yaml"), plans.resolve("ivo.yaml"));
    Files.copy(Path.of("plans/class/otis.yaml"), plans.resolve("otis.yaml"));
    CompletableFuture<Outcome> watch = watching(3);
    until("out/index.html", "1 of 2 plans are printable.");

    // As an editor saves: a new file takes the old one's name.
    Files.copy(Path.of("plans/class-second/otis.yaml"), folder.resolve("half"));
    Files.move(
        folder.resolve("half"),
        plans.resolve("otis.yaml"),
        java.nio.file.StandardCopyOption.REPLACE_EXISTING);
    until("out/index.html", "2 of 2 plans are printable.");
    Files.createDirectory(plans.resolve("new"));
    Files.copy(Path.of("plans/class/sunniva.yaml"), folder.resolve("half"));
    Files.move(folder.resolve("half"), plans.resolve("new/sunniva.yaml"));
    Outcome outcome = watch.get(50, TimeUnit.SECONDS);

    assertThat(outcome.exit()).isZero();
    assertThat(outcome.err()).isEmpty();
    assertThat(verdicts(outcome.out()))
        .containsExactly(
            "PRINTABLE plans/ivo.yaml",
            "NOT PRINTABLE plans/otis.yaml",
            "PRINTABLE plans/otis.yaml",
            "NOT PRINTABLE plans/new/sunniva.yaml");
    assertThat(Files.readString(folder.resolve("out/index.html")))
        .contains("2 of 3 plans are printable.")
        .contains("href=\"rules.html#");
    assertThat(folder.resolve("out/rules.html")).exists();
  }

  private static List<String> verdicts(String out) {
    return out.lines()
        .filter(line -> line.matches("(NOT )?PRINTABLE .*"))
        .map(line -> line.replaceAll(" +", " ").replaceFirst("\\.yaml.*", ".yaml"))
        .toList();
  }

  @Test
  void whatCannotBeWatchedIsWrongUsage() {
    assertThat(Scenario.run(folder, Map.of(), List.of("watch", "nowhere")).exit()).isEqualTo(2);
    assertThat(Scenario.run(folder, Map.of(), List.of("watch", "--rounds", "0")).exit())
        .isEqualTo(2);
  }
}
