package strikeoff.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import strikeoff.artwork.DemoFilms;
import strikeoff.check.Checked;
import strikeoff.check.Checker;
import strikeoff.day.Impression;
import strikeoff.day.Moment;
import strikeoff.day.Task;
import strikeoff.layout.Placement;
import strikeoff.report.page.DaySheet;
import strikeoff.report.page.WallPage;
import strikeoff.speech.TableSpeech;
import strikeoff.units.Span;

class WallSheetsTest {

  private static final Checked.Judged ALONE = curtains("- print: shells");

  private static Checked.Judged curtains(String shells) {
    try {
      String text = Files.readString(Path.of("plans/estuary-curtains.yaml"));
      return (Checked.Judged)
          Checker.builtIn()
              .with(DemoFilms.beside())
              .check("curtains.yaml", text.replace("- print: shells", shells));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<DaySheet.Line> lines(List<WallPage.Sheet> sheets) {
    return sheets.stream()
        .flatMap(sheet -> sheet.work().stream())
        .flatMap(work -> work.job().lines().stream())
        .toList();
  }

  @Test
  void everythingThatOneDoesStandsOnHerSheets() {
    List<DaySheet.Line> lines = lines(WallSheets.of(ALONE).sheets());
    for (Impression impression : ALONE.facts().timeline().impressions()) {
      String screen = "screen " + impression.footprint().screen().name();
      assertThat(lines)
          .anyMatch(
              line ->
                  line.with().contains(screen) && line.begins().compareTo(impression.laid()) <= 0);
    }
    // The same lines as the report's day sheets, in other pages.
    List<DaySheet.Line> reported =
        DaySheets.of(ALONE).stream()
            .flatMap(sheet -> sheet.jobs().stream())
            .flatMap(job -> job.lines().stream())
            .toList();
    assertThat(lines).containsExactlyInAnyOrderElementsOf(reported);
  }

  @Test
  void whereTwoWorkEachHasTheirOwn() {
    Checked.Judged two = curtains("- print: shells\n    by: [Wren, Tam]");
    List<Task> shared =
        two.facts().timeline().tasks().stream()
            .filter(task -> task.kind() == Task.Kind.PRINT && task.people().contains("Tam"))
            .toList();
    assertThat(shared).isNotEmpty();
    Set<Integer> days =
        shared.stream().map(t -> t.start().day()).collect(Collectors.toCollection(TreeSet::new));
    List<WallPage.Sheet> tams =
        WallSheets.of(two).sheets().stream().filter(s -> s.who().equals("Tam")).toList();
    assertThat(tams).isNotEmpty();
    for (Task task : shared) {
      assertThat(lines(tams))
          .anyMatch(
              line ->
                  line.with().contains("screen " + task.screen().orElseThrow())
                      && line.begins().compareTo(task.start()) <= 0);
    }
    // What Wren prints meanwhile is no business of hers.
    assertThat(lines(tams)).noneMatch(line -> line.who().equals("Wren"));
    assertThat(days).hasSize(1);
  }

  @Test
  void aSheetBeginsWithWhatIsDoneFirst() {
    WallPage.Sheet first = WallSheets.of(ALONE).sheets().get(0);
    assertThat(first.first()).isEqualTo("First, at 09:00: Lay the cloth on the table.");
  }

  @Test
  void aSetHasAMapAndItsThreeLimits() {
    WallPage.Work herons =
        WallSheets.of(ALONE).sheets().stream()
            .flatMap(sheet -> sheet.work().stream())
            .filter(work -> work.job().what().startsWith("Print herons"))
            .findFirst()
            .orElseThrow();
    assertThat(herons.map()).isNotNull();
    assertThat(herons.map().toString()).contains(">1</text>").contains("class=\"own\"");
    assertThat(herons.job().prints().dries())
        .matches("All of it: next frame on it from .*; lifted or moved from .*; fixed from .*\\.");
  }

  /**
   * By hand: eight points are 2.82 mm. Of all numbers either each stands on its map, or the first
   * and the last with how they run.
   */
  @Test
  void aMapIsAsWideAsThePageHasRoomForAndItsNumbersCanBeRead() {
    double widest = 0;
    int fewer = 0;
    for (WallPage.Sheet sheet : WallSheets.of(ALONE).sheets()) {
      for (WallPage.Work work : sheet.work()) {
        if (work.map() == null) {
          continue;
        }
        Element map = Jsoup.parse(work.map().toString()).selectFirst("svg");
        double width = Double.parseDouble(map.attr("width").replace("mm", ""));
        widest = Math.max(widest, width);
        double unit = width / Double.parseDouble(map.attr("viewBox").split(" ")[2]);
        List<Element> numbers = map.select("text");
        assertThat(numbers)
            .isNotEmpty()
            .allMatch(text -> Double.parseDouble(text.attr("font-size")) * unit > 2.8);
        int own = work.job().prints().placements().size();
        fewer += numbers.size() < own ? 1 : 0;
        assertThat(work.counted().isEmpty())
            .as("%s of %s", numbers.size(), own)
            .isEqualTo(numbers.size() == own);
      }
    }
    assertThat(widest).isBetween(150.0, 186.0);
    assertThat(fewer).isPositive();
  }

  @Test
  void howNumbersRunIsToldByWhereTheyLie() {
    List<Placement> shells = ALONE.facts().layout().of("shells");
    assertThat(TableSpeech.counted(ALONE.facts().layout().of("herons")))
        .isEqualTo("Counted from the start.");
    List<Placement> back = new ArrayList<>(ALONE.facts().layout().of("herons"));
    Collections.reverse(back);
    assertThat(TableSpeech.counted(back)).isEqualTo("Counted from the end.");
    // A half-drop fill is counted column by column.
    assertThat(shells.get(1).y()).isNotEqualTo(shells.get(0).y());
    assertThat(TableSpeech.counted(shells))
        .isEqualTo("Counted from the near edge, column by column from the start.");
  }

  @Test
  void thePageIsTheSameEachTime() {
    assertThat(HtmlReport.sheets(ALONE)).isEqualTo(HtmlReport.sheets(curtains("- print: shells")));
    assertThat(new String(HtmlReport.sheets(ALONE), StandardCharsets.UTF_8))
        .contains("The safety data sheets come first.")
        .contains("<meta name=\"generator\" content=\"strikeoff check --sheets\">");
  }

  private static final String CUSHIONS =
      """
      plan: Two cushions
      cloth: {fibre: cotton, mass: 240 g/m², length: 1.3 m, width: 60 cm, washed: yes}
      table: {length: 1.7 m, width: 90 cm}
      equipment: {fans: 1, sinks: 1}
      room: {temperature: 21 °C, humidity: 50 %, air: still}
      crew: [Pia, Quin]
      hours: [09:30-16:30, 09:30-16:30]
      protection: [gloves, heat gloves]
      screens:
        moon: {frame: 44 x 44 cm, image: 27 x 27 cm, mesh: 43/cm}
        veins: {frame: 44 x 44 cm, image: 27 x 27 cm, mesh: 61/cm}
      pastes:
        cream: {medium: paint, colour: "#f0e4c4", mixed before: 1 h}
        night: {medium: paint, colour: "#1b232b", mixed before: 1 h}
      designs:
        moon:
          size: 26 x 26 cm
          separations:
            - {screen: moon, paste: cream, covers: 35 %}
            - {screen: veins, paste: night, covers: 8 %}
      placements: {cushions: {design: moon, series: 2, pitch: 53 cm, start: 16 cm, across: 17 cm}}
      run:
      """;

  private static Checked.Judged cushions(String run) {
    return (Checked.Judged) Checker.builtIn().check("cushions.yaml", CUSHIONS + run);
  }

  private static List<DaySheet.Line> of(String who, String run) {
    return lines(
        WallSheets.of(cushions(run)).sheets().stream().filter(s -> s.who().equals(who)).toList());
  }

  private static List<DaySheet.Line> prints(String run) {
    return of("Pia", run).stream().filter(line -> line.with().contains(", screen ")).toList();
  }

  private static String safe(String of) {
    String safe = of.replaceFirst("(?s).*\\(safe ([0-9:]+)\\).*", "$1");
    assertThat(safe).matches("[0-9:]+");
    return safe;
  }

  /** The film on the cloth doesn't know how its wait ends: a slow day is as slow by the clock. */
  @Test
  void theSafeTimeOfAFeltFilmIsThatOfASlowDay() {
    String felt = "- {print: cushions, by: Pia, dry between colours: %s}\n";
    List<DaySheet.Line> byFeel = of("Pia", felt.formatted("until frame-safe"));
    String slow = safe(prints(felt.formatted("3 h")).get(0).next());
    assertThat(byFeel).anyMatch(line -> line.next().endsWith("(safe " + slow + ")"));
    DaySheet.Line wait = felt(byFeel);
    String next = prints(felt.formatted("until frame-safe")).get(1).clock();
    assertThat(wait.what()).isEqualTo("Wait, feel it: likely dry at " + next);
    assertThat(wait.next()).isEqualTo("on a slow day " + slow + ", all after it later");
    assertThat(slow).isGreaterThan(next);
  }

  /** On a slow day a fan blows for as long as somebody waits. */
  @Test
  void aFanBlowsOnUntilTheFilmIsFelt() {
    String fan = "- {print: cushions, by: Pia, dry between colours: {%s, air: fan}}\n";
    String slow = safe(prints(fan.formatted("for: 3 h")).get(0).next());
    DaySheet.Line wait = felt(of("Pia", fan.formatted("until: frame-safe")));
    assertThat(wait.with()).isEqualTo("then fan off");
    assertThat(wait.next()).startsWith("on a slow day " + slow + ",");
  }

  private static DaySheet.Line felt(List<DaySheet.Line> lines) {
    return lines.stream().filter(line -> line.what().contains("feel it")).findFirst().orElseThrow();
  }

  @Test
  void whoWashesMeanwhileIsToldOfTheFanAllTheSame() {
    String run =
        """
        - print: cushions
          by: Pia
          washes: Pia
          dry between colours: {until: frame-safe, air: fan}
          wash between colours: yes
        - {heat-set: iron, by: Quin}
        """;
    assertThat(cushions(run).facts().timeline().tasks())
        .anyMatch(t -> t.kind() == Task.Kind.WASH_SCREEN && t.people().contains("Pia"));
    List<DaySheet.Line> fan =
        of("Pia", run).stream().filter(line -> line.with().contains("fan")).toList();
    assertThat(fan).hasSize(1);
    assertThat(fan.get(0).begins().clock()).isEqualTo("09:46");
    assertThat(fan.get(0).what()).startsWith("Fan on. Wait, feel it: likely dry at ");
    assertThat(fan.get(0).with()).isEqualTo("then fan off");
    assertThat(fan.get(0).next()).startsWith("on a slow day ").endsWith(", all after it later");
  }

  /** Each washes a screen while it dries. */
  @Test
  void aDryingStepStandsOnSomebodysSheet() {
    String run =
        """
        - {print: cushions, by: [Pia, Quin]}
        - dry: until fix-safe
          air: fan
        - {heat-set: iron, by: Quin}
        """;
    List<WallPage.Sheet> sheets = WallSheets.of(cushions(run)).sheets();
    List<WallPage.Work> dries =
        sheets.stream()
            .flatMap(sheet -> sheet.work().stream())
            .filter(work -> work.job().what().equals("Dry until fix-safe"))
            .toList();
    assertThat(dries).hasSize(1);
    assertThat(dries.get(0).job().lines().get(0).what())
        .startsWith("Fan on. Feel it: likely dry at ");
  }

  @Test
  void aMorningBeginsWithFeelingWhatDriedOvernight() {
    String night = "- {print: cushions, by: Pia}\n%s- end of day\n- {heat-set: iron, by: Pia}\n";
    String feel = "Feel: dry through? Until ";
    List<DaySheet.Line> lines = of("Pia", night.formatted(""));
    assertThat(lines).filteredOn(line -> line.what().startsWith(feel)).hasSize(1);
    assertThat(lines)
        .filteredOn(line -> line.begins().day() == 2)
        .first()
        .matches(line -> line.what().startsWith(feel));
    assertThat(of("Pia", night.formatted("- dry: 6 h\n")))
        .as("dry through before the night on any day")
        .noneMatch(line -> line.what().startsWith(feel));
  }

  /**
   * Cream waits for nothing: it is washed at once. Night prints again after the cream has dried.
   */
  @Test
  void aScreenThatStandsFullIsFloodedAndCovered() {
    String run =
        """
        - {print: cushions, only: [1], by: Pia}
        - dry: 9 min
        - {print: cushions, only: [2], by: Pia}
        """;
    String cover = ", then flood and cover";
    assertThat(prints(run)).noneMatch(line -> line.with().contains(cover));
    assertThat(prints(run.replace("9 min", "11 min")).stream().map(DaySheet.Line::with))
        .filteredOn(with -> with.contains(cover))
        .hasSize(2)
        .allMatch(with -> with.startsWith("on 1, "));
  }

  @Test
  void sheenIsToldOnceADay() {
    String dries =
        WallSheets.of(ALONE).sheets().stream()
            .flatMap(sheet -> sheet.work().stream())
            .filter(work -> !work.job().prints().placements().isEmpty())
            .filter(work -> work.job().lines().get(0).begins().day() == 1)
            .map(work -> work.job().prints().dries())
            .collect(Collectors.joining());
    assertThat(dries).containsOnlyOnce("once its sheen is gone").contains("; fixed from ");
    assertThat(dries.split("All of it")).hasSizeGreaterThan(2);
  }

  private static List<DaySheet.Job> jobs(Checked.Judged judged) {
    return jobs(WallSheets.of(judged).sheets());
  }

  private static List<DaySheet.Job> jobs(List<WallPage.Sheet> sheets) {
    return sheets.stream().flatMap(sheet -> sheet.work().stream()).map(WallPage.Work::job).toList();
  }

  private static DaySheet.Job job(String what) {
    return jobs(ALONE).stream().filter(j -> j.what().startsWith(what)).findFirst().orElseThrow();
  }

  /**
   * By hand: the cloth's mark of 217.5 cm lies at the table's start and heron 4 begins at 23 cm + 3
   * pitches of 70 cm = 233 cm; its frame of 54 cm lies 10 cm past the design of 34 cm on each side.
   * The cloth of 140 cm lies in the middle of the table of 160 cm, the frame of 74 cm 11 cm past
   * the design of 52 cm.
   */
  @Test
  void placesAreMeasuredOnTheTableAsTheClothLiesThen() {
    DaySheet.Job herons = job("Print herons 4–6");
    assertThat(herons.where().words())
        .contains("Frame's edge, for the stop", "corner nearest start and near edge")
        .contains("cm from the table's start:");
    assertThat(herons.where().spots())
        .containsExactly(
            new DaySheet.Spot("4", "5.5 · 15.5"),
            new DaySheet.Spot("5", "75.5 · 85.5"),
            new DaySheet.Spot("6", "145.5 · 155.5"));
    assertThat(herons.where().frame()).isEqualTo("Across, cm from the table's near edge: 45 · 56.");
    // By hand: shell 16 begins at 255 cm and the mark is 246 cm; its frame lies 9 and 9.5 cm past.
    assertThat(job("Print shells 16–24").where().spots().get(0))
        .isEqualTo(new DaySheet.Spot("16", "0/102.5 · 9/112"));
  }

  /** By hand: frames of 44 and 50 cm over a design of 26 cm at 16 cm: 9 and 12 cm before it. */
  @Test
  void whereFramesDifferEachScreenHasItsStop() {
    Checked.Judged two =
        (Checked.Judged)
            Checker.builtIn()
                .check(
                    "cushions.yaml",
                    CUSHIONS.replace("veins: {frame: 44 x 44 cm", "veins: {frame: 50 x 44 cm")
                        + "- print: cushions\n");
    DaySheet.Job cushions =
        jobs(two).stream().filter(j -> j.what().startsWith("Print")).findFirst().orElseThrow();
    assertThat(cushions.where().spots().get(0).at()).isEqualTo("7 (moon), 4 (veins) · 16");
  }

  /** What is not on the table any more when it is needed is marked before. */
  @Test
  void marksForMovesAreMadeWhenTheClothIsLaid() {
    assertThat(job("Lay the cloth").mind())
        .contains(
            "Mark its near edge now for the moves to come: 1 cm, 217.5 cm, 235 cm and 246 cm from"
                + " its start.");
    DaySheet.Line move =
        lines(WallSheets.of(ALONE).sheets()).stream()
            .filter(line -> line.what().equals("Move the cloth on to 217.5 cm"))
            .findFirst()
            .orElseThrow();
    // By hand: the seam lies at 2 m.
    assertThat(move.next())
        .isEqualTo(
            "its mark of 217.5 cm, made on day 1, 17.5 cm past centre's seam line, comes to the"
                + " table's start. Boards: start edge at 0, 70 and 140 cm from the table's start.");
  }

  /**
   * The layout has one measure through both widths, the same before and after they are sewn: reed 7
   * fits between 6 and 8 only if the seam lines lay on each other when those were printed.
   */
  @Test
  void looseWidthsLieSeamLineOnSeamLine() {
    assertThat(job("Lay the cloth").mind().get(1))
        .isEqualTo(
            "Centre is not sewn: lay the widths seam line on seam line, 205 cm from the table's"
                + " start (2 m of the cloth), their allowances of 1.5 cm folded under. Both are"
                + " measured from the first one's start.");
    List<WallPage.Sheet> sheets = WallSheets.of(ALONE).sheets();
    assertThat(sheets.get(1).cloth()).startsWith("The cloth, centre not sewn, has been on");
    assertThat(sheets.get(sheets.size() - 1).cloth()).startsWith("The cloth has been on");
    assertThat(jobs(ALONE))
        .filteredOn(job -> job.what().equals("Lay the cloth on the table"))
        .last()
        .satisfies(
            job ->
                assertThat(job.mind())
                    .as("sewn by then, and under a border boards have no places of their own")
                    .containsExactly("Boards: pushed together, without a gap."));
  }

  /** By hand: the pitch of 70 cm lies between loose boards of 65 cm, herons in their middle. */
  @Test
  void looseBoardsAreToldWhereTheClothIsLaid() {
    assertThat(job("Lay the cloth").mind())
        .contains("Boards: start edge at 12.5, 82.5 and 152.5 cm from the table's start.");
    assertThat(jobs(edited("gap: 5 cm}", "gap: 5 cm, fixed: yes}")))
        .noneMatch(job -> job.mind().toString().contains("Boards"));
  }

  /** What may not be done sooner is told to the minute at which it has come. */
  @Test
  void noTimeIsToldSoonerThanItIs() {
    int apart = 0;
    for (DaySheet.Line line : lines(WallSheets.of(ALONE).sheets())) {
      for (Impression print : ALONE.facts().timeline().impressions()) {
        String first = "next frame on " + print.footprint().placement().number() + " not before ";
        if (line.next().startsWith(first)
            && line.begins().compareTo(print.laid()) <= 0
            && line.begins().plus(Span.ofSeconds(50)).compareTo(print.laid()) >= 0) {
          apart++;
          assertThat(line.next().substring(first.length(), first.length() + 5))
              .isGreaterThanOrEqualTo(print.film().frameSafe().best().clock())
              .isGreaterThan(new Moment(print.film().frameSafe().best().seconds() - 1).clock());
        }
      }
    }
    assertThat(apart).isGreaterThan(5);
    assertThat(Moment.of(1, 1439).plus(Span.ofSeconds(30)).upToMinute()).isEqualTo(Moment.of(2, 0));
    assertThat(Moment.of(1, 600).upToMinute()).isEqualTo(Moment.of(1, 600));
  }

  @Test
  void whatMovesTheAirIsNamedAndNothingElse() {
    String run = "- {print: cushions, by: Pia, dry between colours: {for: 10 min, air: %s}}\n";
    assertThat(minds(cushions(run.formatted("fan")))).contains("fan: no wet hands");
    assertThat(minds(cushions(run.formatted("fan")))).doesNotContain("hair-dryer");
    String held = minds(cushions(run.formatted("hair-dryer")));
    assertThat(held).contains("hair-dryer: no wet hands").doesNotContain("fan");
  }

  private static String minds(Checked.Judged judged) {
    return WallSheets.of(judged).sheets().stream()
        .map(WallPage.Sheet::mind)
        .collect(Collectors.joining());
  }

  /** Gloves, where there are some, are for whoever has the paste on her hands. */
  @Test
  void whoPrintsIsToldOfGlovesThatThePlanHas() {
    String run = "- {print: cushions, by: Pia}\n";
    assertThat(WallSheets.of(cushions(run)).sheets())
        .allMatch(sheet -> sheet.wear().equals("gloves"));
    Checked.Judged none =
        (Checked.Judged)
            Checker.builtIn()
                .check(
                    "cushions.yaml",
                    CUSHIONS.replace("protection: [gloves, heat gloves]\n", "") + run);
    assertThat(WallSheets.of(none).sheets()).allMatch(sheet -> sheet.wear().isEmpty());
  }

  /** A bath that is warmed the evening before is cold in the morning. */
  @Test
  void aBathIsWarmedInTheMorning() {
    List<WallPage.Sheet> sheets =
        WallSheets.of(ALONE).sheets().stream().filter(s -> s.title().startsWith("Day 4")).toList();
    DaySheet.Job morning = jobs(sheets).get(0);
    assertThat(morning.what())
        .isEqualTo("Bring the bath to 30 °C before the cloth goes in at 09:00");
    // By hand: the room opens at 9:00.
    assertThat(morning.after())
        .isEqualTo(
            "The plan has no step for warming it: from opening until the cloth goes in there are"
                + " no minutes.");
    Checked.Judged later =
        cushions(
            """
            - {print: cushions, by: Quin}
            - end of day
            - {heat-set: iron, by: Pia}
            - {fix: soak, by: Quin, bath: {soda ash: 400 g, water: 10 L}, temperature: 30 °C, for: 60 min}
            """);
    Task fix =
        later.facts().timeline().tasks().stream()
            .filter(task -> task.kind() == Task.Kind.FIX)
            .findFirst()
            .orElseThrow();
    Span left = fix.start().since(Moment.of(2, 9 * 60 + 30));
    assertThat(left.minutes()).isGreaterThan(1);
    assertThat(jobs(later))
        .extracting(DaySheet.Job::after)
        .contains(
            "The plan has no step for warming it: from opening until the cloth goes in there is "
                + left.text()
                + ".");
  }

  /** No minutes of the run are left for it, and none are made up. */
  @Test
  void aBathIsToldOfBeforeItIsNeeded() {
    List<WallPage.Sheet> sheets = WallSheets.of(ALONE).sheets();
    DaySheet.Job eve =
        jobs(sheets.stream().filter(s -> s.title().startsWith("Day 3")).toList()).stream()
            .reduce((one, later) -> later)
            .orElseThrow();
    assertThat(eve.what()).isEqualTo("Weigh and dissolve the bath for day 4, 09:00");
    assertThat(eve.after())
        .isEqualTo("800 g soda ash, 2 kg salt, 20 L water. It comes to 30 °C on the day.");
    assertThat(eve.isAhead()).isTrue();
    // On the day itself it is told before the last thing that is done before: while that dries.
    List<String> dayOf =
        jobs(edited("- end of day\n  - dry: until fix-safe", "- dry: until fix-safe")).stream()
            .map(DaySheet.Job::what)
            .toList();
    assertThat(dayOf).filteredOn(what -> what.startsWith("Have the bath")).hasSize(1);
    int ready = dayOf.indexOf("Have the bath ready by 15:59");
    assertThat(dayOf.get(ready - 1)).startsWith("Print reed border");
    assertThat(dayOf.subList(ready + 1, dayOf.size()))
        .startsWith("Wash out reed green")
        .contains("Dry until fix-safe", "Fix by soak");
  }

  private static Checked.Judged edited(String from, String to) {
    try {
      String text = Files.readString(Path.of("plans/estuary-curtains.yaml"));
      assertThat(text).contains(from);
      return (Checked.Judged)
          Checker.builtIn().with(DemoFilms.beside()).check("curtains.yaml", text.replace(from, to));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Common practice, no source: a rinse is over when the water says so. */
  @Test
  void aBathIsLeftAndRinsedAsTheReportTells() {
    assertThat(job("Fix by soak").mind())
        .containsExactly(
            "Lift it out spread, not folded, and rinse at once in plenty of cold water that"
                + " moves.");
    assertThat(job("Rinse").lines().get(0).with()).isEqualTo("until the water runs clear");
  }

  /** By hand: 200 g in 20 L are 10 g/L; 12 g/L are the limit, which 40 g more bring. */
  @Test
  void aRiskStandsWhereItStrikesAndNowhereElse() {
    List<DaySheet.Job> jobs = jobs(edited("soda ash: 800 g", "soda ash: 200 g"));
    assertThat(jobs)
        .filteredOn(job -> job.mind().toString().contains("Risk"))
        .singleElement()
        .satisfies(
            job -> {
              assertThat(job.what()).isEqualTo("Fix by soak");
              assertThat(job.mind().get(0))
                  .startsWith("Risk: The bath holds 200 g of soda ash in 20 L: 10 g/L")
                  .endsWith(" Add 40 g of soda ash.");
            });
    List<DaySheet.Job> dark =
        jobs(
            edited(
                "      - {screen: heron rust, paste: rust, artwork: films/heron-rust.png}\n", ""));
    assertThat(dark).noneMatch(job -> job.mind().toString().contains("Risk"));
  }

  /** Before the ink is on, nothing is known of when all is dry. */
  @Test
  void whenAllIsDryStandsWhereTheLastPassDoes() {
    for (WallPage.Sheet sheet : WallSheets.of(ALONE).sheets()) {
      for (WallPage.Work work : sheet.work()) {
        DaySheet.Job job = work.job();
        boolean last =
            job.lines().stream().anyMatch(line -> line.begins().equals(job.prints().last()));
        assertThat(job.prints().dries().isEmpty()).as(job.title()).isEqualTo(!last);
      }
    }
    List<DaySheet.Job> herons =
        jobs(ALONE).stream().filter(job -> job.what().equals("Print herons 4–6")).toList();
    assertThat(herons).hasSize(2);
    assertThat(herons.get(0).prints().dries()).isEmpty();
    assertThat(herons.get(1).prints().dries()).startsWith("All of it: next frame on it from 12:09");
    assertThat(herons.get(1).title()).isEqualTo("Print herons 4–6, carried on");
  }

  /** A job may be called anything: it is carried on where it was begun before, and only there. */
  @Test
  void whatIsCarriedOnIsNotToldByItsName() {
    Checked.Judged named =
        (Checked.Judged)
            Checker.builtIn()
                .check(
                    "cushions.yaml",
                    (CUSHIONS + "- print: it, carried on\n")
                        .replace("{cushions: {design", "{\"it, carried on\": {design")
                        .replace("print: it, carried on", "print: \"it, carried on\""));
    assertThat(jobs(named))
        .filteredOn(job -> job.what().contains("carried on"))
        .isNotEmpty()
        .allMatch(job -> job.course() == DaySheet.Course.WHOLE);
  }
}
