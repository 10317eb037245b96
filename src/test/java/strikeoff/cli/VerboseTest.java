package strikeoff.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import strikeoff.cli.Scenario.Outcome;
import strikeoff.cli.text.Plain;

/** What {@code --verbose} tells beyond the usual, without holding the words of single defaults. */
class VerboseTest {

  private static final Path HERE = Path.of("").toAbsolutePath();

  @Test
  void tellsReasonsSourcesFiguresAndAssumptions() {
    Outcome usual = run("check", "plans/first-border.yaml");
    Outcome verbose = run("check", "--verbose", "plans/first-border.yaml");
    assertThat(usual.out()).doesNotContain("Why: ", "Source: ", "Figures", "Assumed");
    assertThat(verbose.out())
        .contains("    Why: ", "    Source: ", "  Figures\n", "  Assumed, since the plan")
        .containsPattern("(?m)^    impressions +7$")
        .containsPattern("(?m)^    starts +day 1, 09:00$")
        .containsPattern("(?m)^    humidity of the room +50 %");
    assertThat(verbose.exit()).isEqualTo(usual.exit());
  }

  /** Seven screens, five pastes, seven separations: told once each. */
  @Test
  void tellsADefaultOnceHoweverOftenItWasTaken() {
    Outcome verbose = run("check", "--verbose", "plans/estuary-curtains.yaml");
    List<String> names =
        verbose
            .out()
            .substring(verbose.out().indexOf("  Assumed"))
            .lines()
            .skip(1)
            .filter(line -> line.matches(" {4}\\S.*"))
            .map(line -> line.trim().split(" {2,}")[0])
            .toList();
    assertThat(names).isNotEmpty().doesNotHaveDuplicates();
    assertThat(verbose.out()).containsPattern("width of the frame's rail +4 cm, in 7 places");
  }

  @Test
  void keepsToTheColumnsOfTheTerminal() {
    for (int columns : new int[] {40, 60, 80, 132}) {
      Outcome outcome =
          Scenario.run(
              HERE, Map.of("COLUMNS", "" + columns), List.of("check", "-v", "plans/class"));
      assertThat(outcome.out().lines())
          .filteredOn(line -> !line.contains(".yaml:"))
          .allMatch(line -> Plain.columns(line) <= columns);
    }
  }

  @Test
  void colourIsAddedAndNothingElse() {
    Outcome plain = run("check", "plans");
    Outcome coloured = run("check", "--color", "always", "plans");
    assertThat(plain.out()).doesNotContain("\u001B");
    assertThat(coloured.out()).contains("\u001B[");
    assertThat(coloured.out().replaceAll("\u001B\\[[0-9;]*m", "")).isEqualTo(plain.out());
  }

  private static Outcome run(String... args) {
    return Scenario.run(HERE, Map.of(), List.of(args));
  }
}
