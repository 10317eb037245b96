package strikeoff.packaged;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class StandardInputIT {

  @TempDir private Path folder;

  @BeforeEach
  void plan() throws Exception {
    Files.copy(Path.of("plans/first-border.yaml"), folder.resolve("border.yaml"));
  }

  @ParameterizedTest
  @EnumSource
  void aPlanComesFromWhereverAShellTakesIt(Program.Way way) throws Exception {
    Program.Told told =
        Program.in(way, folder)
            .bash(
                """
                cat border.yaml | strikeoff check - --verdicts
                strikeoff check - --verdicts <<< "$(cat border.yaml)"
                strikeoff check - --verdicts < border.yaml
                cat border.yaml | strikeoff check /dev/stdin --verdicts
                strikeoff check <(cat border.yaml) --verdicts
                strikeoff check /proc/self/fd/5 --verdicts 5< <(cat border.yaml)
                mkfifo pipe && { cat border.yaml > pipe & strikeoff check - --verdicts < pipe; }
                """);
    assertThat(told.err()).isEmpty();
    assertThat(told.out().lines())
        .hasSize(7)
        .allMatch(line -> line.matches("PRINTABLE +(-|/dev/stdin|/\\w+/.*fd/\\d+): .*"));
  }

  /**
   * It would be waited for until the plan is given up, and one that a class hands in has no end.
   */
  @ParameterizedTest
  @EnumSource
  void aPipeThatAShellFoundAmongPlansIsNamedAtOnce(Program.Way way) throws Exception {
    Program strikeoff = Program.in(way, folder);
    Program.Told told =
        strikeoff.bash(
            "mkfifo pipe.yaml; SECONDS=0; strikeoff check *.yaml --verdicts; e=$?;"
                + " ((SECONDS < 20)) || echo late; exit $e");
    assertThat(told.out()).startsWith("PRINTABLE      border.yaml: ").doesNotContain("late");
    assertThat(told.err()).isEqualTo("strikeoff: pipe.yaml: it is a pipe or a device\n");
    assertThat(told.exit()).isEqualTo(4);
    for (String reads :
        List.of(
            "check border.yaml --policy pipe.yaml", "join pipe.yaml", "rules --policy pipe.yaml")) {
      Program.Told other = strikeoff.bash("strikeoff " + reads);
      assertThat(other.errWords())
          .startsWith("strikeoff: pipe.yaml: this ")
          .contains("can't be read: it is a pipe or a device");
    }
  }

  /** A file that may grow no more breaks off in the middle. */
  @Test
  void whatIsWrittenGoesWhereAShellSaysAndIsWholeOrNotThere() throws Exception {
    Program strikeoff = Program.in(Program.Way.LAUNCHER, folder);
    Program.Told told =
        strikeoff.bash(
            """
            strikeoff check border.yaml --verdicts -f junit=>(cat > read.xml)
            strikeoff check border.yaml --verdicts -f junit=/dev/stdout | cat
            (ulimit -f 1; strikeoff start -o s.yaml) || echo $?
            """);
    assertThat(told.out()).contains("<testsuites>").endsWith("4\n");
    assertThat(told.err()).startsWith("strikeoff: s.yaml: this file can't be written: ");
    assertThat(strikeoff.bash("ls -A | grep s.yaml; cat read.xml").out()).startsWith("<?xml");
  }

  @ParameterizedTest
  @EnumSource
  void whereNothingIsHandedInThatIsSaid(Program.Way way) throws Exception {
    Program strikeoff = Program.in(way, folder);
    Program.Told closed = strikeoff.bash("strikeoff check - --verdicts <&-");
    assertThat(closed.out())
        .isEqualTo("NOT CHECKED    -: the file can't be read: standard input is closed\n");
    assertThat(closed.exit()).isEqualTo(4);
    for (String name : List.of("/dev/stdin", "/dev/fd/0", "/proc/self/fd/0", "/dev/../dev/stdin")) {
      Program.Told named =
          strikeoff.bash("strikeoff check border.yaml " + name + " --verdicts <&-");
      assertThat(named.out()).startsWith("PRINTABLE      border.yaml: ").hasLineCount(1);
      assertThat(named.errWords())
          .isEqualTo("strikeoff: " + name + ": nothing is handed over here, or it was closed");
      assertThat(named.exit()).isEqualTo(4);
    }
    Program.Told empty = strikeoff.bash("strikeoff check - --verdicts < /dev/null");
    assertThat(empty.out()).startsWith("UNREADABLE     -: ");
    assertThat(empty.exit()).isEqualTo(3);
  }
}
