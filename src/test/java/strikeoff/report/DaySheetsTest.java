package strikeoff.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import strikeoff.check.Checked;
import strikeoff.check.Checker;
import strikeoff.day.Impression;
import strikeoff.day.Task;
import strikeoff.findings.Finding;
import strikeoff.findings.Severity;
import strikeoff.report.page.DaySheet;
import strikeoff.speech.StepSpeech;
import strikeoff.units.Measures;

class DaySheetsTest {

  private final Checked.Judged judged = Estuary.plain(List.of());

  private final List<DaySheet> sheets = DaySheets.of(judged);

  @Test
  void everyImpressionStandsOnALineOfItsScreenAndPaste() {
    List<DaySheet.Line> lines =
        sheets.stream().flatMap(s -> s.jobs().stream()).flatMap(j -> j.lines().stream()).toList();
    for (Impression impression : judged.facts().timeline().impressions()) {
      String screen = "screen " + impression.footprint().screen().name();
      assertThat(lines)
          .anyMatch(
              line ->
                  line.with().contains(screen) && line.begins().compareTo(impression.laid()) <= 0);
    }
    long prints = lines.stream().filter(l -> l.with().contains("1\u00a0pull")).count();
    assertThat(prints)
        .isEqualTo(
            judged.facts().timeline().impressions().stream()
                .map(i -> List.of(i.step(), i.set(), i.footprint().separation().number()))
                .distinct()
                .count());
  }

  @Test
  void aJobTellsItsCornersAndWhenTheClothMayMove() {
    DaySheet.Job herons =
        sheets.get(0).jobs().stream()
            .filter(j -> j.what().startsWith("Print herons"))
            .findFirst()
            .orElseThrow();
    assertThat(herons.what()).isEqualTo("Print herons 1–3");
    // By hand: frame 54 by 74 cm, image centred in it and on the design of 34 by 52 cm, so that its
    // edges lie 10 and 11 cm before the design's. The cloth's start lies at the table's, its near
    // edge 10 cm in: (160 - 140) / 2.
    assertThat(herons.where().words())
        .isEqualTo(
            "Frame's edge, for the stop · design's corner nearest start and near edge, cm from the"
                + " table's start:");
    assertThat(herons.where().spots())
        .containsExactly(
            new DaySheet.Spot("1", "13 · 23"),
            new DaySheet.Spot("2", "83 · 93"),
            new DaySheet.Spot("3", "153 · 163"));
    assertThat(herons.where().frame()).isEqualTo("Across, cm from the table's near edge: 45 · 56.");
    assertThat(herons.lines().get(0).who()).isEqualTo("Wren");
    assertThat(herons.lines().get(0).next())
        .isEqualTo(
            "next frame on 1 not before 09:43, on all not before 09:45 (safe 09:46), wait to"
                + " 09:46");
    assertThat(herons.lines().get(3).what()).startsWith("Leave the cloth until");
    assertThat(herons.lines().get(3).next()).startsWith("cloth may move from 10:40 (safe 11:02)");
  }

  /** What a finding calls step 3 is 3 on the sheet, whatever day it is done. */
  @Test
  void jobsHaveTheNumbersOfTheirStepsThroughAllDays() {
    Checked.Judged demo =
        (Checked.Judged)
            Checker.builtIn()
                .check(Path.of("plans/estuary-curtains.yaml"), "estuary-curtains.yaml");
    List<DaySheet.Job> jobs =
        DaySheets.of(demo).stream()
            .flatMap(s -> s.jobs().stream())
            .filter(job -> job.course() == DaySheet.Course.WHOLE)
            .toList();
    assertThat(jobs.get(0).number()).as("the cloth is laid before the first step").isEmpty();
    assertThat(jobs).extracting(DaySheet.Job::number).doesNotHaveDuplicates();
    int printed = 0;
    for (DaySheet.Job job : jobs) {
      if (job.what().startsWith("Print ")) {
        printed++;
        String arrangement = job.what().split(" ")[1];
        int step = Integer.parseInt(job.number().replaceFirst("[.].*", ""));
        assertThat(StepSpeech.title(demo.plan().run().get(step - 1), Measures.METRIC))
            .contains(arrangement);
      }
    }
    assertThat(printed).isGreaterThan(5);
    assertThat(jobs).extracting(DaySheet.Job::number).anyMatch(number -> number.endsWith(".2"));
    // None is left out, and each stands where it is done.
    List<Integer> steps =
        jobs.stream()
            .skip(1)
            .map(j -> Integer.parseInt(j.number().replaceFirst("[.].*", "")))
            .distinct()
            .toList();
    assertThat(steps)
        .containsExactlyElementsOf(
            IntStream.rangeClosed(1, demo.plan().run().size()).boxed().toList());
  }

  /** A wait that is over by then, a second washing of the same screens and the end of a day. */
  @Test
  void aStepThatTakesNoTimeStandsOnTheSheetOfItsDay() {
    String plan =
        """
        plan: Steps that take no time
        cloth: {length: 2 m, width: 60 cm, washed: yes}
        screens: {reeds: {frame: 46 x 40 cm, image: 28 x 22 cm, mesh: 43/cm}}
        pastes: {sand: {medium: paint, colour: tan, amount: 300 g, mixed before: 1 h}}
        designs:
          reeds: {size: 28 x 22 cm, separations: [{screen: reeds, paste: sand, covers: 40 %}]}
        placements: {border: {design: reeds, series: 5, pitch: 30 cm, start: 10 cm, across: 20 cm}}
        run:
          - print: border
          - wash screen: all
          - wash screen: all
          - dry: until fix-safe
          - dry: 10 min
          - end of day
          - dry: until fix-safe
          - heat-set: press
        """;
    Checked.Judged judged = (Checked.Judged) Checker.builtIn().check("rests.yaml", plan);
    List<String> told =
        DaySheets.of(judged).stream()
            .flatMap(s -> s.jobs().stream().map(j -> s.title().substring(0, 5) + " " + j.number()))
            .toList();
    assertThat(told)
        .containsExactly(
            "Day 1 ", "Day 1 1", "Day 1 2", "Day 1 3", "Day 1 4", "Day 1 5", "Day 1 6", "Day 2 7",
            "Day 2 8");
    List<DaySheet.Job> jobs =
        DaySheets.of(judged).stream().flatMap(s -> s.jobs().stream()).toList();
    assertThat(jobs.get(3).after()).isEqualTo("Nothing is left to do.");
    assertThat(jobs.get(6).what()).isEqualTo("End of day");
    assertThat(jobs.get(7).after()).isEqualTo("No wait: by then this is over.");
  }

  /**
   * The waits after each print are long enough for a washing, and the line of the print says so.
   */
  @Test
  void aPrintSaysWhichScreenIsWashedInItsPauses() {
    String plan =
        """
        plan: pauses
        cloth: {length: 2.4 m, width: 60 cm, washed: yes}
        protection: [heat gloves]
        screens: {leaf: {frame: 44 x 44 cm, image: 20 x 20 cm, mesh: 43/cm}}
        pastes: {green: {medium: paint, colour: green, amount: 300 g}}
        designs: {leaf: {size: 20 x 20 cm, separations: [{screen: leaf, paste: green, covers: 40 %}]}}
        placements: {leaves: {design: leaf, series: 3, pitch: 60 cm, start: 30 cm, across: 20 cm}}
        run:
          - mix: all
          - print: leaves
            pause: PAUSE
        """;
    assertThat(prints(plan.replace("PAUSE", "45 min")))
        .contains("wait 45 min after each, in which leaf is washed out");
    assertThat(prints(plan.replace("PAUSE", "5 min"))).doesNotContain("washed out");
  }

  private static String prints(String plan) {
    Checked.Judged judged = (Checked.Judged) Checker.builtIn().check("pauses.yaml", plan);
    return DaySheets.of(judged).stream()
        .flatMap(sheet -> sheet.jobs().stream())
        .flatMap(job -> job.lines().stream())
        .map(DaySheet.Line::with)
        .filter(with -> with.contains("screen leaf"))
        .collect(Collectors.joining("; "));
  }

  /** A sheet hangs alone on the wall. */
  @Test
  void everySheetSaysWhatStandsAgainstThePlan() {
    assertThat(sheets).allMatch(sheet -> sheet.warning().equals(DaySheet.Warning.NONE));
    Finding stop = Estuary.finding(t -> t, "drying/wet", Severity.STOP, 3, "herons 1");
    Finding risk = Estuary.finding(t -> t, "drying/perhaps", Severity.RISK, 3, "herons 1");
    assertThat(DaySheets.of(Estuary.plain(List.of(stop, stop, risk))))
        .hasSameSizeAs(sheets)
        .allSatisfy(
            sheet -> {
              assertThat(sheet.warning().words()).startsWith("Not printable: 2 stops are left");
              assertThat(sheet.warning().severe()).isTrue();
            });
    Finding accepted = Estuary.accepted(stop, "it is a sample");
    assertThat(DaySheets.of(Estuary.plain(List.of(accepted))))
        .allMatch(sheet -> sheet.warning().words().equals("Printable with 1 stop accepted."));
  }

  @Test
  void closedHoursAreNoJob() {
    assertThat(judged.facts().timeline().tasks()).anyMatch(t -> t.kind() == Task.Kind.CLOSED);
    assertThat(WorkBlock.of(judged.facts().timeline()))
        .noneMatch(w -> w.kind() == Task.Kind.CLOSED);
  }

  @Test
  void aWholeArrangementIsNamedAndMarkedOnce() {
    var layout = judged.facts().layout();
    List<String> herons = layout.of("herons").stream().map(p -> p.name()).toList();
    assertThat(Runs.placements(herons, layout)).isEqualTo("all 6 of herons");
    assertThat(Runs.marked(herons, layout)).containsExactly("herons 1");
    assertThat(Runs.placements(herons.subList(1, 4), layout)).isEqualTo("herons 2–4");
    assertThat(Runs.marked(List.of("no such thing"), layout)).isEmpty();
  }

  /** Whoever follows the sheet must not print the second pass before the wait between the two. */
  @Test
  void everyOtherOneStandsApartFromTheRestThatIsPrintedAfterAWait() {
    String plan =
        """
        plan: Every other one, then the rest
        cloth: {length: 2 m, width: 60 cm, washed: yes}
        screens: {reeds: {frame: 46 x 40 cm, image: 28 x 22 cm, mesh: 43/cm}}
        pastes: {sand: {medium: paint, colour: tan, amount: 300 g, mixed before: 1 h}}
        designs:
          reeds: {size: 28 x 22 cm, separations: [{screen: reeds, paste: sand, covers: 40 %}]}
        placements: {border: {design: reeds, series: 5, pitch: 30 cm, start: 10 cm, across: 20 cm}}
        run:
          - {print: border, every other: yes, dry between passes: 30 min, pause: 1 min}
        """;
    Checked.Judged passes = (Checked.Judged) Checker.builtIn().check("passes.yaml", plan);
    List<DaySheet.Line> lines =
        DaySheets.of(passes).get(0).jobs().stream()
            .filter(j -> j.what().startsWith("Print border"))
            .flatMap(j -> j.lines().stream())
            .toList();
    // By hand: loaded at 9:15; 50 s a print and a minute after each but the last: 1, 3 and 5 are
    // done at 9:19:30, and half an hour later come 2 and 4; the minute's pause runs beside that.
    assertThat(lines).extracting(DaySheet.Line::clock).containsExactly("09:15", "09:50");
    assertThat(lines.get(0).with()).startsWith("on 1, 3, 5,");
    assertThat(lines.get(0).next()).endsWith(", wait to 09:50");
    assertThat(lines.get(1).with()).startsWith("on 2, 4,");
  }

  /** By hand: each washing takes 10 min, and 30 min later the screen is dry. */
  @Test
  void aScreenWashedTwiceInADayIsDryAfterEachWashing() {
    String plan =
        """
        plan: Two paints through one screen
        cloth: {length: 2 m, width: 90 cm, washed: yes}
        table: {length: 2.4 m, width: 1.2 m}
        screens:
          star: {frame: 40 x 40 cm, image: 20 x 20 cm, mesh: 43/cm}
        pastes:
          red: {medium: paint, colour: "#b0362f"}
          gold: {medium: paint, colour: "#d9a92f"}
        designs:
          red star: {size: 20 x 20 cm, separations: [{screen: star, paste: red, covers: 40 %}]}
          gold star: {size: 20 x 20 cm, separations: [{screen: star, paste: gold, covers: 40 %}]}
        placements:
          reds: {design: red star, series: 4, pitch: 45 cm, start: 5 cm, across: 10 cm}
          golds: {design: gold star, series: 4, pitch: 45 cm, start: 25 cm, across: 55 cm}
        run:
          - mix: all
          - print: reds
          - wash screen: star
          - print: golds
        """;
    Checked.Judged twoPaints = (Checked.Judged) Checker.builtIn().check("stars.yaml", plan);
    List<DaySheet.Line> washings =
        DaySheets.of(twoPaints).stream()
            .flatMap(s -> s.jobs().stream())
            .filter(j -> j.what().startsWith("Wash out star"))
            .flatMap(j -> j.lines().stream())
            .toList();
    // On the table 15 min, two pastes 20 min, four prints of 50 s; then again four prints.
    assertThat(washings).extracting(DaySheet.Line::clock).containsExactly("09:39", "10:22");
    assertThat(washings)
        .extracting(DaySheet.Line::next)
        .containsExactly("dry at 10:19", "dry at 11:02");
  }

  private static final String TWO_STARS =
      """
      plan: Two stars
      cloth: {length: 3 m, width: 60 cm, washed: yes}
      table: {length: 1.2 m, width: 1.2 m}
      crew: %s
      screens:
        star: {frame: 40 x 40 cm, image: 20 x 20 cm, mesh: 43/cm}
        key: {frame: 40 x 40 cm, image: 20 x 20 cm, mesh: 43/cm}
        wide: {frame: %s, image: 20 x 20 cm, mesh: 43/cm}
      pastes:
        gold: {medium: paint, colour: "#d9a92f"}
        ink: {medium: paint, colour: black, mixed before: 1 h}
      designs:
        star:
          size: 20 x 20 cm
          separations:
            - {screen: star, paste: gold, covers: 40 %%}
            - {screen: key, paste: ink, covers: 10 %%}
        wide star: {size: 20 x 20 cm, separations: [{screen: wide, paste: gold, covers: 40 %%}]}
      placements:
        stars: {design: star, series: 2, pitch: 50 cm, start: 20 cm, across: 20 cm}
        end: {design: wide star, at: ["270 cm, 20 cm"]}
      run:
      %s""";

  private static List<DaySheet> starSheets(String crew, String frame, String run) {
    String plan = TWO_STARS.formatted(crew, frame, run.indent(2));
    return DaySheets.of((Checked.Judged) Checker.builtIn().check("stars.yaml", plan));
  }

  /** Each day begins where the one before left the cloth, and whoever comes first wants to know. */
  @Test
  void aSheetSaysWhereTheClothIsWhenItBegins() {
    String run =
        """
        - mix: all
        - {print: end, before moving: 2 h}
        - end of day
        - print: stars
        - end of day
        - {heat-set: press}
        - end of day
        - wash: 60 °C
        """;
    List<DaySheet> days = starSheets("1", "40 x 40 cm", run);
    // By hand: laid from 9:00 to 9:15 with the frame of what comes first, at 260 cm, at the table's
    // start; the table of 1.2 m has 30 cm on both sides of the cloth's 60 cm.
    String end = "the cloth's mark of 2.6 m at the table's start, its near edge 30 cm from";
    assertThat(days.get(0).cloth()).isEmpty();
    assertThat(days.get(0).jobs().get(0).lines().get(0).with()).startsWith(end);
    assertThat(days.get(1).cloth())
        .startsWith("The cloth has been on the table since day 1, 09:15: " + end);
    // Moved at 9:00 on day 2; the stars' frames begin 10 cm from the cloth's start.
    assertThat(days.get(2).cloth())
        .startsWith(
            "The cloth has been on the table since day 2, 09:10: "
                + "the cloth's mark of 10 cm at the table's start, its near edge 30 cm from");
    assertThat(days.get(3).cloth())
        .isEqualTo(
            "The cloth has been off the table since day 3, 09:00, for step 6, heat-set with press.");
  }

  /** By hand: Wren goes to station 1, Tam to 2 as soon as a screen is free. */
  @Test
  void eachLineSaysWhoDoesIt() {
    String run =
        "- {mix: all, by: Tam}\n- {print: stars, colours: gold, by: [Wren, Tam], order: by station}";
    assertThat(who(starSheets("[Wren, Tam]", "40 x 40 cm", run)))
        .containsExactly(
            "Until 09:15: Wren", "Until 09:10: Tam", "Gold: Wren 1; Tam 2", "Until 09:27: Wren");
    assertThat(who(starSheets("[Wren, Tam]", "40 x 95 cm", "- {mix: all, by: Tam}\n- print: end")))
        .contains("Gold: Wren and Tam");
    assertThat(who(starSheets("Wren", "40 x 40 cm", "- mix: all\n- print: stars")))
        .as("nobody else could")
        .allMatch(line -> line.endsWith(": "));
  }

  private static List<String> who(List<DaySheet> sheets) {
    return sheets.stream()
        .flatMap(sheet -> sheet.jobs().stream())
        .flatMap(job -> job.lines().stream())
        .map(line -> line.what() + ": " + line.who())
        .toList();
  }

  /** Each in its place: the iron on the second day's sheet, the long frame where it is laid. */
  @Test
  void aSheetNamesWhatToMindInItsStepsAndNothingElse() {
    String run =
        """
        - mix: all
        - print: end
        - end of day
        - print: stars
        - dry: until fix-safe
        - {heat-set: iron, for: 5 min}
        """;
    List<DaySheet> days = starSheets("[Wren, Tam]", "40 x 95 cm", run);
    assertThat(days).hasSize(2);
    assertThat(days.get(0).mind())
        .isEqualTo(
            "a long frame: two carry it (step 2); "
                + "screens and pots: scrape them out before any water (step 2)");
    assertThat(days.get(1).mind())
        .contains("a hot iron or press: air the room, never leave it alone (step 6)")
        .contains("(step 4)")
        .doesNotContain("long frame", "dye", "oven");
  }

  /** An oven heats all that it holds, an iron one spot after another. */
  @Test
  void anOvenHasNoSpots() {
    String run = "- mix: all\n- print: stars\n- {heat-set: %s, for: 5 min}";
    assertThat(heatSet(run.formatted("oven"))).isEqualTo("at 150 °C for 5 min");
    assertThat(heatSet(run.formatted("iron"))).isEqualTo("at 150 °C for 5 min at each spot");
  }

  private static String heatSet(String run) {
    return starSheets("1", "40 x 40 cm", run).stream()
        .flatMap(sheet -> sheet.jobs().stream())
        .filter(job -> job.what().startsWith("Heat-set"))
        .map(job -> job.lines().get(0).with())
        .findFirst()
        .orElseThrow();
  }

  /**
   * By hand, 50 s a print: gold 1 from 9:15, ink 1 from 9:20:50, 5 min later; gold 3 from 9:21:40
   * and ink 3 from 9:27:30. That is off at 9:28:20, and star 2 would lie on it: 5 min for the
   * colour, 30 min for the pass.
   */
  @Test
  void ofTwoWaitsOnEndOnlyTheLaterIsTold() {
    String plan =
        """
        plan: Three stars side by side
        cloth: {length: 2 m, width: 60 cm, washed: yes}
        table: {length: 2.4 m, width: 1.2 m}
        screens:
          star: {frame: 44 x 44 cm, image: 20 x 20 cm, mesh: 43/cm}
          key: {frame: 44 x 44 cm, image: 20 x 20 cm, mesh: 43/cm}
        pastes:
          gold: {medium: paint, colour: "#d9a92f", mixed before: 1 h}
          ink: {medium: paint, colour: black, mixed before: 1 h}
        designs:
          star:
            size: 20 x 20 cm
            separations:
              - {screen: star, paste: gold, covers: 40 %}
              - {screen: key, paste: ink, covers: 10 %}
        placements:
          stars: {design: star, series: 3, pitch: 24 cm, start: 20 cm, across: 20 cm}
        run:
          - print: stars
            order: by station
            every other: yes
            dry between colours: 5 min
            dry between passes: 30 min
        """;
    List<String> waits =
        DaySheets.of((Checked.Judged) Checker.builtIn().check("stars.yaml", plan)).stream()
            .flatMap(sheet -> sheet.jobs().stream())
            .filter(job -> job.what().startsWith("Print"))
            .flatMap(job -> job.lines().stream())
            .map(line -> line.next().replaceFirst("^.*?(?=wait to |$)", ""))
            .toList();
    assertThat(waits)
        .containsExactly(
            "wait to 09:21", "", "wait to 09:28", "wait to 09:59", "wait to 10:05", "");
  }

  /** A bare "4 / 10 7/8" would be read as one fraction. */
  @Test
  void measuresInInchesHaveTheirUnit() {
    Checked.Judged inches =
        (Checked.Judged)
            Checker.builtIn()
                .check(
                    "plan.yaml",
                    """
                    plan: Shells in two rows
                    cloth: {fibre: cotton, length: 60 in, width: 45 in, mass: 5.3 oz/yd², washed: yes}
                    table: {length: 72 in, width: 48 in}
                    screens:
                      shell: {frame: 20 x 20 in, image: 6 x 6 in, mesh: 110/in}
                    pastes:
                      sand: {medium: paint, colour: "#d9b77e", amount: 8 oz}
                    designs:
                      shell: {size: 5 x 5 in, separations: [{screen: shell, paste: sand, covers: 40 %}]}
                    placements:
                      shells: {design: shell, fill: grid, pitch: 24 x 20 in, clear: 2 in}
                    run:
                      - mix: all
                      - print: shells
                    """);
    List<DaySheet.Job> jobs =
        DaySheets.of(inches).stream()
            .flatMap(sheet -> sheet.jobs().stream())
            .filter(job -> job.what().startsWith("Print shells"))
            .toList();
    assertThat(jobs).isNotEmpty();
    assertThat(jobs.get(0).where().words())
        .isEqualTo(
            "Frame's edge · design's corner nearest start and near edge, from the table's start and"
                + " from its near edge:");
    assertThat(jobs.get(0).where().spots())
        .isNotEmpty()
        .allMatch(
            spot ->
                spot.at()
                    .matches(
                        "-?[\\d /]+ in along, -?[\\d /]+ in across · [\\d /]+ in along, [\\d /]+ in across"));
    assertThat(jobs.get(0).lines()).noneMatch(line -> line.what().startsWith("Wait: "));
  }
}
