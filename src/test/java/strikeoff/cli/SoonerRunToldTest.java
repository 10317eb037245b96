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

/** A check tells in one line that another run saves half a day. */
class SoonerRunToldTest {

  private static final String TOLD =
      "  A quick look finds a run of the same prints that ends on day 2, 10:35 instead of day 4,"
          + " 10:35: `strikeoff propose` writes it, or a sooner one.\n";

  @TempDir private Path folder;

  @BeforeEach
  void plan() throws IOException {
    Files.copy(Path.of("plans/estuary-curtains.yaml"), folder.resolve("curtains.yaml"));
    DemoFilms.layInto(folder);
  }

  private String check(String... more) {
    List<String> command = new ArrayList<>(List.of("check", "curtains.yaml"));
    command.addAll(List.of(more));
    Scenario.Outcome outcome = Scenario.run(folder, Map.of("COLUMNS", "200"), command);
    assertThat(outcome.exit()).as(outcome.err()).isZero();
    return outcome.out();
  }

  @Test
  void whoLooksAtAPlanIsToldOnce() {
    assertThat(check()).containsOnlyOnce(TOLD);
  }

  @Test
  void whoCountsVerdictsIsNot() {
    assertThat(check("--verdicts")).doesNotContain("quick look");
  }

  @Test
  void aBatchIsNot() throws IOException {
    List<String> more = new ArrayList<>();
    for (int i = 0; i < 3; i++) {
      Files.copy(folder.resolve("curtains.yaml"), folder.resolve(i + ".yaml"));
      more.add(i + ".yaml");
    }
    assertThat(check(more.toArray(String[]::new))).doesNotContain("quick look");
  }

  @Test
  void aStudioSaysWhatIsWorthTelling() throws IOException {
    Files.writeString(
        folder.resolve("studio.yaml"),
        "studio: Village hall\nlimits:\n  time/sooner-run-worth-telling: {value: 30 h, why: The"
            + " hall is ours all week.}\n");
    assertThat(check("--policy", "studio.yaml")).doesNotContain("quick look");
  }
}
