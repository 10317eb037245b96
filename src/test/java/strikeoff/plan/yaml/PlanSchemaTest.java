package strikeoff.plan.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import strikeoff.check.Example;
import strikeoff.report.json.SchemaCheck;
import strikeoff.yaml.Reading;
import strikeoff.yaml.YamlReader;

/** The schema and the reader say the same, in both directions, as far as a schema can. */
class PlanSchemaTest {

  private static final String SCHEMA = PlanSchema.text(Snippets.POLICY, Stock.NONE);
  private static final SchemaCheck CHECK = SchemaCheck.of(SCHEMA);
  private static final YAMLMapper YAML = new YAMLMapper();

  /**
   * Mistakes that only the whole plan shows, or that take arithmetic: names that nothing has, sums,
   * what lies past an end, and bounds of values with units.
   */
  private static final Pattern BEYOND_A_SCHEMA =
      Pattern.compile(
          "washed: yes in line .*|no (seam|screen|placement|person of the crew|place of this plan) is called .*"
              + "|.* more than the whole.*"
              + "|.*leaves? no.*"
              + "|there is no number .*|number \\d+ is named twice|.*counts from.*"
              + "|“which” names number .*|placements wait for each other .*"
              + "|.* lies past the end .*|the shares of the fibres add up .*"
              + "|two people of the crew .*|.* close before they open"
              + "|.* is beyond what .*|the bath holds no water.*"
              + "|the design .* has no further separation .*|.* is colder than ice.*"
              + "|.* nobody can read one here");

  private static List<String> errors(String yaml) {
    try {
      return CHECK.json(new ObjectMapper().writeValueAsString(YAML.readTree(yaml)));
    } catch (IOException e) {
      return List.of("not YAML: " + e.getMessage());
    }
  }

  @Test
  void theSchemaIsASchemaOfItsDialect() throws IOException {
    assertThat(SCHEMA).doesNotContain("\"@", "@\"");
    assertThat(new ObjectMapper().readTree(SCHEMA).path("$schema").asText())
        .isEqualTo("https://json-schema.org/draft/2020-12/schema");
    SchemaCheck dialect =
        SchemaCheck.of("{\"$ref\": \"https://json-schema.org/draft/2020-12/schema\"}");
    assertThat(dialect.json(SCHEMA)).isEmpty();
    assertThat(dialect.json(SCHEMA.replace("\"minItems\": 1", "\"minItems\": -1"))).isNotEmpty();
  }

  @TestFactory
  Stream<DynamicTest> everyReadableDemoPlanIsValid() throws IOException {
    List<Path> plans;
    try (Stream<Path> files = Files.walk(Path.of("plans"))) {
      plans = files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList();
    }
    return plans.stream()
        .map(
            plan ->
                DynamicTest.dynamicTest(
                    plan.toString(),
                    () -> {
                      String text = Files.readString(plan);
                      boolean readable = Snippets.problems(text).isEmpty();
                      assertThat(errors(text).isEmpty()).as("%s", errors(text)).isEqualTo(readable);
                    }));
  }

  @TestFactory
  Stream<DynamicTest> everyExampleOfARuleIsValid() throws IOException {
    List<Path> examples;
    try (Stream<Path> files = Files.walk(Path.of("rules"))) {
      examples = files.filter(f -> f.endsWith("example.yaml")).sorted().toList();
    }
    assertThat(examples).hasSizeGreaterThan(50);
    return examples.stream()
        .map(
            file ->
                DynamicTest.dynamicTest(
                    file.toString(),
                    () -> {
                      Example example = Example.of(Files.readString(file));
                      assertThat(errors(example.firingText())).isEmpty();
                      assertThat(errors(example.twinText())).isEmpty();
                    }));
  }

  @Test
  void everyWayOfSayingSomethingIsValid() {
    assertThat(errors(LanguageTest.EVERYTHING)).isEmpty();
    assertThat(errors(Snippets.SOUND)).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("strikeoff.plan.yaml.MistakesTest#mistakes")
  void theSchemaFindsWhatTheReaderFinds(String old, String fresh, List<String> told) {
    List<String> errors = errors(Snippets.with(old, fresh));
    boolean within =
        told.stream()
            .map(t -> t.substring(t.indexOf(' ') + 1))
            .anyMatch(t -> !BEYOND_A_SCHEMA.matcher(t).matches());
    assertThat(!errors.isEmpty()).as("%s by the schema: %s", told, errors).isEqualTo(within);
  }

  /** Quantities in every spelling of every unit; and what the reader refuses, the schema does. */
  @Test
  void quantitiesAreWrittenAlikeForBoth() {
    for (String good :
        List.of(
            "3 m",
            "19 in",
            "1.5 yd",
            "5 ft 3 in",
            "1 1/2 yd",
            "1½ yd",
            "½ m",
            ".5 m",
            "3000mm",
            "3 Metres",
            "120 INCHES",
            "118\"",
            "3\u00a0m",
            "+3 m")) {
      both(good, true);
    }
    for (String bad :
        List.of(
            "3",
            "3 mm2",
            "-3 m",
            "3,5 m",
            "1e3 mm",
            "2-3 m",
            "m",
            "3 m m",
            "three m",
            "0 m",
            "3 g",
            "3 furlongs",
            "1/2/3 m",
            "3 cm²")) {
      both(bad, false);
    }
  }

  @Test
  void namesOfFibresAndDyesAreTakenInAnyCase() {
    for (String fibre : List.of("Cotton", "LINEN", "flax")) {
      assertThat(errors("plan: A\ncloth: {width: 1 m, length: 1 m, fibre: " + fibre + "}\n"))
          .as(fibre)
          .isEmpty();
    }
    assertThat(errors("plan: A\ncloth: {width: 1 m, length: 1 m, fibre: Coton}\n")).isNotEmpty();
  }

  private static void both(String length, boolean good) {
    String plan = "plan: A\ncloth: {width: 1 m, length: '" + length.replace("'", "''") + "'}\n";
    assertThat(Snippets.problems(plan).isEmpty()).as("reader: " + length).isEqualTo(good);
    assertThat(errors(plan).isEmpty()).as("schema: " + length).isEqualTo(good);
  }

  @Test
  void theSchemaHasExactlyTheKeysThatTheReaderKnows() throws IOException {
    Reading reading = new Reading();
    PlanReader.read(
        "plan.yaml", YamlReader.read(LanguageTest.EVERYTHING), Snippets.POLICY, reading);
    TreeSet<String> known = new TreeSet<>(reading.keys());
    known.removeAll(Set.of("cotton", "flax"));
    TreeSet<String> offered = new TreeSet<>();
    keys(new ObjectMapper().readTree(SCHEMA), offered);
    Snippets.POLICY.fibres().forEach(f -> offered.remove(f.name()));
    Snippets.POLICY.substances().forEach(s -> offered.remove(s.name()));
    assertThat(offered).containsExactlyInAnyOrderElementsOf(known);
  }

  @Test
  void everyKeySaysWhatItIs() throws IOException {
    List<String> mute = new ArrayList<>();
    JsonNode schema = new ObjectMapper().readTree(SCHEMA);
    mute(schema, schema, mute);
    assertThat(mute).isEmpty();
  }

  private static void keys(JsonNode node, Set<String> into) {
    if (node.path("properties").isObject() && node.has("additionalProperties")) {
      node.path("properties").fieldNames().forEachRemaining(into::add);
    }
    node.forEach(child -> keys(child, into));
  }

  private static void mute(JsonNode node, JsonNode schema, List<String> into) {
    if (node.path("properties").isObject() && node.has("additionalProperties")) {
      node.path("properties")
          .fields()
          .forEachRemaining(
              e -> {
                JsonNode value = e.getValue();
                String target = value.path("$ref").asText().replace("#", "");
                boolean said = value.has("description") || schema.at(target).has("description");
                if (value.isObject() && !said) {
                  into.add(e.getKey());
                }
              });
    }
    node.forEach(child -> mute(child, schema, into));
  }
}
