package strikeoff.day;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import strikeoff.check.Checked;
import strikeoff.check.Checker;
import strikeoff.document.Edit;
import strikeoff.document.yaml.Manuscript;
import strikeoff.findings.Finding;
import strikeoff.findings.Severity;

/** Paint that is to be ironed in a room that closes before it is dry: no wait is told for it. */
class NightRemedyTest {

  private static final Checker CHECKER = Checker.builtIn();

  private static String plan(String hours) {
    return """
    plan: Reeds on nine towels
    cloth: {fibre: cotton, mass: 200 g/m², length: 4.6 m, width: 75 cm, washed: yes}
    table: {length: 5 m, width: 1.2 m}
    hours: ["HOURS"]
    crew: [Ada, Wren]
    protection: [gloves, heat gloves]
    screens:
      reed: {frame: 46 x 46 cm, image: 26 x 26 cm, mesh: 43/cm, thread: 80 µm, squeegee: 28 cm}
    pastes:
      green: {medium: paint, colour: "#4f7f46", amount: 400 g, label: {temperature: 150 °C, for: 1 min}}
    designs:
      reed: {size: 25 x 25 cm, separations: [{screen: reed, paste: green, covers: 30 %}]}
    placements:
      reeds: {design: reed, series: 9, pitch: 50 cm, start: 12 cm, across: 25 cm}
    run:
      - mix: all
      - print: reeds
      - heat-set: iron
        temperature: 150 °C
        for: 1 min
    """
        .replace("HOURS", hours);
  }

  private static List<Finding> stops(String text) {
    Checked checked = CHECKER.check("towels.yaml", text);
    assertThat(checked).as(text).isInstanceOf(Checked.Judged.class);
    return ((Checked.Judged) checked)
        .findings().stream().filter(f -> f.severity() != Severity.ADVICE).toList();
  }

  private static Finding early(String text) {
    return stops(text).stream()
        .filter(f -> f.rule().id().equals("fixing/heat-set-too-early"))
        .findFirst()
        .orElseThrow(() -> new AssertionError(stops(text)));
  }

  /** As many ways as it is edited, each of which leaves neither stop nor risk. */
  private static void everyWayMends(String text, Finding found) {
    assertThat(found.edits()).isNotEmpty();
    for (List<Edit> way : found.edits()) {
      String mended = Manuscript.of(text).orElseThrow().with(way).orElseThrow();
      assertThat(stops(mended)).as(mended).isEmpty();
    }
  }

  @Test
  void whereAWaitPassesClosingTheDayEndsBeforeTheHeat() {
    String text = plan("10:00-12:00");
    Finding found = early(text);
    assertThat(found.remedy())
        .startsWith("Write `- end of day` before step 3 (the run then ends day 2, ")
        .contains("after the room closes at 12:00")
        .doesNotContain("- dry:");
    assertThat(found.edits()).hasSize(1);
    everyWayMends(text, found);
  }

  @Test
  void whereItDoesNotAWaitIsSooner() {
    String text = plan("10:00-22:00");
    Finding found = early(text);
    assertThat(found.remedy())
        .contains("- dry: until fix-safe", "(the run then ends day 1, ")
        .doesNotContain("end of day", "closes");
    everyWayMends(text, found);
  }
}
