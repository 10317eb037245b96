package strikeoff.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DynamicTest;
import org.yaml.snakeyaml.DumperOptions;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;
import org.yaml.snakeyaml.representer.Representer;
import org.yaml.snakeyaml.resolver.Resolver;
import strikeoff.artwork.DemoFilms;
import strikeoff.plan.yaml.PlanReading;
import strikeoff.policy.yaml.PolicyReader;

/** Puts the pieces that plans/README.md shows where they belong in a plan, and reads it. */
final class PlanSnippets {

  private static final Pattern CODE = Pattern.compile("`([^`]*\\{[^`]*)`");
  private static final List<String> NAMED = List.of("seams", "screens", "pastes", "placements");

  private PlanSnippets() {}

  /** One test for each piece that holds braces; all must find their place. */
  static List<DynamicTest> tests(String text) {
    List<DynamicTest> tests = new ArrayList<>();
    String section = "";
    for (String line : text.split("\n")) {
      if (line.startsWith("## ")) {
        section = line.substring(3);
      }
      Matcher code = CODE.matcher(line);
      while (code.find()) {
        String here = section;
        String row = line.startsWith("| `") ? line.substring(3, line.indexOf('`', 3)) : "";
        String piece = code.group(1);
        tests.add(
            DynamicTest.dynamicTest(
                "plans/README.md: " + piece, () -> readable(host(here, row, piece), piece)));
      }
    }
    assertThat(tests).hasSizeGreaterThan(15);
    return tests;
  }

  /** A piece with keys of the top. */
  static void read(String piece) {
    Map<String, Object> plan = whole();
    plan.putAll(map(parsed(piece)));
    readable(plan, piece);
  }

  /** The plan with a piece in its place. */
  private static Map<String, Object> host(String section, String row, String piece) {
    Map<String, Object> plan = whole();
    Object value = parsed(piece.replaceAll(": (?=[,}])", ": 1 cm"));
    if (NAMED.contains(section) && row.isEmpty()) {
      map(plan.computeIfAbsent(section, s -> new LinkedHashMap<>())).putAll(map(value));
    } else if (section.equals("placements")) {
      map(plan.get(section)).put("another", value);
    } else if (section.equals("designs")) {
      map(map(plan.get("designs")).get("heron")).put("separations", List.of(value));
    } else if (section.equals("accept")) {
      plan.put(section, value);
    } else if (section.equals("equipment")) {
      plan.putAll(map(value));
    } else if (section.equals("cloth")) {
      map(plan.get(section)).put(row, value);
      if (row.equals("shrinkage")) {
        map(plan.get(section)).put("washed", "no"); // the other way of saying it
      }
    } else if (row.startsWith("table: ")) {
      map(plan.get("table")).put(row.substring("table: ".length()), value);
    } else if (section.equals("pastes")) {
      boolean paint = row.equals("label");
      Map<String, Object> paste = new LinkedHashMap<>();
      paste.put("medium", paint ? "paint" : "dye");
      if (!paint) {
        paste.put("group", "DCT");
      }
      paste.put("colour", "teal");
      paste.put(row, value);
      map(plan.get(section)).put("another", paste);
    } else if (row.startsWith("fix: soak")) {
      Map<String, Object> step = new LinkedHashMap<>(Map.of("fix", "soak", "for", "60 min"));
      step.putAll(map(value));
      steps(plan).add(step);
    } else if (row.startsWith("print: ")) {
      steps(plan).add(map(value));
    } else if (section.equals("run") && row.isEmpty()) {
      steps(plan).add(new LinkedHashMap<>(Map.of("print", "herons", "dry between colours", value)));
    } else {
      throw new AssertionError("no test knows where this belongs: " + section + ", " + piece);
    }
    return plan;
  }

  @SuppressWarnings("unchecked")
  private static List<Object> steps(Map<String, Object> plan) {
    return (List<Object>) plan.get("run");
  }

  @SuppressWarnings("unchecked")
  private static Map<String, Object> map(Object value) {
    return (Map<String, Object>) value;
  }

  private static Map<String, Object> whole() {
    try {
      Map<String, Object> plan =
          map(parsed(Files.readString(Path.of("plans/estuary-curtains.yaml"))));
      plan.remove("accept");
      return plan;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void readable(Map<String, Object> plan, String piece) {
    DumperOptions options = new DumperOptions();
    options.setDefaultScalarStyle(DumperOptions.ScalarStyle.DOUBLE_QUOTED);
    String text = new Yaml(options).dump(plan);
    PlanReading reading = DemoFilms.read(piece, text, PolicyReader.builtIn());
    if (reading instanceof PlanReading.Unreadable u) {
      throw new AssertionError(piece + "\n" + u.problems());
    }
  }

  /** All values stay text, as the reader of plans takes them. */
  private static Object parsed(String text) {
    LoaderOptions options = new LoaderOptions();
    DumperOptions dumping = new DumperOptions();
    return new Yaml(
            new SafeConstructor(options),
            new Representer(dumping),
            dumping,
            options,
            new Resolver() {
              @Override
              protected void addImplicitResolvers() {
                // None: yes, 09:00 and 6 are text.
              }
            })
        .load(text);
  }
}
