package strikeoff.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import strikeoff.cli.Scenario.Outcome;

/** The commands answer in the plan's units, and in others where they are asked for. */
class UnitsTest {

  /** In inches and °F, with too little soda in its bath and too small a repeat. */
  private static final String PLAN =
      """
      plan: Heron runner
      cloth: {fibre: cotton, length: 60 in, width: 20 in, washed: yes, mass: 5 oz/yd²}
      table: {length: 96 in, width: 48 in}
      protection: [dust mask, gloves, goggles, heat gloves]
      screens:
        heron: {frame: 18 x 16 in, image: 9 x 7 in, mesh: 110/in, thread: 80 µm, squeegee: 8 1/2 in}
      pastes:
        slate: {medium: dye, group: dichlorotriazine, colour: "#3d4852", amount: 1/2 oz}
      designs:
        heron:
          size: 8 x 6 in
          separations:
            - {screen: heron, paste: slate, covers: 40 %}
      placements:
        row: {design: heron, series: 3, pitch: 18 1/2 in, start: 3 in, across: 3 in}
      run:
        - mix: all
        - print: row
          before moving: until lift-safe
        - dry: until fix-safe
        - fix: soak
          bath: {soda ash: 1 oz, salt: 20 oz, water: 6 US quarts}
          temperature: 86 °F
          for: 60 min
        - rinse: 70 °F
          for: 20 min
        - wash: 140 °F
          for: 15 min
      """;

  private static final String METRIC = "\\d ?(?:mm|cm|m|g|kg|ml|L|°C|g/m²|g/L)(?![\\w²/])";

  @TempDir private Path folder;

  @BeforeEach
  void plan() throws IOException {
    Files.writeString(folder.resolve("heron.yaml"), PLAN);
  }

  private Outcome run(String... command) {
    return Scenario.run(folder, Map.of("COLUMNS", "200"), List.of(command));
  }

  @Test
  void aPlanInInchesIsToldInThem() {
    Outcome outcome = run("check", "heron.yaml");
    assertThat(outcome.exit()).isEqualTo(1);
    assertThat(outcome.out())
        .contains("paste/short", "fixing/soda-too-weak", " oz")
        .doesNotContainPattern(METRIC);
  }

  @Test
  void mendWritesOuncesAndSettles() throws IOException {
    assertThat(run("mend", "heron.yaml", "--write").exit()).isZero();
    String mended = Files.readString(folder.resolve("heron.yaml"));
    assertThat(mended).isNotEqualTo(PLAN).containsPattern("amount: [\\d. /]+ (oz|lb)");
    assertThat(mended).doesNotContainPattern(METRIC);
    Outcome again = run("mend", "heron.yaml", "--write");
    assertThat(again.exit()).isZero();
    assertThat(Files.readString(folder.resolve("heron.yaml"))).isEqualTo(mended);
    assertThat(run("check", "heron.yaml").exit()).isZero();
  }

  @ParameterizedTest
  @ValueSource(strings = {"metric", "us", "imperial"})
  void otherUnitsCanBeAskedFor(String units) {
    String told = run("check", "heron.yaml", "--units", units).out();
    if (units.equals("metric")) {
      assertThat(told.replaceAll("(?m)^ +\\d+ [-+] .*$", ""))
          .containsPattern("\\d g\\b")
          .doesNotContainPattern("\\d (?:oz|in|°F)\\b");
    } else {
      assertThat(told).doesNotContainPattern(METRIC);
    }
  }

  @Test
  void unitsThatNobodyKnowsAreRefused() {
    Outcome outcome = run("check", "heron.yaml", "--units", "metrik");
    assertThat(outcome.exit()).isEqualTo(2);
    assertThat(outcome.err()).contains("did you mean", "metric");
  }

  @Test
  void numbersOfJsonAreMetricWhateverTheTextsAreToldIn() {
    String us = run("check", "heron.yaml", "--format", "json").out();
    String metric = run("check", "heron.yaml", "--format", "json", "--units", "metric").out();
    String number = "\"needGrams\" ?: ?[\\d.]+";
    assertThat(us).containsPattern(number);
    assertThat(found(us, number)).isEqualTo(found(metric, number));
  }

  private static List<String> found(String text, String pattern) {
    return Pattern.compile(pattern).matcher(text).results().map(MatchResult::group).toList();
  }

  @Test
  void aPageOfAPlanInInchesHasNoCentimetres() throws IOException {
    run("check", "heron.yaml", "--reports", "pages");
    String page = page("pages/heron.html");
    assertThat(page).containsPattern("\\d in\\b").doesNotContainPattern("\\d ?cm\\b");
    run("check", "heron.yaml", "--reports", "metric", "--units", "metric");
    assertThat(page("metric/heron.html"))
        .containsPattern("\\d cm\\b")
        .doesNotContainPattern("\\d [/\\d ]*in[,.;:)]");
  }

  /** What people read of it: without the plan's own lines. */
  private String page(String file) throws IOException {
    Document page = Jsoup.parse(Files.readString(folder.resolve(file)));
    page.select("script, style").remove();
    page.select("pre").remove();
    String text = page.body().text();
    for (String line : PLAN.lines().toList()) {
      text = text.replace(line.strip(), "");
    }
    return text;
  }

  @Test
  void startWritesTheSizeAsItWasGivenAndAllElseLikeIt() {
    Outcome outcome = run("start", "--medium", "dye", "--motif", "8 x 6 in");
    assertThat(outcome.exit()).isZero();
    assertThat(outcome.out()).contains("size: 8 x 6 in\n", "mesh: 110/in", " oz");
    assertThat(outcome.out()).doesNotContainPattern(METRIC);
  }

  @Test
  void compareTellsPasteInThem() throws IOException {
    Files.createDirectories(folder.resolve("old"));
    Files.createDirectories(folder.resolve("new"));
    Files.writeString(folder.resolve("old/heron.yaml"), PLAN);
    Files.writeString(folder.resolve("new/heron.yaml"), PLAN.replace("1/2 oz", "6 oz"));
    assertThat(run("compare", "old", "new").out()).contains("6 oz").doesNotContainPattern(METRIC);
  }
}
