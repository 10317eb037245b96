package strikeoff.check;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import strikeoff.policy.Policy;
import strikeoff.report.json.SchemaCheck;
import strikeoff.units.Quantities;

/** What an editor shows and offers beside a plan or a policy. */
class SchemaWordsTest {

  private static final int FEWEST_WORDS = 6;
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final Checker CHECKER = Checker.builtIn();
  private static final Policy POLICY = CHECKER.policy();

  private enum Of {
    PLAN(Schemas.plan()),
    POLICY(Schemas.policy(CHECKER, false));

    private final ObjectNode schema;

    Of(String text) {
      this.schema = (ObjectNode) tree(text);
    }
  }

  private static JsonNode tree(String json) {
    try {
      return JSON.readTree(json);
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  /** Every node of a schema, by its JSON pointer. */
  private static Map<String, JsonNode> nodes(JsonNode schema) {
    Map<String, JsonNode> nodes = new TreeMap<>();
    collect("", schema, nodes);
    return nodes;
  }

  private static void collect(String at, JsonNode node, Map<String, JsonNode> into) {
    into.put(at, node);
    node.properties()
        .forEach(
            e ->
                collect(
                    at + "/" + e.getKey().replace("~", "~0").replace("/", "~1"),
                    e.getValue(),
                    into));
    for (int i = 0; node.isArray() && i < node.size(); i++) {
      collect(at + "/" + i, node.get(i), into);
    }
  }

  private static Stream<String> texts(JsonNode list) {
    return StreamSupport.stream(list.spliterator(), false).map(JsonNode::asText);
  }

  @ParameterizedTest
  @EnumSource
  void everyPropertySaysInSentencesWhatItIsAndWhatFollowsIfItIsLeftOut(Of of) {
    List<String> poor = new ArrayList<>();
    int seen = 0;
    for (Map.Entry<String, JsonNode> object : nodes(of.schema).entrySet()) {
      if (!object.getValue().path("properties").isObject()
          || !object.getValue().has("additionalProperties")) {
        continue;
      }
      List<String> required = texts(object.getValue().path("required")).toList();
      for (Map.Entry<String, JsonNode> e : object.getValue().get("properties").properties()) {
        String said = e.getValue().path("description").asText();
        boolean must = said.endsWith(" It must be there.");
        boolean may = said.contains(" Left out: ");
        boolean sentences =
            said.matches("\\p{Lu}.*[.]")
                && !said.startsWith("The same")
                && said.replaceFirst(" (Left out: |Written as |It must be there).*", "")
                        .split(" ")
                        .length
                    >= FEWEST_WORDS;
        boolean alone = object.getKey().endsWith("/oneOf/1") && e.getKey().equals("end of day");
        if (!sentences || must == may && !alone || must != required.contains(e.getKey())) {
          poor.add(object.getKey() + " " + e.getKey() + ": " + said);
        }
        seen++;
      }
    }
    assertThat(poor).isEmpty();
    assertThat(seen).isGreaterThan(150);
  }

  @ParameterizedTest
  @EnumSource
  void everyExampleAndDefaultIsValidWhereItStands(Of of) {
    List<String> wrong = new ArrayList<>();
    int seen = 0;
    for (Map.Entry<String, JsonNode> at : nodes(of.schema).entrySet()) {
      JsonNode schema = at.getValue();
      List<JsonNode> values = new ArrayList<>();
      schema.path("examples").forEach(values::add);
      if (schema.has("default") && schema.has("description")) {
        values.add(schema.get("default"));
      }
      if (!values.isEmpty() && !at.getKey().endsWith("/properties")) {
        ObjectNode alone = schema.deepCopy();
        alone.set("$defs", of.schema.get("$defs"));
        SchemaCheck check = SchemaCheck.of(alone.toString());
        for (JsonNode value : values) {
          check.json(value.toString()).forEach(e -> wrong.add(at.getKey() + " " + value + e));
          seen++;
        }
      }
    }
    assertThat(wrong).isEmpty();
    assertThat(seen).isGreaterThan(100);
  }

  /** A quantity of each unit that a description names is read. */
  @Test
  void everyUnitThatIsNamedIsOne() {
    Pattern named = Pattern.compile("with (?:its|the) unit: ([^.]+)[.]");
    int units = 0;
    for (JsonNode definition : Of.PLAN.schema.get("$defs")) {
      Matcher list = named.matcher(definition.path("description").asText());
      if (list.find()) {
        for (String unit : list.group(1).split(", | or ")) {
          assertThat(Quantities.parseAny("1 " + unit).toOptional()).as(unit).isPresent();
          units++;
        }
      }
    }
    assertThat(units).isGreaterThan(25);
  }

  /** Other names of a thing are taken and told, and no editor offers them. */
  @Test
  void onlyTheUsualNamesAreOffered() {
    TreeSet<String> usual = new TreeSet<>();
    Map<String, String> others = new TreeMap<>();
    POLICY.fibres().forEach(f -> name("fibreName", f.name(), f.aliases(), usual, others));
    POLICY.groups().forEach(g -> name("group", g.name(), g.aliases(), usual, others));
    POLICY.substances().forEach(s -> name("amounts", s.name(), s.aliases(), usual, others));
    TreeSet<String> offered = new TreeSet<>();
    List<String> told = new ArrayList<>();
    for (Map.Entry<String, JsonNode> at : nodes(Of.PLAN.schema).entrySet()) {
      if (!at.getKey().contains("/if/") && !at.getKey().endsWith("/not")) {
        texts(at.getValue().path("enum")).forEach(offered::add);
        texts(at.getValue().path("examples")).forEach(offered::add);
      }
      if (at.getKey().matches(".*/(amounts|blend)/properties")) {
        at.getValue().fieldNames().forEachRemaining(offered::add);
      }
      told.add(at.getValue().path("description").asText());
    }
    assertThat(offered).containsAll(usual).contains("yes", "no").doesNotContain("Yes", "true");
    assertThat(others).hasSizeGreaterThan(30);
    others.forEach(
        (other, definition) -> {
          assertThat(offered).doesNotContain(other);
          assertThat(told)
              .as(other)
              .anyMatch(d -> d.matches(".*read as well.*\\b" + Pattern.quote(other) + "\\b.*"));
          ObjectNode one = JSON.createObjectNode().put("$ref", "#/$defs/" + definition);
          one.set("$defs", Of.PLAN.schema.get("$defs"));
          JsonNode value =
              definition.equals("amounts")
                  ? JSON.createObjectNode().put(other, "1 g")
                  : JSON.getNodeFactory().textNode(other);
          assertThat(SchemaCheck.of(one.toString()).json(value.toString())).as(other).isEmpty();
        });
  }

  private static void name(
      String definition,
      String name,
      List<String> aliases,
      TreeSet<String> usual,
      Map<String, String> others) {
    usual.add(name);
    aliases.forEach(a -> others.put(a, definition));
  }

  @Test
  void thereIsASnippetForEachThingAndEachKindOfStep() {
    TreeSet<String> kinds = new TreeSet<>();
    for (JsonNode way : Of.PLAN.schema.at("/$defs/step/oneOf")) {
      kinds.add(way.has("const") ? "end of day" : way.path("required").get(0).asText());
    }
    TreeSet<String> steps = new TreeSet<>();
    for (JsonNode snippet : Of.PLAN.schema.at("/$defs/step/defaultSnippets")) {
      JsonNode body = snippet.get("body");
      steps.add(body.isTextual() ? body.asText() : body.fieldNames().next());
    }
    assertThat(steps).isEqualTo(kinds);
    for (String of : List.of("screens", "pastes", "designs", "placements")) {
      assertThat(Of.PLAN.schema.at("/$defs/" + of + "/defaultSnippets")).as(of).isNotEmpty();
    }
    assertThat(Of.PLAN.schema.at("/$defs/placements/defaultSnippets"))
        .hasSameSizeAs(Of.PLAN.schema.at("/$defs/placement/oneOf"));
  }

  /** One after the other, and each alone beside the first of each section. */
  @Test
  void everySnippetIsReadWhereItIsPut() {
    ObjectNode plan =
        (ObjectNode)
            tree("{\"plan\": \"A\", \"cloth\": {\"length\": \"3 m\", \"width\": \"1.2 m\"}}");
    for (String section : List.of("seams", "screens", "pastes", "designs", "placements")) {
      plan.putObject(section).setAll(body(section, 0));
    }
    plan.putArray("run").add(JSON.createObjectNode().put("mix", "all"));
    ObjectNode all = plan.deepCopy();
    int seen = 0;
    for (Map.Entry<String, JsonNode> at : nodes(Of.PLAN.schema).entrySet()) {
      for (int i = 0; i < at.getValue().path("defaultSnippets").size(); i++) {
        String section = at.getKey().substring(at.getKey().lastIndexOf('/') + 1);
        ObjectNode alone = plan.deepCopy();
        put(section, filled(at.getValue().get("defaultSnippets").get(i).get("body")), alone);
        put(section, filled(at.getValue().get("defaultSnippets").get(i).get("body")), all);
        sound(alone);
        seen++;
      }
    }
    sound(all);
    assertThat(seen).isGreaterThan(24);
  }

  private static ObjectNode body(String section, int number) {
    JsonNode snippets = Of.PLAN.schema.at("/$defs/" + section + "/defaultSnippets");
    JsonNode within = Of.PLAN.schema.at("/properties/" + section + "/defaultSnippets");
    return (ObjectNode) filled((snippets.isArray() ? snippets : within).get(number).get("body"));
  }

  private static void put(String section, JsonNode body, ObjectNode plan) {
    switch (section) {
      case "step" -> plan.withArray("/run").add(body);
      case "acceptance" -> plan.withArray("/accept").add(body);
      case "separation" -> plan.withArray("/designs/my design/separations").add(body);
      default -> ((ObjectNode) plan.get(section)).setAll((ObjectNode) body);
    }
  }

  /** A snippet with what stands at its tab stops. */
  private static JsonNode filled(JsonNode body) {
    assertThat(body.toString()).doesNotContain("$0");
    return tree(body.toString().replaceAll("\\$\\{\\d+:([^}]*)}", "$1"));
  }

  private static void sound(ObjectNode plan) {
    assertThat(SchemaCheck.of(Of.PLAN.schema.toString()).json(plan.toString()))
        .as("%s", plan)
        .isEmpty();
    Checked checked = CHECKER.check("plan.yaml", plan.toString());
    assertThat(checked instanceof Checked.Unreadable u ? u.problems() : List.of())
        .as("%s", plan)
        .isEmpty();
  }
}
