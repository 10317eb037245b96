package strikeoff.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicReference;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strikeoff.document.Bounds;
import strikeoff.findings.Finding;
import strikeoff.findings.Severity;
import strikeoff.layout.Overlap;
import strikeoff.report.HtmlReport;

/** Plans that are readable and still meant to do harm end in a verdict, and soon. */
class HostilePlansTest {

  private static final Checker CHECKER = Checker.builtIn();

  @TempDir private Path folder;

  private String border;

  @BeforeEach
  void plan() throws Exception {
    border = Files.readString(Path.of("plans/first-border.yaml"), StandardCharsets.UTF_8);
  }

  @Test
  void aFolderInAFilesPlaceAndAFileThatIsGoneAreToldWithoutPaths() {
    assertThat(CHECKER.check(folder, "x.yaml").sentence())
        .contains("the file can't be read")
        .doesNotContain(folder.toString());
    assertThat(CHECKER.check(folder.resolve("gone.yaml"), "gone.yaml").sentence())
        .contains("the file can't be read: it isn't there, or not any more")
        .doesNotContain(folder.toString());
  }

  @Test
  void theColdestAndHottestRoomsAreChecked() {
    for (String room :
        new String[] {
          "{temperature: -40 °C, humidity: 0 %, air: 0 m/s}",
          "{temperature: -40 °C, humidity: 100 %}",
          "{temperature: 100 °C, humidity: 100 %}",
          "{temperature: 100 °C, humidity: 0 %, air: 5 m/s}"
        }) {
      Checked checked =
          CHECKER.check("room.yaml", border.replace("table:", "room: " + room + "\ntable:"));
      assertThat(checked.verdict()).as(room).isIn(Verdict.PRINTABLE, Verdict.NOT_PRINTABLE);
    }
  }

  @Test
  void aThousandPlacementsOnOneAnotherEndSoon() {
    StringBuilder fan = new StringBuilder(border);
    int at = fan.indexOf("run:");
    for (int i = 0; i < 1000; i++) {
      fan.insert(at, "  b" + i + ": {design: reeds, anchor: border, offset: \"1 cm, 1 cm\"}\n");
    }
    Assertions.assertTimeoutPreemptively(
        Duration.ofSeconds(60),
        () -> {
          Checked checked = CHECKER.check("fan.yaml", fan.toString());
          assertThat(checked).isInstanceOf(Checked.Judged.class);
          assertThat(((Checked.Judged) checked).facts().layout().evidence())
              .hasAtLeastOneElementOfType(Overlap.class);
          assertThat(HtmlReport.plan(checked)).endsWith("</html>\n");
        });
  }

  @Test
  void whatOneRuleFindsHundredsOfTimesIsToldAHundredTimesAndCounted() {
    StringBuilder seams = new StringBuilder("seams:\n");
    for (int i = 0; i < 500; i++) {
      seams.append("  s" + i + ": {at: " + (i + 10) + " mm, allowance: 1 cm}\n");
    }
    Checked checked = CHECKER.check("seams.yaml", border.replace("table:", seams + "table:"));
    Map<String, List<Finding>> byRule =
        ((Checked.Judged) checked)
            .findings().stream().collect(Collectors.groupingBy(f -> f.rule().id()));
    assertThat(checked.verdict()).isEqualTo(Verdict.NOT_PRINTABLE);
    assertThat(byRule.values()).allSatisfy(found -> assertThat(found).hasSizeLessThan(102));
    assertThat(byRule.values())
        .anySatisfy(
            found ->
                assertThat(found)
                    .hasSize(101)
                    .anySatisfy(f -> assertThat(f.message()).contains("times more")));
  }

  @Test
  void acceptingWhatIsToldDoesNotAcceptWhatIsOnlyCounted() {
    Bounds two = Bounds.USUAL.with(Map.of("findings", 2));
    StringBuilder seams = new StringBuilder("seams:\n");
    for (int i = 0; i < 6; i++) {
      seams.append("  s" + i + ": {at: " + (i + 2) * 25 + " cm, allowance: 1 cm}\n");
    }
    String plan = border.replace("table:", seams + "table:");
    Checker cut = new Checker(CHECKER.policy(), CHECKER.rules(), two);
    String rule =
        ((Checked.Judged) CHECKER.check("seams.yaml", plan))
            .of(Severity.STOP)
            .findFirst()
            .orElseThrow()
            .rule()
            .id();
    String accept = "accept:\n";
    for (int i = 0; i < 5; i++) {
      accept += "  - {rule: " + rule + ", at: seams.s" + i + ", because: tried}\n";
    }
    assertThat(cut.check("seams.yaml", plan + accept).verdict()).isEqualTo(Verdict.NOT_PRINTABLE);
  }

  @Test
  void aPlanThatIsGivenUpStopsWorking() throws Exception {
    AtomicReference<Checked> given = new AtomicReference<>();
    Thread thread =
        new Thread(
            () -> {
              Thread.currentThread().interrupt();
              given.set(CHECKER.check("border.yaml", border));
            });
    thread.start();
    thread.join(Duration.ofSeconds(20).toMillis());
    assertThat(thread.isAlive()).isFalse();
    assertThat(given.get().sentence()).contains("given up");
  }
}
