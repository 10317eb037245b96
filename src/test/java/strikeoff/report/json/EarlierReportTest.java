package strikeoff.report.json;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import strikeoff.report.outcome.DemoResults;
import strikeoff.report.outcome.Results;

/**
 * Series of results go on over versions: what was written in November 2026 is still read, and who
 * reads by the schema of then still can. The files in {@code earlier} stay as they are; of the kept
 * results the list of rules was cut to those that found something.
 */
class EarlierReportTest {

  private static final Path EARLIER = Path.of("src/test/resources/strikeoff/report/json/earlier");
  private static final ObjectMapper MAPPER = new ObjectMapper();

  private static String earlier(String name) throws IOException {
    return Files.readString(EARLIER.resolve(name));
  }

  @Test
  void whatAnEarlierVersionWroteIsRead() throws IOException {
    String kept = earlier("report-2.json");
    assertThat(JsonReading.of(kept)).isInstanceOf(JsonReading.Read.Good.class);
    Results results = ((JsonReading.Read.Good) JsonReading.of(kept)).results();
    assertThat(results.version()).isEqualTo("0.1.0");
    assertThat(results.plans()).hasSize(3);
    assertThat(results.plans().get(2).findings()).isNotEmpty();
    assertThat(results.narrowed()).isEmpty();
    // Written again it says the same: nothing that an earlier version told is lost on the way.
    JsonNode again = MAPPER.readTree(JsonReport.text(results));
    List<String> lost = new ArrayList<>();
    within(MAPPER.readTree(kept), again, "", lost);
    assertThat(lost).isEmpty();
  }

  @Test
  void aReaderBoundToTheEarlierSchemaReadsWhatIsWrittenNow() throws IOException {
    SchemaCheck then = SchemaCheck.of(earlier("report-2-schema.json"));
    assertThat(then.json(earlier("report-2.json"))).isEmpty();
    assertThat(then.json(JsonReport.text(DemoResults.all()))).isEmpty();
    assertThat(then.json(JsonReport.text(JsonReportTest.full()))).isEmpty();
  }

  /** What readers may count on, by the earlier schema, is promised by the one of now. */
  @Test
  void theSchemaOnlyGrew() throws IOException {
    List<String> lost = new ArrayList<>();
    grown(
        MAPPER.readTree(earlier("report-2-schema.json")),
        MAPPER.readTree(JsonReportTest.schema()),
        "",
        lost);
    assertThat(lost).isEmpty();
  }

  /** A reader of then that knows no more than the keys it was written for. */
  @Test
  void aSeriesOfCountsAndFinishesGoesOn() throws IOException {
    for (String document :
        List.of(earlier("report-2.json"), JsonReport.text(JsonReportTest.full()))) {
      JsonNode root = MAPPER.readTree(document);
      assertThat(root.path("format").asText()).isEqualTo("strikeoff.report/2");
      Map<String, Long> series = new LinkedHashMap<>();
      for (JsonNode plan : root.path("plans")) {
        series.put(
            plan.path("file").asText(),
            plan.path("figures").path("finishSeconds").asLong() + plan.path("findings").size());
      }
      assertThat(series).hasSize(root.path("plans").size());
      assertThat(root.path("summary").path("stop").isInt()).isTrue();
    }
  }

  private static void within(JsonNode then, JsonNode now, String at, List<String> lost) {
    if (then.isObject()) {
      then.fields()
          .forEachRemaining(
              member ->
                  within(
                      member.getValue(),
                      now.path(member.getKey()),
                      at + "/" + member.getKey(),
                      lost));
    } else if (then.isArray() && then.size() == now.size()) {
      for (int i = 0; i < then.size(); i++) {
        within(then.get(i), now.get(i), at + "/" + i, lost);
      }
    } else if (!then.equals(now) && !(then.isNumber() && then.asDouble() == now.asDouble())) {
      lost.add(at + ": " + then + " is " + now);
    }
  }

  private static void grown(JsonNode then, JsonNode now, String at, List<String> lost) {
    then.fields()
        .forEachRemaining(
            member -> {
              String path = at + "/" + member.getKey();
              JsonNode other = now.path(member.getKey());
              switch (member.getKey()) {
                case "description", "title" -> {
                  // Words for people may get better.
                }
                case "type", "const", "pattern", "required", "enum", "$ref", "minimum" -> {
                  if (!member.getValue().equals(other)) {
                    lost.add(path + " was " + member.getValue() + ", is " + other);
                  }
                }
                default -> {
                  if (member.getValue().isObject()) {
                    grown(member.getValue(), other, path, lost);
                  }
                }
              }
            });
  }
}
