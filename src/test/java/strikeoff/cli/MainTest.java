package strikeoff.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

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

  private record Result(String text, int exit) {}

  private Result run(Map<String, String> environment, List<String> options)
      throws IOException, InterruptedException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
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
