package strikeoff.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import strikeoff.cli.Scenario.Outcome;

/**
 * Every example in the documents works: commands are run, pieces of plans are put into a plan and
 * read, JSON is parsed. An example of a kind that is not known here fails. What the documents on
 * own rules show is tried elsewhere.
 */
class DocumentsTest {

  private static final List<String> DOCUMENTS =
      List.of("README.md", "plans/README.md", "plans/workshop/README.md", "DEVELOPERS.md");

  private static final Pattern BLOCK = Pattern.compile("(?ms)^```(\\w*)\\n(.*?)^```$");
  private static final Pattern CODE = Pattern.compile("(?<!`)`([^`\\n]+)`(?!`)");
  private static final Pattern REDIRECTED = Pattern.compile("(.*?) > (\\S+)");

  /** Programs that are not this one: what they are given must be there. */
  private static final List<String> OTHERS =
      List.of("mvn", "npm", "src/bench/ratios", ".ci/run", "man", "source");

  @TempDir private static Path folder;

  @TestFactory
  Stream<DynamicTest> everyExampleWorks() throws IOException {
    lay();
    List<DynamicTest> tests = new ArrayList<>();
    for (String name : DOCUMENTS) {
      String text = Files.readString(Path.of(name));
      Matcher block = BLOCK.matcher(text);
      while (block.find()) {
        String kind = block.group(1);
        String body = block.group(2);
        tests.add(
            DynamicTest.dynamicTest(name + ": " + first(body), () -> block(name, kind, body)));
      }
      if (name.equals("plans/README.md")) {
        tests.addAll(PlanSnippets.tests(text));
      }
      Matcher code = CODE.matcher(BLOCK.matcher(text).replaceAll(""));
      while (code.find()) {
        String words = code.group(1);
        // `start on` is a key of a plan.
        if (words.matches("(strikeoff|target/strikeoff|check|start(?! on\\b)) \\S.*")) {
          tests.add(DynamicTest.dynamicTest(name + ": " + words, () -> spoken(words)));
        }
      }
    }
    assertThat(tests).hasSizeGreaterThan(30);
    return tests.stream();
  }

  private static String first(String body) {
    return body.lines().findFirst().orElse("");
  }

  /** The files that the examples name. */
  private static void lay() throws IOException {
    Path plans = Path.of("plans");
    try (Stream<Path> files = Files.walk(plans)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        Path copy = folder.resolve(file);
        Files.createDirectories(copy.getParent());
        Files.copy(file, copy);
      }
    }
    Files.createDirectories(folder.resolve("studio"));
    Files.copy(plans.resolve("first-border.yaml"), folder.resolve("studio/border.yaml"));
    Files.copy(plans.resolve("first-border.yaml"), folder.resolve("my-plan.yaml"));
    for (int part = 2; part <= 3; part++) {
      run("check plans --part " + part + "/3 --format json=part-" + part + ".json");
    }
  }

  private static void block(String document, String kind, String body) throws IOException {
    switch (kind) {
      case "sh" -> body.lines().filter(l -> !l.isBlank()).forEach(DocumentsTest::shell);
      case "json" -> new ObjectMapper().readTree("{" + body.strip() + "}");
      case "yaml" -> PlanSnippets.read(body);
      case "" ->
          assertThat(body)
              .as("a rule in sentences, or a kind without a name")
              .startsWith("rule \"");
      default -> throw new AssertionError(document + " shows a kind that no test knows: " + kind);
    }
  }

  private static void shell(String line) {
    String bare = line.replaceAll("\\s+#.*", "").strip();
    for (String command : bare.split(" && ")) {
      if (!command.isEmpty()) {
        command(command);
      }
    }
  }

  private static void command(String command) {
    Matcher ours =
        Pattern.compile("(?:java -jar \\S*strikeoff\\.jar|\\S*strikeoff) (.*)").matcher(command);
    if (ours.matches()) {
      spoken(ours.group(1));
      return;
    }
    String program = command.split(" ")[0];
    assertThat(OTHERS).as(command).contains(program);
    if (program.contains("/")) {
      assertThat(Path.of(program)).exists();
    }
    named(command, "-P(\\w+)", "<id>%s</id>", Path.of("src/parent/pom.xml"));
    named(
        command,
        "--prefix (\\S+)",
        "\"scripts\"",
        Path.of(command.replaceAll(".*--prefix (\\S+).*", "$1"), "package.json"));
    Matcher test = Pattern.compile("-Dtest=([\\w,]+)").matcher(command);
    while (test.find()) {
      for (String name : test.group(1).split(",")) {
        if (name.equals("none")) {
          continue; // a profile's own work without the tests
        }
        assertThat(isThere(name + ".java")).as(name).isTrue();
      }
    }
  }

  private static void named(String command, String option, String text, Path file) {
    Matcher m = Pattern.compile(option).matcher(command);
    while (m.find()) {
      assertThat(file).content().contains(String.format(text, m.group(1)));
    }
  }

  private static boolean isThere(String name) {
    try (Stream<Path> files = Files.walk(Path.of("src"))) {
      return files.anyMatch(f -> f.getFileName().toString().equals(name));
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  /** A command as it is written, with the program's name or without. */
  private static void spoken(String words) {
    String arguments = words.replaceFirst("^(?:target/)?strikeoff ", "");
    if (arguments.contains("FILE")) {
      arguments = arguments.replace("FILE", "plans/workshop/studio.yaml");
    }
    if (arguments.contains("WHAT=N")) {
      arguments = arguments.replace("WHAT=N", "kib=512") + " my-plan.yaml";
    }
    Matcher redirected = REDIRECTED.matcher(arguments);
    if (redirected.matches()) {
      arguments = redirected.group(1);
    }
    if (arguments.startsWith("watch ")) {
      arguments = "watch --help"; // it would not end; WatchTest runs it
    }
    if (arguments.contains("-o my-plan.yaml")) {
      arguments = arguments.replace("my-plan.yaml", "another-plan.yaml"); // the other is there
    }
    Outcome outcome = run(arguments);
    // One plan of the workshop names a screen that nobody has, to show what is told: 3.
    assertThat(outcome.exit())
        .as(words + "\n" + outcome.err())
        .isIn(
            arguments.matches("(check plans(/workshop)?|join)( .*)?")
                ? List.of(0, 1, 3)
                : List.of(0, 1));
  }

  private static Outcome run(String arguments) {
    List<String> words = new ArrayList<>();
    for (String word : arguments.split(" +")) {
      if (word.equals("part-*.json")) {
        words.addAll(List.of("part-1.json", "part-2.json", "part-3.json"));
      } else {
        words.add(word);
      }
    }
    return Scenario.run(folder, Map.of(), words);
  }
}
