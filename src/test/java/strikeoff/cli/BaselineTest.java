package strikeoff.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Only what is new fails against an earlier run, and nothing that was there is hidden. */
class BaselineTest {

  private static final String STOP = "fixing/bath-too-hot";

  @TempDir private Path desk;
  private Path hot;

  @BeforeEach
  void lay() throws IOException {
    Files.createDirectories(desk.resolve("plans"));
    hot = desk.resolve("plans/hot.yaml");
    Files.copy(Path.of("plans/mistakes/hot-bath.yaml"), hot);
    Files.copy(Path.of("plans/first-border.yaml"), desk.resolve("plans/border.yaml"));
    assertThat(run("check", "plans", "-f", "json=last.json").exit()).isEqualTo(1);
  }

  private Scenario.Outcome run(String... words) {
    return Scenario.run(desk, Map.of("COLUMNS", "200"), List.of(words));
  }

  private Scenario.Outcome against(String... more) {
    List<String> words = new ArrayList<>(List.of("check", "plans", "--baseline", "last.json"));
    words.addAll(List.of(more));
    return run(words.toArray(String[]::new));
  }

  private JsonNode json(String file) throws IOException {
    return new ObjectMapper().readTree(desk.resolve(file).toFile());
  }

  private void edit(String from, String to) throws IOException {
    String text = Files.readString(hot);
    assertThat(text).contains(from);
    Files.writeString(hot, text.replace(from, to));
  }

  @Test
  void whatWasThereIsToldAsOldAndFailsNothing() {
    Scenario.Outcome outcome = against();
    assertThat(outcome.exit()).isZero();
    assertThat(outcome.out())
        .containsPattern("NOT PRINTABLE  plans/hot.yaml: 1 stop .*; 0 new, \\d old since the base")
        .contains("STOP  " + STOP + "  (old)")
        .doesNotContain("(new)", "Gone since");
    assertThat(against("-q").out()).isEmpty();
    assertThat(against("--fail-on", "advice", "-q")).isEqualTo(new Scenario.Outcome("", "", 0));
  }

  /** Lines above are added, the run is renumbered by a new step, and the bath gets hotter still. */
  @Test
  void whatMovedIsKnownAgain() throws IOException {
    Files.writeString(hot, "# a\n\n# b\n" + Files.readString(hot));
    edit("  - fix: soak\n", "  - dry: 5 min\n  - fix: soak\n");
    against("-f", "json=now.json");
    Map<String, String> since = new TreeMap<>();
    json("now.json")
        .at("/plans/1/findings")
        .forEach(f -> since.put(f.at("/rule").asText(), f.at("/since").asText()));
    assertThat(since).containsKey(STOP);
    assertThat(since.get(STOP)).isIn("unchanged", "updated");
    assertThat(against().exit()).isZero();
  }

  @Test
  void whatIsNewFailsAndWhatIsGoneIsTold() throws IOException {
    assertThat(Files.readString(hot)).contains("soda ash: ");
    Files.writeString(hot, Files.readString(hot).replaceAll("soda ash: \\d+ g", "soda ash: 5 g"));
    edit("60 °C", "35 °C");
    Scenario.Outcome outcome =
        against(
            "-f",
            "sarif=now.sarif",
            "-f",
            "json=now.json",
            "-f",
            "junit=now.xml",
            "--reports",
            "pages",
            "-f",
            "text=now.txt");
    assertThat(outcome.exit()).isEqualTo(1);
    String text = Files.readString(desk.resolve("now.txt"));
    assertThat(text).contains("  (new)").containsPattern("Gone since the baseline: .*" + STOP);
    JsonNode plan = json("now.json").at("/plans/1");
    assertThat(plan.at("/gone").findValuesAsText("rule")).contains(STOP);
    assertThat(json("now.json").at("/baseline").asText()).isEqualTo("last.json");
    List<String> states = json("now.sarif").at("/runs/0/results").findValuesAsText("baselineState");
    assertThat(states)
        .hasSameSizeAs(json("now.sarif").at("/runs/0/results"))
        .contains("new", "absent", "unchanged");
    String page = Jsoup.parse(Files.readString(desk.resolve("pages/hot.html"))).text();
    assertThat(page).contains("Gone since the baseline: ").contains(STOP);
    assertThat(Jsoup.parse(Files.readString(desk.resolve("pages/index.html"))).text())
        .contains("gone since the baseline");
    assertThat(Files.readString(desk.resolve("now.xml"))).contains("<failure", "(new)");
    assertThat(against("-q").out()).startsWith("NOT PRINTABLE  plans/hot.yaml: ").hasLineCount(1);
  }

  @Test
  void oldStopsAreNoFailuresForJunit() throws IOException {
    against("-f", "junit=now.xml");
    assertThat(Files.readString(desk.resolve("now.xml")))
        .doesNotContain("<failure")
        .contains("stop " + STOP + " (old)");
  }

  /** An acceptance that is withdrawn stops the work again, although the finding was known. */
  @Test
  void whatIsAcceptedNoMoreIsNew() throws IOException {
    String open = Files.readString(hot);
    Files.writeString(
        hot, open + "\naccept:\n  - {rule: " + STOP + ", because: A strike-off was fine.}\n");
    run("check", "plans", "-f", "json=last.json");
    Files.writeString(hot, open);
    assertThat(against().out()).contains("STOP  " + STOP + "  (new)");
    assertThat(against().exit()).isEqualTo(1);
  }

  @Test
  void aFileThatCannotBeReadFailsAsEver() throws IOException {
    Files.writeString(hot, "plan: [\n");
    assertThat(against().exit()).isEqualTo(3);
  }

  @Test
  void rulesThatWereNotAskedAreNotGone() throws IOException {
    against("--skip", "fixing", "-f", "json=now.json");
    assertThat(json("now.json").at("/plans/1/gone").findValuesAsText("rule")).isEmpty();
    run("check", "plans", "--skip", "fixing", "-f", "json=last.json");
    Scenario.Outcome outcome = against();
    assertThat(outcome.err()).contains("last.json: Only ").contains("counts as new");
    assertThat(outcome.exit()).isEqualTo(1);
  }

  @Test
  void whatIsNoBaselineIsAClearMistake() throws IOException {
    String last = Files.readString(desk.resolve("last.json"));
    Files.writeString(desk.resolve("torn.json"), last.substring(0, last.length() / 2));
    Files.writeString(desk.resolve("foreign.json"), "{\"a\": 1}");
    Files.writeString(
        desk.resolve("newer.json"), last.replace("strikeoff.report/2", "strikeoff.report/3"));
    Map<String, String> said =
        Map.of(
            "torn.json", "it breaks off",
            "foreign.json", "format",
            "newer.json", "a newer strikeoff wrote it",
            "none.json", "no such file");
    said.forEach(
        (file, words) -> {
          Scenario.Outcome outcome = run("check", "plans", "--baseline", file);
          assertThat(outcome.err()).startsWith("strikeoff: " + file + ": ").contains(words);
          assertThat(outcome.out()).isEmpty();
          assertThat(outcome.exit()).isEqualTo(2);
        });
    assertThat(against("-f", "json=last.json").err()).contains("no result is written over it");
    assertThat(desk.resolve("last.json")).hasContent(last);
  }

  @Test
  void namesThatNeverMatchAreTold() throws IOException {
    Files.move(desk.resolve("plans"), desk.resolve("other"));
    Scenario.Outcome outcome = run("check", "other", "--baseline", "last.json");
    assertThat(outcome.err()).contains("last.json: none of these plans stands in it");
    assertThat(outcome.exit()).isEqualTo(1);
  }

  @Test
  void partsAgainstABaselineAreJoinedAsOneRun() throws IOException {
    edit("60 °C", "35 °C");
    against("--reports", "whole", "-f", "json=whole.json");
    against("--part", "1/2", "--reports", "both", "-f", "json=1.json");
    against("--part", "2/2", "--reports", "both", "-f", "json=2.json");
    Scenario.Outcome joined =
        run("join", "1.json", "2.json", "--reports", "both", "-f", "json=all.json");
    assertThat(joined.exit()).isEqualTo(against().exit());
    assertThat(desk.resolve("all.json")).hasSameTextualContentAs(desk.resolve("whole.json"), UTF_8);
    assertThat(desk.resolve("both/index.html"))
        .hasSameTextualContentAs(desk.resolve("whole/index.html"), UTF_8);
  }
}
