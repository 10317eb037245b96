package strikeoff.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strikeoff.cli.Scenario.Outcome;

/** A plan that takes longer than anybody waits is told with what there is too much of. */
class GivenUpTest {

  private static final int COLOURS = 1000;

  @TempDir private Path folder;

  private static String lines(String each) {
    return IntStream.range(0, COLOURS)
        .mapToObj(i -> each.replace("N", "" + i).replace("RGB", String.format("%06x", i * 7919)))
        .collect(Collectors.joining("\n", "", "\n"));
  }

  @Test
  void itSaysWhatWasTooMuchAndWhatHelps() throws Exception {
    String border = Files.readString(Path.of("plans/first-border.yaml"));
    Files.writeString(
        folder.resolve("many.yaml"),
        border
            .replace(
                "pastes:\n",
                "pastes:\n" + lines("  pN: {medium: dye, group: DCT, colour: \"#RGB\"}"))
            .replace(
                "    separations:\n",
                "    separations:\n" + lines("      - {screen: reeds, paste: pN, covers: 1 %}")));
    Outcome outcome =
        Scenario.run(
            folder,
            Map.of("COLUMNS", "1000"),
            List.of("check", "many.yaml", "--max-seconds", "1", "--format", "json=r.json"));
    assertThat(outcome.exit()).as(outcome.out()).isEqualTo(4);
    assertThat(outcome.out().replaceAll("\\s+", " "))
        .containsPattern(
            "it took more than 1 s and was given up while [a-z ,]+, "
                + "([0-9]+ (KiB of text|impressions, 1001 separations|prints to lay, 1001 separations)).*; "
                + ".*--bound [a-z]+=N .*, and --max-seconds gives it longer");
    assertThat(folder.resolve("r.json")).content().contains("--max-seconds gives it longer");
  }
}
