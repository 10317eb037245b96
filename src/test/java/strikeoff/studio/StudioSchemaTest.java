package strikeoff.studio;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import strikeoff.artwork.StudioFolder;
import strikeoff.check.Checker;
import strikeoff.check.Schemas;
import strikeoff.document.Problem;
import strikeoff.findings.RuleInfo;
import strikeoff.policy.Default;
import strikeoff.policy.Limit;
import strikeoff.report.json.SchemaCheck;
import strikeoff.units.Length;
import strikeoff.units.Ratio;

/** The schema of a policy and the reader say the same, in both directions. */
class StudioSchemaTest {

  private static final Checker BUILT_IN = Checker.builtIn();
  private static final String SCHEMA = Schemas.policy(BUILT_IN, false);
  private static final SchemaCheck CHECK = SchemaCheck.of(SCHEMA);
  private static final YAMLMapper YAML = new YAMLMapper();

  private static final String EVERYTHING =
      """
      studio: Loft
      own rules: rules
      holds below: no
      table: {length: 3 m, width: 1.2 m, railed: yes}
      room: {temperature: 19 °C, humidity: 55 %, air: still}
      crew: [Wren, Tam]
      hours: [10:00-17:00, 9-12]
      handling: {lay: 25 s}
      equipment: {sinks: 2}
      screens:
        open: {frame: 44 x 44 cm, image: 27 x 27 cm, mesh: 43/cm}
      pastes:
        rust: {medium: paint, colour: "#a4532f", label: {temperature: 150 °C, for: 4 min}}
        green: {medium: dye, group: DCT, colour: teal}
      films:
        heron: {artwork: films/heron-key.png, prints: dark, reads: wrong, resolution: 600/in, margin: 2 mm, size: 30 x 50 cm}
      limits:
        time/waiting-share: {value: 90 %, why: Beginners draw, source: our own}
        drying/in-mesh-of-paint: 5 min
      defaults:
        handling.pull: 12 s
        cloth.washed: yes
      severities: {table/many-lays: risk}
      off: {time/mostly-waiting: A class has other things to do.}
      accept: [order/key-not-last, order/dark-before-light]
      """;

  private static List<String> bySchema(String yaml) {
    return bySchema(CHECK, yaml);
  }

  private static List<String> bySchema(SchemaCheck check, String yaml) {
    try {
      return check.json(new ObjectMapper().writeValueAsString(YAML.readTree(yaml)));
    } catch (IOException e) {
      return List.of("not YAML: " + e.getMessage());
    }
  }

  private static List<String> byReader(String yaml) {
    StudioReading reading =
        StudioReader.read(
            "studio.yaml",
            yaml.getBytes(StandardCharsets.UTF_8),
            BUILT_IN.policy(),
            BUILT_IN.rules().rules().stream().map(RuleInfo::id).toList(),
            false,
            new StudioFolder(Optional.of(Path.of("plans"))));
    return reading instanceof StudioReading.Faulty faulty
        ? faulty.problems().stream().map(Problem::message).toList()
        : List.of();
  }

  private static void both(String yaml, boolean good) {
    List<String> reader = byReader(yaml);
    List<String> schema = bySchema(yaml);
    assertThat(reader.isEmpty()).as("reader of %s: %s", yaml, reader).isEqualTo(good);
    assertThat(schema.isEmpty()).as("schema of %s: %s", yaml, schema).isEqualTo(good);
  }

  @Test
  void theSchemaIsASchemaOfItsDialect() {
    assertThat(SCHEMA).doesNotContain("\"@", "@\"").endsWith("}\n");
    SchemaCheck dialect =
        SchemaCheck.of("{\"$ref\": \"https://json-schema.org/draft/2020-12/schema\"}");
    assertThat(dialect.json(SCHEMA)).isEmpty();
  }

  @Test
  void everythingThatAPolicyMaySayIsValid() {
    both(EVERYTHING, true);
    both("studio: Loft\n", true);
    for (String accept :
        List.of("all", "none", "[none]", "order/key-not-last", "[table/many-lays]")) {
      both("studio: Loft\naccept: " + accept + "\n", true);
    }
  }

  /** Names of own rules are known only where these are read: with the studio's other files. */
  @Test
  void everyPolicyOfTheDemoIsValid() throws IOException {
    SchemaCheck others = SchemaCheck.of(Schemas.policy(BUILT_IN, true));
    try (Stream<Path> files = Files.walk(Path.of("plans"))) {
      List<Path> policies = files.filter(f -> f.endsWith("studio.yaml")).toList();
      assertThat(policies).hasSizeGreaterThan(1);
      for (Path policy : policies) {
        assertThat(bySchema(others, Files.readString(policy))).as("%s", policy).isEmpty();
      }
    }
    String unknown = "studio: Loft\nseverities: {house/late-finish: stop}\n";
    assertThat(bySchema(others, unknown)).isEmpty();
    assertThat(bySchema(others, unknown.replace("house", "time"))).isNotEmpty();
    both(unknown, false);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          studio: Loft                    | studo: Loft
          studio: Loft                    | studio: [Loft]
          studio: Loft                    | studio:
          own rules: rules                | own rules: {folder: rules}
          holds below: no                 | holds below: perhaps
          length: 3 m                     | length: 3 kg
          length: 3 m                     | lenght: 3 m
          railed: yes                     | railed: 2 m
          temperature: 19 °C              | temperature: 19
          humidity: 55 %                  | humidity: dry
          air: still                      | air: windy
          crew: [Wren, Tam]               | crew: []
          [10:00-17:00, 9-12]             | early
          lay: 25 s                       | lay: 25 g
          sinks: 2                        | sinks: two
          mesh: 43/cm                     | mesh: 43 cm
          , mesh: 43/cm                   | ''
          medium: paint                   | medium: ink
          medium: paint, colour           | colour
          medium: dye, group: DCT         | medium: dye
          medium: dye, group: DCT         | medium: paint, group: DCT
          medium: paint                   | medium: dye, group: DCT
          artwork: films/heron-key.png, p | p
          artwork: films/heron-key.png    | artwork: [heron]
          prints: dark                    | prints: dim
          reads: wrong                    | reads: left
          reads: wrong                    | read: wrong
          margin: 2 mm                    | margin: 2 kg
          size: 30 x 50 cm                | size: 30 cm
          value: 90 %                     | value: 90 min
          {value: 90 %, why               | {why
          why: Beginners draw             | wy: Beginners draw
          time/waiting-share              | time/waiting-shore
          paint: 5 min                    | paint: 5
          paint: 5 min                    | paint: [5 min]
          handling.pull: 12 s             | handling.pul: 12 s
          handling.pull: 12 s             | handling.pull: 12 m
          handling.pull: 12 s             | cloth.fibre: linen
          cloth.washed: yes               | cloth.washed: 3
          many-lays: risk                 | many-lays: bad
          table/many-lays: risk           | table/many-lay: risk
          {table/many-lays: risk}         | risk
          : A class has other things to do. | : {because: no}
          time/mostly-waiting             | time/mostly-wating
          order/key-not-last, order       | order/key-not-lst, order
          order/key-not-last, order       | all, order
          [order/key-not-last, order/dark-before-light] | []
          [order/key-not-last, order/dark-before-light] | al
          [order/key-not-last, order/dark-before-light] | [[all]]
          """)
  void theSchemaFindsWhatTheReaderFinds(String old, String fresh) {
    int at = EVERYTHING.indexOf(old);
    assertThat(at).as(old).isNotNegative();
    assertThat(EVERYTHING.indexOf(old, at + 1)).as("a second " + old).isNegative();
    both(EVERYTHING.replace(old, fresh == null ? "" : fresh), false);
  }

  @Test
  void eachLimitIsTakenInItsOwnDimensionAndNoOther() {
    for (Limit limit : BUILT_IN.policy().limits().values()) {
      String before = "studio: A\nlimits: {" + limit.name() + ": ";
      both(before + "\"" + limit.value().text() + "\"}\n", true);
      both(before + "{value: " + limit.value().text() + "}}\n", true);
      both(before + (limit.value() instanceof Length ? "3 g" : "3 cm") + "}\n", false);
      both(before + "3}\n", limit.value() instanceof Ratio);
    }
  }

  @Test
  void eachDefaultIsTakenAsItIsUsuallyOrNotAtAll() {
    int settable = 0;
    for (Default<?> standard : BUILT_IN.policy().defaults().values()) {
      String yaml = "studio: A\ndefaults: {" + standard.name() + ": \"" + standard.text() + "\"}\n";
      boolean good = byReader(yaml).isEmpty();
      assertThat(bySchema(yaml).isEmpty()).as(yaml).isEqualTo(good);
      settable += good ? 1 : 0;
    }
    assertThat(settable).isGreaterThan(30);
  }

  /** What no plan could be filled in from is told of the policy, not of each plan. */
  @Test
  void aDefaultThatNoPlanCouldTakeIsRefused() {
    assertThat(byReader("studio: A\ndefaults: {crew: 2.5}\n"))
        .containsExactly("a whole number from 1 to 20 was expected; “2.5” is none");
    assertThat(byReader("studio: A\ndefaults: {equipment.fans: 101}\n"))
        .containsExactly("a whole number from 0 to 100 was expected; “101” is none");
    assertThat(byReader("studio: A\ndefaults: {table.length: 0 m}\n"))
        .containsExactly("a length such as 40 cm was expected, more than nothing");
    assertThat(byReader("studio: A\ndefaults: {room.humidity: 130 %}\n"))
        .containsExactly("“130 %” is beyond what it can be, 0 % to 100 %");
    assertThat(byReader("studio: A\ndefaults: {equipment.fans: 0, stations.gap: 0 cm}\n"))
        .isEmpty();
  }

  @Test
  void everyRuleMayBeNamed() {
    for (RuleInfo rule : BUILT_IN.rules().rules()) {
      both(
          "studio: A\nseverities: {%1$s: advice}\noff: {%1$s: So it is.}\naccept: [%1$s]\n"
              .replace("%1$s", rule.id()),
          true);
    }
  }

  /** What the reader says it knows is what the schema offers. */
  @Test
  void theSchemaHasExactlyTheKeysThatTheReaderKnows() throws IOException {
    List<String> told = byReader("studio: A\nqqqqqqqqqqqq: 1\n");
    assertThat(told).hasSize(1);
    String known = told.get(0).substring(told.get(0).indexOf("known are ") + 10);
    TreeSet<String> offered = new TreeSet<>();
    new ObjectMapper()
        .readTree(SCHEMA)
        .path("properties")
        .fieldNames()
        .forEachRemaining(offered::add);
    assertThat(offered).containsExactlyInAnyOrder(known.split(", "));
  }

  @Test
  void everyKeySaysWhatItIs() throws IOException {
    JsonNode schema = new ObjectMapper().readTree(SCHEMA);
    List<String> mute = new ArrayList<>();
    mute(schema.path("properties"), schema, mute);
    assertThat(mute).isEmpty();
    assertThat(schema.at("/properties/limits/properties/time~1waiting-share/description").asText())
        .contains("Left out: ");
  }

  private static void mute(JsonNode properties, JsonNode schema, List<String> into) {
    properties
        .fields()
        .forEachRemaining(
            e -> {
              String target = e.getValue().path("$ref").asText().replace("#", "");
              if (!e.getValue().has("description") && !schema.at(target).has("description")) {
                into.add(e.getKey());
              }
              mute(e.getValue().path("properties"), schema, into);
            });
  }
}
