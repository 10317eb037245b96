package strikeoff.day;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import strikeoff.day.facts.Timeline;
import strikeoff.document.PlanPath;
import strikeoff.plan.Medium;
import strikeoff.plan.PrintOrder;
import strikeoff.plan.PrintSteps;
import strikeoff.plan.Until;

/** Print days worked by hand; the comments show the arithmetic. */
class WorkedDayTest {

  /**
   * Two colours, measured 10 min to frame-safe and 60 min to lift-safe, so nothing is estimated.
   */
  private static PrintDay herons(int count, double pitch) {
    return new PrintDay(Medium.DYE)
        .paste("blue", 10, 60)
        .paste("ink", 10, 60)
        .design("heron", 30, 40, 10, "s1=blue", "s2=ink")
        .series("herons", "heron", count, pitch, 20);
  }

  @Test
  void oneSetOfThreeColourByColour() {
    Timeline day =
        herons(3, 60)
            .print("herons", PrintOrder.BY_COLOUR, false, 0, PrintDay.minutes(12), Until.NO_WAIT)
            .timeline();
    // 9:00 load 15 min. An impression takes 20 s lay + 2 · 10 s pulls + 10 s lift = 50 s.
    // Blue: starts 9:15:00, 9:15:50, 9:16:40, ends 9:17:30; laid 20 s after each start.
    // Dry 12 min to 9:29:30. Ink: starts 9:29:30, 9:30:20, 9:31:10, ends 9:32:00.
    // Blue's screen is washed in the wait, to 9:27:30, the other one then, to 9:42:00, and it dries
    // for 30 min.
    assertThat(day.impressions())
        .extracting(i -> clock(i.laid()))
        .containsExactly("9:15:20", "9:16:10", "9:17:00", "9:29:50", "9:30:40", "9:31:30");
    assertThat(day.impressions())
        .extracting(i -> clock(i.lifted()))
        .containsExactly("9:15:50", "9:16:40", "9:17:30", "9:30:20", "9:31:10", "9:32:00");
    assertThat(clock(day.finish())).isEqualTo("10:12:00");
    assertThat(day.contacts()).isEmpty();
    // 15 min + 6 · 50 s + 2 · 10 min = 40 min; of the 12 min of waiting 10 are spent at the sink
    assertThat(day.handsOn().minutes()).isEqualTo(40);
    assertThat(day.waiting().minutes()).isEqualTo(2);
  }

  @Test
  void aFrameOnAWetFilmIsAContactWithItsMinutes() {
    Timeline day =
        herons(3, 60)
            .print("herons", PrintOrder.BY_COLOUR, false, 0, PrintDay.minutes(6), Until.NO_WAIT)
            .timeline();
    // Blue on heron 1 is lifted 9:15:50 and safe at 9:25:50. Ink starts 9:17:30 + 6 min = 9:23:30
    // and
    // is laid at 9:23:50: 2 min early. Herons 2 and 3 follow in the same beat of 50 s: 2 min early.
    assertThat(day.contacts()).hasSize(3);
    assertThat(day.contacts()).allSatisfy(c -> assertThat(c.shortBest().minutes()).isEqualTo(2));
    assertThat(day.contacts()).allMatch(Contact::sameMotif);
    // the film under the frame is the whole image of 30 · 40 cm
    assertThat(day.contacts().get(0).area().squareCm()).isEqualTo(1200);
  }

  @Test
  void aNeighbourUnderTheOverhangIsAContactAndEveryOtherClearsIt() {
    // Pitch 35, image 30, frame 10 cm beyond: it covers 5 cm of the neighbour on each side.
    Timeline beside = herons(4, 35).print("herons").timeline();
    assertThat(beside.contacts()).anyMatch(c -> !c.sameMotif() && c.area().squareCm() == 5 * 40);
    // One colour, measured 2 min. Next neighbour: laid 20 s after the last is lifted: 100 s early.
    PrintDay shells =
        new PrintDay(Medium.DYE)
            .paste("sand", 2, 60)
            .design("shell", 30, 40, 10, "s1=sand")
            .series("shells", "shell", 6, 35, 20);
    Timeline row = shells.print("shells").timeline();
    assertThat(row.contacts()).hasSize(5);
    assertThat(row.contacts()).allSatisfy(c -> assertThat(c.shortBest().seconds()).isEqualTo(100));
    // Every other one: 1 3 5 2 4 6. Shell 2 is laid after 1 (lifted 50 s, laid 3 · 50 + 20 = 170 s:
    // exactly 2 min later, safe) but beside 3 (lifted 100 s: 70 s later, 50 s early).
    Timeline everyOther =
        new PrintDay(Medium.DYE)
            .paste("sand", 2, 60)
            .design("shell", 30, 40, 10, "s1=sand")
            .series("shells", "shell", 6, 35, 20)
            .print("shells", PrintOrder.BY_COLOUR, true, 0, Until.NO_WAIT, Until.NO_WAIT)
            .timeline();
    assertThat(everyOther.impressions())
        .extracting(i -> i.footprint().placement().number())
        .containsExactly(1, 3, 5, 2, 4, 6);
    assertThat(everyOther.contacts())
        .allSatisfy(c -> assertThat(c.shortBest().seconds()).isEqualTo(50));
    assertThat(everyOther.contacts()).hasSize(2);
  }

  @Test
  void theClothMovesOnBetweenSetsOnlyWhenLiftSafe() {
    Timeline day =
        herons(4, 60)
            .stations(2)
            .print(
                "herons",
                PrintOrder.BY_COLOUR,
                false,
                0,
                PrintDay.minutes(12),
                PrintDay.until(Until.Dryness.LIFT_SAFE))
            .table(150)
            .timeline();
    // Set 1: blue 9:15:00 to 9:16:40, dry to 9:28:40, ink to 9:30:20. Lift-safe 60 min after the
    // last
    // lift: 10:30:20. Move 10 min to 10:40:20; set 2 is laid at 10:40:40.
    assertThat(day.tasks().stream().filter(t -> t.kind() == Task.Kind.MOVE))
        .singleElement()
        .satisfies(t -> assertThat(clock(t.start())).isEqualTo("10:30:20"));
    assertThat(clock(day.impressions().get(4).laid())).isEqualTo("10:40:40");
    assertThat(day.impressions().get(4).set()).isEqualTo(2);
  }

  @Test
  void aScreenThatChangesPasteIsWashedAndDried() {
    Timeline day =
        new PrintDay(Medium.DYE)
            .paste("blue", 1, 60)
            .paste("ink", 1, 60)
            .design("heron", 30, 40, 10, "s1=blue", "s1=ink")
            .series("herons", "heron", 1, 60, 20)
            .print("herons")
            .timeline();
    // Blue 9:15:00 to 9:15:50. Wash to 9:25:50, dry to 9:55:50. Ink is laid 20 s later.
    assertThat(clock(day.impressions().get(1).laid())).isEqualTo("9:56:10");
    // the printer waits while the screen dries, not while she washes it
    assertThat(day.waiting().minutes()).isEqualTo(30);
  }

  @Test
  void theDayEndsWithWashedScreensAndDryingGoesOnOvernight() {
    Timeline day =
        herons(1, 60)
            .print("herons", PrintOrder.BY_COLOUR, false, 0, PrintDay.minutes(12), Until.NO_WAIT)
            .endOfDay()
            .dry(PrintDay.until(Until.Dryness.FIX_SAFE), null)
            .sew()
            .timeline();
    // The film was lift-safe long before the next morning, so sewing starts when the room opens.
    assertThat(day.tasks().stream().filter(t -> t.kind() == Task.Kind.SEW))
        .singleElement()
        .satisfies(t -> assertThat(t.start()).isEqualTo(Moment.of(2, 540)));
  }

  @Test
  void allColoursAtAStationBeforeTheNext() {
    Timeline day =
        herons(2, 60)
            .print("herons", PrintOrder.BY_STATION, false, 0, PrintDay.minutes(11), Until.NO_WAIT)
            .timeline();
    assertThat(day.impressions())
        .extracting(i -> i.footprint().placement().number() + i.footprint().screen().name())
        .containsExactly("1s1", "1s2", "2s1", "2s2");
    // 9:15:00 blue 1 to 9:15:50; ink 1 from 9:26:50 to 9:27:40; blue 2 at once; ink 2 from 9:39:30
    assertThat(clock(day.impressions().get(2).laid())).isEqualTo("9:28:00");
    assertThat(clock(day.impressions().get(3).laid())).isEqualTo("9:39:50");
  }

  @Test
  void eachColourOverAllSetsMovesTheClothThereAndBack() {
    Timeline day =
        herons(4, 60)
            .stations(2)
            .print("herons", PrintOrder.OVER_ALL, false, 0, PrintDay.minutes(12), Until.NO_WAIT)
            .table(150)
            .timeline();
    assertThat(day.impressions())
        .extracting(i -> i.footprint().placement().number() + i.footprint().screen().name())
        .containsExactly("1s1", "2s1", "3s1", "4s1", "1s2", "2s2", "3s2", "4s2");
    // on to the second set, back to the first, on again
    assertThat(day.tasks().stream().filter(t -> t.kind() == Task.Kind.MOVE)).hasSize(3);
  }

  @Test
  void setBySetEverythingOnTheTableIsPrintedBeforeTheClothMoves() {
    PrintDay two =
        herons(4, 60)
            .stations(2)
            .series("shells", "heron", 4, 60, 20)
            .table(150)
            .step(
                n ->
                    PrintSteps.plain(
                        n,
                        List.of("shells", "herons"),
                        List.of(),
                        List.of(1),
                        PrintOrder.SET_BY_SET,
                        new PlanPath("run[0]")));
    // herons and shells lie on each other here: each of two boards holds one of each, and shells
    // are
    // named first
    assertThat(two.timeline().impressions())
        .extracting(i -> i.footprint().placement().name())
        .containsExactly(
            "shells 1",
            "shells 2",
            "herons 1",
            "herons 2",
            "shells 3",
            "shells 4",
            "herons 3",
            "herons 4");
  }

  @Test
  void aFrameLongerThanOnePersonCanLayTakesBoth() {
    Timeline day =
        new PrintDay(Medium.DYE)
            .paste("blue", 10, 60)
            .design("banner", 30, 80, 10, "s1=blue")
            .series("banners", "banner", 1, 60, 20)
            .mixedBy("Tam", "ink")
            .unmixedPaste("ink")
            .print("banners")
            .timeline();
    // a frame of 100 cm: Wren has laid the cloth by 9:15, Tam has mixed from 9:00 to 9:10
    assertThat(clock(day.impressions().get(0).laid())).isEqualTo("9:15:20");
    Timeline late =
        new PrintDay(Medium.DYE)
            .paste("blue", 10, 60)
            .design("banner", 30, 80, 10, "s1=blue")
            .series("banners", "banner", 1, 60, 20)
            .mixedBy("Tam", 40, "ink")
            .unmixedPaste("ink")
            .print("banners")
            .timeline();
    // Tam's hands are free only at 9:40
    assertThat(clock(late.impressions().get(0).laid())).isEqualTo("9:40:20");
  }

  @Test
  void aPasteMixedLaterOrNeverIsAFactAndNoHang() {
    Timeline day =
        new PrintDay(Medium.DYE)
            .unmixedPaste("blue")
            .unmixedPaste("ink")
            .design("heron", 30, 40, 10, "s1=blue", "s2=ink")
            .series("herons", "heron", 1, 60, 20)
            .print("herons")
            .mix("ink")
            .timeline();
    assertThat(day.evidence())
        .filteredOn(e -> e instanceof EndlessWait)
        .extracting(e -> ((EndlessWait) e).why())
        .isEqualTo(List.of(EndlessWait.Why.NEVER_MIXED, EndlessWait.Why.MIXED_LATER));
  }

  private static String clock(Moment moment) {
    long second = moment.seconds() % 86_400;
    return second / 3600
        + ":"
        + (second / 60 % 60 < 10 ? "0" : "")
        + second / 60 % 60
        + ":"
        + (second % 60 < 10 ? "0" : "")
        + second % 60;
  }
}
