package strikeoff.fuzz;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Runs the coverage-guided fuzzer over each target in a process of its own and tells what came of
 * it. What a run learnt lies in {@code target/fuzz} and is where the next one goes on. Ends with 1
 * if anything broke; the inputs that did it lie beside, to be kept as tests.
 */
public final class Fuzzing {

  private static final List<Class<?>> TARGETS =
      List.of(
          PlanText.class, PolicyText.class, WholeCheck.class, EditedPlan.class, FilmBytes.class);

  private static final Path FOLDER = Path.of("target/fuzz");

  /** Films of each kind, as other programs write them. */
  private static final Path FILMS = Path.of("src/test/resources/strikeoff/artwork");

  /** What films begin with, and what drawings are made of. */
  private static final List<String> FILM_WORDS =
      List.of(
          "II*\\x00",
          "MM\\x00*",
          "\\x89PNG",
          "P4 ",
          "<svg ",
          "<path ",
          "<g ",
          "<use href='#",
          "<clipPath ",
          "<style>",
          "viewBox='",
          "width='9mm' ",
          "transform='scale(",
          "d='M0 0 L9 9z'");

  private static final Path SCHEMA =
      Path.of("src/main/resources/strikeoff/plan/yaml/plan-schema.json");

  /** As libFuzzer tells its progress: {@code #4096 pulse cov: 812 ft: 3120 corp: 98/12Kb}. */
  private static final Pattern PROGRESS = Pattern.compile("#(\\d+)\\s.*\\bcov: (\\d+) ft: (\\d+)");

  private Fuzzing() {}

  /**
   * @param args seconds for each target, then names of targets; all of them if none is named
   */
  public static void main(String[] args) throws IOException, InterruptedException {
    long seconds = args.length > 0 ? Long.parseLong(args[0]) : 60;
    List<String> wanted = List.of(args).subList(Math.min(1, args.length), args.length);
    Path words = FOLDER.resolve("words.dict");
    Files.createDirectories(FOLDER);
    Files.writeString(words, dictionary(), StandardCharsets.UTF_8);
    List<String> lines = new ArrayList<>();
    boolean broken = false;
    for (Class<?> target : TARGETS) {
      if (wanted.isEmpty() || wanted.contains(target.getSimpleName())) {
        Outcome outcome = run(target, seconds, words);
        lines.add(outcome.line());
        broken |= outcome.broken();
      }
    }
    System.out.println("| target | executions | seconds | edges | features | found |");
    System.out.println("|---|---|---|---|---|---|");
    lines.forEach(System.out::println);
    System.exit(broken ? 1 : 0);
  }

  /** What came of one target. */
  private record Outcome(
      String target, long executions, long seconds, long edges, long features, int found, int end) {

    boolean broken() {
      return found > 0 || end != 0 || executions == 0;
    }

    String line() {
      return String.format(
          Locale.ROOT,
          "| %s | %d | %d | %d | %d | %d%s |",
          target,
          executions,
          seconds,
          edges,
          features,
          found,
          end == 0 ? "" : ", ended with " + end);
    }
  }

  private static Outcome run(Class<?> target, long seconds, Path words)
      throws IOException, InterruptedException {
    Path folder = FOLDER.resolve(target.getSimpleName());
    Path corpus = Files.createDirectories(folder.resolve("corpus"));
    Path found = Files.createDirectories(folder.resolve("found"));
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(List.of("-Xmx2g", "-Xss4m", "-XX:+UseSerialGC"));
    command.addAll(List.of("-cp", System.getProperty("java.class.path")));
    command.add("com.code_intelligence.jazzer.Jazzer");
    command.add("--target_class=" + target.getName());
    command.add("--instrumentation_includes=strikeoff.**");
    command.add("--keep_going=20");
    command.add("--reproducer_path=" + found);
    command.add("-artifact_prefix=" + found + "/");
    command.add("-dict=" + words);
    command.add("-max_total_time=" + seconds);
    command.add("-timeout=120");
    // The code is watched at each branch and the machine may be busy: ten seconds are nothing odd.
    command.add("-report_slow_units=60");
    command.add("-rss_limit_mb=4096");
    command.add("-max_len=12000");
    command.add(corpus.toString());
    if (target != EditedPlan.class) {
      command.add("plans");
      command.add("rules");
    }
    if (target == FilmBytes.class) {
      command.add(FILMS.toString());
    }
    Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
    long[] told = new long[3];
    try (BufferedReader out = process.inputReader(StandardCharsets.UTF_8);
        var log = Files.newBufferedWriter(folder.resolve("log.txt"), StandardCharsets.UTF_8)) {
      for (String line = out.readLine(); line != null; line = out.readLine()) {
        log.write(line + "\n");
        Matcher progress = PROGRESS.matcher(line);
        if (progress.find()) {
          for (int i = 0; i < told.length; i++) {
            told[i] = Long.parseLong(progress.group(i + 1));
          }
        }
      }
    }
    int end = process.waitFor();
    try (Stream<Path> inputs = Files.list(found)) {
      int kept = (int) inputs.filter(f -> !f.toString().endsWith(".java")).count();
      return new Outcome(target.getSimpleName(), told[0], seconds, told[1], told[2], kept, end);
    }
  }

  /** The words of the plan language, as libFuzzer reads them. */
  private static String dictionary() throws IOException {
    Set<String> words = new TreeSet<>();
    collect(new ObjectMapper().readTree(Files.readAllBytes(SCHEMA)), words);
    StringBuilder lines = new StringBuilder();
    FILM_WORDS.forEach(word -> lines.append('"').append(word).append("\"\n"));
    for (String word : words) {
      if (word.chars().allMatch(c -> c >= ' ' && c < 127 && c != '"' && c != '\\')) {
        lines.append('"').append(word).append("\"\n");
      }
    }
    return lines.toString();
  }

  private static void collect(JsonNode node, Set<String> words) {
    node.path("properties").fieldNames().forEachRemaining(key -> words.add(key + ": "));
    node.path("enum").forEach(value -> words.add(value.asText()));
    node.path("const").forEach(value -> words.add(value.asText()));
    node.forEach(child -> collect(child, words));
  }
}
