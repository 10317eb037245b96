package strikeoff.report.json;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import strikeoff.check.Verdict;
import strikeoff.findings.FailedRule;
import strikeoff.findings.Narrowed;
import strikeoff.findings.PointsGiven;
import strikeoff.findings.PolicyChange;
import strikeoff.findings.RuleInfo;
import strikeoff.findings.Since;
import strikeoff.report.outcome.DemoResults;
import strikeoff.report.outcome.Fix;
import strikeoff.report.outcome.Found;
import strikeoff.report.outcome.Outcome;
import strikeoff.report.outcome.Part;
import strikeoff.report.outcome.Results;

class JsonReportTest {

  private static final ObjectMapper MAPPER = new ObjectMapper();

  static String schema() {
    try (InputStream in = JsonReport.class.getResourceAsStream("report-schema.json")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  /**
   * Everything that a report may hold and the demo plans don't: a failed rule, a part, an own rule
   * that found nothing.
   */
  static Results full() {
    Results demo = DemoResults.all();
    Outcome found =
        demo.plans().stream()
            .filter(p -> p.verdict() == Verdict.PRINTABLE && !p.findings().isEmpty())
            .findFirst()
            .orElseThrow();
    List<Outcome> plans = new ArrayList<>();
    for (Outcome each : demo.plans()) {
      boolean first = each == found;
      plans.add(
          new Outcome(
              2 + 7 * plans.size(),
              each.file(),
              each.title(),
              each.report(),
              first ? Verdict.NOT_CHECKED : each.verdict(),
              each.sentence(),
              first ? withFix(each.findings()) : each.findings(),
              each.mistakes(),
              first
                  ? List.of(new FailedRule(demo.rules().get(0).id(), "it failed"))
                  : each.failedRules(),
              each.failure(),
              each.figures(),
              first ? List.of("plans/studio.yaml") : each.policies(),
              first ? changes() : each.changes(),
              first ? found.findings() : List.of(),
              first ? "Wren" : "",
              first ? Optional.of(points()) : Optional.empty()));
    }
    List<RuleInfo> rules = new ArrayList<>(demo.rules());
    RuleInfo any = rules.get(0);
    rules.add(
        new RuleInfo(
            "house/never-heard-of",
            any.severity(),
            any.summary(),
            any.because(),
            any.message(),
            any.remedy(),
            any.source(),
            List.of()));
    return new Results(
        demo.version(),
        demo.title(),
        Optional.of(new Part(2, 7)),
        300,
        Optional.of(new Narrowed(List.of("bath"), List.of("bath/x"), List.of("drying/y"), 300)),
        Optional.of("last.json"),
        rules,
        plans);
  }

  /** The demo plans are judged without trying anything. */
  private static List<Found> withFix(List<Found> all) {
    List<Found> found = new ArrayList<>(all);
    Found one = found.get(0);
    Fix.Part part = new Fix.Part(one.place().region(), "pause: 5 min\n");
    Fix fix = new Fix(List.of(part), Optional.of("day 2, 10:35"), List.of("A new risk"));
    found.set(
        0,
        new Found(
            one.rule(),
            one.severity(),
            one.key(),
            one.message(),
            one.remedy(),
            List.of(fix),
            one.place(),
            one.related(),
            one.marks(),
            one.accepted(),
            one.acceptLine(),
            Optional.of(Since.UPDATED)));
    return found;
  }

  private static PointsGiven points() {
    String id = DemoResults.all().rules().get(0).id();
    return new PointsGiven(
        17.5, 20, "plans/studio.yaml, line 7", List.of(new PointsGiven.Taken(id, 3, 2.5)));
  }

  private static List<PolicyChange> changes() {
    String id = DemoResults.all().rules().get(0).id();
    return List.of(
        new PolicyChange("plans/studio.yaml:4", id, "stop", "advice", OptionalInt.of(2)),
        new PolicyChange("plans/studio.yaml", "time/least", "2 h", "1 h", OptionalInt.empty()));
  }

  @Test
  void everyDemoPlansResultIsValidByThePublishedSchema() {
    SchemaCheck check = SchemaCheck.of(schema());
    assertThat(check.json(JsonReport.text(DemoResults.all()))).isEmpty();
    assertThat(check.json(JsonReport.text(full()))).isEmpty();
    assertThat(check.json(JsonReport.text(DemoResults.only()))).isEmpty();
  }

  /** Closed against keys it doesn't name, the schema must still take everything that is written. */
  @Test
  void theSchemaNamesEveryKeyThatIsWritten() throws IOException {
    JsonNode closed = MAPPER.readTree(schema());
    close(closed);
    assertThat(SchemaCheck.of(closed.toString()).json(JsonReport.text(full()))).isEmpty();
  }

  /** And every key it names is written by something. */
  @Test
  void everyKeyThatTheSchemaNamesIsWritten() throws IOException {
    Set<String> named = new TreeSet<>();
    JsonNode schema = MAPPER.readTree(schema());
    schema.findValues("properties").forEach(p -> p.fieldNames().forEachRemaining(named::add));
    schema.get("$defs").findValues("properties").stream()
        .forEach(
            p ->
                p.findValues("properties")
                    .forEach(q -> q.fieldNames().forEachRemaining(named::add)));
    Set<String> written = new TreeSet<>();
    keys(MAPPER.readTree(JsonReport.text(full())), written);
    assertThat(written).containsAll(named);
    assertThat(named).contains("format", "severity", "endColumn", "mixedGrams", "failure", "what");
  }

  @Test
  void theSchemaRefusesWhatIsNoReport() {
    SchemaCheck check = SchemaCheck.of(schema());
    String text = JsonReport.text(full());
    assertThat(check.json(text.replace("report/2", "report/9"))).isNotEmpty();
    assertThat(check.json(text.replaceFirst("\"startLine\": \\d+", "\"startLine\": 0")))
        .isNotEmpty();
    assertThat(check.json(text.replaceFirst("\"verdict\"", "\"verdikt\""))).isNotEmpty();
  }

  @Test
  void readingBackGivesTheSameResultsAndTheSameBytes() {
    Results results = full();
    JsonReading.Read read = JsonReading.of(JsonReport.text(results));
    assertThat(read).isEqualTo(new JsonReading.Read.Good(results));
    assertThat(JsonReport.text(((JsonReading.Read.Good) read).results()))
        .isEqualTo(JsonReport.text(results));
  }

  @Test
  void whatIsNoReportIsRefusedWithAReason() {
    assertThat(JsonReading.of("")).isInstanceOf(JsonReading.Read.Bad.class);
    assertThat(JsonReading.of("[1, 2"))
        .isInstanceOfSatisfying(
            JsonReading.Read.Bad.class, b -> assertThat(b.why()).contains("not JSON"));
    assertThat(JsonReading.of("{\"format\": \"strikeoff.report/9\"}"))
        .isEqualTo(
            new JsonReading.Read.Bad(
                "its format is “strikeoff.report/9”, not strikeoff.report/2;"
                    + " a newer strikeoff wrote it"));
    String text = JsonReport.text(full());
    assertThat(JsonReading.of(text.replaceFirst("\"notPrintable\",", "\"fine\",")))
        .isInstanceOfSatisfying(
            JsonReading.Read.Bad.class, b -> assertThat(b.why()).contains("verdict: one of"));
    assertThat(JsonReading.of(text.replaceFirst("\"startLine\": \\d+", "\"startLine\": -4")))
        .isInstanceOf(JsonReading.Read.Bad.class);
    assertThat(JsonReading.of("[".repeat(100_000))).isInstanceOf(JsonReading.Read.Bad.class);
  }

  private static void close(JsonNode schema) {
    if (schema instanceof ObjectNode object
        && object.path("properties").isObject()
        && !object.has("additionalProperties")) {
      object.put("additionalProperties", false);
    }
    schema.forEach(JsonReportTest::close);
  }

  private static void keys(JsonNode node, Set<String> into) {
    node.fieldNames().forEachRemaining(into::add);
    node.forEach(child -> keys(child, into));
  }
}
