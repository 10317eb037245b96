package strikeoff.packaged;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** On a terminal start asks; {@code script} of util-linux makes one. */
class StartIT {

  @TempDir private Path folder;

  /** What bash needs to answer only once it is asked: {@code until_told WORDS TIMES}. */
  private static final String ANSWERING =
      """
      log=$(mktemp)
      until_told() {
        for _ in {1..600}; do
          [ "$(grep -oF -- "$1" "$log" | wc -l)" -ge "$2" ] && return
          sleep 0.1
        done
      }
      """;

  private Program.Told onTerminal(Program.Way way, String answers) throws Exception {
    assumeTrue(Files.isExecutable(Path.of("/usr/bin/script")), "util-linux is not here");
    Program program = Program.in(way, folder);
    String words = String.join(" ", program.command()) + " start";
    return program.bash(
        ANSWERING
            + "{ "
            + answers
            + " } | script -qefc '"
            + words
            + "' \"$log\"; r=$?; rm \"$log\"; exit $r");
  }

  @ParameterizedTest
  @EnumSource
  void onATerminalWithoutOptionsItAsksAndWrites(Program.Way way) throws Exception {
    // The terminal takes a line only once it is asked for, so that none is lost.
    Program.Told told =
        onTerminal(
            way,
            "for i in {1..16}; do until_told '? [' $i; echo; done;"
                + " for i in {1..600}; do [ -e my-plan.yaml ] && break; sleep 0.1; done; sleep 1;");
    assertThat(told.exit()).as(told.out()).isZero();
    assertThat(told.out()).contains("What is the cloth made of? [cotton]", "near edge below");
    assertThat(folder.resolve("my-plan.yaml")).content().startsWith("# A first plan");
    assertThat(Program.in(way, folder).run("check", "my-plan.yaml").exit()).isZero();
  }

  @Test
  void anInterruptLeavesNothing() throws Exception {
    Program.Told told =
        onTerminal(
            Program.Way.LAUNCHER,
            "until_told 'plan called?' 1; echo; until_told 'made of?' 1; printf '\\003'; sleep 2;");
    assertThat(told.out()).contains("What is the cloth made of?");
    assertThat(told.exit()).isNotZero();
    try (var files = Files.list(folder)) {
      assertThat(files).isEmpty();
    }
  }

  @Test
  void withOptionsItIsAsWithoutATerminal() throws Exception {
    assumeTrue(Files.isExecutable(Path.of("/usr/bin/script")), "util-linux is not here");
    Program program = Program.in(Program.Way.LAUNCHER, folder);
    String words = String.join(" ", program.command()) + " start --colours gold";
    Program.Told told = program.bash("sleep 5 | script -qec '" + words + "' /dev/null");
    assertThat(told.exit()).isZero();
    assertThat(told.out()).startsWith("# A first plan:").doesNotContain("[cotton]");
  }

  @Test
  void ofAFolderOfFilms() throws Exception {
    Files.createDirectory(folder.resolve("films"));
    for (String film : new String[] {"reeds-green.png", "reeds-key.png"}) {
      Files.copy(Path.of("plans/films", film), folder.resolve("films").resolve(film));
    }
    Program program = Program.in(Program.Way.LAUNCHER, folder);
    Program.Told told = program.run("start", "--artwork", "films", "-o", "reeds.yaml");
    assertThat(told.exit()).as(told.err()).isZero();
    assertThat(program.run("check", "reeds.yaml").exit()).isZero();
  }
}
