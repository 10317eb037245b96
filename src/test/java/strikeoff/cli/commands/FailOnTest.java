package strikeoff.cli.commands;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import strikeoff.cli.Scenario;

class FailOnTest {

  private static final Path BORDER = Path.of("plans/first-border.yaml");

  @TempDir private Path folder;

  private int exit(String... command) {
    return Scenario.run(folder, Map.of(), List.of(command)).exit();
  }

  /** The border has advice alone; with a policy one piece of it becomes a risk or a stop. */
  @BeforeEach
  void plans() throws IOException {
    for (String severity : List.of("advice", "risk", "stop")) {
      Path place = Files.createDirectory(folder.resolve(severity));
      Files.copy(BORDER, place.resolve("border.yaml"));
      Files.writeString(
          place.resolve("studio.yaml"),
          "studio: S\nseverities: {screens/frame-past-selvedge: " + severity + "}\n");
    }
    Path accepted = Files.createDirectory(folder.resolve("accepted"));
    Files.writeString(
        accepted.resolve("border.yaml"),
        Files.readString(BORDER)
            + "accept:\n  - {rule: screens/frame-past-selvedge, because: The table is wide}\n");
    Files.writeString(
        accepted.resolve("studio.yaml"),
        "studio: S\nseverities: {screens/frame-past-selvedge: stop}\n");
    Path broken = Files.createDirectory(folder.resolve("broken"));
    Files.writeString(broken.resolve("border.yaml"), "plan: [\n");
  }

  @ParameterizedTest
  @CsvSource({
    "advice, stop, 0",
    "advice, risk, 0",
    "advice, advice, 1",
    "advice, none, 0",
    "risk, stop, 0",
    "risk, risk, 1",
    "risk, advice, 1",
    "risk, none, 0",
    "stop, stop, 1",
    "stop, risk, 1",
    "stop, advice, 1",
    "stop, none, 0",
    "accepted, stop, 0",
    "accepted, risk, 0",
    "broken, stop, 3",
    "broken, advice, 3",
    "broken, none, 0"
  })
  void whatAPlanHoldsDecides(String place, String failOn, int exit) {
    assertThat(exit("check", place, "-q", "--fail-on", failOn)).isEqualTo(exit);
    exit("check", place, "-q", "-f", "json=" + place + ".json");
    assertThat(exit("join", place + ".json", "--fail-on", failOn)).as("joined").isEqualTo(exit);
    assertThat(exit("compare", place + ".json", place + ".json", "--fail-on", failOn))
        .as("compared")
        .isEqualTo(exit);
  }

  @Test
  void itIsStopsUnlessTold() {
    assertThat(exit("check", "risk")).isZero();
    assertThat(exit("check", "stop")).isEqualTo(1);
  }

  @Test
  void whatTheToolCannotDoCountsAlways() throws IOException {
    Files.writeString(folder.resolve("taken"), "");
    assertThat(exit("check", "stop", "--fail-on", "none", "--reports", "taken")).isEqualTo(4);
    assertThat(exit("check", "nowhere", "--fail-on", "none")).isEqualTo(2);
  }

  @Test
  void helpIsACommandToo() {
    assertThat(Scenario.run(folder, Map.of(), List.of("help", "check")))
        .isEqualTo(Scenario.run(folder, Map.of(), List.of("check", "--help")));
    assertThat(Scenario.run(folder, Map.of(), List.of("help")))
        .isEqualTo(Scenario.run(folder, Map.of(), List.of("--help")));
    assertThat(exit("help", "check")).isZero();
  }
}
