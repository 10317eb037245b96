package strikeoff.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import strikeoff.check.Checked;
import strikeoff.check.Checker;
import strikeoff.cli.Scenario.Outcome;
import strikeoff.findings.Severity;
import strikeoff.policy.Fibre;
import strikeoff.policy.yaml.PolicyReader;

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

  static Stream<Arguments> everyCombination() {
    List<Arguments> all = new ArrayList<>();
    for (String medium : List.of("dye", "paint")) {
      for (String fibre : PolicyReader.builtIn().fibres().stream().map(f -> f.name()).toList()) {
        for (String colours : List.of("teal", "black,gold", "navy,#d9b77e,#a4532f")) {
          all.add(Arguments.of(medium, fibre, colours, "20 x 20 cm", "3"));
        }
      }
      for (String motif : List.of("2 x 3 in", "45 x 40 cm")) {
        for (String count : List.of("1", "12")) {
          all.add(Arguments.of(medium, "cotton", "gold,navy", motif, count));
        }
      }
    }
    return all.stream();
  }

  /** Nothing is left unsaid: a plan with a stop or a risk tells it, and only such a plan does. */
  @ParameterizedTest
  @MethodSource("everyCombination")
  void aPlanIsSoundOrSaysWhatIsNot(
      String medium, String fibre, String colours, String motif, String count) {
    String[] wishes = {
      "--medium", medium, "--fibre", fibre, "--colours", colours, "--motif", motif, "--count", count
    };
    Outcome outcome = start(wishes);
    Checked checked = Checker.builtIn().check("the plan", outcome.out());
    List<String> found =
        ((Checked.Judged) checked)
            .findings().stream()
                .filter(f -> f.severity() != Severity.ADVICE)
                .map(f -> f.rule().id())
                .distinct()
                .toList();
    if (found.isEmpty()) {
      assertThat(outcome.err().lines().filter(l -> !l.startsWith("Light before dark"))).isEmpty();
    } else {
      found.forEach(rule -> assertThat(outcome.err()).contains(rule));
    }
    // What the fibre itself can't do no plan can mend; everything else is a choice of this command.
    Fibre table = PolicyReader.builtIn().fibre(fibre);
    boolean suited =
        medium.equals("paint") && table.heatHarms().celsius() >= 140
            || medium.equals("dye")
                && table.takesDye().fraction() >= 0.8
                && table.standsSoda().isEmpty();
    // More motifs than a day holds are told; so is paint that dries in the screen meanwhile.
    if (suited && Integer.parseInt(count) <= 3) {
      assertThat(found).isEmpty();
    }
  }

  @Test
  void darkBeforeLightIsTurnedRoundAndSaid() {
    Outcome outcome = start("--medium", "dye", "--colours", "black,gold");
    assertThat(outcome.exit()).isZero();
    assertThat(outcome.err()).isEqualTo("Light before dark: printed as gold, black.\n");
    assertThat(outcome.out().indexOf("\"gold\"")).isLessThan(outcome.out().indexOf("\"black\""));
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
    Files.createSymbolicLink(folder.resolve("link.yaml"), folder.resolve("nowhere"));
    assertThat(start("-o", "link.yaml").err()).contains("link.yaml: this file is there already");
    assertThat(folder.resolve("nowhere")).doesNotExist();
    assertThat(start("-o", "no/such/x.yaml").err().replaceAll("\\s+", " "))
        .contains("x.yaml: this file can't be written: the folder ")
        .contains("no/such isn't there");
  }

  @Test
  void whatAKilledRunLeftHalfWrittenGoes() throws IOException {
    Path half = folder.resolve(".new.yaml.999999999.part");
    Path other = folder.resolve(".other.yaml.999999999.part");
    Files.writeString(half, "plan: A fi");
    Files.writeString(other, "plan: A fi");
    assertThat(start("-o", "new.yaml").exit()).isZero();
    assertThat(half).doesNotExist();
    assertThat(other).exists();
    Files.writeString(half, "plan: A fi");
    Files.writeString(
        folder.resolve("new.yaml"), Files.readString(Path.of("plans/mistakes/short-blue.yaml")));
    assertThat(Scenario.run(folder, Map.of(), List.of("mend", "new.yaml", "--write")).exit())
        .isZero();
    assertThat(half).doesNotExist();
  }

  @Test
  void whatCannotBeWishedIsWrongUsage() {
    assertThat(start("--medium", "ink").exit()).isEqualTo(2);
    assertThat(start("--motif", "20 cm").err()).contains("--motif: a size such as");
    assertThat(start("--count", "0").exit()).isEqualTo(2);
    assertThat(start("--colours", "taupee").exit()).isEqualTo(3);
  }
}
