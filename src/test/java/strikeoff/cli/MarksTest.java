package strikeoff.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A teacher weighs what is found, and each plan of the class gets points with reasons. */
class MarksTest {

  private static final String MARKS =
      """
      studio: Saturday class
      marks:
        full: 20
        stop: 4
        risk: 1
        advice: 0.5
        rules: {care: 0, fixing/bath-too-hot: 6.25}
      """;

  @TempDir private Path desk;

  @BeforeEach
  void lay() throws IOException {
    for (String pupil : List.of("anna", "ben")) {
      Files.createDirectories(desk.resolve("class").resolve(pupil));
    }
    Files.copy(Path.of("plans/mistakes/hot-bath.yaml"), desk.resolve("class/anna/hot.yaml"));
    Files.copy(Path.of("plans/first-border.yaml"), desk.resolve("class/ben/border.yaml"));
    Files.writeString(
        desk.resolve("class/ben/second.yaml"),
        Files.readString(Path.of("plans/first-border.yaml")) + "\nby: =Anna \"A\"\n");
    Files.writeString(desk.resolve("class/ben/broken.yaml"), "plan: [\n");
    Files.writeString(desk.resolve("class/studio.yaml"), MARKS);
  }

  private Scenario.Outcome run(String... words) {
    return Scenario.run(desk, Map.of("COLUMNS", "200"), List.of(words));
  }

  private JsonNode points(String marks, String... more) throws IOException {
    Files.writeString(desk.resolve("class/studio.yaml"), marks);
    String[] words = {"check", "class/anna", "-f", "json"};
    String[] all =
        java.util.stream.Stream.of(words, more)
            .flatMap(java.util.Arrays::stream)
            .toArray(String[]::new);
    return new ObjectMapper().readTree(run(all).out()).at("/plans/0/points");
  }

  /** 20 - 6.25 for the bath - 0.5 for each of three rules; care/drain takes nothing. */
  @Test
  void theMostParticularWeightCounts() throws IOException {
    JsonNode points = points(MARKS);
    assertThat(points.at("/points").asDouble()).isEqualTo(12.25);
    assertThat(points.at("/of").asDouble()).isEqualTo(20);
    assertThat(points.at("/where").asText()).isEqualTo("class/studio.yaml, line 2");
    assertThat(points.at("/taken/0/rule").asText()).isEqualTo("fixing/bath-too-hot");
    assertThat(points.at("/taken").findValuesAsText("rule")).noneMatch(r -> r.startsWith("care/"));
  }

  @Test
  void aRuleTakesItsPointsOnceUnlessEachFindingIsToCount() throws IOException {
    Path plan = desk.resolve("class/anna/hot.yaml");
    String text = Files.readString(plan);
    Files.writeString(
        plan,
        text.replace(
            "  - rinse: ",
            "  - fix: soak\n    bath: {soda ash: 800 g, salt: 2 kg, water: 20 L}\n"
                + "    temperature: 60 °C\n    for: 60 min\n  - rinse: "));
    String once = MARKS.replace("rules: {care: 0,", "rules: {");
    JsonNode first = points(once).at("/taken/0");
    JsonNode each = points(once + "  each finding: yes\n").at("/taken/0");
    assertThat(each.at("/findings")).isEqualTo(first.at("/findings"));
    assertThat(first.at("/points").asDouble()).isEqualTo(6.25);
    assertThat(each.at("/points").asDouble()).isEqualTo(6.25 * first.at("/findings").asInt());
  }

  @Test
  void noPlanGetsLessThanNothingAndWhatIsAcceptedTakesNone() throws IOException {
    assertThat(points("studio: A\nmarks: {full: 1, stop: 1000}\n").at("/points").asDouble())
        .isZero();
    Path plan = desk.resolve("class/anna/hot.yaml");
    Files.writeString(
        plan,
        Files.readString(plan) + "\naccept:\n  - {rule: fixing/bath-too-hot, because: Tried.}\n");
    assertThat(points("studio: A\nmarks: {full: 20, stop: 5}\n").at("/points").asDouble())
        .isEqualTo(20);
  }

  @Test
  void whatWasNotWhollyJudgedHasNoPoints() throws IOException {
    assertThat(points(MARKS, "--skip", "care").isMissingNode()).isTrue();
    assertThat(points("studio: A\n").isMissingNode()).isTrue();
  }

  @Test
  void textPageIndexAndTableSayThemWithReasons() throws IOException {
    run(
        "check",
        "class",
        "--reports",
        "pages",
        "-f",
        "csv=t.csv",
        "-f",
        "text=t.txt",
        "-f",
        "json=t.json",
        "--by",
        "pupil");
    assertThat(Files.readString(desk.resolve("t.txt")))
        .contains("  Points: 12.25 of 20; taken: 6.25 for fixing/bath-too-hot; 0.5 for ");
    assertThat(Jsoup.parse(Files.readString(desk.resolve("pages/hot.html"))).text())
        .contains(
            "Points 12.25 of 20",
            "Points: 12.25 of 20 (class/studio.yaml, line 2). Taken: 6.25 for ");
    Document index = Jsoup.parse(Files.readString(desk.resolve("pages/index.html")));
    assertThat(index.select("#plans td[data-head=Points]").eachText()).contains("12.25 of 20");
    assertThat(index.select("#plans td:last-child").eachText())
        .anyMatch(cell -> cell.contains("Points taken: 6.25 for fixing/bath-too-hot; 0.5 for "));
    assertThat(index.select("table.pupils tbody th").eachText())
        .containsExactly("=Anna \"A\"", "anna", "ben");
    assertThat(index.select("table.pupils tbody tr").get(1).select("td").eachText())
        .containsExactly("1", "0", "1", "0", "12.25 of 20");
    assertThat(index.select("label").eachText()).anyMatch(label -> label.startsWith("Pupil"));
    List<String> rows = List.of(Files.readString(desk.resolve("t.csv")).split("\r\n"));
    assertThat(rows)
        .hasSize(5)
        .startsWith(
            "number,file,title,by,verdict,stops,risks,advice,accepted,finish,points,of,taken,let"
                + " pass,old,rules left out");
    assertThat(rows.get(1))
        .startsWith("1,class/anna/hot.yaml,\"Estuary curtains, hot bath\",,not printable,1,0,")
        .contains(",12.25,20,6.25 for fixing/bath-too-hot; 0.5 for ");
    assertThat(rows.get(3))
        .startsWith("3,class/ben/broken.yaml,class/ben/broken.yaml,,unreadable,,,,,,,,");
    assertThat(rows.get(4)).contains(",\"'=Anna \"\"A\"\"\",printable,");
    // A second run may write over its own table, and over nobody else's.
    assertThat(run("check", "class", "--verdicts", "-f", "csv=t.csv").err()).isEmpty();
    Files.writeString(desk.resolve("mine.csv"), "a,b\n1,2\n");
    assertThat(run("check", "class", "--verdicts", "-f", "csv=mine.csv").exit()).isEqualTo(2);
  }

  @Test
  void joinedPartsSayTheSame() throws IOException {
    run("check", "class", "--by", "pupil", "--reports", "whole", "-f", "csv=whole.csv");
    for (int part = 1; part <= 2; part++) {
      run(
          "check",
          "class",
          "--part",
          part + "/2",
          "--reports",
          "both",
          "-f",
          "json=" + part + ".json");
    }
    run("join", "1.json", "2.json", "--by", "pupil", "--reports", "both", "-f", "csv=both.csv");
    assertThat(desk.resolve("both.csv")).hasSameTextualContentAs(desk.resolve("whole.csv"), UTF_8);
    assertThat(desk.resolve("both/index.html"))
        .hasSameTextualContentAs(desk.resolve("whole/index.html"), UTF_8);
  }

  @Test
  void theNearestPolicyMarksUnlessOneAboveHoldsBelow() throws IOException {
    Files.writeString(desk.resolve("class/anna/studio.yaml"), "studio: Mine\nmarks: {full: 100}\n");
    assertThat(run("check", "class").out()).contains("Points: 100 of 100");
    Files.writeString(desk.resolve("class/studio.yaml"), MARKS + "holds below: yes\n");
    assertThat(run("check", "class").out())
        .contains("Points: 12.25 of 20")
        .doesNotContain("of 100");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "{}                              | 2:1: marks | full",
        "{full: 0}                       | 2:15: marks.full | points from 1 to 1000",
        "{full: 20, stop: -1}            | 2:25: marks.stop | such as 4 or 0.5",
        "{full: 20, stop: 0.125}         | 2:25: marks.stop | such as 4 or 0.5",
        "{full: 20, stops: 4}            | 2:19: marks | did you mean “stop”?",
        "{full: 20, rules: {drynig: 2}}  | 2:27: marks.rules | no rule or family is called “drynig”; did you mean “drying”?",
        "{full: 20, rules: {drying: a}}  | 2:35: marks.rules.drying | and “a” is none",
        "{full: 20, each finding: often} | 2:33: marks.each finding | yes or no"
      })
  void mistakesAreToldWithTheirPlace(String marks, String place, String words) throws IOException {
    Files.writeString(desk.resolve("class/studio.yaml"), "studio: A\nmarks: " + marks + "\n");
    Scenario.Outcome outcome = run("check", "class/anna");
    assertThat(outcome.exit()).isEqualTo(4);
    assertThat(outcome.err()).contains("class/studio.yaml:" + place).contains(words);
  }
}
