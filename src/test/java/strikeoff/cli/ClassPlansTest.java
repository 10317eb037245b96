package strikeoff.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import strikeoff.cli.Scenario.Outcome;

/**
 * Every plan of the Saturday class and of the workshop comes out mended, with a run that the check
 * accepts, or with the fault that no edit and no run cures.
 */
class ClassPlansTest {

  private static final Path HERE = Path.of("").toAbsolutePath();

  /** Exit codes of both commands, and what neither cures, or what stands in the way of a run. */
  private static final String PLANS =
      """
      class/ivo               | 0 | 0 |
      class/mina              | 0 | 0 |
      class/otis              | 0 | 0 |
      class/sunniva           | 0 | 1 | paste/short
      class/tobias            | 0 | 0 |
      class/uma               | 3 | 3 |
      class/vigo              | 1 | 1 | cloth/dye-on-unsuited-fibre
      workshop/saturday/agnes | 0 | 0 |
      workshop/saturday/bram  | 0 | 0 |
      workshop/saturday/cleo  | 0 | 0 |
      workshop/saturday/dario | 0 | 0 |
      workshop/saturday/edda  | 3 | 3 |
      workshop/saturday/falk  | 0 | 1 | paste/short
      workshop/saturday/gerda | 1 | 1 | screens/one-stencil-two-images
      """;

  private static Outcome run(String... words) {
    return Scenario.run(HERE, Map.of("COLUMNS", "1000"), List.of(words));
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = PLANS)
  void isMendedAndArrangedOrToldWhyNot(String plan, int mends, int proposes, String left) {
    String file = "plans/" + plan + ".yaml";
    Outcome mended = run("mend", file, "--risks", "--order", "--layout");
    assertThat(mended.exit()).as(mended.err()).isEqualTo(mends);
    Outcome proposed = run("propose", file, "--effort", "200");
    assertThat(proposed.exit()).as(proposed.err()).isEqualTo(proposes);
    if (proposes == 0) {
      assertThat(proposed.err()).contains("No run of these prints can end before ", "Printable: ");
    } else if (proposes == 1) {
      assertThat(proposed.err())
          .contains(
              "no run is proposed. However its prints are arranged, ", "  " + left + ", line ");
    }
    if (mends == 1) {
      assertThat(mended.err()).contains("left " + left + ", line ");
    }
  }

  @Test
  void noneIsLeftOut() throws IOException {
    Set<String> there = new TreeSet<>();
    for (String folder : List.of("class", "workshop/saturday")) {
      try (Stream<Path> files = Files.list(Path.of("plans", folder))) {
        files
            .map(file -> folder + "/" + file.getFileName())
            .filter(file -> file.endsWith(".yaml") && !file.endsWith("/studio.yaml"))
            .forEach(file -> there.add(file.substring(0, file.length() - 5)));
      }
    }
    assertThat(PLANS.lines().map(line -> line.split(" *\\|")[0])).containsExactlyElementsOf(there);
  }
}
