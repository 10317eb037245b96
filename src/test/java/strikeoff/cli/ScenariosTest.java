package strikeoff.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import strikeoff.cli.Scenario.Outcome;
import strikeoff.cli.text.Plain;

/** Whole runs of the program, each a text file in {@code src/test/resources/scenarios}. */
class ScenariosTest {

  private static final int WIDTH = 80;

  @TempDir private Path folder;

  @TestFactory
  Stream<DynamicTest> everyScenario() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("src/test/resources/scenarios"))) {
      return files.sorted().toList().stream()
          .map(file -> DynamicTest.dynamicTest(file.getFileName().toString(), () -> check(file)));
    }
  }

  private void check(Path file) throws IOException {
    Scenario scenario = Scenario.of(Files.readString(file));
    Path place = Files.createDirectory(folder.resolve(file.getFileName()));
    scenario.lay(place);
    assertThat(scenario.runs()).isNotEmpty();
    for (Scenario.Run run : scenario.runs()) {
      Outcome outcome = Scenario.run(place, scenario.environment(), run.args());
      says(outcome.out(), run.out(), "output of " + run.args());
      says(outcome.err(), run.err(), "errors of " + run.args());
      assertThat(outcome.exit()).as("exit of %s", run.args()).isEqualTo(run.exit());
      if (!scenario.environment().containsKey("COLUMNS")) {
        assertThat((outcome.out() + outcome.err()).lines())
            .allMatch(line -> Plain.columns(line.replaceAll("\u001B\\[[0-9;]*m", "")) <= WIDTH);
      }
    }
  }

  /** Where an expected line ends in an ellipsis, the words of a rule go on as they like. */
  private static void says(String actual, String expected, String what) {
    if (!expected.contains("\u2026\n")) {
      assertThat(actual).as(what).isEqualTo(expected);
      return;
    }
    String pattern = Pattern.quote(expected).replace("\u2026\n", "\\E(?s:.*?)\n\\Q");
    assertThat(actual).as(what).matches(pattern);
  }
}
