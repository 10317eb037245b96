package strikeoff.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strikeoff.cli.text.Exit;
import strikeoff.cli.text.Outlet;

/** The program as a process of its own. */
class MainTest {

  @TempDir private Path folder;

  @Test
  void writesUtf8WhateverThePlatformsCharset() throws Exception {
    Files.writeString(folder.resolve("heron.yaml"), "plan: Heron\ncloth: {mass: 180 µm}\n");
    Result plain =
        run(Map.of("LC_ALL", "C"), List.of("-Dfile.encoding=US-ASCII", "-Duser.language=tr"));
    assertThat(plain.text()).contains("heron.yaml:2:").contains("“180 µm”").doesNotContain("\r");
    assertThat(plain.exit()).isEqualTo(Exit.UNREADABLE.code());
    Result other = run(Map.of("TZ", "Asia/Kathmandu"), List.of("-Dfile.encoding=UTF-16"));
    assertThat(other.text()).isEqualTo(plain.text());
  }

  @Test
  void resultsThatGetLostAreAFault() throws Exception {
    Path full = Path.of("/dev/full");
    assumeTrue(Files.isWritable(full), "this system has no device that is always full");
    Process process =
        new ProcessBuilder(java(), "-cp", classPath(), Main.class.getName(), "rules")
            .redirectOutput(full.toFile())
            .start();
    String told = new String(process.getErrorStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(process.waitFor()).isEqualTo(Exit.FAULT.code());
    assertThat(told).startsWith("strikeoff: the results can't be written: ");
  }

  @Test
  void aReaderWhoHasReadEnoughIsNoFault() {
    Outlet pipe = new Outlet(failing("Broken pipe"));
    assertThatThrownBy(() -> pipe.write('a')).isInstanceOf(IOException.class);
    assertThat(pipe.lost()).isEmpty();
    Outlet full = new Outlet(failing("No space left on device"));
    assertThatThrownBy(() -> full.write('a')).isInstanceOf(IOException.class);
    assertThat(full.lost()).hasValue("No space left on device");
  }

  private static OutputStream failing(String why) {
    return new OutputStream() {
      @Override
      public void write(int one) throws IOException {
        throw new IOException(why);
      }
    };
  }

  private static String java() {
    return Path.of(System.getProperty("java.home"), "bin", "java").toString();
  }

  private record Result(String text, int exit) {}

  private Result run(Map<String, String> environment, List<String> options)
      throws IOException, InterruptedException {
    List<String> command = new ArrayList<>();
    command.add(java());
    command.addAll(options);
    command.addAll(List.of("-cp", classPath(), Main.class.getName(), "check", "heron.yaml"));
    ProcessBuilder builder = new ProcessBuilder(command);
    builder.directory(folder.toFile());
    builder.environment().putAll(environment);
    builder.redirectError(folder.resolve("err.txt").toFile());
    Process process = builder.start();
    byte[] out = process.getInputStream().readAllBytes();
    int exit = process.waitFor();
    assertThat(folder.resolve("err.txt")).hasContent("");
    return new Result(new String(out, StandardCharsets.UTF_8), exit);
  }

  /** Absolute, since the process runs in another folder. */
  private static String classPath() {
    List<String> entries = new ArrayList<>();
    for (String entry : System.getProperty("java.class.path").split(java.io.File.pathSeparator)) {
      entries.add(Path.of(entry).toAbsolutePath().toString());
    }
    return String.join(java.io.File.pathSeparator, entries);
  }
}
