package strikeoff.cli;

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
import strikeoff.cli.Scenario.Outcome;

/**
 * What was named and has a mistake, or isn't there, is wrong usage; what was found and has one, and
 * what is there and can't be read, is not: so in every command that asks what judges.
 */
class WhoseMistakeTest {

  @TempDir private Path folder;

  @BeforeEach
  void plan() throws IOException {
    Files.copy(Path.of("plans/first-border.yaml"), folder.resolve("border.yaml"));
    Files.writeString(folder.resolve("broken.yaml"), "studio: [\n");
    Files.createDirectory(folder.resolve("odd.yaml"));
    Files.createDirectories(folder.resolve("rules/house"));
    Files.writeString(folder.resolve("rules/house/r.dslr"), "rule \"r\" when then end");
    Files.writeString(folder.resolve("astray.yaml"), "studio: s\nown rules: nope\n");
    Files.createDirectories(folder.resolve("lost/house"));
    Files.createSymbolicLink(folder.resolve("lost/house/r.dslr"), folder.resolve("nowhere"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          --policy broken.yaml | 2 | broken.yaml:
          --policy astray.yaml | 2 | astray.yaml:2:12: own rules: no folder is called “nope” there
          --policy none.yaml   | 2 | none.yaml: no such file
          --policy odd.yaml    | 4 | odd.yaml: this policy can't be read: it is a folder
          --rules none         | 2 | none: no such folder
          --rules rules        | 2 | rules/house/r.dslr
          --rules lost         | 4 | lost/house/r.dslr: this file can't be read:
          found broken         | 4 | studio.yaml:
          found odd            | 4 | studio.yaml: this policy can't be read: it is a folder
          """)
  void endsAlikeInEveryCommand(String given, int exit, String told) throws IOException {
    String options = given;
    if (given.startsWith("found ")) {
      Files.move(folder.resolve(given.substring(6) + ".yaml"), folder.resolve("studio.yaml"));
      options = "";
    }
    for (String command :
        List.of(
            "rules",
            "explain care/drain",
            "schema plan",
            "schema policy",
            "check border.yaml",
            "compare border.yaml border.yaml")) {
      Outcome outcome = run(command + " " + options);
      assertThat(outcome.exit()).as(command).isEqualTo(exit);
      assertThat(outcome.err().replaceAll("\\s+", " ")).as(command).contains(told);
    }
    Outcome watched = run("watch border.yaml --rounds 1 " + options);
    // A found policy may be mended while the watch goes on.
    assertThat(watched.exit()).isEqualTo(options.isEmpty() ? 0 : exit);
    assertThat(watched.err()).contains(told);
  }

  /** Which rules there are isn't known while one of their files has a mistake. */
  @Test
  void aRuleWhoseFileHasAMistakeIsNotSaidToBeNone() throws IOException {
    Files.writeString(
        folder.resolve("own.yaml"), "studio: s\nown rules: rules\nseverities: {house/r: risk}\n");
    assertThat(run("check border.yaml --policy own.yaml").err())
        .contains("rules/house/r.dslr:1: ")
        .doesNotContain("own.yaml:3");
  }

  private Outcome run(String command) {
    return Scenario.run(folder, Map.of("COLUMNS", "200"), List.of(command.strip().split(" ")));
  }
}
