package strikeoff.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.BiFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import strikeoff.findings.Finding;
import strikeoff.findings.Severity;

/** What a finding says between backticks, written into the plan, silences it and rouses nothing. */
class WrittenRemedyTest {

  private static final Checker CHECKER = Checker.builtIn();

  @Test
  void theClothIsLaidWhereTheFindingSays() {
    mends("table/frame-over-table-edge", (plan, told) -> addTo(plan, "table", told.get(0)));
  }

  /** The table is made as wide as is said, too. */
  @Test
  void aWiderTableHasOnePlaceForTheCloth() {
    mends(
        "table/no-one-place-for-cloth",
        (plan, told) -> addTo(plan, "table", told.get(0)).replace("width: 70 cm", "width: 74 cm"));
  }

  @Test
  void aMirroredPanelIsMovedToItsLine() {
    mends("layout/mirrored-panels-askew", (plan, told) -> set(plan, "right", told.get(0)));
    mends("layout/mirrored-motifs-do-not-meet", (plan, told) -> set(plan, "right", told.get(0)));
  }

  /** The step is written where the finding says, and nothing is left to say. */
  @Test
  void screensAreWashedBeforePasteDriesInThem() {
    mends("drying/paint-dries-in-screen", (plan, told) -> insert(plan, 2, told.get(0)));
    mends("drying/paste-dries-in-screen", (plan, told) -> insert(plan, 2, told.get(0)));
  }

  /** Writes a step after another one, by its number. */
  private static String insert(String plan, int after, String step) {
    String run = plan.substring(plan.indexOf("\nrun:\n"));
    Matcher steps = Pattern.compile("(?m)^  - ").matcher(run);
    for (int i = 0; i <= after; i++) {
      assertThat(steps.find()).isTrue();
    }
    String changed =
        run.substring(0, steps.start()) + "  " + step + "\n" + run.substring(steps.start());
    return plan.replace(run, changed);
  }

  /** Puts entries in place of those of the same keys in a map of one line. */
  private static String set(String plan, String name, String entries) {
    String line = plan.lines().filter(l -> l.startsWith("  " + name + ": {")).findFirst().get();
    String changed = line;
    for (String entry : entries.split(", ")) {
      String key = entry.substring(0, entry.indexOf(':'));
      assertThat(changed).contains(" " + key + ": ");
      changed = changed.replaceFirst("(?<=[ {])" + key + ": [^,}]*", entry);
    }
    return plan.replace(line, changed);
  }

  /** Writes an entry into a map of one line. */
  private static String addTo(String plan, String key, String entry) {
    return Pattern.compile("(?m)^(" + key + ": \\{.*)}\\s*$")
        .matcher(plan)
        .replaceFirst("$1, " + entry + "}");
  }

  private static void mends(String rule, BiFunction<String, List<String>, String> write) {
    String plan = Example.packaged(rule).firingText();
    Finding found =
        findings(plan).stream().filter(f -> f.rule().id().equals(rule)).findFirst().orElseThrow();
    List<String> told =
        Pattern.compile("`([^`]*)`")
            .matcher(found.remedy())
            .results()
            .map(m -> m.group(1))
            .toList();
    assertThat(told).as(found.remedy()).isNotEmpty();
    String mended = write.apply(plan, told);
    assertThat(mended).isNotEqualTo(plan);
    assertThat(findings(mended)).as(mended).isEmpty();
  }

  /** Stops and risks of a plan that can be read. */
  private static List<Finding> findings(String plan) {
    Checked checked = CHECKER.check("plan.yaml", plan);
    assertThat(checked).as(plan).isInstanceOf(Checked.Judged.class);
    return ((Checked.Judged) checked)
        .findings().stream().filter(f -> f.severity() != Severity.ADVICE).toList();
  }
}
