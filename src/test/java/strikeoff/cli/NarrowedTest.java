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
import java.util.regex.Pattern;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Nobody takes the verdict of some rules for the verdict of all. */
class NarrowedTest {

  private static final Pattern COUNTED = Pattern.compile("only (\\d+) of (\\d+) rules judged");

  @TempDir private Path desk;

  @BeforeEach
  void lay() throws IOException {
    Files.createDirectories(desk.resolve("plans"));
    Files.copy(Path.of("plans/mistakes/hot-bath.yaml"), desk.resolve("plans/hot.yaml"));
    Files.copy(Path.of("plans/first-border.yaml"), desk.resolve("plans/border.yaml"));
  }

  private Scenario.Outcome run(String... words) {
    return Scenario.run(desk, Map.of("COLUMNS", "200"), List.of(words));
  }

  private JsonNode json(String... more) throws IOException {
    List<String> words = new ArrayList<>(List.of("check", "plans", "-f", "json"));
    words.addAll(List.of(more));
    return new ObjectMapper().readTree(run(words.toArray(String[]::new)).out());
  }

  private static List<String> rules(JsonNode results) {
    return results.findValuesAsText("rule").stream().distinct().sorted().toList();
  }

  @Test
  void onlyAndSkipTakeRulesAndFamiliesApart() throws IOException {
    List<String> all = rules(json());
    assertThat(all).contains("fixing/bath-too-hot");
    assertThat(rules(json("--only", "fixing"))).allMatch(rule -> rule.startsWith("fixing/"));
    assertThat(rules(json("--skip", "fixing")))
        .containsExactlyElementsOf(
            all.stream().filter(rule -> !rule.startsWith("fixing/")).toList());
    assertThat(rules(json("--only", "fixing,layout", "--skip", "fixing/bath-too-hot")))
        .doesNotContain("fixing/bath-too-hot");
    assertThat(rules(json("--only", "fixing/bath-too-hot", "--only", "layout")))
        .contains("fixing/bath-too-hot")
        .allMatch(rule -> rule.equals("fixing/bath-too-hot") || rule.startsWith("layout/"));
  }

  @Test
  void everyOutputSaysThatSomeRulesWereLeftOut() throws IOException {
    Scenario.Outcome told =
        run(
            "check",
            "plans",
            "--skip",
            "fixing",
            "--reports",
            "pages",
            "-f",
            "json=r.json",
            "-f",
            "sarif=r.sarif",
            "-f",
            "junit=r.xml",
            "-f",
            "text=r.txt");
    assertThat(told.exit()).isZero();
    String text = Files.readString(desk.resolve("r.txt"));
    assertThat(text.lines().filter(line -> COUNTED.matcher(line).find())).hasSize(2);
    assertThat(text)
        .containsPattern(
            "Only \\d+ of \\d+ rules judged \\(without fixing\\): what the others find nobody has"
                + " looked for\\.");
    for (String page : List.of("hot.html", "border.html", "index.html")) {
      String shown = Jsoup.parse(Files.readString(desk.resolve("pages").resolve(page))).text();
      assertThat(shown).as(page).containsPattern(COUNTED).contains("(without fixing)");
    }
    assertThat(Jsoup.parse(Files.readString(desk.resolve("pages/hot.html"))).title())
        .containsPattern(COUNTED);
    JsonNode json = new ObjectMapper().readTree(desk.resolve("r.json").toFile());
    assertThat(json.at("/narrowed/skip/0").asText()).isEqualTo("fixing");
    assertThat(json.at("/narrowed/leftOut")).isNotEmpty();
    assertThat(json.at("/narrowed/of").asInt() - json.at("/narrowed/leftOut").size())
        .isEqualTo(json.at("/rules").size());
    assertThat(json.at("/plans/1/sentence").asText()).containsPattern(COUNTED);
    JsonNode sarif = new ObjectMapper().readTree(desk.resolve("r.sarif").toFile());
    JsonNode notice = sarif.at("/runs/0/invocations/0/toolConfigurationNotifications/0");
    assertThat(notice.at("/message/text").asText()).contains("(without fixing)");
    int index = notice.at("/descriptor/index").asInt();
    assertThat(sarif.at("/runs/0/tool/driver/notifications").get(index).at("/id"))
        .isEqualTo(notice.at("/descriptor/id"));
    assertThat(Files.readString(desk.resolve("r.xml")))
        .containsPattern("name=\"fixing\"[^>]*>\\s*<skipped></skipped>");
    assertThat(run("check", "plans", "--skip", "fixing", "-q", "--fail-on", "advice").out())
        .containsPattern(COUNTED);
  }

  @Test
  void partsAreJoinedAsOneRunAndOnlyWithTheirLike() throws IOException {
    run("check", "plans", "--part", "2/2", "-f", "json=other.json");
    run("check", "plans", "--only", "layout", "--reports", "whole", "-f", "json=whole.json");
    run(
        "check",
        "plans",
        "--only",
        "layout",
        "--part",
        "1/2",
        "--reports",
        "both",
        "-f",
        "json=1.json");
    run(
        "check",
        "plans",
        "--only",
        "layout",
        "--part",
        "2/2",
        "--reports",
        "both",
        "-f",
        "json=2.json");
    Scenario.Outcome joined =
        run("join", "1.json", "2.json", "--reports", "both", "-f", "json=all.json");
    assertThat(joined.exit()).isZero();
    assertThat(desk.resolve("all.json")).hasSameTextualContentAs(desk.resolve("whole.json"), UTF_8);
    assertThat(desk.resolve("both/index.html"))
        .hasSameTextualContentAs(desk.resolve("whole/index.html"), UTF_8);
    Scenario.Outcome mixed = run("join", "1.json", "other.json");
    assertThat(mixed.exit()).isEqualTo(2);
    assertThat(mixed.err()).contains("other rules were left out of one than of another");
    assertThat(run("compare", "whole.json", "whole.json").err())
        .contains("Only ")
        .contains("compare likes");
  }

  @Test
  void whatNobodyKnowsIsWrongUsageWithASuggestion() {
    Scenario.Outcome wrong =
        run("check", "plans", "--only", "dryin,fixing/bath-too-hott", "--skip", "nothing-like-it");
    assertThat(wrong.out()).isEmpty();
    assertThat(wrong.err())
        .contains("--only: no rule or family is called “dryin”; did you mean “drying”?")
        .contains("“fixing/bath-too-hott”; did you mean “fixing/bath-too-hot”?")
        .contains("--skip: no rule or family is called “nothing-like-it”");
    assertThat(wrong.exit()).isEqualTo(2);
    assertThat(run("check", "plans", "--only", "layout", "--skip", "layout").err())
        .isEqualTo("strikeoff: --only and --skip leave no rule to judge by\n");
  }

  /** What a plan accepts of a rule that isn't asked is not accepted in vain. */
  @Test
  void acceptancesOfOtherRulesAreNotIdle() throws IOException {
    Files.writeString(
        desk.resolve("plans/hot.yaml"),
        Files.readString(desk.resolve("plans/hot.yaml"))
            + "\naccept:\n  - {rule: fixing/bath-too-hot, because: We like it hot.}\n");
    assertThat(rules(json())).noneMatch(rule -> rule.startsWith("acceptance/"));
    assertThat(rules(json("--skip", "fixing"))).noneMatch(rule -> rule.startsWith("acceptance/"));
  }
}
