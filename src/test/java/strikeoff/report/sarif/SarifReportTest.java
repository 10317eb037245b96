package strikeoff.report.sarif;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import strikeoff.report.json.SchemaCheck;
import strikeoff.report.outcome.DemoResults;
import strikeoff.report.outcome.Outcome;

/** Against the schema that OASIS publishes for SARIF 2.1.0, and the standard's prose. */
class SarifReportTest {

  private static final ObjectMapper MAPPER = new ObjectMapper();

  /** Findings in flow mappings, one of them behind a letter of two UTF-16 units. */
  private static final String PLAN =
      """
      plan: Reeds
      cloth: {length: 2 m, width: 1 m, fibre: polyester}
      pastes:
        "\uD83E\uDEBF grün": {medium: dye, group: dichlorotriazine, colour: "#335577", thickener: {stood: 1 min}}
      accept:
        - {rule: acceptance/matches-nothing, because: just so}
      """;

  private static JsonNode run(Outcome... plans) throws IOException {
    return MAPPER.readTree(SarifReport.text(DemoResults.only(plans))).at("/runs/0");
  }

  @Test
  void everyDemoPlansLogIsValidByThePublishedSchema() throws IOException {
    try (InputStream in = getClass().getResourceAsStream("/schema/sarif-schema-2.1.0.json")) {
      SchemaCheck check = SchemaCheck.of(new String(in.readAllBytes(), StandardCharsets.UTF_8));
      String log = SarifReport.text(DemoResults.all());
      assertThat(check.json(log)).isEmpty();
      assertThat(check.json(SarifReport.text(DemoResults.only()))).isEmpty();
      assertThat(check.json(log.replaceFirst("\"error\"", "\"awful\""))).isNotEmpty();
    }
  }

  @Test
  void everyRegionHoldsExactlyTheValueOfItsPath() throws IOException {
    List<String> lines = PLAN.lines().toList();
    JsonNode run = run(DemoResults.of(1, "reeds.yaml", PLAN));
    assertThat(run.path("columnKind").asText()).isEqualTo("utf16CodeUnits");
    List<String> texts = new ArrayList<>();
    for (JsonNode result : run.path("results")) {
      JsonNode region = result.at("/locations/0/physicalLocation/region");
      String path = result.at("/locations/0/logicalLocations/0/fullyQualifiedName").asText();
      assertThat(region.path("startLine")).isEqualTo(region.path("endLine"));
      texts.add(
          path
              + " = "
              + lines
                  .get(region.path("startLine").asInt() - 1)
                  .substring(
                      region.path("startColumn").asInt() - 1,
                      region.path("endColumn").asInt() - 1));
    }
    assertThat(texts)
        .contains(
            "pastes.\uD83E\uDEBF grün.thickener = thickener: {stood: 1 min}",
            "accept[0] = {rule: acceptance/matches-nothing, because: just so}");
  }

  private static final List<String> LEVELS = List.of("error", "warning", "note");

  @Test
  void resultsPointIntoTheTablesOfRulesAndArtifacts() throws IOException {
    JsonNode run = MAPPER.readTree(SarifReport.text(DemoResults.all())).at("/runs/0");
    JsonNode rules = run.at("/tool/driver/rules");
    int related = 0;
    for (JsonNode result : run.path("results")) {
      JsonNode rule = rules.get(result.path("ruleIndex").asInt());
      assertThat(rule.path("id")).isEqualTo(result.path("ruleId"));
      // A rule about wet films has the worst of its levels; its results have that of their chance.
      assertThat(LEVELS.indexOf(result.path("level").asText()))
          .isGreaterThanOrEqualTo(LEVELS.indexOf(rule.at("/defaultConfiguration/level").asText()));
      if (!result.path("ruleId").asText().matches("(drying|fixing)/.*")) {
        assertThat(rule.at("/defaultConfiguration/level")).isEqualTo(result.path("level"));
      }
      JsonNode file = result.at("/locations/0/physicalLocation/artifactLocation");
      assertThat(run.path("artifacts").get(file.path("index").asInt()).at("/location/uri"))
          .isEqualTo(file.path("uri"));
      related += result.path("relatedLocations").size();
    }
    assertThat(run.path("results").size()).isGreaterThan(10);
    assertThat(related).isPositive();
  }

  /** Section 3.27.23: either all results tell whether they are suppressed, or none does. */
  @Test
  void whatThePlanAcceptsIsSuppressedInSourceWithItsReason() throws IOException {
    JsonNode run = MAPPER.readTree(SarifReport.text(DemoResults.all())).at("/runs/0");
    List<String> reasons = new ArrayList<>();
    for (JsonNode result : run.path("results")) {
      assertThat(result.path("suppressions").isArray()).isTrue();
      for (JsonNode suppression : result.path("suppressions")) {
        assertThat(suppression.path("kind").asText()).isEqualTo("inSource");
        reasons.add(suppression.path("justification").asText());
      }
    }
    assertThat(reasons).contains("It is <b>only</b> a “try”.");
  }

  @Test
  void whatKeptAPlanFromBeingJudgedIsANotificationAndNoResult() throws IOException {
    JsonNode run = run(DemoResults.of(1, "bad one.yaml", "plan: A\nclothh: {length: 2 g}\n"));
    assertThat(run.path("results")).isEmpty();
    assertThat(run.at("/invocations/0/executionSuccessful").asBoolean(true)).isFalse();
    JsonNode notes = run.at("/invocations/0/toolExecutionNotifications");
    assertThat(notes.findValuesAsText("text")).anyMatch(t -> t.contains("clothh"));
    JsonNode place = notes.get(notes.size() - 1).at("/locations/0/physicalLocation");
    assertThat(place.at("/artifactLocation/uri").asText()).isEqualTo("bad%20one.yaml");
    assertThat(place.at("/region/startLine").asInt()).isEqualTo(2);
    JsonNode good = run(DemoResults.of(1, "a.yaml", PLAN));
    assertThat(good.at("/invocations/0/executionSuccessful").asBoolean()).isTrue();
  }

  @Test
  void fileNamesBecomeUris() {
    assertThat(FileUri.of("./plans/ä b%.yaml")).isEqualTo("plans/%C3%A4%20b%25.yaml");
    assertThat(FileUri.of("/tmp/a#b?.yaml")).isEqualTo("file:///tmp/a%23b%3F.yaml");
    assertThat(FileUri.of("C:\\plans\\a.yaml")).isEqualTo("file:///C%3A/plans/a.yaml");
  }
}
