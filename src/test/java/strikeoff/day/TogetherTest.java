package strikeoff.day;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import strikeoff.day.facts.Busy;
import strikeoff.day.facts.RunFigures;
import strikeoff.day.facts.Timeline;
import strikeoff.day.facts.WetContact;
import strikeoff.document.PlanPath;
import strikeoff.plan.Draught;
import strikeoff.plan.Medium;
import strikeoff.plan.PrintOrder;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.PrintSteps;
import strikeoff.plan.Until;
import strikeoff.plan.Wait;
import strikeoff.speech.DaySpeech;
import strikeoff.speech.RemedySpeech;
import strikeoff.units.AirSpeed;
import strikeoff.units.Measures;

/** Two people and more at one table, worked by hand. */
class TogetherTest {

  @Test
  void theSecondColourFollowsBehindTheFirst() {
    Timeline day =
        herons(3, "s1=blue", "s2=ink")
            .printTogether(
                "herons", PrintOrder.BY_COLOUR, false, 0, PrintDay.minutes(12), Until.NO_WAIT)
            .timeline();
    // Wren: blue from 9:15:00, 9:15:50, 9:16:40 to 9:17:30. Tam: ink on heron 1 12 min after its
    // blue is lifted at 9:15:50, from 9:27:50; then on 2 and 3, each 50 s later, to 9:30:20.
    assertThat(day.impressions())
        .extracting(i -> i.person() + " " + i.footprint().placement().number())
        .containsExactly("Wren 1", "Wren 2", "Wren 3", "Tam 1", "Tam 2", "Tam 3");
    assertThat(day.impressions())
        .extracting(i -> i.lifted().since(Moment.of(1, 555)).seconds())
        .usingElementComparator((a, b) -> Math.abs(a - b) < 1e-6 ? 0 : Double.compare(a, b))
        .containsExactly(50.0, 100.0, 150.0, 820.0, 870.0, 920.0);
    // Wren washes blue's screen out from 9:17:30 to 9:27:30; then nobody works till 9:27:50
    assertThat(day.waiting().minutes()).isCloseTo(20 / 60.0, offset(1e-9));
  }

  /**
   * A permutation flow shop whose jobs are alike: with times p on m machines n jobs take Σp +
   * (n−1)·max p (textbook result for identical jobs). Pulls of 10 s make the machines differ.
   */
  @Test
  void alikeMotifsThroughThreeScreensTakeWhatTheFlowShopFormulaSays() {
    Timeline day =
        herons(5, "s1=blue", "s2=ink", "s3=rust")
            .printBy(
                List.of("Wren", "Tam", "Ada"),
                "herons",
                PrintOrder.BY_COLOUR,
                false,
                0,
                Until.NO_WAIT,
                Until.NO_WAIT)
            .timeline();
    Impression last = day.impressions().get(day.impressions().size() - 1);
    // every impression takes 50 s: 3 · 50 + 4 · 50 = 350 s
    assertThat(last.lifted().since(Moment.of(1, 555)).seconds()).isCloseTo(350, offset(1e-6));
  }

  @Test
  void colourOverAllSetsTheSecondPersonTakesTheSecondColourToo() {
    // As colour by colour, since one set is all there is: blue to 50 and 100 s, ink 12 min after.
    assertThat(
            lifts(
                herons(2, "s1=blue", "s2=ink")
                    .printTogether(
                        "herons",
                        PrintOrder.OVER_ALL,
                        false,
                        0,
                        PrintDay.minutes(12),
                        Until.NO_WAIT)
                    .timeline()))
        .containsExactly(
            "Wren herons 1 50", "Wren herons 2 100", "Tam herons 1 820", "Tam herons 2 870");
  }

  @Test
  void stationByStationTheyShareTheScreens() {
    Timeline day =
        herons(2, "s1=blue", "s2=ink")
            .printTogether("herons", PrintOrder.BY_STATION, false, 0, Until.NO_WAIT, Until.NO_WAIT)
            .timeline();
    // Wren: blue 1 from 0 to 50 s, ink 1 to 100 s; Tam needs blue's screen: blue 2 from 50 s, ink 2
    // from 100 s to 150 s.
    assertThat(day.impressions())
        .extracting(i -> i.person() + " " + i.footprint().screen().name())
        .containsExactly("Wren s1", "Wren s2", "Tam s1", "Tam s2");
    assertThat(day.impressions().get(3).lifted().since(Moment.of(1, 555)).seconds())
        .isCloseTo(150, offset(1e-6));
  }

  /** Tam has no colour of the herons to print, so the shells need not wait till they are done. */
  @Test
  void whoIsFreeRunsAheadToTheNextArrangement() {
    Timeline day =
        new PrintDay(Medium.DYE)
            .table(400)
            .paste("blue", 10, 60)
            .paste("ink", 10, 60)
            .design("heron", 30, 40, 10, "s1=blue")
            .design("shell", 20, 20, 5, "s2=ink")
            .series("herons", "heron", 3, 60, 20)
            .placed("shells", "shell", 20, 100, 80, 100)
            .printTogether(
                "herons, shells", PrintOrder.BY_COLOUR, false, 0, Until.NO_WAIT, Until.NO_WAIT)
            .timeline();
    // herons lie at 20 to 60 cm across with frames to 70 cm, the shells' frames begin at 95 cm:
    // Wren's blue to 50, 100 and 150 s, beside it Tam's ink to 50 and 100 s
    assertThat(lifts(day))
        .containsExactly(
            "Wren herons 1 50",
            "Tam shells 1 50",
            "Wren herons 2 100",
            "Tam shells 2 100",
            "Wren herons 3 150");
  }

  /** A shell is set from its heron, so it is printed when that is. */
  @Test
  void nobodyRunsAheadOfAnAnchorAndNobodyWaitsForWhatLiesApart() {
    PrintDay day =
        new PrintDay(Medium.DYE)
            .table(400)
            .paste("blue", 10, 60)
            .paste("ink", 10, 60)
            .design("heron", 30, 40, 10, "s1=blue")
            .design("shell", 20, 20, 5, "s2=ink")
            .series("herons", "heron", 2, 60, 20)
            .anchored("shells", "shell", "herons", 80)
            .printTogether(
                "herons, shells",
                PrintOrder.BY_COLOUR,
                false,
                0,
                PrintDay.minutes(12),
                Until.NO_WAIT);
    // heron 1 is lifted at 50 s; no shell's frame, from 95 cm across, lies on a heron, to 60 cm
    assertThat(lifts(day.timeline()))
        .containsExactly(
            "Wren herons 1 50", "Wren herons 2 100", "Tam shells 1 100", "Tam shells 2 150");
  }

  private static List<String> lifts(Timeline day) {
    return day.impressions().stream()
        .map(
            i ->
                i.person()
                    + " "
                    + i.footprint().placement().name()
                    + " "
                    + Math.round(i.lifted().since(Moment.of(1, 555)).seconds()))
        .toList();
  }

  @Test
  void aScreenThatBothNeedAtOnceIsToldByName() {
    Timeline day =
        herons(2, "s1=blue", "s1=ink")
            .printTogether("herons", PrintOrder.BY_COLOUR, false, 0, Until.NO_WAIT, Until.NO_WAIT)
            .timeline();
    assertThat(day.evidence())
        .filteredOn(e -> e instanceof EndlessWait)
        .singleElement()
        .satisfies(
            e -> {
              EndlessWait stuck = (EndlessWait) e;
              assertThat(stuck.why()).isEqualTo(EndlessWait.Why.SCREEN_TWICE);
              assertThat(DaySpeech.waitsFor(stuck, Measures.METRIC))
                  .isEqualTo("screen s1, which holds blue for Wren while Tam needs it for ink");
            });
    assertThat(day.impressions()).hasSize(4);
  }

  @Test
  void coloursThatTheStepLeavesOutNeedNoScreen() {
    // Blue, which goes through ink's screen too, is printed another time.
    Timeline day =
        herons(2, "s1=blue", "s1=ink", "s2=rust")
            .step(
                n ->
                    PrintSteps.plain(
                            n,
                            List.of("herons"),
                            List.of(),
                            List.of(2, 3),
                            PrintOrder.BY_COLOUR,
                            new PlanPath("run[0]"))
                        .change()
                        .by(List.of("Wren", "Tam"))
                        .made())
            .timeline();
    assertThat(day.evidence()).noneMatch(EndlessWait.class::isInstance);
    assertThat(day.impressions())
        .extracting(i -> i.person() + " " + i.footprint().screen().name())
        .containsExactlyInAnyOrder("Wren s1", "Wren s1", "Tam s2", "Tam s2");
  }

  @Test
  void aFanBesideThemIsInUseForAsLongAsTheyPrint() {
    Draught fan = new Draught(Draught.By.FAN, new AirSpeed(2));
    Timeline day =
        herons(3, "s1=blue", "s2=ink")
            .printInAir(
                List.of("Wren", "Tam"),
                "herons",
                PrintOrder.BY_COLOUR,
                false,
                0,
                new Wait(PrintDay.minutes(12), Optional.of(fan)),
                Until.NO_WAIT)
            .timeline();
    // From 9:15:00 to 9:30:20, as above, since the wait is a stated one.
    assertThat(day.evidence())
        .filteredOn(RunFigures.class::isInstance)
        .flatExtracting(e -> ((RunFigures) e).busy())
        .map(Busy.class::cast)
        .filteredOn(b -> b.resource().kind() == Resource.Kind.FAN)
        .singleElement()
        .satisfies(b -> assertThat(b.busy().seconds()).isCloseTo(920, offset(1e-6)));
  }

  /**
   * Shells are laid over the herons, so that their frames come down on films of the pass before.
   */
  private static PrintDay shellsOnHerons(double minutes) {
    return new PrintDay(Medium.DYE)
        .table(400)
        .paste("blue", 10, 60)
        .paste("ink", 10, 60)
        .design("heron", 30, 40, 10, "s1=blue")
        .design("shell", 20, 20, 5, "s2=ink")
        .series("herons", "heron", 2, 60, 20)
        .placed("shells", "shell", 25, 25, 140, 25)
        .printTogether(
            "herons, shells",
            PrintOrder.BY_COLOUR,
            false,
            0,
            PrintDay.minutes(minutes),
            Until.NO_WAIT);
  }

  @Test
  void aFrameOnAnEarlierPassesFilmWaitsForItAndOneBesideItDoesNot() {
    // Shell 1 lies on heron 1, off at 50 s and let dry to 770. Shell 2 lies at 140 cm and its frame
    // from 135, heron 2 ends at 110: but Tam prints in order.
    assertThat(lifts(shellsOnHerons(12).timeline()))
        .containsExactly(
            "Wren herons 1 50", "Wren herons 2 100", "Tam shells 1 820", "Tam shells 2 870");
  }

  @Test
  void theWaitBetweenPassesIsTheOneToLengthen() {
    // Let dry 2 min only: shell 1 starts at 170 s and is down at 190; blue is safe at 650.
    assertThat(shellsOnHerons(2).timeline().evidence())
        .filteredOn(WetContact.class::isInstance)
        .map(WetContact.class::cast)
        .singleElement()
        .satisfies(
            c -> {
              assertThat(c.laterMotif() + " on " + c.earlierMotif())
                  .isEqualTo("shells 1 on herons 1");
              assertThat(c.early().ordinary().seconds()).isEqualTo(460);
              // 2 min and 7.67
              assertThat(RemedySpeech.text(c.remedy(), Measures.METRIC))
                  .isEqualTo("`dry between colours: 10 min` in step 1");
            });
  }

  @Test
  void screensThatHoldAnotherPasteAreWashedBeforeAnybodyPrints() {
    Timeline day =
        new PrintDay(Medium.DYE)
            .table(400)
            .paste("blue", 1, 60)
            .paste("ink", 1, 60)
            .paste("rust", 1, 60)
            .design("heron", 30, 40, 2, "s1=blue")
            .design("shell", 30, 40, 2, "s1=ink", "s2=rust")
            .placed("heron", "heron", 20, 20)
            .placed("shell", "shell", 100, 20)
            .print("heron")
            .printTogether("shell", PrintOrder.BY_COLOUR, false, 0, Until.NO_WAIT, Until.NO_WAIT)
            .timeline();
    // Heron off at 9:15:50; s1 is washed to 9:25:50 and dry at 9:55:50. Ink to 9:56:40, rust after.
    assertThat(day.tasks())
        .filteredOn(t -> t.kind() == Task.Kind.WASH_SCREEN)
        .first()
        .satisfies(
            t -> assertThat(DaySpeech.text(t.doing(), Measures.METRIC)).isEqualTo("wash out s1"))
        .satisfies(t -> assertThat(t.start().since(Moment.of(1, 555)).seconds()).isEqualTo(50));
    assertThat(lifts(day))
        .containsExactly("Wren heron 1 50", "Tam shell 1 2500", "Wren shell 1 2550");
    assertThat(day.tasks())
        .filteredOn(t -> t.kind() == Task.Kind.WAIT)
        .singleElement()
        .satisfies(
            t ->
                assertThat(DaySpeech.text(t.doing(), Measures.METRIC))
                    .isEqualTo("screen s1 is free"))
        .satisfies(t -> assertThat(t.end().since(t.start()).minutes()).isEqualTo(40));
    // What decides when it ends: the washed screen, and not the wait that stands in its place.
    assertThat(PrintDay.figures(day).chain().links())
        .extracting(link -> DaySpeech.text(link.doing(), Measures.METRIC) + " " + link.times())
        // Tam, who is free, prints ink; Wren washes up and prints rust.
        .containsExactly(
            "lay the cloth on the table 1",
            "printing with s1 1",
            "wash out s1 1",
            "s1 dries 1",
            "printing with s1 1",
            "wash out s1 1",
            "wash out s2 1");
  }

  @Test
  void aPasteThatIsStillBeingMixedIsWaitedForByEverybody() {
    Timeline day =
        new PrintDay(Medium.DYE)
            .table(400)
            .unmixedPaste("blue")
            .unmixedPaste("ink")
            .design("heron", 30, 40, 2, "s1=ink")
            .placed("heron", "heron", 20, 20)
            .mixedBy("Tam", "blue", "ink")
            .printTogether("heron", PrintOrder.BY_COLOUR, false, 0, Until.NO_WAIT, Until.NO_WAIT)
            .timeline();
    // Tam mixes blue to 9:10 and ink to 9:20, Wren lays the cloth to 9:15: ink from 9:20.
    assertThat(lifts(day)).containsExactly("Wren heron 1 350");
    assertThat(day.tasks())
        .filteredOn(t -> t.kind() == Task.Kind.WAIT)
        .singleElement()
        .satisfies(
            t ->
                assertThat(DaySpeech.text(t.doing(), Measures.METRIC))
                    .isEqualTo("paste ink is mixed"))
        .satisfies(t -> assertThat(t.end().since(t.start()).minutes()).isEqualTo(5));
    assertThat(day.evidence()).noneMatch(EndlessWait.class::isInstance);
    assertThat(PrintDay.figures(day).chain().links())
        .extracting(link -> DaySpeech.text(link.doing(), Measures.METRIC))
        .containsExactly("mix blue", "mix ink", "printing with s1", "wash out s1");
  }

  @Test
  void whoStillMixesIsNotWaitedForWhileAnotherIsFree() {
    Timeline day =
        new PrintDay(Medium.DYE)
            .table(400)
            .unmixedPaste("blue")
            .unmixedPaste("dusk")
            .design("heron", 30, 40, 2, "s1=blue", "s2=blue")
            .placed("heron", "heron", 20, 20)
            .mixedBy("Tam", "blue", "dusk")
            .printTogether("heron", PrintOrder.BY_COLOUR, false, 0, Until.NO_WAIT, Until.NO_WAIT)
            .timeline();
    // Tam mixes blue to 9:10 and dusk to 9:20; Wren prints both colours from 9:15, as if alone.
    assertThat(lifts(day)).containsExactly("Wren heron 1 50", "Wren heron 1 100");
    assertThat(day.tasks()).noneMatch(t -> t.kind() == Task.Kind.WAIT);
  }

  @Test
  void aPasteThatNobodyMixesIsToldOnceThoughTwoPrintWithIt() {
    Timeline day =
        new PrintDay(Medium.DYE)
            .table(400)
            .unmixedPaste("blue")
            .paste("ink", 1, 60)
            .design("heron", 30, 40, 2, "s1=blue", "s2=ink")
            .series("herons", "heron", 2, 60, 20)
            .printTogether("herons", PrintOrder.BY_COLOUR, false, 0, Until.NO_WAIT, Until.NO_WAIT)
            .timeline();
    assertThat(day.evidence())
        .filteredOn(EndlessWait.class::isInstance)
        .map(EndlessWait.class::cast)
        .singleElement()
        .satisfies(
            stuck -> {
              assertThat(stuck.why()).isEqualTo(EndlessWait.Why.NEVER_MIXED);
              assertThat(DaySpeech.waitsFor(stuck, Measures.METRIC)).isEqualTo("paste blue");
              assertThat(DaySpeech.cure(stuck)).contains("write a mix step before step 1");
            });
    assertThat(day.impressions()).hasSize(4);
  }

  @Test
  void aPasteMixedTooLateIsToldWithItsStep() {
    Timeline day =
        new PrintDay(Medium.DYE)
            .unmixedPaste("blue")
            .design("heron", 30, 40, 2, "s1=blue")
            .placed("heron", "heron", 20, 20)
            .print("heron")
            .mix("blue")
            .timeline();
    assertThat(day.evidence())
        .filteredOn(EndlessWait.class::isInstance)
        .map(EndlessWait.class::cast)
        .singleElement()
        .satisfies(
            stuck -> {
              assertThat(stuck.why()).isEqualTo(EndlessWait.Why.MIXED_LATER);
              assertThat(DaySpeech.waitsFor(stuck, Measures.METRIC))
                  .isEqualTo("paste blue, mixed in step 2");
              assertThat(DaySpeech.cure(stuck)).isEqualTo("move the mix step before step 1");
            });
  }

  @Test
  void framesThatTakeTwoToLayArePrintedByOneAfterTheOther() {
    // 110 cm of frame; more than 90 takes two people
    Timeline day =
        new PrintDay(Medium.DYE)
            .table(400)
            .paste("blue", 1, 60)
            .paste("ink", 1, 60)
            .design("border", 90, 40, 10, "s1=blue", "s2=ink")
            .series("border", "border", 2, 110, 10)
            .printTogether("border", PrintOrder.BY_COLOUR, false, 0, Until.NO_WAIT, Until.NO_WAIT)
            .timeline();
    assertThat(day.impressions()).extracting(Impression::person).containsOnly("Wren");
    assertThat(day.tasks())
        .filteredOn(t -> t.kind() == Task.Kind.PRINT)
        .allSatisfy(t -> assertThat(t.helper()).contains("Tam"));
    assertThat(lifts(day))
        .containsExactly(
            "Wren border 1 50", "Wren border 2 100", "Wren border 1 150", "Wren border 2 200");
  }

  /** Frames of 110 cm by Wren and Ada, while Tam mixes for two minutes and Ada for half an hour. */
  private static PrintDay longFrames(List<String> people) {
    return new PrintDay(Medium.DYE)
        .table(400)
        .crew("Wren", "Tam", "Ada")
        .paste("blue", 1, 60)
        .unmixedPaste("ink")
        .unmixedPaste("sand")
        .design("border", 90, 40, 10, "s1=blue")
        .series("border", "border", 2, 110, 10)
        .mixedBy("Tam", 2, "ink")
        .mixedBy("Ada", 30, "sand")
        .printBy(people, "border", PrintOrder.BY_COLOUR, false, 0, Until.NO_WAIT, Until.NO_WAIT);
  }

  @Test
  void whoIsNamedBesidesLaysTheFrameAndIsWaitedFor() {
    // The cloth is laid by 9:15. Tam is free by then, Ada at 9:30.
    Timeline anybody = longFrames(List.of()).timeline();
    assertThat(anybody.tasks())
        .filteredOn(t -> t.kind() == Task.Kind.PRINT)
        .allSatisfy(t -> assertThat(t.people()).containsExactly("Wren", "Tam"));
    Timeline named = longFrames(List.of("Wren", "Ada")).timeline();
    assertThat(named.tasks())
        .filteredOn(t -> t.kind() == Task.Kind.PRINT)
        .allSatisfy(t -> assertThat(t.people()).containsExactly("Wren", "Ada"));
    assertThat(named.tasks())
        .filteredOn(t -> t.kind() == Task.Kind.WAIT)
        .singleElement()
        .satisfies(
            wait -> {
              assertThat(DaySpeech.text(wait.doing(), Measures.METRIC)).isEqualTo("waits for Ada");
              assertThat(wait.end().since(anybody.impressions().get(0).laid()).seconds())
                  .isEqualTo(15 * 60 - 20);
            });
  }

  @Test
  void aFrameOfTheLengthThatOneLaysTakesNobodyElse() {
    Timeline day =
        new PrintDay(Medium.DYE)
            .paste("blue", 1, 60)
            .design("border", 70, 40, 10, "s1=blue")
            .placed("border", "border", 20, 20)
            .print("border")
            .timeline();
    assertThat(day.tasks()).noneMatch(t -> t.helper().isPresent());
  }

  @Test
  void aPauseIsForEachPersonBetweenTwoOfTheirOwn() {
    Timeline day =
        herons(2, "s1=blue", "s2=ink")
            .printTogether("herons", PrintOrder.BY_COLOUR, false, 1, Until.NO_WAIT, Until.NO_WAIT)
            .timeline();
    // Wren: blue 1 to 50 s, a pause of 60 s, blue 2 from 110 to 160. Tam: ink 1 from 50 to 100, a
    // pause to 160, and blue 2 is off by then: to 210.
    assertThat(lifts(day))
        .containsExactly(
            "Wren herons 1 50", "Tam herons 1 100", "Wren herons 2 160", "Tam herons 2 210");
  }

  @Test
  void inAirThatDriesNothingTwoPeopleGiveUpTooAndSayWhy() {
    Timeline day =
        new PrintDay(Medium.PAINT)
            .humidity(1)
            .table(400)
            .paste("blue")
            .paste("ink")
            .design("heron", 30, 40, 2, "s1=blue", "s2=ink")
            .series("herons", "heron", 2, 60, 20)
            .printTogether(
                "herons",
                PrintOrder.BY_COLOUR,
                false,
                0,
                PrintDay.until(Until.Dryness.FRAME_SAFE),
                Until.NO_WAIT)
            .timeline();
    assertThat(day.impressions()).extracting(Impression::person).containsOnly("Wren");
    assertThat(day.evidence())
        .filteredOn(EndlessWait.class::isInstance)
        .map(EndlessWait.class::cast)
        .singleElement()
        .satisfies(stuck -> assertThat(stuck.why()).isEqualTo(EndlessWait.Why.NEVER_DRY));
  }

  private static PrintDay herons(int count, String... colours) {
    return new PrintDay(Medium.DYE)
        .table(400)
        .paste("blue", 10, 60)
        .paste("ink", 10, 60)
        .paste("rust", 10, 60)
        .design("heron", 30, 40, 10, colours)
        .series("herons", "heron", count, 60, 20);
  }

  /** Two people print blue and ink, a stated time between, in the room's air or in moved air. */
  private static Timeline twoIn(PrintDay day, Draught between) {
    return day.paste("blue")
        .paste("ink")
        .design("heron", 30, 40, 10, "s1=blue", "s2=ink")
        .series("herons", "heron", 2, 60, 20)
        .printInAir(
            List.of("Wren", "Tam"),
            "herons",
            PrintOrder.BY_COLOUR,
            false,
            0,
            new Wait(PrintDay.minutes(2), Optional.ofNullable(between)),
            Until.NO_WAIT)
        .timeline();
  }

  @Test
  void theAirMovesWhileTheyPrintAndNoLonger() {
    Draught fan = new Draught(Draught.By.STATED, new AirSpeed(1.5));
    Timeline still = twoIn(new PrintDay(Medium.PAINT), null);
    Timeline fanned = twoIn(new PrintDay(Medium.PAINT), fan);
    Timeline allDay = twoIn(new PrintDay(Medium.PAINT).blown(1.5), null);
    assertThat(lifts(fanned)).isEqualTo(lifts(still));
    // the last film is laid when the others are done: the air moves for its last seconds at most
    int last = still.impressions().size() - 1;
    assertThat(dry(fanned, 0)).isLessThan(dry(still, 0));
    assertThat(dry(fanned, last)).isLessThanOrEqualTo(dry(still, last));
    assertThat(dry(fanned, last)).isGreaterThan(dry(allDay, last));
  }

  private static Moment dry(Timeline day, int impression) {
    return day.impressions().get(impression).film().liftSafe().best();
  }

  /** Nobody prints through a screen that holds another paste, whichever pass or step filled it. */
  @Test
  void betweenTwoPastesAScreenIsWashedInALaterPassToo() {
    Timeline withinAStep =
        threeMotifs("s1=blue", "s3=sand", "s1=ink")
            .printTogether(
                "herons, shells", PrintOrder.BY_COLOUR, false, 0, Until.NO_WAIT, Until.NO_WAIT)
            .timeline();
    assertThat(filledAndWashed(withinAStep, "s1")).containsExactly("blue", "washed", "ink");
    Timeline ofAStepBefore =
        threeMotifs("s1=blue", "s2=sand", "s2=ink")
            .print("eyes")
            .printTogether(
                "herons, shells", PrintOrder.BY_COLOUR, false, 0, Until.NO_WAIT, Until.NO_WAIT)
            .timeline();
    assertThat(filledAndWashed(ofAStepBefore, "s2")).containsExactly("sand", "washed", "ink");
  }

  private static PrintDay threeMotifs(String heron, String eye, String shell) {
    return new PrintDay(Medium.DYE)
        .table(400)
        .paste("blue", 1, 60)
        .paste("ink", 1, 60)
        .paste("sand", 1, 60)
        .design("heron", 30, 40, 2, heron)
        .design("eye", 30, 40, 2, eye)
        .design("shell", 30, 40, 2, shell)
        .placed("herons", "heron", 20, 20)
        .placed("eyes", "eye", 100, 20)
        .placed("shells", "shell", 180, 20);
  }

  /**
   * What a screen prints and when it is washed, in order, but for the washing after its last use.
   */
  private static List<String> filledAndWashed(Timeline day, String screen) {
    List<String> all =
        day.tasks().stream()
            .filter(t -> t.screen().filter(screen::equals).isPresent())
            .filter(t -> t.kind() == Task.Kind.PRINT || t.kind() == Task.Kind.WASH_SCREEN)
            .sorted(Comparator.comparing(Task::start))
            .map(
                t ->
                    t.kind() == Task.Kind.PRINT
                        ? day.impressions()
                            .get(t.impression().orElseThrow())
                            .footprint()
                            .paste()
                            .name()
                        : "washed")
            .toList();
    return all.subList(0, all.size() - 1);
  }

  /** Each feels the film below before laying a frame on it, so that nothing is left to doubt. */
  @Test
  void whoFeelsAFilmAloneKnowsThatItIsSafe() {
    PrintPlan plan =
        new PrintDay(Medium.PAINT)
            .paste("blue")
            .paste("ink")
            .design("heron", 30, 40, 2, "s1=blue", "s2=ink")
            .series("herons", "heron", 2, 60, 20)
            .printTogether(
                "herons",
                PrintOrder.BY_COLOUR,
                false,
                0,
                PrintDay.until(Until.Dryness.FRAME_SAFE),
                Until.NO_WAIT)
            .plan();
    Timeline day = PrintDay.timeline(plan, PrintDay.UNSURE);
    assertThat(day.contacts()).isEmpty();
    for (int heron = 0; heron < 2; heron++) {
      Reached blue = day.impressions().get(heron).film().frameSafe();
      Impression ink = day.impressions().get(2 + heron);
      assertThat(blue.earliest()).isLessThan(blue.best());
      assertThat(blue.latest()).isLessThanOrEqualTo(ink.laid());
    }
  }

  @Test
  void aScreenThatServesTwoPastesIsNoMatterIfTheStepPrintsOneOfThem() {
    assertThat(twoThroughOneScreen(List.of())).hasSize(1);
    assertThat(twoThroughOneScreen(List.of(1, 2))).hasSize(1);
    assertThat(twoThroughOneScreen(List.of(2))).isEmpty();
  }

  private static List<EndlessWait> twoThroughOneScreen(List<Integer> separations) {
    return new PrintDay(Medium.DYE)
            .paste("blue", 10, 60)
            .paste("ink", 10, 60)
            .design("heron", 30, 40, 10, "s1=blue", "s1=ink")
            .series("herons", "heron", 2, 60, 20)
            .step(
                n ->
                    PrintSteps.plain(
                            n,
                            List.of("herons"),
                            List.of(),
                            separations,
                            PrintOrder.BY_COLOUR,
                            new PlanPath("run[0]"))
                        .change()
                        .by(List.of("Wren", "Tam"))
                        .made())
            .timeline()
            .evidence()
            .stream()
            .filter(EndlessWait.class::isInstance)
            .map(EndlessWait.class::cast)
            .toList();
  }
}
