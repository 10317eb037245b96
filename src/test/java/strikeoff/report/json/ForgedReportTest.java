package strikeoff.report.json;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import strikeoff.check.Verdict;
import strikeoff.report.outcome.Outcome;
import strikeoff.report.outcome.Part;
import strikeoff.report.outcome.Results;

/** Results that somebody changed, by hand or by a broken program, on the way to be joined. */
class ForgedReportTest {

  private static final ObjectMapper MAPPER = new ObjectMapper();

  /** What the parser says in its own words; none of it may be heard. */
  private static final List<String> FOREIGN =
      List.of(
          "Unexpected", "token", "Jackson", "fasterxml", "StreamRead", "Source", "null\"", "code ");

  /** One plan that was judged with findings, and one that can't be read: every part, and small. */
  private static Results small() {
    Results full = JsonReportTest.full();
    List<Outcome> plans = new ArrayList<>();
    for (Verdict verdict : List.of(Verdict.NOT_PRINTABLE, Verdict.UNREADABLE, Verdict.PRINTABLE)) {
      full.plans().stream()
          .filter(p -> p.verdict() == verdict && p.findings().size() < 6)
          .findFirst()
          .ifPresent(plans::add);
    }
    full.plans().stream()
        .filter(p -> p.verdict() == Verdict.NOT_CHECKED)
        .findFirst()
        .ifPresent(plans::add);
    Set<String> used = new TreeSet<>();
    plans.forEach(p -> p.findings().forEach(f -> used.add(f.rule())));
    plans.forEach(p -> p.failedRules().forEach(f -> used.add(f.rule())));
    return new Results(
        full.version(),
        full.title(),
        Optional.of(new Part(2, 7)),
        full.size(),
        full.rules().stream().filter(r -> used.contains(r.id())).toList(),
        plans);
  }

  private static String why(String json) {
    JsonReading.Read read = JsonReading.of(json);
    return read instanceof JsonReading.Read.Bad bad ? bad.why() : "";
  }

  /** Whatever the published schema refuses, by a validator that isn't ours, reading refuses too. */
  @Test
  void whateverTheSchemaRefusesIsRefusedWithItsPath() throws IOException {
    String sound = JsonReport.text(small());
    SchemaCheck schema = SchemaCheck.of(JsonReportTest.schema());
    assertThat(why(sound)).isEmpty();
    JsonNode root = MAPPER.readTree(sound);
    List<String> taken = new ArrayList<>();
    Set<String> tried = new TreeSet<>();
    int refused = 0;
    for (Change change : changes(root, "")) {
      // Of a list's items the first few stand for all.
      if (!change.what().matches(".*\\[([3-9]|\\d\\d+)].*") && tried.add(change.what())) {
        change.make().run();
        String forged = root.toString();
        change.undo().run();
        if (!schema.json(forged).isEmpty()) {
          refused++;
          String why = why(forged);
          if (why.isEmpty() || FOREIGN.stream().anyMatch(why::contains)) {
            taken.add(change.what() + " -> " + why);
          }
        }
      }
    }
    assertThat(taken).isEmpty();
    assertThat(refused).as("changes that the schema refuses").isGreaterThan(500);
  }

  private record Change(String what, Runnable make, Runnable undo) {}

  private static List<Change> changes(JsonNode node, String path) {
    JsonNodeFactory values = JsonNodeFactory.instance;
    Map<String, JsonNode> others =
        Map.of(
            "null", values.nullNode(),
            "true", values.booleanNode(true),
            "a text", values.textNode("?"),
            "-1", values.numberNode(-1),
            "0.5", values.numberNode(0.5),
            "10^400", values.numberNode(BigDecimal.TEN.pow(400)),
            "an object", values.objectNode(),
            "a list", values.arrayNode());
    List<Change> changes = new ArrayList<>();
    if (node instanceof ObjectNode object) {
      for (Map.Entry<String, JsonNode> entry : object.properties()) {
        String key = entry.getKey();
        JsonNode old = entry.getValue();
        String at = path + "." + key;
        changes.add(new Change(at + " gone", () -> object.remove(key), () -> object.set(key, old)));
        others.forEach(
            (what, other) ->
                changes.add(
                    new Change(
                        at + " " + what,
                        () -> object.set(key, other),
                        () -> object.set(key, old))));
        changes.addAll(changes(old, at));
      }
    } else if (node instanceof ArrayNode list) {
      for (int i = 0; i < list.size(); i++) {
        int index = i;
        JsonNode old = list.get(i);
        String at = path + "[" + i + "]";
        others.forEach(
            (what, other) ->
                changes.add(
                    new Change(
                        at + " " + what,
                        () -> list.set(index, other),
                        () -> list.set(index, old))));
        changes.addAll(changes(old, at));
      }
    }
    return changes;
  }

  /** What no schema tells: each half is sound, but they contradict one another. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      textBlock =
          """
          "stop": \\d+          | "stop": 0                 | summary.stop:
          "verdict": "notPrintable" | "verdict": "printable" | .verdict: “notPrintable” was expected, by
          "verdict": "unreadable" | "verdict": "printable"   | .verdict: “unreadable” was expected, by
          "number": \\d+,\\s+"file" | "number": 999, "file" | .number: a number up to 300 was expected
          "number": \\d+,\\s+"file" | "number": 3, "file" | .number: a number of part 2/7 was expected, not 3
          "rule": "[^"]*",\\s+"what" | "rule": "no/rule", "what" | .rule: one of the ids in “rules” was expected
          "report": "[^"]*"     | "report": "../../index.html" | .report: a page's name such as plan.html was expected, not another text
          "report": "[^"]*"     | "report": "javascript:x"  | .report: a page's name
          "of": 7               | "of": 1                   | part: a part such as 2/7 was expected, not 2/1
          "size": 300           | "size": 1e999             | size: a whole number from 0 to
          "size": 300           | "size": 300, "size": 300  | it is not JSON: a key stands twice in one object at line
          "title"               | title                     | it is not JSON: something else was expected at line 7, column
          "size": 300           | "size": NaN               | it is not JSON: something else was expected at line
          """)
  void whatContradictsItselfIsRefused(String old, String forged, String told) {
    String sound = JsonReport.text(small());
    String text = sound.replaceFirst(old, forged);
    assertThat(text).isNotEqualTo(sound);
    assertThat(why(text)).contains(told);
  }

  @Test
  void whatBreaksOffOrIsEndlessIsToldInWords() {
    String sound = JsonReport.text(small());
    assertThat(why(sound.substring(0, sound.lastIndexOf(',', sound.length() / 2))))
        .startsWith("it is not JSON: it breaks off at line ");
    assertThat(why(sound + "{}"))
        .startsWith("it is not JSON: something else was expected at line ");
    assertThat(why(sound.replaceFirst("300", "1".repeat(2000))))
        .startsWith("it is not JSON: a text, a number or the nesting is longer than results");
    assertThat(why("[".repeat(100_000)))
        .startsWith("it is not JSON: a text, a number or the nesting is longer than results");
    assertThat(why("")).isEqualTo("an object was expected");
    assertThat(why("[]")).isEqualTo("an object was expected; this is a list");
  }
}
