package strikeoff.cli;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import strikeoff.cli.commands.Strikeoff;
import strikeoff.cli.text.Surroundings;

/**
 * A whole run of the program as plain text: files, arguments, what it must say and how it must
 * exit. Lines beginning with {@code ==} part it:
 *
 * <pre>
 * == file plans/a.yaml     the lines of a file up to the next part; \x1b stands for an escape
 * == env NO_COLOR=1
 * == run check plans       may stand several times; out, err and exit follow it
 * == out
 * == err
 * == exit 1
 * </pre>
 */
public record Scenario(Map<String, String> files, Map<String, String> environment, List<Run> runs) {

  /** One command and what it must come to. */
  record Run(List<String> args, String out, String err, int exit) {}

  /** What a command came to. */
  public record Outcome(String out, String err, int exit) {}

  static Scenario of(String text) {
    Map<String, String> files = new LinkedHashMap<>();
    Map<String, String> environment = new LinkedHashMap<>();
    List<Run> runs = new ArrayList<>();
    for (String part : ("\n" + text).split("\n== ")) {
      String head = part.lines().findFirst().orElse("");
      String body = part.contains("\n") ? part.substring(part.indexOf('\n') + 1) : "";
      body = body.isEmpty() || body.endsWith("\n") ? body : body + "\n";
      String[] words = head.split(" ", 2);
      String rest = words.length > 1 ? words[1] : "";
      switch (words[0]) {
        case "file" -> files.put(rest, body.replace("\\x1b", "\u001B"));
        case "env" -> environment.put(rest.split("=", 2)[0], rest.split("=", 2)[1]);
        case "run" -> runs.add(new Run(List.of(rest.split(" +")), "", "", 0));
        case "out" ->
            last(runs, run -> new Run(run.args(), unescaped(text(part)), run.err(), run.exit()));
        case "err" ->
            last(runs, run -> new Run(run.args(), run.out(), unescaped(text(part)), run.exit()));
        case "exit" ->
            last(runs, run -> new Run(run.args(), run.out(), run.err(), Integer.parseInt(rest)));
        default -> {
          // What stands before the first part says what the scenario is about.
        }
      }
    }
    return new Scenario(files, environment, runs);
  }

  private static String text(String part) {
    String body = part.contains("\n") ? part.substring(part.indexOf('\n') + 1) : "";
    return body.isEmpty() || body.endsWith("\n") ? body : body + "\n";
  }

  private static String unescaped(String text) {
    return text.replace("\\x1b", "\u001B");
  }

  private static void last(List<Run> runs, java.util.function.UnaryOperator<Run> change) {
    runs.set(runs.size() - 1, change.apply(runs.get(runs.size() - 1)));
  }

  /** Writes the files into a folder. */
  void lay(Path folder) throws IOException {
    for (Map.Entry<String, String> file : files.entrySet()) {
      Path path = folder.resolve(file.getKey());
      Files.createDirectories(path.getParent());
      Files.writeString(path, file.getValue());
    }
  }

  /** Runs a command there. */
  public static Outcome run(Path folder, Map<String, String> environment, List<String> args) {
    return run(folder, environment, args, "");
  }

  /** Runs a command with something on its standard input. */
  public static Outcome run(
      Path folder, Map<String, String> environment, List<String> args, String input) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    Surroundings here =
        new Surroundings(
            new PrintWriter(out),
            new PrintWriter(err),
            new ByteArrayInputStream(input.getBytes(StandardCharsets.UTF_8)),
            environment,
            false,
            folder,
            4);
    int exit = Strikeoff.run(here, args.toArray(String[]::new));
    return new Outcome(out.toString(), err.toString(), exit);
  }
}
