package strikeoff.packaged;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

@Timeout(60)
class WatchIT {

  @TempDir private Path folder;

  @Test
  void watchesASinglePlanTellsWhatChangedAndEndsAsItSays() throws Exception {
    Path plan = folder.resolve("border.yaml");
    String border = Files.readString(Path.of("plans/first-border.yaml"));
    Files.writeString(plan, border.replaceFirst("amount: \\d+ g", "amount: 15 g"));
    Files.writeString(folder.resolve("other.yaml"), border);
    Program strikeoff = Program.in(Program.Way.LAUNCHER, folder);
    java.util.List<String> words = new java.util.ArrayList<>(strikeoff.command());
    words.addAll(java.util.List.of("watch", "border.yaml"));
    Path out = folder.resolve("out.txt");
    Process watch = strikeoff.builder(words).redirectOutput(out.toFile()).start();
    try {
      until(out, "watching border.yaml");
      Files.writeString(plan, border);
      until(out, "since ");
      String told = Files.readString(out);
      assertThat(told).doesNotContain("other.yaml");
      assertThat(told)
          .containsPattern("(?m)^\\d\\d:\\d\\d:\\d\\d  saved: border.yaml$")
          .containsPattern(
              "(?m)^  since \\d\\d:\\d\\d:\\d\\d: mended 1 \\(1 stop\\), new 0, left \\d$")
          .containsPattern("(?m)^    mended  STOP    paste/short$");
      assumeFalse(Program.ignoresInterrupts(watch), "what started this has interrupts ignored");
      new ProcessBuilder("kill", "-INT", "" + watch.pid()).start().waitFor();
      assertThat(watch.waitFor(20, TimeUnit.SECONDS)).isTrue();
      assertThat(watch.exitValue()).isEqualTo(130);
    } finally {
      watch.destroyForcibly();
    }
  }

  private static void until(Path file, String text) throws Exception {
    while (!Files.readString(file).contains(text)) {
      Thread.sleep(50);
    }
  }
}
