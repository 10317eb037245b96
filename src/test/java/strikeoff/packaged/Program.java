package strikeoff.packaged;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;

/**
 * The program as it is handed out, started as people start it. {@code -Dstrikeoff.jdk=FOLDER} runs
 * it by another JDK than the one that runs the tests.
 *
 * @param way the launcher, or the jar by itself
 * @param folder that it runs in
 * @param options for the JDK
 * @param environment what is set besides this process's own variables; an empty one is taken away
 */
record Program(Way way, Path folder, List<String> options, Map<String, String> environment) {

  private static final long MOST_SECONDS = 240;

  private static final Path JDK =
      Path.of(System.getProperty("strikeoff.jdk", System.getProperty("java.home")));

  /** How it is started. */
  enum Way {
    LAUNCHER,
    JAR
  }

  /** What a command came to. */
  record Told(int exit, String out, String err) {

    /** The error output with all spaces and breaks of lines alike. */
    String errWords() {
      return err.replaceAll("\\s+", " ").strip();
    }

    /** The output, likewise. */
    String outWords() {
      return out.replaceAll("\\s+", " ").strip();
    }
  }

  static Program in(Way way, Path folder) {
    return new Program(way, folder, List.of(), Map.of("JAVA_HOME", JDK.toString()));
  }

  /** With options for the JDK, as {@code -Xmx48m}. */
  Program options(String... more) {
    List<String> all = new ArrayList<>(options);
    all.addAll(List.of(more));
    return new Program(way, folder, all, environment);
  }

  /** With an environment variable; an empty value takes it away. */
  Program with(String name, String value) {
    Map<String, String> all = new TreeMap<>(environment);
    all.put(name, value);
    return new Program(way, folder, options, all);
  }

  /** The words that start it, without any of its own arguments. */
  List<String> command() {
    if (way == Way.LAUNCHER) {
      return List.of(target("strikeoff"));
    }
    List<String> words = new ArrayList<>(List.of(JDK.resolve("bin/java").toString()));
    words.addAll(options);
    words.addAll(List.of("-jar", target("strikeoff.jar")));
    return words;
  }

  /** Runs one command with nothing on its standard input. */
  Told run(String... arguments) throws IOException, InterruptedException {
    List<String> words = new ArrayList<>(command());
    words.addAll(List.of(arguments));
    return run(words);
  }

  /**
   * Runs lines of bash, in which {@code strikeoff} is the program. What the lines themselves can't
   * say in ASCII is best written as {@code $'\xc3\x9c'}.
   */
  Told bash(String lines) throws IOException, InterruptedException {
    StringBuilder script = new StringBuilder("strikeoff() {");
    command().forEach(word -> script.append(' ').append(quoted(word)));
    script.append(" \"$@\"; }\n").append(lines).append('\n');
    Path file = Files.createTempFile("strikeoff-", ".bash");
    try {
      Files.writeString(file, script);
      return run(List.of("bash", file.toString()));
    } finally {
      Files.delete(file);
    }
  }

  /** For what goes on while the test does something else; the caller ends it. */
  ProcessBuilder builder(List<String> words) {
    ProcessBuilder builder = new ProcessBuilder(words).directory(folder.toFile());
    environment.forEach(
        (name, value) -> {
          if (value.isEmpty()) {
            builder.environment().remove(name);
          } else {
            builder.environment().put(name, value);
          }
        });
    if (way == Way.LAUNCHER && !options.isEmpty()) {
      builder.environment().put("STRIKEOFF_OPTS", String.join(" ", options));
    }
    return builder;
  }

  private Told run(List<String> words) throws IOException, InterruptedException {
    Path out = Files.createTempFile("strikeoff-", ".out");
    Path err = Files.createTempFile("strikeoff-", ".err");
    Process process =
        builder(words).redirectOutput(out.toFile()).redirectError(err.toFile()).start();
    try {
      process.getOutputStream().close();
      boolean ended = process.waitFor(MOST_SECONDS, TimeUnit.SECONDS);
      Told told = new Told(ended ? process.exitValue() : -1, text(out), text(err));
      assertThat(ended).as("%s ends within %s s: %s", words, MOST_SECONDS, told).isTrue();
      return told;
    } finally {
      process.descendants().forEach(ProcessHandle::destroyForcibly);
      process.destroyForcibly();
      Files.delete(out);
      Files.delete(err);
    }
  }

  /** A shell starts what is to go on behind it so. */
  static boolean ignoresInterrupts(Process process) throws Exception {
    Path status = Path.of("/proc/" + process.pid() + "/status");
    return Files.exists(status)
        && Files.readAllLines(status).stream()
            .filter(line -> line.startsWith("SigIgn:"))
            .anyMatch(line -> (Long.parseLong(line.substring(7).strip(), 16) & 2) != 0);
  }

  private static String text(Path file) throws IOException {
    return new String(Files.readAllBytes(file), StandardCharsets.UTF_8);
  }

  private static String quoted(String word) {
    return "'" + word.replace("'", "'\\''") + "'";
  }

  private static String target(String name) {
    Path file = Path.of("target", name).toAbsolutePath();
    assertThat(file).as("mvn package makes it").exists();
    return file.toString();
  }
}
