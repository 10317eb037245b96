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
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Plans among the paths that a version control system lists, and what is told of the others. */
class ListedPathsTest {

  private static final String ALL =
      "plans/border.yaml\nREADME.md\nold/gone.yaml\nplans/studio.yaml\ncompose.yaml\n"
          + ".build/pipeline.yml\nplans\n";

  @TempDir private Path desk;

  @BeforeEach
  void lay() throws IOException {
    Files.createDirectories(desk.resolve("plans"));
    Files.createDirectories(desk.resolve(".build"));
    Files.copy(Path.of("plans/first-border.yaml"), desk.resolve("plans/border.yaml"));
    Files.copy(Path.of("plans/mistakes/hot-bath.yaml"), desk.resolve("plans/hot.yaml"));
    Files.writeString(desk.resolve("README.md"), "plan: not really\n");
    Files.writeString(desk.resolve("plans/studio.yaml"), "studio: Ours\n");
    Files.writeString(desk.resolve("compose.yaml"), "services:\n  web: {image: x}\n");
    Files.writeString(desk.resolve(".build/pipeline.yml"), "plan: x\n");
  }

  private Scenario.Outcome check(String list, String... more) {
    List<String> words = new ArrayList<>(List.of("check", "--files-from", "-"));
    words.addAll(List.of(more));
    return Scenario.run(desk, Map.of("COLUMNS", "200"), words, list);
  }

  @Test
  void plansAreCheckedAndTheRestIsTold() {
    Scenario.Outcome outcome = check(ALL, "--verdicts");
    assertThat(outcome.out()).startsWith("PRINTABLE      plans/border.yaml: ").hasLineCount(1);
    assertThat(outcome.err())
        .isEqualTo(
            """
            strikeoff: listed and not there (renamed or deleted?), so not checked: old/gone.yaml
            strikeoff: plans/studio.yaml: a policy, no plan; check the folder to judge all that it holds for anew
            strikeoff: listed and no plans: README.md, compose.yaml, .build/pipeline.yml and plans
            """);
    assertThat(outcome.exit()).isZero();
  }

  @Test
  void zerosPartAsWellAsLines() {
    assertThat(check(ALL.replace('\n', '\0'), "--verdicts")).isEqualTo(check(ALL, "--verdicts"));
    assertThat(check(ALL.replace("\n", "\r\n"), "--verdicts")).isEqualTo(check(ALL, "--verdicts"));
  }

  @Test
  void aFileHoldsTheListToo() throws IOException {
    Files.writeString(desk.resolve("changed.txt"), ALL);
    Scenario.Outcome outcome =
        Scenario.run(
            desk,
            Map.of("COLUMNS", "200"),
            List.of("check", "plans/hot.yaml", "--files-from", "changed.txt", "--verdicts"));
    assertThat(outcome.out())
        .contains("NOT PRINTABLE  plans/hot.yaml", "PRINTABLE      plans/border.yaml")
        .hasLineCount(2);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "\n\n", "\0", "README.md\n"})
  void noPlanAmongThemIsFine(String list) {
    Scenario.Outcome outcome = check(list);
    assertThat(outcome.out()).isEqualTo("0 plans\n");
    assertThat(outcome.exit()).isZero();
  }

  @Test
  void quietTellsWhatIsMissedAndNotWhatIsNoPlan() {
    Scenario.Outcome outcome = check(ALL, "-q");
    assertThat(outcome.out()).isEmpty();
    assertThat(outcome.err()).contains("old/gone.yaml", "a policy").doesNotContain("README.md");
  }

  /** By default git writes such names between quotes, in the bytes of UTF-8. */
  @Test
  void namesThatWereQuotedAreRead() throws IOException {
    Files.copy(desk.resolve("plans/border.yaml"), desk.resolve("plans/br\u00fccke \"1\".yaml"));
    Scenario.Outcome outcome = check("\"plans/br\\303\\274cke \\\"1\\\".yaml\"\n", "--verdicts");
    assertThat(outcome.out()).startsWith("PRINTABLE      plans/br\u00fccke \"1\".yaml: ");
  }

  @Test
  void aPlanWithASlipIsStillAPlan() throws IOException {
    Files.writeString(desk.resolve("slip.yaml"), "plan: [\ncloth: {length: 2 m}\n");
    Files.writeString(desk.resolve("misspelt.yaml"), "plann: A\ncloth: {length: 2 m}\n");
    Files.writeString(desk.resolve("many.yaml"), "kind: a\n---\nkind: b\n");
    Files.writeString(desk.resolve("tagged.yaml"), "a: &x !thing {}\nb: *x\n");
    Scenario.Outcome outcome =
        check("slip.yaml\nmisspelt.yaml\nmany.yaml\ntagged.yaml\n", "--verdicts");
    assertThat(outcome.out().lines().map(line -> line.replaceFirst(":.*", "")))
        .containsExactly("UNREADABLE     slip.yaml", "UNREADABLE     misspelt.yaml");
    assertThat(outcome.err())
        .isEqualTo("strikeoff: listed and no plans: many.yaml and tagged.yaml\n");
    assertThat(outcome.exit()).isEqualTo(3);
  }

  @Test
  void aLinkOutOfTheFolderIsNotFollowed(@TempDir Path elsewhere) throws IOException {
    Files.copy(Path.of("plans/first-border.yaml"), elsewhere.resolve("secret.yaml"));
    Files.createSymbolicLink(desk.resolve("link.yaml"), elsewhere.resolve("secret.yaml"));
    Scenario.Outcome outcome = check("link.yaml\n", "--verdicts");
    assertThat(outcome.out()).isEmpty();
    assertThat(outcome.err())
        .contains("link.yaml: it is a link out of its folder, and is not followed; name it itself");
    assertThat(outcome.exit()).isEqualTo(4);
  }

  @Test
  void aListThatIsNotThereOrTakesTheInputTwiceIsWrongUsage() {
    assertThat(Scenario.run(desk, Map.of(), List.of("check", "--files-from", "none.txt")))
        .isEqualTo(new Scenario.Outcome("", "strikeoff: none.txt: no such file\n", 2));
    assertThat(Scenario.run(desk, Map.of(), List.of("check", "--files-from", "plans")).exit())
        .isEqualTo(4);
    assertThat(check("", "-").exit()).isEqualTo(2);
    assertThat(check("", "-").err()).contains("a plan or a list of paths, not both");
  }

  @Test
  void quietTellsOnlyWhatFails() {
    Scenario.Outcome all =
        Scenario.run(desk, Map.of(), List.of("check", "plans", "-q", "--fail-on", "advice"));
    Scenario.Outcome stops = Scenario.run(desk, Map.of(), List.of("check", "plans", "-q"));
    assertThat(stops.out()).startsWith("NOT PRINTABLE  plans/hot.yaml: ").hasLineCount(1);
    assertThat(stops.exit()).isEqualTo(1);
    assertThat(all.out()).contains(stops.out());
    assertThat(Scenario.run(desk, Map.of(), List.of("check", "plans", "-q", "--fail-on", "none")))
        .isEqualTo(new Scenario.Outcome("", "", 0));
    assertThat(Scenario.run(desk, Map.of(), List.of("check", "plans", "-q", "--verdicts")).exit())
        .isEqualTo(2);
  }
}
