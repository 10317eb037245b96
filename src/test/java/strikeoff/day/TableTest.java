package strikeoff.day;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import strikeoff.day.facts.Busy;
import strikeoff.day.facts.FilmsInRoom;
import strikeoff.day.facts.IdleScreen;
import strikeoff.day.facts.LongestFrame;
import strikeoff.day.facts.NotInRoom;
import strikeoff.day.facts.RunFigures;
import strikeoff.day.facts.SetOnTable;
import strikeoff.day.facts.Timeline;
import strikeoff.document.PlanPath;
import strikeoff.layout.Layout;
import strikeoff.plan.Draught;
import strikeoff.plan.Medium;
import strikeoff.plan.PrintOrder;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.PrintSteps;
import strikeoff.plan.Step;
import strikeoff.plan.Until;
import strikeoff.plan.Wait;
import strikeoff.speech.DaySpeech;
import strikeoff.speech.RoomSpeech;
import strikeoff.units.AirSpeed;
import strikeoff.units.Measures;
import strikeoff.units.Share;
import strikeoff.units.Temperature;

/** What the table shows at once. Frames are 50 cm long and begin 10 cm before their motif. */
class TableTest {

  private static PrintDay herons(double table, int count, double pitch) {
    return new PrintDay(Medium.DYE)
        .table(table)
        .paste("blue", 1, 2)
        .paste("ink", 1, 2)
        .design("heron", 30, 40, 10, "s1=blue", "s2=ink")
        .series("herons", "heron", count, pitch, 10);
  }

  private static List<String> moves(Timeline day) {
    return day.tasks().stream()
        .filter(t -> t.kind() == Task.Kind.MOVE)
        .map(t -> DaySpeech.text(t.doing(), Measures.METRIC))
        .toList();
  }

  private static List<Integer> sets(Timeline day) {
    return day.impressions().stream()
        .filter(i -> i.footprint().screen().name().equals("s1"))
        .map(Impression::set)
        .toList();
  }

  @Test
  void asManyFramesAsTheTableIsLongLieOnItAtOnce() {
    // three frames at a pitch of 60: 0 to 170 cm
    assertThat(sets(herons(170, 3, 60).print("herons").timeline())).containsExactly(1, 1, 1);
    assertThat(sets(herons(169.9, 3, 60).print("herons").timeline())).containsExactly(1, 1, 2);
    assertThat(moves(herons(170, 3, 60).print("herons").timeline())).isEmpty();
    // the third frame begins at 120
    assertThat(moves(herons(169.9, 3, 60).print("herons").timeline()))
        .containsExactly("move on to 1.2 m");
  }

  @Test
  void aFrameLongerThanTheTableMakesASetAlone() {
    assertThat(sets(herons(40, 3, 60).print("herons").timeline())).containsExactly(1, 2, 3);
  }

  @Test
  void noMoreMotifsThanStationsAreSetAtOnceAndShellsNeedNone() {
    PrintDay day =
        herons(400, 4, 60)
            .stations(2)
            .design("shell", 10, 10, 2, "s3=blue")
            .anchored("shells", "shell", "herons", 45)
            .print("herons")
            .print("shells");
    Timeline timeline = day.timeline();
    assertThat(sets(timeline)).containsExactly(1, 1, 2, 2);
    // shells may be printed all four at once, wherever the herons stand
    assertThat(timeline.impressions())
        .filteredOn(i -> i.footprint().screen().name().equals("s3"))
        .extracting(Impression::set)
        .containsOnly(1);
    Map<Integer, List<Impression>> stations = Stations.of(day.plan(), timeline.impressions());
    assertThat(stations.keySet()).containsExactly(1, 2);
    assertThat(stations.get(1))
        .extracting(i -> i.footprint().placement().name())
        .containsExactly("herons 1", "herons 1", "herons 3", "herons 3");
    // two colours of two herons each, 50 s an impression
    assertThat(busy(timeline, Resource.Kind.STATION))
        .extracting(b -> b.resource().name() + " " + Math.round(b.busy().seconds()))
        .containsExactly("station 1 200", "station 2 200");
  }

  @Test
  void aStepThatWorksSetBySetStandsAllItsArrangementsOnTheSameStations() {
    PrintDay day =
        herons(400, 2, 120)
            .stations(4)
            .placed("more", "heron", 70, 20, 190, 20)
            .step(n -> print(n, PrintOrder.SET_BY_SET, List.of(), List.of()));
    // herons at 10 and 130, more at 70 and 190
    assertThat(Stations.of(day.plan(), day.timeline().impressions()).entrySet())
        .extracting(e -> e.getKey() + " " + e.getValue().get(0).footprint().placement().name())
        .containsExactly("1 herons 1", "2 more 1", "3 herons 2", "4 more 2");
    PrintDay apart =
        herons(400, 2, 120)
            .stations(4)
            .placed("more", "heron", 70, 20, 190, 20)
            .step(n -> print(n, PrintOrder.BY_COLOUR, List.of(), List.of()));
    assertThat(Stations.of(apart.plan(), apart.timeline().impressions()).keySet())
        .containsExactly(1, 2);
  }

  private static Step print(
      int number, PrintOrder order, List<Integer> only, List<Integer> separations) {
    return PrintSteps.plain(
        number,
        List.of("herons", "more"),
        only,
        separations,
        order,
        new PlanPath("run[" + (number - 1) + "]"));
  }

  @Test
  void aStepPrintsOnlyWhatItNames() {
    Timeline day =
        herons(400, 3, 60)
            .placed("more", "heron", 200, 20)
            .step(n -> print(n, PrintOrder.BY_COLOUR, List.of(1, 3), List.of(2)))
            .timeline();
    assertThat(day.impressions())
        .extracting(i -> i.footprint().placement().name() + " " + i.footprint().screen().name())
        .containsExactly("herons 1 s2", "herons 3 s2", "more 1 s2");
  }

  @Test
  void whatLiesOnTheTableNeedNotBeMovedThere() {
    // The table shows the cloth from its start to 170 cm; the last heron's frame ends at 290.
    Timeline day =
        herons(170, 5, 60)
            .placed("first", "heron", 10, 20)
            .placed("second", "heron", 130, 20)
            .placed("last", "heron", 250, 20)
            .print("first")
            .print("second")
            .print("last")
            .print("second")
            .timeline();
    // 250 less 10 to 290 and, next, 130 less 10: the table of 170 cm shows both from 120 on
    assertThat(moves(day)).containsExactly("move on to 1.2 m");
  }

  @Test
  void aStretchIsShownIfItsFramesLieOnTheTableWhole() {
    // Moved to 60 cm, a table of 170 shows to 230: a frame from 180 to 230 lies on it, one from 181
    // does not; one that begins at 60 does, one at 59 does not.
    assertThat(moves(after(190))).containsExactly("move on to 60 cm");
    assertThat(moves(after(191))).containsExactly("move on to 60 cm", "move on to 181 cm");
    assertThat(moves(after(70))).containsExactly("move on to 60 cm");
    assertThat(moves(after(69))).containsExactly("move on to 60 cm", "move back to 59 cm");
  }

  private static Timeline after(double place) {
    return herons(170, 1, 60)
        .placed("there", "heron", place, 60)
        .print("herons")
        .dry(5)
        .moveTo(60)
        .print("there")
        .timeline();
  }

  @Test
  void theLongestFrameOfEachPrintStepIsToldWithTheHands() {
    Timeline day =
        herons(280, 1, 60)
            .design("wave", 60, 20, 5, "s3=blue")
            .placed("wave", "wave", 100, 60)
            .design("tall", 20, 95, 5, "s4=blue")
            .placed("tall", "tall", 200, 20)
            .print("herons")
            .dry(1)
            .step(
                n ->
                    PrintSteps.plain(
                        n,
                        List.of("herons", "wave", "tall"),
                        List.of(),
                        List.of(),
                        PrintOrder.BY_COLOUR,
                        new PlanPath("run[2]")))
            .timeline();
    assertThat(day.evidence())
        .filteredOn(LongestFrame.class::isInstance)
        .map(LongestFrame.class::cast)
        .extracting(f -> f.step() + " " + f.screen() + " " + f.side().cm() + " " + f.hands())
        // 40 and twice 10; 95 and twice 5
        .containsExactly("1 s1 60.0 2", "3 s4 105.0 2");
    assertThat(day.evidence())
        .filteredOn(LongestFrame.class::isInstance)
        .noneMatch(f -> ((LongestFrame) f).alone());
  }

  @Test
  void whoIsBusyIsMeasuredAgainstTheSessionAndNobodyIsLeftOut() {
    Timeline day = herons(280, 2, 60).print("herons").timeline();
    // 15 min, four impressions of 50 s, two screens of 10 min: 38 min 20 s, all of it Wren's
    assertThat(busy(day, Resource.Kind.PERSON))
        .extracting(b -> b.resource().name() + " " + Math.round(b.busy().seconds()))
        .containsExactly("Wren 2300", "Tam 0");
    assertThat(busy(day, Resource.Kind.PERSON).get(0).share().fraction())
        .isCloseTo(1, offset(1e-9));
    assertThat(busy(day, Resource.Kind.CLOTH))
        .singleElement()
        .satisfies(b -> assertThat(b.busy().seconds()).isCloseTo(1100, offset(1e-6)));
    assertThat(busy(day, Resource.Kind.SINK))
        .singleElement()
        .satisfies(b -> assertThat(b.busy().minutes()).isCloseTo(20, offset(1e-9)));
    assertThat(busy(day, Resource.Kind.STATION)).isEmpty();
    // a plan that does nothing is busy with nothing
    PrintPlan idle = herons(280, 2, 60).plan();
    assertThat(busy(Timeline.of(idle, Layout.of(idle, PrintDay.POLICY), PrintDay.POLICY), null))
        .isNotEmpty()
        .allSatisfy(b -> assertThat(b.share().fraction()).isZero());
  }

  private static List<Busy> busy(Timeline day, Resource.Kind kind) {
    return day.evidence().stream()
        .filter(RunFigures.class::isInstance)
        .flatMap(f -> ((RunFigures) f).busy().stream())
        .filter(b -> kind == null || b.resource().kind() == kind)
        .toList();
  }

  @Test
  void stepsAreKeptApart() {
    PrintPlan plan = herons(280, 1, 60).print("herons").dry(1).print("herons").plan();
    assertThat(SmallDay.day(plan).byStep().entrySet())
        .extracting(e -> e.getKey() + " " + e.getValue().size())
        .containsExactly("1 2", "3 2");
  }

  @Test
  void aScreenThatStandsIsToldByTheLongestAndWhatWashingTakes() {
    // both screens stand while the cloth dries 30 min, too short to wash one and let it dry; s1 the
    // longer, by the 50 s of s2
    Timeline day =
        new PrintDay(Medium.PAINT)
            .paste("blue", 1, 2)
            .paste("ink", 1, 2)
            .design("heron", 30, 40, 2, "s1=blue", "s2=ink")
            .placed("herons", "heron", 20, 20)
            .placed("more", "heron", 120, 20)
            .print("herons")
            .dry(30)
            .print("more")
            .timeline();
    assertThat(day.evidence())
        .filteredOn(IdleScreen.class::isInstance)
        .map(IdleScreen.class::cast)
        .singleElement()
        .satisfies(
            idle -> {
              assertThat(idle.screens()).containsExactly("s1", "s2");
              assertThat(idle.paint()).isTrue();
              // s1 off, 50 s of s2, 30 min, 20 s to lay it; s2 the same with 50 s of s1
              assertThat(idle.longest().seconds()).isEqualTo(1870);
              assertThat(idle.screen()).isEqualTo("s1");
              // two are washed, 10 min each, and the last one dries 30 min
              assertThat(idle.washing().minutes()).isEqualTo(50);
            });
  }

  @Test
  void aFilmThatNeverDriesIsToldByTheFirstStateItMisses() {
    assertThat(
            new PrintDay(Medium.PAINT)
                .humidity(1)
                .paste("blue")
                .paste("ink", 5)
                .design("heron", 30, 40, 2, "s1=blue")
                .design("shell", 10, 10, 2, "s2=ink")
                .placed("herons", "heron", 20, 20)
                .placed("shells", "shell", 120, 20)
                .print("herons")
                .print("shells")
                .timeline()
                .evidence())
        .filteredOn(FilmsInRoom.class::isInstance)
        .map(FilmsInRoom.class::cast)
        .singleElement()
        .satisfies(never -> assertThat(never.state()).isEqualTo("frame-safe"));
    // measured to frame-safe, and never lift-safe in such air
    assertThat(
            new PrintDay(Medium.PAINT)
                .humidity(1)
                .paste("ink", 5)
                .design("shell", 10, 10, 2, "s2=ink")
                .placed("shells", "shell", 120, 20)
                .print("shells")
                .timeline()
                .evidence())
        .filteredOn(FilmsInRoom.class::isInstance)
        .map(FilmsInRoom.class::cast)
        .singleElement()
        .satisfies(never -> assertThat(never.state()).isEqualTo("lift-safe"));
  }

  /**
   * One pass is 1, 3 and then 2; colour by colour each colour makes two, station by station one.
   */
  @Test
  void whatStandsBetweenIsPrintedAfterTheWaitForThePassBefore() {
    assertThat(passes(3, PrintOrder.BY_COLOUR))
        .containsExactly("1 s1 50", "3 s1 100", "2 s1 750", "1 s2 800", "3 s2 850", "2 s2 1500");
    assertThat(passes(3, PrintOrder.BY_STATION))
        .containsExactly("1 s1 50", "1 s2 100", "3 s1 150", "3 s2 200", "2 s1 850", "2 s2 900");
    // four: 1, 3 and then 2, 4
    assertThat(passes(4, PrintOrder.BY_STATION))
        .containsExactly(
            "1 s1 50",
            "1 s2 100",
            "3 s1 150",
            "3 s2 200",
            "2 s1 850",
            "2 s2 900",
            "4 s1 950",
            "4 s2 1000");
    assertThat(passes(1, PrintOrder.BY_STATION)).containsExactly("1 s1 50", "1 s2 100");
  }

  private static List<String> passes(int count, PrintOrder order) {
    Timeline day =
        herons(600, count, 60)
            .step(
                n ->
                    PrintSteps.plain(
                            n,
                            List.of("herons"),
                            List.of(),
                            List.of(),
                            order,
                            new PlanPath("run[0]"))
                        .change()
                        .everyOther()
                        .dryBetweenPasses(Wait.of(PrintDay.minutes(10)))
                        .made())
            .timeline();
    return day.impressions().stream()
        .map(
            i ->
                i.footprint().placement().number()
                    + " "
                    + i.footprint().screen().name()
                    + " "
                    + Math.round(i.lifted().since(Moment.of(1, 555)).seconds()))
        .toList();
  }

  @Test
  void whatAStepAsksForInVainIsToldAtThatStep() {
    Timeline day =
        herons(400, 1, 60)
            .equipment(1, 0, 0, 10)
            .print("herons")
            .dry(5)
            .step(n -> blow(n, Draught.By.HAIR_DRYER))
            .step(n -> blow(n, Draught.By.FAN))
            .timeline();
    assertThat(day.evidence())
        .filteredOn(NotInRoom.class::isInstance)
        .map(NotInRoom.class::cast)
        .filteredOn(m -> m.asked() > 0)
        .extracting(m -> m.equipment() + " " + RoomSpeech.where(m) + " " + m.path().text())
        .containsExactlyInAnyOrder("hair-dryer in step 3 run[2]", "fan in step 4 run[3]");
    // a fan that blows all day, and nobody has one
    assertThat(
            herons(400, 1, 60)
                .equipment(1, 0, 1, 10)
                .blown(Draught.By.FAN)
                .print("herons")
                .timeline()
                .evidence())
        .filteredOn(NotInRoom.class::isInstance)
        .map(NotInRoom.class::cast)
        .filteredOn(m -> m.asked() > 0)
        .extracting(m -> m.equipment() + " " + RoomSpeech.where(m))
        .containsExactly("fan for the air of the room");
  }

  private static Step blow(int number, Draught.By by) {
    return new Step.Dry(
        number,
        PrintDay.minutes(10),
        Optional.of(new Draught(by, new AirSpeed(1.5))),
        Optional.empty(),
        new PlanPath("run[" + (number - 1) + "]"));
  }

  @Test
  void aSetTakesTheTableFromItsFirstFrameToItsLast() {
    assertThat(herons(170, 3, 60).print("herons").timeline().evidence())
        .filteredOn(SetOnTable.class::isInstance)
        .map(SetOnTable.class::cast)
        .singleElement()
        .satisfies(
            set -> {
              assertThat(set.from().cm()).isCloseTo(0, offset(1e-9));
              assertThat(set.to().cm()).isCloseTo(170, offset(1e-9));
              assertThat(set.taken().cm()).isCloseTo(170, offset(1e-9));
              assertThat(set.left().cm()).isCloseTo(0, offset(1e-9));
            });
  }

  @Test
  void aFilmThatNeverDriesIsToldBesideAPasteThatIsMissing() {
    assertThat(
            new PrintDay(Medium.PAINT)
                .humidity(1)
                .unmixedPaste("blue")
                .design("heron", 30, 40, 2, "s1=blue")
                .placed("herons", "heron", 20, 20)
                .print("herons")
                .timeline()
                .evidence())
        .anyMatch(EndlessWait.class::isInstance)
        .anyMatch(e -> e instanceof FilmsInRoom film && film.films() > 0);
  }

  @Test
  void theTimeOfAMixingStepIsSharedByItsPastes() {
    Timeline day =
        herons(400, 1, 60)
            .unmixedPaste("sand")
            .unmixedPaste("rust")
            .mixedIn(20, "sand", "rust")
            .print("herons")
            .timeline();
    assertThat(day.tasks())
        .filteredOn(t -> t.kind() == Task.Kind.MIX)
        .extracting(
            t ->
                DaySpeech.text(t.doing(), Measures.METRIC)
                    + " "
                    + Math.round(t.end().since(t.start()).minutes()))
        .containsExactly("mix sand 10", "mix rust 10");
  }

  @Test
  void thePrinterWaitsForAPasteThatSomebodyElseMixes() {
    // Tam mixes from 9:00 to 10:00; the cloth lies on the table from 9:15.
    Timeline day =
        new PrintDay(Medium.DYE)
            .unmixedPaste("blue")
            .design("heron", 30, 40, 10, "s1=blue")
            .series("herons", "heron", 1, 60, 10)
            .mixedBy("Tam", 60, "blue")
            .print("herons")
            .timeline();
    assertThat(day.tasks())
        .filteredOn(t -> t.kind() == Task.Kind.WAIT)
        .extracting(
            t ->
                DaySpeech.text(t.doing(), Measures.METRIC)
                    + " "
                    + Math.round(t.end().since(t.start()).minutes()))
        .containsExactly("paste blue is mixed 45");
    assertThat(day.evidence()).noneMatch(EndlessWait.class::isInstance);
  }

  @Test
  void aRunOfMoreWorkThanIsFollowedIsGivenUpAndSaysSo() {
    PrintDay day = herons(400, 3, 60).print("herons").dry(5).dry(5);
    // Laying the cloth and six impressions are seven pieces of work; washing two screens out makes
    // it more than eight before the next step.
    assertThat(givenUp(day, 8)).containsExactly("TOO_LONG 2");
    assertThat(givenUp(day, 3)).containsExactly("TOO_LONG 1");
    assertThat(givenUp(day, 100)).isEmpty();
    PrintPlan plan = day.plan();
    Timeline cut = workedAtMost(plan, 3);
    assertThat(cut.impressions()).hasSizeLessThan(6);
    PrintDay two =
        herons(400, 3, 60)
            .printTogether(
                "herons", PrintOrder.BY_COLOUR, false, 0, PrintDay.minutes(1), Until.NO_WAIT);
    assertThat(givenUp(two, 4)).containsExactly("TOO_LONG 1");
  }

  private static List<String> givenUp(PrintDay day, int tasks) {
    PrintPlan plan = day.plan();
    return workedAtMost(plan, tasks).evidence().stream()
        .filter(EndlessWait.class::isInstance)
        .map(EndlessWait.class::cast)
        .filter(c -> !c.forPaste())
        .map(c -> c.why() + " " + c.step())
        .toList();
  }

  private static Timeline workedAtMost(PrintPlan plan, int tasks) {
    Effort usual = Effort.USUAL;
    return PrintDay.timeline(
        plan, new Effort(tasks, usual.contacts(), usual.trials(), usual.ways()));
  }

  @Test
  void onlyAWaitForPasteIsTheMixingsFault() {
    List<EndlessWait.Missing> all =
        List.of(
            new EndlessWait.PasteMixed("blue", Optional.empty()),
            new EndlessWait.PasteMixed("blue", Optional.of(2)),
            new EndlessWait.WorkDone(9),
            new EndlessWait.ScreenFree("key", "blue", "Ana", "Bo", "rust"),
            new EndlessWait.FilmsDry(
                Until.Dryness.LIFT_SAFE, new Share(0.99), new Temperature(20)));
    Step night = new Step.EndOfDay(1, Step.path(1));
    List<EndlessWait> told =
        all.stream()
            .map(missing -> new EndlessWait(1, night, missing, night.path(), List.of()))
            .toList();
    assertThat(told).extracting(EndlessWait::why).containsOnlyOnce(EndlessWait.Why.values());
    assertThat(told)
        .extracting(EndlessWait::forPaste)
        .containsExactly(true, true, false, false, false);
  }

  /** From the policy: a dye paste holds water up to 97 % of humidity, a paint up to 98 %. */
  @Test
  void theDampestAirThatDriesAFilmIsItsOwnMediums() {
    assertThat(dampest(Medium.DYE)).isEqualTo(0.97);
    assertThat(dampest(Medium.PAINT)).isEqualTo(0.98);
  }

  private static double dampest(Medium medium) {
    return new PrintDay(medium)
            .humidity(1)
            .paste("blue")
            .design("heron", 30, 40, 2, "s1=blue")
            .placed("herons", "heron", 20, 20)
            .print("herons")
            .timeline()
            .evidence()
            .stream()
            .filter(FilmsInRoom.class::isInstance)
            .map(FilmsInRoom.class::cast)
            .findFirst()
            .orElseThrow()
            .dampest()
            .fraction();
  }

  @Test
  void whatBlowsAllDayAndIsMissingIsToldOnceBesideWhatElseIs() {
    assertThat(missing(herons(400, 1, 60).equipment(1, 1, 0, 10).blown(Draught.By.HAIR_DRYER)))
        .containsExactly("hair-dryer for the air of the room");
    assertThat(missing(herons(400, 1, 60).equipment(1, 0, 1, 10).blown(Draught.By.HAIR_DRYER)))
        .isEmpty();
    PrintDay both = herons(400, 1, 60).equipment(1, 0, 0, 10).blown(Draught.By.FAN);
    assertThat(missing(both.step(n -> blow(n, Draught.By.HAIR_DRYER))))
        .containsExactlyInAnyOrder("hair-dryer in step 1", "fan for the air of the room");
    PrintDay one = herons(400, 1, 60).equipment(1, 0, 1, 10).blown(Draught.By.FAN);
    assertThat(missing(one.step(n -> blow(n, Draught.By.FAN)))).containsExactly("fan in step 1");
  }

  private static List<String> missing(PrintDay day) {
    return day.print("herons").timeline().evidence().stream()
        .filter(NotInRoom.class::isInstance)
        .map(NotInRoom.class::cast)
        .filter(m -> m.asked() > 0)
        .map(m -> m.equipment() + " " + RoomSpeech.where(m))
        .toList();
  }

  @Test
  void howOftenEachScreenIsLaidIsCounted() {
    Timeline day =
        herons(400, 3, 60)
            .step(n -> print(n, PrintOrder.BY_COLOUR, List.of(1, 3), List.of(1)))
            .placed("more", "heron", 200, 20)
            .print("herons")
            .timeline();
    // herons 1 and 3 and the other one in blue; then three herons in both
    assertThat(day.laysByScreen()).containsExactly(Map.entry("s1", 6), Map.entry("s2", 3));
  }

  @Test
  void theOnlyPieceNeedsNoNumberInSpeech() {
    assertThat(Resource.piece(Resource.Kind.SINK, 1, 1).spoken()).isEqualTo("the sink");
    assertThat(Resource.piece(Resource.Kind.SINK, 2, 3).spoken()).isEqualTo("sink 2");
    assertThat(Resource.person("Wren").spoken()).isEqualTo("Wren");
  }
}
