package strikeoff.cli;

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
import strikeoff.check.Example;

/** A policy that was handed in beside a plan can't turn a stop into advice unseen. */
class WhosePolicyTest {

  private static final String RULE = "drying/frame-on-wet-film";

  @TempDir private Path desk;

  private Scenario.Outcome run(String... args) {
    return Scenario.run(desk, Map.of("COLUMNS", "200"), List.of(args));
  }

  @BeforeEach
  void handInThreeFolders() throws IOException {
    for (String folder : List.of("plain", "soft", "mute")) {
      Files.createDirectories(desk.resolve("class").resolve(folder));
      Files.writeString(
          desk.resolve("class").resolve(folder).resolve("wet.yaml"),
          Example.packaged(RULE).firingText());
    }
    Files.writeString(
        desk.resolve("class/soft/studio.yaml"),
        """
        studio: Soft
        severities:
          drying/frame-on-wet-film: advice
        limits:
          time/waiting-share: {value: 90 %, why: "We draw meanwhile."}
        """);
    Files.writeString(
        desk.resolve("class/mute/studio.yaml"),
        "studio: Mute\noff:\n  drying/frame-on-wet-film: We like it smeared.\n");
  }

  @Test
  void theTextSaysWhoseAndWhat() {
    String out = run("check", "class").out();
    assertThat(out)
        .contains(
            "Policy: class/soft/studio.yaml, line 3 counts "
                + RULE
                + " as advice, instead of stop: ")
        .contains(
            "Policy: class/mute/studio.yaml, line 3 switches " + RULE + " off, a stop otherwise: ")
        .contains("Policy: class/soft/studio.yaml sets the limit time/waiting-share to 90 %, inst");
    assertThat(out.substring(out.indexOf("class/plain"), out.indexOf("class/soft")))
        .doesNotContain("Policy:");
  }

  /** A gate may show verdicts alone. */
  @Test
  void alsoTheVerdictAloneSaysThatAPolicyLetStopsPass() throws IOException {
    run("check", "class", "--verdicts", "--reports", "pages", "-f", "text=t", "-f", "junit=j");
    assertThat(run("check", "class", "--verdicts", "-f", "text=t").err()).isEmpty();
    assertThat(Files.readString(desk.resolve("t")).lines().toList())
        .hasSize(3)
        .satisfiesExactly(
            mute ->
                assertThat(mute).startsWith("PRINTABLE").endsWith("; a policy lets 1 stop pass"),
            plain -> assertThat(plain).startsWith("NOT PRINTABLE").doesNotContain("policy"),
            soft ->
                assertThat(soft).startsWith("PRINTABLE").endsWith("; a policy lets 1 stop pass"));
    assertThat(Files.readString(desk.resolve("j"))).contains("a policy lets 1 stop pass.\"/>");
    Document index = Jsoup.parse(Files.readString(desk.resolve("pages/index.html")));
    assertThat(index.select("td[data-head=Verdict]").eachText())
        .containsExactly(
            "Printable; a policy lets 1 stop pass",
            "Not printable",
            "Printable; a policy lets 1 stop pass");
  }

  @Test
  void pageAndJsonSayTheSame() throws IOException {
    run("check", "class", "--reports", "pages", "--format", "json=all.json");
    JsonNode plans = new ObjectMapper().readTree(desk.resolve("all.json").toFile()).get("plans");
    JsonNode change = plans.get(2).get("policyChanges").get(0);
    assertThat(change.get("what").textValue()).isEqualTo(RULE);
    assertThat(change.get("from").textValue()).isEqualTo("stop");
    assertThat(change.get("to").textValue()).isEqualTo("advice");
    assertThat(change.get("where").textValue()).isEqualTo("class/soft/studio.yaml, line 3");
    assertThat(change.get("findings").intValue()).isPositive();
    assertThat(plans.get(1).has("policyChanges")).isFalse();
    Document page =
        Jsoup.parse(
            Files.readString(desk.resolve("pages").resolve(plans.get(2).get("report").asText())));
    assertThat(page.select(".policy li").eachText())
        .anyMatch(
            t -> t.startsWith("class/soft/studio.yaml, line 3 counts " + RULE + " as advice"));
  }

  /**
   * One rule is a stop in one folder and advice in another: the index of joined parts keeps both.
   */
  @Test
  void theIndexOfJoinedPartsIsThatOfOneRun() throws IOException {
    run("check", "class", "--reports", "whole");
    run("check", "class", "--reports", "parts", "--part", "1/2", "--format", "json=1.json");
    run("check", "class", "--reports", "parts", "--part", "2/2", "--format", "json=2.json");
    run("join", "2.json", "1.json", "--reports", "parts");
    String joined = Files.readString(desk.resolve("parts/index.html"));
    assertThat(joined).isEqualTo(Files.readString(desk.resolve("whole/index.html")));
    Document index = Jsoup.parse(joined);
    assertThat(index.select("#plans tr[data-verdict=not-printable] td.num").get(0).text())
        .as("stops of the folder without a policy")
        .isEqualTo("1");
    assertThat(index.select("#rules tr:contains(" + RULE + ") td[data-head=Severity]").eachText())
        .containsExactlyInAnyOrder("stop", "advice");
  }
}
