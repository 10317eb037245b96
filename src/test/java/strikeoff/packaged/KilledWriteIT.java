package strikeoff.packaged;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A program that is killed while it changes a file in place leaves the old one or the new one,
 * whole. When it writes no one can say from outside, so it is killed at moments that are spread
 * over how long it takes, and more of them about its end.
 */
@Timeout(600)
class KilledWriteIT {

  private static final int KILLS = 10;

  /** From this part of its time on it is about to write. */
  private static final double LATE = 0.7;

  @TempDir private Path folder;
  private Path plan;
  private String before;

  private void plan(String temperature) throws IOException {
    plan = folder.resolve("border.yaml");
    // A long comment takes time to write.
    before =
        Files.readString(Path.of("plans/first-border.yaml"))
                .replace("temperature: 30 °C", temperature)
            + ("# " + "reeds and shells ".repeat(40) + "\n").repeat(1_000);
    Files.writeString(plan, before);
  }

  private Process begun(List<String> command) throws IOException {
    Program strikeoff = Program.in(Program.Way.LAUNCHER, folder);
    List<String> words = new ArrayList<>(strikeoff.command());
    words.addAll(command);
    return strikeoff
        .builder(words)
        .redirectOutput(ProcessBuilder.Redirect.DISCARD)
        .redirectError(ProcessBuilder.Redirect.DISCARD)
        .start();
  }

  private List<String> halves() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .map(file -> file.getFileName().toString())
          .filter(name -> name.endsWith(".part"))
          .toList();
    }
  }

  @ParameterizedTest
  @CsvSource({
    "temperature: 70 °C, mend border.yaml --write",
    "temperature: 30 °C, propose border.yaml --effort 10 --write"
  })
  void theFileIsTheOldOneOrTheNewOne(String temperature, String command) throws Exception {
    plan(temperature);
    List<String> words = List.of(command.split(" "));
    long begun = System.nanoTime();
    assertThat(begun(words).waitFor()).isZero();
    long takes = System.nanoTime() - begun;
    String after = Files.readString(plan);
    assertThat(after).isNotEqualTo(before);
    for (int i = 0; i < KILLS; i++) {
      Files.writeString(plan, before);
      double share = i % 4 == 0 ? (double) i / KILLS : LATE + 0.4 * i / KILLS;
      Process process = begun(words);
      process.waitFor((long) (takes * share), TimeUnit.NANOSECONDS);
      process.destroyForcibly();
      process.waitFor();
      assertThat(Files.readString(plan))
          .as("killed after %s of its time", share)
          .isIn(before, after);
      assertThat(halves()).hasSizeLessThanOrEqualTo(1);
    }
    Files.writeString(plan, before);
    assertThat(begun(words).waitFor()).isZero();
    assertThat(Files.readString(plan)).isEqualTo(after);
    assertThat(halves()).isEmpty();
  }

  /**
   * One that was killed in the middle of its writing, which kills from outside hardly ever meet.
   */
  @Test
  void theHalfOfAKilledRunGoesWithTheNextOne() throws Exception {
    plan("temperature: 70 °C");
    Process dead = begun(List.of("--version"));
    dead.waitFor();
    Path half = folder.resolve(".border.yaml." + dead.pid() + ".part");
    Files.writeString(half, before.substring(0, 100));
    Path other = folder.resolve(".other.yaml." + dead.pid() + ".part");
    Files.writeString(other, "not ours");
    assertThat(begun(List.of("mend", "border.yaml", "--write")).waitFor()).isZero();
    assertThat(half).doesNotExist();
    assertThat(other).exists();
  }
}
