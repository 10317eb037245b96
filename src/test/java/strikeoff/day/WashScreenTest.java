package strikeoff.day;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import strikeoff.day.Use.WaitedFor;
import strikeoff.day.facts.IdleScreen;
import strikeoff.day.facts.Timeline;
import strikeoff.document.PlanPath;
import strikeoff.plan.Begins;
import strikeoff.plan.Draught;
import strikeoff.plan.Medium;
import strikeoff.plan.PrintOrder;
import strikeoff.plan.PrintStep;
import strikeoff.plan.Step;
import strikeoff.plan.Until;
import strikeoff.plan.Wait;
import strikeoff.speech.DaySpeech;
import strikeoff.speech.RoomSpeech;
import strikeoff.units.AirSpeed;
import strikeoff.units.Measures;
import strikeoff.units.Span;

/** A step that washes screens out, worked by hand; the comments show the arithmetic. */
class WashScreenTest {

  /** A heron in two colours and an eye in the second one's screen. */
  private static PrintDay herons() {
    return new PrintDay(Medium.PAINT)
        .paste("blue", 5, 60)
        .paste("ink", 5, 60)
        .design("heron", 30, 40, 10, "s1=blue", "s2=ink")
        .design("eye", 30, 40, 10, "s2=ink")
        .series("herons", "heron", 1, 60, 20)
        .placed("eye", "eye", 100, 20);
  }

  private static PrintDay wash(PrintDay day, String by, Integer minutes, String... screens) {
    return day.step(
        n ->
            new Step.WashScreen(
                n,
                List.of(screens),
                Optional.ofNullable(minutes).map(Span::new),
                Optional.ofNullable(by),
                new PlanPath("run[" + (n - 1) + "]")));
  }

  @Test
  void aScreenIsWashedThereAndDriesBeforeItPrintsAgain() {
    // Load to 9:15, blue to 9:15:50, ink to 9:16:40. s1 is not needed again and is washed to
    // 9:26:40, then s2 by the step to 9:36:40; it dries to 10:06:40, and so long Wren waits.
    Timeline day = wash(herons().print("herons"), null, null, "s2").print("eye").timeline();
    assertThat(washes(day))
        .containsExactly("9:16:40 s1 in step 1", "9:26:40 s2 in step 2", "10:07:30 s2 in step 3");
    assertThat(clock(day.impressions().get(2).laid())).isEqualTo("10:07:00");
    assertThat(day.waiting().minutes()).isEqualTo(30);
    assertThat(idle(day)).isEmpty();
  }

  @Test
  void whileSomebodyElseWashesNobodyWaitsForAPlace() {
    // Wren prints blue to 9:15:50; Tam washes s1 to 9:25:50, and it dries at once, to 9:55:50.
    Timeline day =
        new PrintDay(Medium.PAINT)
            .paste("blue", 5, 60)
            .paste("ink", 5, 60)
            .design("heron", 30, 40, 10, "s1=blue", "s1=ink")
            .series("herons", "heron", 1, 60, 20)
            .printWashedBy("Tam", "herons")
            .timeline();
    assertThat(of(day, Task.Kind.WAIT))
        .extracting(t -> DaySpeech.text(t.doing(), Measures.METRIC) + " to " + clock(t.end()))
        .containsExactly("screen s1 is washed out to 9:25:50", "screen s1 dries to 9:55:50");
  }

  @Test
  void aCleanScreenIsNotWashedAgainAndTheTimeIsSharedByTheOthers() {
    // Nothing holds paste yet; then both take 8 min together, 4 min each. Tam begins when Wren
    // leaves
    // s1 at 9:15:50.
    PrintDay day = wash(herons(), null, null, "s1", "s2");
    Timeline timeline = wash(day.print("herons"), "Tam", 8, "s1", "s2").timeline();
    assertThat(washes(timeline)).containsExactly("9:15:50 s1 in step 3", "9:19:50 s2 in step 3");
    assertThat(of(timeline, Task.Kind.WASH_SCREEN))
        .allSatisfy(t -> assertThat(t.end().since(t.start()).minutes()).isEqualTo(4))
        .allSatisfy(t -> assertThat(t.person()).contains("Tam"));
  }

  @Test
  void aStepOfTheDayIsWaitedForAndOneOfAnotherDayIsNot() {
    // Tam washes both after the wait of 5 min, not Wren at once; but nobody leaves them overnight.
    Timeline sameDay = wash(herons().print("herons").dry(5), "Tam", null, "s1", "s2").timeline();
    assertThat(washes(sameDay)).allMatch(w -> w.endsWith("in step 3"));
    Timeline nextDay =
        wash(herons().print("herons").endOfDay(), "Tam", null, "s1", "s2").timeline();
    assertThat(washes(nextDay)).allMatch(w -> w.endsWith("in step 1"));
  }

  @Test
  void whoWaitsForAScreenThatWaitsForAPlaceIsToldBoth() {
    // s1 is washed to 9:26:40 and dries in the only place to 9:56:40. s2 is washed to 9:36:40,
    // waits
    // 20 min for the place and dries to 10:26:40. Wren has been ready since 9:36:40.
    Timeline day =
        wash(herons().print("herons"), null, null, "s2")
            .print("eye")
            .equipment(1, 1, 1, 1)
            .timeline();
    assertThat(clock(day.impressions().get(2).laid())).isEqualTo("10:27:00");
    assertThat(PrintDay.figures(day).waitedFor())
        .containsExactly(
            new WaitedFor(new Doing.ForPiece(Resource.Kind.DRYING_PLACE, 1), new Span(20)),
            new WaitedFor(new Doing.ScreenIsDry("s2"), new Span(30)));
    // load, two prints, both washes, s1 drying while s2 waits, s2 drying, the eye, its wash
    assertThat(PrintDay.figures(day).chain().links())
        .extracting(
            l ->
                DaySpeech.text(l.doing(), Measures.METRIC)
                    + l.after().map(r -> " after the " + r.name()).orElse(""))
        .containsExactly(
            "lay the cloth on the table",
            "printing with s1",
            "printing with s2",
            "wash out s1",
            "s1 dries",
            "s2 dries after the drying place",
            "printing with s2",
            "wash out s2");
  }

  @Test
  void paintThatStandsUntilALateWashIsToldWithTheStepThatMendsIt() {
    // Tam mixes to 10:00. The eye is printed by 9:15:50, and its paint has set when he comes to it.
    Timeline late =
        wash(
                herons().unmixedPaste("more ink").mixedBy("Tam", 60, "more ink").print("eye"),
                "Tam",
                null,
                "s2")
            .timeline();
    assertThat(idle(late))
        .singleElement()
        .satisfies(
            i -> {
              assertThat(i.step()).isEqualTo(3);
              assertThat(i.longest().seconds()).isEqualTo(44 * 60 + 10);
              assertThat(RoomSpeech.toWrite(i)).isEqualTo("write `- wash screen: s2` after step 2");
            });
    // A wait of the cloth holds up no washing that is written after it.
    assertThat(idle(wash(herons().print("eye").dry(40), null, null, "s2").timeline())).isEmpty();
  }

  /** Prints herons with a wait between their colours, or before moving, of so many minutes. */
  private static PrintDay waiting(double between, double beforeMoving) {
    return herons()
        .print(
            "herons",
            PrintOrder.BY_COLOUR,
            false,
            0,
            PrintDay.minutes(between),
            PrintDay.minutes(beforeMoving));
  }

  @Test
  void whatIsNotNeededAnyMoreIsWashedInAWait() {
    // Blue is left at 9:15:50 and its screen washed to 9:25:50; the ink goes down at 9:45:50, 30
    // min
    // after the lift, and is left at 9:46:40.
    Timeline day = waiting(30, 0).timeline();
    assertThat(washes(day)).containsExactly("9:15:50 s1 in step 1", "9:46:40 s2 in step 1");
    assertThat(clock(day.impressions().get(1).laid())).isEqualTo("9:46:10");
    assertThat(idle(day)).isEmpty();
  }

  @Test
  void aWaitTooShortForAWashingIsLeftAsItIsAndTheScreenIsTold() {
    // Two waits of 9 min: s1 is left at 9:15:50 and stands until all is printed, 9:36:20.
    PrintDay day =
        new PrintDay(Medium.PAINT)
            .paste("blue", 5, 60)
            .design("heron", 30, 40, 10, "s1=blue", "s2=blue", "s3=blue")
            .series("herons", "heron", 1, 60, 20);
    Timeline told =
        day.print("herons", PrintOrder.BY_COLOUR, false, 0, PrintDay.minutes(9), Until.NO_WAIT)
            .timeline();
    assertThat(washes(told)).allMatch(wash -> !wash.startsWith("9:1"));
    assertThat(idle(told))
        .singleElement()
        .satisfies(
            i -> {
              assertThat(i.longest().seconds()).isEqualTo(2 * (9 * 60 + 50));
              assertThat(i.screens()).containsExactly("s1");
              assertThat(RoomSpeech.toWrite(i))
                  .isEqualTo("write `wash between colours: yes` in step 1");
            });
  }

  /** Three colours, a set of two stations and one of one. */
  private static Timeline betweenColours(boolean wash, double between) {
    return new PrintDay(Medium.PAINT)
        .paste("blue", 5, 60)
        .design("heron", 30, 40, 10, "s1=blue", "s2=blue", "s3=blue")
        .series("herons", "heron", 2, 60, 20)
        .step(
            n ->
                new PrintStep(
                    n,
                    List.of("herons"),
                    List.of(),
                    List.of(),
                    PrintOrder.BY_COLOUR,
                    false,
                    new Span(0),
                    Wait.of(PrintDay.minutes(between)),
                    Wait.NONE,
                    Optional.empty(),
                    List.of(),
                    Optional.empty(),
                    Wait.NONE,
                    wash,
                    Until.NO_WAIT,
                    Map.of(),
                    Optional.empty(),
                    Begins.IN_TURN,
                    new PlanPath("run[0]")))
        .timeline();
  }

  @Test
  void eachScreenIsWashedBeforeTheNextPrintsIfThePlanSaysSo() {
    // s1 prints 9:15 to 9:16:40 and is washed to 9:26:40, then s2 prints to 9:28:20.
    Timeline day = betweenColours(true, 0);
    assertThat(washes(day))
        .containsExactly("9:16:40 s1 in step 1", "9:28:20 s2 in step 1", "9:40:00 s3 in step 1");
    assertThat(clock(day.impressions().get(2).laid())).isEqualTo("9:27:00");
    // 9 min to wait run beside the washing.
    assertThat(betweenColours(true, 9).finish()).isEqualTo(day.finish());
    assertThat(idle(betweenColours(false, 9))).hasSize(1);
    assertThat(idle(betweenColours(true, 9))).isEmpty();
  }

  @Test
  void whatPrintsAgainIsWashedInAWaitOnlyIfItIsDryByThen() {
    // 10 min of washing and 30 min of drying go into 40 min of waiting, not into 39.
    assertThat(washes(herons().print("eye").dry(40).print("eye").timeline()))
        .contains("9:15:50 s2 in step 2");
    Timeline shorter = herons().print("eye").dry(39).print("eye").timeline();
    assertThat(washes(shorter)).noneMatch(wash -> wash.endsWith("in step 2"));
    assertThat(idle(shorter)).hasSize(1);
    // 14 min is no time for paint to set in.
    assertThat(washes(herons().print("eye").dry(14).print("eye").timeline()))
        .noneMatch(wash -> wash.endsWith("in step 2"));
  }

  @Test
  void whoHoldsTheHairDryerDoesNotWash() {
    Wait dried =
        new Wait(
            PrintDay.minutes(30),
            Optional.of(new Draught(Draught.By.HAIR_DRYER, new AirSpeed(1.5))));
    PrintDay day =
        herons()
            .printInAir(List.of(), "herons", PrintOrder.BY_COLOUR, false, 0, dried, Until.NO_WAIT);
    assertThat(of(day.timeline(), Task.Kind.WASH_SCREEN).get(0).person()).contains("Tam");
    Timeline alone = day.crew("Wren").timeline();
    assertThat(idle(alone)).singleElement().extracting(IdleScreen::screen).isEqualTo("s1");
  }

  @Test
  void severalScreensGoIntoOneLineForEachStepTheyWereLastUsedIn() {
    Timeline day =
        herons()
            .placed("more", "heron", 160, 20)
            .printBy(
                List.of("Tam"),
                "herons",
                PrintOrder.BY_COLOUR,
                false,
                0,
                Until.NO_WAIT,
                Until.NO_WAIT)
            .dry(30)
            .print("more")
            .timeline();
    assertThat(idle(day))
        .singleElement()
        .extracting(RoomSpeech::toWrite)
        .isEqualTo("write `- {wash screen: [s1, s2], by: Tam}` after step 1");
  }

  @Test
  void withinAStepItIsPrintedInTwo() {
    Timeline day =
        herons()
            .stations(2)
            .series("row", "eye", 4, 60, 20)
            .print("row", PrintOrder.BY_COLOUR, false, 0, Until.NO_WAIT, PrintDay.minutes(30))
            .table(150)
            .timeline();
    assertThat(idle(day))
        .singleElement()
        .extracting(RoomSpeech::toWrite)
        .isEqualTo("print step 1 in two steps and write `- wash screen: s2` between them");
  }

  @Test
  void aNameIsWrittenAsYamlTakesIt() {
    assertThat(
            DaySpeech.text(
                new WashStep(
                    List.of("heron key"),
                    Optional.empty(),
                    2,
                    WashStep.When.AFTER_STEP,
                    List.of())))
        .isEqualTo("write `- wash screen: heron key` after step 2");
    assertThat(
            DaySpeech.text(
                new WashStep(
                    List.of("all", "a: \"b\""),
                    Optional.empty(),
                    2,
                    WashStep.When.AFTER_STEP,
                    List.of())))
        .isEqualTo("write `- wash screen: [\"all\", \"a: \\\"b\\\"\"]` after step 2");
  }

  private static List<IdleScreen> idle(Timeline day) {
    return day.evidence().stream()
        .filter(IdleScreen.class::isInstance)
        .map(IdleScreen.class::cast)
        .toList();
  }

  private static List<String> washes(Timeline day) {
    return of(day, Task.Kind.WASH_SCREEN).stream()
        .map(t -> clock(t.start()) + " " + t.screen().orElseThrow() + " in step " + t.step())
        .toList();
  }

  private static List<Task> of(Timeline day, Task.Kind kind) {
    return day.tasks().stream().filter(t -> t.kind() == kind).toList();
  }

  private static String clock(Moment moment) {
    long second = moment.seconds() % 86_400;
    return String.format(Locale.ROOT, "%d:%02d:%02d", second / 3600, second / 60 % 60, second % 60);
  }
}
