package strikeoff.packaged;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import strikeoff.artwork.DemoFilms;

/**
 * A search that somebody ends. It is asked to go on for longer than any test, and interrupted once
 * its progress says that it is as far as the test needs it, however slow the machine.
 */
@Timeout(240)
class ProposeIT {

  private static final String FOUND = "the best ends on day";

  @TempDir private Path folder;
  private Path plan;
  private Path out;
  private Path err;

  @BeforeEach
  void files() throws Exception {
    plan = folder.resolve("curtains.yaml");
    Files.copy(Path.of("plans/estuary-curtains.yaml"), plan);
    DemoFilms.layInto(folder);
    out = folder.resolve("out.txt");
    err = folder.resolve("err.txt");
  }

  private Process searching(String... more) throws Exception {
    Program strikeoff =
        Program.in(Program.Way.LAUNCHER, folder).options("-Dstrikeoff.watched=true");
    List<String> words = new ArrayList<>(strikeoff.command());
    words.addAll(List.of("propose", "curtains.yaml", "--seconds", "3600"));
    words.addAll(List.of(more));
    return strikeoff
        .builder(words)
        .redirectOutput(out.toFile())
        .redirectError(err.toFile())
        .start();
  }

  private void untilItTells(Process search, String text) throws Exception {
    while (!Files.readString(err).contains(text)) {
      assertThat(search.isAlive()).as(Files.readString(err)).isTrue();
      Thread.sleep(20);
    }
  }

  private static void interrupt(Process search) throws Exception {
    new ProcessBuilder("kill", "-INT", "" + search.pid()).start().waitFor();
  }

  @Test
  void anInterruptTakesTheBestRunSoFar() throws Exception {
    String before = Files.readString(plan);
    Process search = searching("--write", "--any-order");
    try {
      assumeFalse(Program.ignoresInterrupts(search), "what started this has interrupts ignored");
      untilItTells(search, FOUND);
      assertThat(Files.readString(plan)).isEqualTo(before);
      interrupt(search);
      assertThat(search.waitFor(180, TimeUnit.SECONDS)).isTrue();
      assertThat(search.exitValue()).as(Files.readString(err)).isZero();
      assertThat(Files.readString(err))
          .contains("Ctrl-C ended the search.")
          .contains("No run of these prints can end before");
      assertThat(Program.in(Program.Way.LAUNCHER, folder).run("check", "curtains.yaml").exit())
          .isZero();
    } finally {
      search.destroyForcibly();
    }
  }

  @Test
  void twoEndItAtOnceAndNothingIsWritten() throws Exception {
    String before = Files.readString(plan);
    Process search = searching("--write");
    try {
      assumeFalse(Program.ignoresInterrupts(search), "what started this has interrupts ignored");
      // Its first runs take seconds, so the second interrupt comes while it is still at work.
      untilItTells(search, "0 runs tried");
      interrupt(search);
      Thread.sleep(200);
      interrupt(search);
      assertThat(search.waitFor(180, TimeUnit.SECONDS)).isTrue();
      assertThat(search.exitValue()).as(Files.readString(err)).isEqualTo(130);
      assertThat(Files.readString(err)).doesNotContain("No run of these prints");
      assertThat(Files.readString(plan)).isEqualTo(before);
    } finally {
      search.destroyForcibly();
    }
  }
}
