package strikeoff.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import strikeoff.cli.Scenario.Outcome;

class StartTest {

  @TempDir private Path folder;

  private Outcome start(String... options) {
    List<String> args = new ArrayList<>(List.of("start"));
    args.addAll(Arrays.asList(options));
    return Scenario.run(folder, Map.of(), args);
  }

  /** Sizes, colours and numbers from small to more than the table shows at once. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "paint | cotton    | teal                    | 20 x 20 cm | 3",
        "paint | linen     | #d9b77e,#a4532f,#2b3440 | 5 x 8 cm   | 8",
        "paint | polyester | #a4532f                 | 45 x 40 cm | 1",
        "dye   | cotton    | teal                    | 20 x 20 cm | 3",
        "dye   | linen     | #d9b77e,#a4532f,#2b3440 | 45 x 40 cm | 8",
        "dye   | viscose   | gold,navy               | 2 x 3 in   | 12",
      })
  void whatItWritesIsPrintable(
      String medium, String fibre, String colours, String motif, String count) {
    Outcome outcome =
        start(
            "--medium",
            medium,
            "--fibre",
            fibre,
            "--colours",
            colours,
            "--motif",
            motif,
            "--count",
            count,
            "--title",
            "A: \"try\" #1 \\ 'x'");
    assertThat(outcome.err()).isEmpty();
    assertThat(outcome.exit()).isZero();
    assertThat(outcome.out()).contains("# ", "series: " + count);
    assertThat(outcome.out().lines().count()).isLessThanOrEqualTo(48);
  }

  @Test
  void whatIsNotPrintableIsWrittenAndTold() {
    Outcome outcome = start("--medium", "dye", "--fibre", "polyester");
    assertThat(outcome.exit()).isEqualTo(1);
    assertThat(outcome.out()).startsWith("# A first plan");
    assertThat(outcome.err()).contains("cloth/dye-on-unsuited-fibre");
  }

  @Test
  void aFileThatIsThereStaysAsItIs() throws IOException {
    assertThat(start("-o", "mine.yaml").exit()).isZero();
    assertThat(Files.readString(folder.resolve("mine.yaml"))).isEqualTo(start().out());
    Files.writeString(folder.resolve("mine.yaml"), "precious");
    assertThat(start("-o", "mine.yaml").exit()).isEqualTo(4);
    assertThat(folder.resolve("mine.yaml")).hasContent("precious");
  }

  @Test
  void whatCannotBeWishedIsWrongUsage() {
    assertThat(start("--medium", "ink").exit()).isEqualTo(2);
    assertThat(start("--motif", "20 cm").err()).contains("--motif: a size such as");
    assertThat(start("--count", "0").exit()).isEqualTo(2);
    assertThat(start("--colours", "taupee").exit()).isEqualTo(3);
  }
}
