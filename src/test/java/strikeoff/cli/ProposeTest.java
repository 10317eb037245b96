package strikeoff.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import strikeoff.artwork.DemoFilms;
import strikeoff.cli.Scenario.Outcome;

class ProposeTest {

  @TempDir private Path folder;
  private Path plan;

  @BeforeEach
  void plan() throws IOException {
    plan = folder.resolve("border.yaml");
    Files.copy(Path.of("plans/first-border.yaml"), plan);
  }

  private Outcome run(String... command) {
    return Scenario.run(folder, Map.of("COLUMNS", "300"), List.of(command));
  }

  private Outcome propose(String... more) {
    List<String> command = new java.util.ArrayList<>(List.of("propose", "border.yaml"));
    command.addAll(List.of(more));
    if (!command.contains("--effort")) {
      command.addAll(List.of("--effort", "400"));
    }
    return Scenario.run(folder, Map.of("COLUMNS", "300"), command);
  }

  private String text() throws IOException {
    return Files.readString(plan);
  }

  @Test
  void theDiffIsPrintedAndTheProofTold() throws IOException {
    String before = text();
    Outcome outcome = propose();
    assertThat(outcome.exit()).isZero();
    assertThat(text()).isEqualTo(before);
    assertThat(outcome.out())
        .startsWith("--- border.yaml\n+++ border.yaml\n@@ -")
        .contains("-    pause: 3 min\n")
        .containsPattern(
            "# at once on an ordinary day, on a slow day about [^,:]+: the prints beside the next frame dry\n"
                + "\\+    dry between neighbours: until frame-safe\n");
    assertThat(outcome.err())
        .startsWith(
            "border.yaml: your run as written ends on day 1, 13:37; this one ends on day 1, 13:1")
        .contains("No run of these prints can end before day 1, 13:1")
        .contains("where films dry slowly on day 1, 14:")
        .contains("Not kept of what you wrote: `pause: 3 min` of border.")
        .contains("It counts on no fan, since the plan names none");
  }

  @Test
  void bothRunsAreDrawnByTheClockOnOneScale() {
    Outcome outcome =
        Scenario.run(
            folder, Map.of("COLUMNS", "80"), List.of("propose", "border.yaml", "--effort", "400"));
    List<String> lines = outcome.err().lines().toList();
    assertThat(lines).allMatch(line -> line.length() <= 80);
    String yours = lines.stream().filter(l -> l.startsWith("  Yours")).findFirst().orElseThrow();
    String proposed =
        lines.stream().filter(l -> l.startsWith("  Proposed")).findFirst().orElseThrow();
    assertThat(yours.substring(11)).isEqualTo(proposed.substring(11)).contains("9 ", "10 ", "13");
    assertThat(outcome.err().replaceAll("\\s+", " "))
        .contains("A letter is 5 min: ")
        .containsPattern("\\d+ min of opening hours are saved\\.")
        .contains("Within opening hours the cloth waits while nobody works for ");
  }

  @Test
  void aPageShowsThemToo() throws IOException {
    Files.copy(plan, folder.resolve("page.html"));
    Outcome refused = propose("--html", "page.html");
    assertThat(refused.exit()).isEqualTo(2);
    assertThat(refused.err()).contains("page.html: a file that holds no page of an earlier run");
    assertThat(propose("--html", "border.yaml").err()).contains("this is read");
    for (int i = 0; i < 2; i++) {
      assertThat(propose("--html", "new.html").exit()).isZero();
    }
    assertThat(Files.readString(folder.resolve("new.html")))
        .contains("Your run</h3>", "The proposed run by the clock", "What moved, and why")
        .contains("No run of these prints can end before");
  }

  @Test
  void wordsOfAPlanAreSetAsSuchOnThePage() throws IOException {
    propose("--html", "page.html");
    assertThat(Files.readString(folder.resolve("page.html")))
        .contains("Not kept of what you wrote: <code>pause: 3 min</code> of border.")
        .contains("write <code>equipment: {fans: 1}</code> and ask again")
        .doesNotContain("`");
  }

  @Test
  void ofAFolderWithSeveralPlansOneIsToBeNamed() throws IOException {
    Files.copy(plan, folder.resolve("other.yaml"));
    Outcome outcome = run("propose", ".");
    assertThat(outcome.exit()).isEqualTo(2);
    assertThat(outcome.err())
        .isEqualTo("strikeoff: more than one plan; name the one that wants a run\n");
  }

  @Test
  void theSameEffortFindsTheSameBytes() {
    assertThat(propose("--shortest")).isEqualTo(propose("--shortest"));
  }

  @Test
  void onlyTheRunChangesAndWhatComesOutIsPrintable() throws IOException {
    String before = "\ufeff" + text().replace("\n", "\r\n") + "# The end.\r\n";
    Files.writeString(plan, before);
    assertThat(propose("--write").exit()).isZero();
    String after = text();
    int run = before.indexOf("run:\r\n");
    assertThat(after).startsWith(before.substring(0, run)).endsWith("# The end.\r\n");
    assertThat(after.replace("\r\n", "")).doesNotContain("\n");
    int fix = before.indexOf("  - fix: soak");
    assertThat(after).endsWith(before.substring(fix));
    Outcome check = run("check", "border.yaml", "--fail-on", "risk");
    assertThat(check.exit()).as(check.out()).isZero();
    Outcome again = propose();
    assertThat(again.exit()).isZero();
    assertThat(again.err()).contains("keep yours").contains("as short as can be");
  }

  /** Those of steps that are left out go, or they would stand for what nobody accepted. */
  @Test
  void whatIsAcceptedAtAStepStaysWithItOrGoes() throws IOException {
    String text =
        text().replace("  - dry: until fix-safe", "  - end of day\n  - dry: until fix-safe");
    List<String> steps =
        text.substring(text.indexOf("run:"))
            .lines()
            .filter(line -> line.startsWith("  - "))
            .toList();
    int rest = steps.indexOf("  - end of day") + 1;
    int soak = steps.indexOf("  - fix: soak") + 1;
    assertThat(rest).isPositive();
    Files.writeString(
        plan,
        text
            + "accept:\n  - {rule: time/cannot-start, at: step "
            + rest
            + ", because: We like to rest.}\n  - {rule: fixing/bath-tight, at: step "
            + soak
            + ".bath, because: It is stirred.}\n");
    Outcome outcome = propose("--write");
    assertThat(outcome.exit()).as(outcome.err()).isZero();
    String after = text();
    List<String> now =
        after
            .substring(after.indexOf("run:"), after.indexOf("accept:"))
            .lines()
            .filter(line -> line.startsWith("  - "))
            .toList();
    int soakNow = now.indexOf("  - fix: soak") + 1;
    assertThat(soakNow).isNotEqualTo(soak);
    assertThat(after)
        .endsWith(
            "accept:\n  - {rule: fixing/bath-tight, at: step "
                + soakNow
                + ".bath, because: It is stirred.}\n");
    assertThat(outcome.err())
        .contains("accepted of time/cannot-start at step " + rest + " has no place in this run")
        .contains("“We like to rest.”");
  }

  @Test
  void itIsWrittenElsewhereOnlyWhereNothingStands() throws IOException {
    assertThat(propose("-o", "new.yaml").exit()).isZero();
    assertThat(folder.resolve("new.yaml")).exists();
    Outcome again = propose("-o", "new.yaml");
    assertThat(again.exit()).isEqualTo(4);
    assertThat(again.err()).contains("something stands at");
  }

  @Test
  void whatNoRunCuresIsToldAtOnce() throws IOException {
    Files.copy(Path.of("plans/class/sunniva.yaml"), folder.resolve("sunniva.yaml"));
    Outcome outcome = run("propose", "sunniva.yaml", "--effort", "1000000");
    assertThat(outcome.exit()).isEqualTo(1);
    assertThat(outcome.out()).isEmpty();
    assertThat(outcome.err())
        .startsWith("sunniva.yaml: no run is proposed. However its prints are arranged,")
        .contains("paste/short, line 23: The run needs 86 g");
  }

  @Test
  void whatCannotBeReadIsToldAsEverywhere() throws IOException {
    Files.copy(Path.of("plans/class/uma.yaml"), folder.resolve("uma.yaml"));
    Outcome outcome = run("propose", "uma.yaml");
    assertThat(outcome.exit()).isEqualTo(3);
    assertThat(outcome.err()).contains("UNREADABLE").contains("did you mean “rust”?");
    assertThat(run("propose", "nowhere.yaml").exit()).isEqualTo(2);
    assertThat(run("propose", "border.yaml", "--write", "-o", "x").exit()).isEqualTo(2);
  }

  private String withoutRun() throws IOException {
    String text = text();
    return text.substring(0, text.indexOf("run:"));
  }

  /** Cloth, tools, designs and placements are enough for a whole plan. */
  @Test
  void aPlanWithoutARunGetsAllOfIt() throws IOException {
    String before = withoutRun();
    Files.writeString(plan, before);
    Outcome outcome = propose("--write");
    assertThat(outcome.exit()).as(outcome.err()).isZero();
    assertThat(outcome.err())
        .contains("it has no run yet; this one ends on day 1, 13:")
        .contains("how its prints are fixed: those steps are assumed");
    assertThat(text())
        .startsWith(before + "run:\n  - mix: all\n  - print: border\n")
        .contains("  # Assumed, as the plan says nothing of fixing: follow the sheets of the dye")
        .contains("  - fix: soak\n    bath: {soda ash: 200 g, salt: 500 g, water: 5 L}\n")
        .endsWith("  - rinse: 20 °C\n  - wash: 60 °C\n");
    Outcome check = run("check", "border.yaml", "--fail-on", "risk");
    assertThat(check.exit()).as(check.out()).isZero();
  }

  /** By what carries the colour and what bears it; each accepted by the check. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "medium: dye, group: dichlorotriazine | medium: paint | heat-set: iron~    temperature: 150 °C~    for: 5 min~$",
        "medium: dye, group: dichlorotriazine"
            + " | medium: paint, label: {temperature: 140 °C, for: 8 min}"
            + " | heat-set: iron~    temperature: 140 °C~    for: 8 min~$",
        "group: dichlorotriazine | group: dichlorotriazine, recipe: {dye: 3 g, urea: 10 g,"
            + " alginate: 3 g, baking soda: 2 g, water: 92 g} | fix: steam~    for: 10 min~",
        "fibre: linen | fibre: silk | soda ash: 95 g.*wash: \\d+ °C~$",
      })
  void itIsFixedByWhatCarriesTheColour(String was, String is, String fixed) throws IOException {
    String before = withoutRun().replace(was, is);
    Files.writeString(plan, before);
    Outcome outcome = propose("--write");
    assertThat(outcome.exit()).as(outcome.err()).isZero();
    assertThat(text()).containsPattern("(?s)" + fixed.replace("~", "\n"));
    assertThat(run("check", "border.yaml", "--fail-on", "risk").exit()).isZero();
  }

  @Test
  void noFixingIsInventedThatTheClothDoesNotTake() throws IOException {
    Files.writeString(plan, withoutRun().replace("fibre: linen", "fibre: polyester"));
    Outcome outcome = propose();
    assertThat(outcome.exit()).isEqualTo(1);
    assertThat(outcome.out()).isEmpty();
    assertThat(outcome.err())
        .contains("with those that its pastes ask for: However its prints are arranged,")
        .contains("cloth/dye-on-unsuited-fibre");
  }

  @Test
  void aPlanWhoseRunHasItsLastStepsAloneGetsTheOthers() throws IOException {
    String text = text();
    Files.writeString(
        plan, text.substring(0, text.indexOf("  - mix")) + text.substring(text.indexOf("  - fix")));
    Outcome outcome = propose("--write");
    assertThat(outcome.exit()).as(outcome.err()).isZero();
    assertThat(outcome.err()).contains("it has no run yet; this one ends on day 1, 13:1");
    assertThat(text()).contains("  - mix: all\n  - print: border\n");
  }

  @Test
  void whatIsPrintedAgainButNeverFixedIsLeftToThePrinter() throws IOException {
    Files.writeString(plan, text() + "  - print: border\n    only: [1]\n");
    Outcome outcome = propose();
    assertThat(outcome.exit()).isEqualTo(1);
    assertThat(outcome.err()).contains("What it prints last is never fixed or washed");
  }

  @Test
  void commentsThatHaveNoPlaceAreTold() throws IOException {
    Files.writeString(
        plan, text().replace("    pause: 3 min", "    pause: 3 min # Bo has the keys: ask her"));
    Outcome outcome = propose("--write");
    assertThat(outcome.exit()).as(outcome.err()).isZero();
    assertThat(text()).doesNotContain("Bo has the keys");
    assertThat(outcome.err())
        .contains(
            "Of your comments in the run this one has no place for “Bo has the keys: ask her”");
    // Its own are nobody's.
    assertThat(propose("--write", "--effort", "900").err()).doesNotContain("Of your comments");
  }

  /** Films are named by paths beside the plan, so a plan in another folder would find none. */
  @Test
  void aPlanIsNotWrittenWhereItsFilmsAreNot() throws IOException {
    DemoFilms.layInto(folder);
    Files.copy(Path.of("plans/estuary-curtains.yaml"), folder.resolve("curtains.yaml"));
    Files.createDirectory(folder.resolve("out"));
    for (String command : List.of("propose", "mend")) {
      List<String> words = new java.util.ArrayList<>(List.of(command, "curtains.yaml"));
      words.addAll(List.of("-o", "out/new.yaml"));
      words.addAll(command.equals("mend") ? List.of("--risks") : List.of("--effort", "100"));
      Outcome outcome = Scenario.run(folder, Map.of("COLUMNS", "300"), words);
      if (command.equals("propose")) {
        assertThat(outcome.exit()).as(outcome.err()).isEqualTo(4);
        assertThat(outcome.err()).contains("can't be written: at ", "copy them there first");
      }
      assertThat(folder.resolve("out/new.yaml")).doesNotExist();
    }
    DemoFilms.layInto(folder.resolve("out"));
    Outcome copied = run("propose", "curtains.yaml", "-o", "out/new.yaml", "--effort", "100");
    assertThat(copied.exit()).as(copied.err()).isZero();
    assertThat(run("check", "out/new.yaml").exit()).isZero();
  }
}
