package strikeoff.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strikeoff.cli.commands.Strikeoff;
import strikeoff.cli.text.Exit;
import strikeoff.cli.text.Surroundings;

/** A teacher's Saturday: the workshop's folder, its policy, its rules and a class of plans. */
class WorkshopTest {

  private static final Path DEMO = Path.of("plans/workshop");

  @TempDir private Path desk;

  private String out;
  private String err;

  @BeforeEach
  void copyTheDemo() throws IOException {
    try (Stream<Path> files = Files.walk(DEMO)) {
      for (Path file : files.toList()) {
        Path copy = desk.resolve("workshop").resolve(DEMO.relativize(file).toString());
        if (Files.isDirectory(file)) {
          Files.createDirectories(copy);
        } else {
          Files.copy(file, copy);
        }
      }
    }
  }

  private static Surroundings surroundings(StringWriter out, StringWriter err, Path folder) {
    return new Surroundings(
        new PrintWriter(out),
        new PrintWriter(err),
        java.io.InputStream.nullInputStream(),
        Map.of("COLUMNS", "200"),
        false,
        folder,
        2);
  }

  private int run(String... args) {
    StringWriter said = new StringWriter();
    StringWriter complained = new StringWriter();
    int code = Strikeoff.run(surroundings(said, complained, desk), args);
    out = said.toString();
    err = complained.toString();
    return code;
  }

  private void edit(String file, String from, String to) {
    try {
      Path path = desk.resolve("workshop").resolve(file);
      String text = Files.readString(path);
      assertThat(text).contains(from);
      Files.writeString(path, text.replace(from, to));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Test
  void theClassIsCheckedAgainstTheWorkshopsOwnRules() {
    assertThat(run("check", "workshop", "--rules", "workshop/rules"))
        .as(err)
        .isEqualTo(Exit.UNREADABLE.code());
    assertThat(out.lines().filter(line -> line.contains("workshop/saturday/")).toList())
        .extracting(line -> line.replaceAll("\\s+", " ").strip())
        .contains(
            "PRINTABLE workshop/saturday/agnes.yaml: 3 pieces of advice",
            "workshop/saturday/bram.yaml:12:18 STOP beginners/fine-mesh",
            "workshop/saturday/cleo.yaml:14:3 STOP beginners/long-series",
            "workshop/saturday/dario.yaml:7:3 STOP house/paint-without-heat-gloves",
            "workshop/saturday/falk.yaml:2:1 ADVICE house/no-notes",
            "workshop/saturday/gerda.yaml:20:5 STOP house/late-finish");
    assertThat(out)
        .contains("Day 1 ends at 16:32, and screens must be washed")
        .contains("no screen is called “small opem”; did you mean “small open”?")
        .contains("7 plans: 1 printable, 5 not printable, 1 unreadable");
    assertThat(err).isEmpty();
  }

  @Test
  void aRuleThatFoundNothingInTheWholeBatchIsNamedOnce() throws IOException {
    edit("rules/beginners/screens.dslr", "finer than 61 per cm", "finer than 161 per cm");
    String json = "workshop/all.json";
    run(
        "check",
        "workshop",
        "--rules",
        "workshop/rules",
        "--format",
        "text",
        "--format",
        "json=" + json);
    assertThat(out)
        .containsOnlyOnce("Of the studio's own rules, beginners/fine-mesh found nothing in any of");
    assertThat(Files.readString(desk.resolve(json)).replaceAll("\\s+", ""))
        .contains("\"silentRules\":[\"beginners/fine-mesh\"]");
  }

  @Test
  void aPolicyThatContradictsItselfIsToldWithBothKeys() {
    edit("studio.yaml", "limits:\n", "limits:\n  screens/transfer-usual: 250 %\n");
    String told =
        "limits.screens/transfer-usual: 250 % is more than screens/transfer-most, which is";
    assertThat(run("check", "workshop/saturday/agnes.yaml", "--policy", "workshop/studio.yaml"))
        .isEqualTo(Exit.USAGE.code());
    assertThat(err).contains("workshop/studio.yaml:23:3: " + told);
    assertThat(run("check", "workshop/saturday/agnes.yaml"))
        .as("as OWN-RULES.md says of a policy that was found")
        .isEqualTo(Exit.FAULT.code());
    assertThat(err).contains(told);
    assertThat(out).doesNotContain("fault of the tool");
  }

  @Test
  void aForbiddenAcceptanceCountsForNothingAndIsToldWithItsPolicy() {
    run("check", "workshop/saturday/falk.yaml", "--rules", "workshop/rules");
    assertThat(out)
        .contains("STOP  paste/short")
        .doesNotContain("Accepted:")
        .contains("RISK  acceptance/not-allowed")
        .contains("workshop/studio.yaml, line 32");
    edit("studio.yaml", "accept: [", "accept: [paste/short, ");
    run("check", "workshop/saturday/falk.yaml", "--rules", "workshop/rules");
    assertThat(out).contains("Accepted:").doesNotContain("acceptance/not-allowed");
  }

  @Test
  void aCourseInheritsAndMayBeHeldToTheStudio() {
    run("check", "workshop/saturday", "--policy", "workshop/studio.yaml");
    assertThat(out)
        .as("the workshop alone calls it a risk")
        .contains("RISK  beginners/long-series");
    run("check", "workshop", "--rules", "workshop/rules");
    assertThat(out).as("the course insists").contains("STOP  beginners/long-series");
    edit("studio.yaml", "own rules: rules", "own rules: rules\nholds below: yes");
    run("check", "workshop", "--rules", "workshop/rules");
    assertThat(out).as("the studio holds").contains("RISK  beginners/long-series");
  }

  @Test
  void aLimitOfTheStudioReachesThePlansAndSaysWhereItComesFrom() {
    assertThat(run("explain", "drying/paint-dries-in-screen")).isZero();
    assertThat(out).contains("15 min");
    edit("studio.yaml", "limits:\n", "limits:\n  drying/in-mesh-of-paint: 5 min\n");
    run("check", "workshop/saturday/cleo.yaml", "--rules", "workshop/rules");
    assertThat(out).contains("drying/paint-dries-in-screen").contains("longer than 5 min");
    run("explain", "--policy", "workshop/studio.yaml", "drying/in-mesh-of-paint");
    run("rules", "--policy", "workshop/studio.yaml");
    assertThat(out)
        .contains("limit drying/in-mesh-of-paint: 5 min instead of 15 min")
        .contains("workshop/studio.yaml, line 23");
  }

  @Test
  void aScreenThatLeavesTheInventoryIsMissedWhereAPlanNamesIt() {
    edit("studio.yaml", "  border open:", "  border sold:");
    assertThat(run("check", "workshop/saturday/agnes.yaml", "--rules", "workshop/rules"))
        .isEqualTo(Exit.UNREADABLE.code());
    assertThat(out).contains("agnes.yaml:12:18").contains("no screen is called “border open”");
  }

  @Test
  void whatAPlanTakesFromTheStudioIsTold() {
    run("check", "-v", "workshop/saturday/agnes.yaml", "--rules", "workshop/rules");
    assertThat(out)
        .contains("screens.border open of the studio")
        .contains("workshop/studio.yaml, line 14")
        .contains("table of the studio");
  }

  @Test
  void resultsAndReportSayWhichPoliciesApplied() throws IOException {
    run(
        "check",
        "workshop",
        "--rules",
        "workshop/rules",
        "--format",
        "json=all.json",
        "--reports",
        "pages");
    assertThat(Files.readString(desk.resolve("all.json")).replaceAll("\\s+", ""))
        .contains("\"policies\":[\"workshop/studio.yaml\",\"workshop/saturday/studio.yaml\"]")
        .contains("\"id\":\"house/late-finish\"");
    try (Stream<Path> pages = Files.walk(desk.resolve("pages"))) {
      assertThat(pages.filter(p -> p.toString().contains("agnes")).findFirst())
          .hasValueSatisfying(
              page ->
                  assertThat(page)
                      .content()
                      .contains("workshop/studio.yaml, workshop/saturday/studio.yaml."));
    }
  }

  @Test
  void anOwnRuleIsExplainedWithItsSentences() {
    assertThat(run("explain", "--policy", "workshop/studio.yaml", "house/late-finish")).isZero();
    assertThat(out)
        .contains("house/late-finish  STOP")
        .contains("Paste that dries in a screen overnight stays there.")
        .contains("workshop/rules/house/day.dslr:3")
        .contains("the day ends later than 16:30");
  }

  @Test
  void aBrokenSentenceIsToldWithItsLineAndTheNearestOneAndNothingIsChecked() {
    edit(
        "rules/house/day.dslr",
        "the day ends later than 16:30",
        "the day finishes later than 16:30");
    assertThat(run("check", "workshop", "--rules", "workshop/rules")).isEqualTo(Exit.USAGE.code());
    assertThat(out).isEmpty();
    assertThat(err.replaceAll("\\s+", " "))
        .contains(
            "workshop/rules/house/day.dslr:5: “the day finishes later than 16:30” is no sentence"
                + " that is known here; the nearest is “the day ends later than {clock}”");
  }

  @Test
  void everyMistakeOfAPolicyIsToldAtOnceWithItsPlace() {
    edit("studio.yaml", "time/waiting-share: {value: 90 %", "time/waiting-shore: {value: 90 min");
    edit("studio.yaml", "table/many-lays: risk", "table/many-lays: rsk");
    edit("studio.yaml", "mesh: 61/cm", "mesh: 61 cm");
    edit("studio.yaml", "studio: Workshop", "studo: Workshop");
    assertThat(run("check", "workshop", "--policy", "workshop/studio.yaml"))
        .as("a policy that is named for all plans")
        .isEqualTo(Exit.USAGE.code());
    assertThat(run("check", "workshop", "--rules", "workshop/rules")).isEqualTo(Exit.FAULT.code());
    assertThat(err.replaceAll("\\s+", " "))
        .contains("workshop/studio.yaml:23:3: limits.time/waiting-shore: no limit is called")
        .contains("did you mean “time/waiting-share”?")
        .contains("workshop/studio.yaml:26:20: severities.table/many-lays: stop, risk or advice")
        .contains("did you mean “risk”?")
        .contains("workshop/studio.yaml:12:60: screens.small fine.mesh: ")
        .contains("“studo” is not known here; did you mean “studio”?");
    edit("studio.yaml", "time/waiting-shore: {value: 90 min", "time/waiting-share: {value: 90 min");
    run("check", "workshop", "--rules", "workshop/rules");
    assertThat(err.replaceAll("\\s+", " "))
        .as("a limit has the dimension that its rule compares")
        .contains("workshop/studio.yaml:23:31: limits.time/waiting-share.value: ");
  }

  @Test
  void aBrokenPolicyLeavesPlansThatItDoesNotHoldForUnharmed() throws IOException {
    Files.createDirectories(desk.resolve("class/anna"));
    Files.createDirectories(desk.resolve("class/ben"));
    String plan = Files.readString(Path.of("plans/first-border.yaml"));
    Files.writeString(desk.resolve("class/anna/plan.yaml"), plan);
    Files.writeString(desk.resolve("class/ben/plan.yaml"), plan);
    Files.writeString(desk.resolve("class/anna/studio.yaml"), "studio: Mine\ntabel: 3 m\n");
    assertThat(run("check", "class", "--verdicts")).isEqualTo(Exit.FAULT.code());
    assertThat(out.replaceAll("\\s+", " "))
        .contains("NOT CHECKED class/anna/plan.yaml: the policy that holds for it has a mistake:")
        .contains("class/anna/studio.yaml:2:1: ")
        .contains("PRINTABLE class/ben/plan.yaml");
    assertThat(err).contains("class/anna/studio.yaml:2:1: ").contains("“table”");
    run("check", "class", "-f", "junit");
    assertThat(out).contains("did you mean “table”?\"").doesNotContain("?.");
  }

  @Test
  void rulesThatLieBesideAPlanAreNeverRun() throws IOException {
    Path handIn = desk.resolve("hand-in");
    Files.createDirectories(handIn.resolve("rules/mine"));
    Files.copy(DEMO.resolve("rules/house/day.dslr"), handIn.resolve("rules/mine/day.dslr"));
    Files.writeString(handIn.resolve("studio.yaml"), "studio: Mine\nown rules: rules\n");
    Files.writeString(
        handIn.resolve("plan.yaml"), Files.readString(Path.of("plans/first-border.yaml")));
    assertThat(run("check", "hand-in/plan.yaml")).isZero();
    assertThat(out).doesNotContain("mine/");
    assertThat(err.replaceAll("\\s+", " "))
        .contains("hand-in/studio.yaml: its own rules aren't run");
    for (String checked : List.of(".", "hand-in")) {
      assertThat(run("check", checked)).as("nor when the folder is checked").isNotNegative();
      assertThat(out).doesNotContain("mine/");
      assertThat(err).contains("studio.yaml: its own rules aren't run");
    }
    desk = handIn;
    assertThat(run("check", "plan.yaml")).as("nor from within it").isZero();
    assertThat(out).doesNotContain("mine/");
    assertThat(run("rules")).isZero();
    assertThat(out).doesNotContain("mine/");
    desk = handIn.getParent();
    assertThat(run("check", "--rules", "hand-in/rules", "hand-in/plan.yaml")).isZero();
    assertThat(out).contains("mine/no-notes");
    assertThat(err).as("nothing is left out").isEmpty();
    assertThat(run("check", "--policy", "hand-in/studio.yaml", "hand-in/plan.yaml")).isZero();
    assertThat(out).contains("mine/no-notes");
  }

  @Test
  void codeIsRefusedBeforeAnyPlanIsChecked() throws IOException {
    Files.writeString(desk.resolve("workshop/rules/house/late.drl"), "package rules.house\n");
    Files.writeString(desk.resolve("workshop/rules/words.dsl"), "[condition][]it rains=x\n");
    assertThat(run("check", "workshop", "--rules", "workshop/rules")).isEqualTo(2);
    assertThat(out).isEmpty();
    assertThat(err.replaceAll("\\s+", " "))
        .contains("workshop/rules/house/late.drl: rules in code aren't run; write the rule in")
        .contains("workshop/rules/words.dsl: no sentences can be added; write what they stand for");
    assertThat(run("check", "workshop", "--rules-cache", "x")).isEqualTo(2);
    assertThat(err).contains("--rules-cache");
  }
}
