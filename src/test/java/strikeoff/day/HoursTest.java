package strikeoff.day;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import strikeoff.day.facts.DayEnd;
import strikeoff.day.facts.StepLength;
import strikeoff.day.facts.TableDay;
import strikeoff.day.facts.Timeline;
import strikeoff.day.facts.WaitingShare;
import strikeoff.document.PlanPath;
import strikeoff.plan.DyeFixing;
import strikeoff.plan.Hours;
import strikeoff.plan.Medium;
import strikeoff.plan.PrintOrder;
import strikeoff.plan.Step;
import strikeoff.plan.Until;
import strikeoff.speech.HoursSpeech;
import strikeoff.units.Measures;
import strikeoff.units.Span;
import strikeoff.units.Temperature;

/** Opening hours, nights and waits; loading takes 15 min, an impression 50 s, washing 10 min. */
class HoursTest {

  private static PrintDay heron(int opens, int closes) {
    return new PrintDay(Medium.DYE)
        .hours(opens, closes)
        .paste("blue", 10, 60)
        .design("heron", 30, 40, 10, "s1=blue")
        .series("herons", "heron", 1, 60, 20);
  }

  private static final Hours NINE_TO_TEN =
      new Hours(List.of(new Hours.Day(540, 600)), new PlanPath("hours"));

  @Test
  void workThatEndsAtClosingTimeEndsInTime() {
    // 9:00 load, 9:15 dry, print 50 s and wash 10 min up to 10:00:00 sharp
    assertThat(late(heron(9, 10).dry(34 + 10 / 60.0).print("herons"))).isEmpty();
    // a minute is what the clock shows: up to 10:00:59 it is ten o'clock
    assertThat(late(heron(9, 10).dry(35 + 9 / 60.0).print("herons"))).isEmpty();
    assertThat(late(heron(9, 10).dry(35 + 10 / 60.0).print("herons")))
        .singleElement()
        .satisfies(
            day -> {
              assertThat(day.over().seconds()).isCloseTo(60, offset(1e-6));
              assertThat(day.day()).isEqualTo(1);
              assertThat(day.step()).isEqualTo(2);
              assertThat(HoursSpeech.title(day, Measures.METRIC)).isEqualTo("print herons");
              assertThat(day.opens().clock()).isEqualTo("09:00");
              assertThat(day.closes().clock()).isEqualTo("10:00");
              assertThat(day.ends().clock()).isEqualTo("10:01");
            });
  }

  @Test
  void theStepThatIsAtWorkWhenTheRoomClosesIsTold() {
    // 9:15 and 44.5 min: the first print is at work when it strikes ten, the second after it
    assertThat(late(heron(9, 10).dry(44.5).print("herons").print("herons")))
        .singleElement()
        .satisfies(day -> assertThat(day.step()).isEqualTo(2))
        // 9:59:30, two prints of 50 s, and the wash of 10 min
        .satisfies(day -> assertThat(day.over().seconds()).isEqualTo(11 * 60 + 10));
  }

  @Test
  void workBeforeTheOpeningBelongsToTheDayBefore() {
    assertThat(TableDay.of(Moment.of(2, 540), NINE_TO_TEN)).isEqualTo(2);
    assertThat(TableDay.of(Moment.of(2, 539), NINE_TO_TEN)).isEqualTo(1);
    assertThat(TableDay.of(Moment.of(1, 539), NINE_TO_TEN)).as("no day before").isEqualTo(1);
    assertThat(TableDay.of(Moment.of(3, 60), NINE_TO_TEN)).isEqualTo(2);
  }

  @Test
  void nobodyWaitsWhileTheRoomIsClosed() {
    // 9:50 to 10:20 on day 1, and to 9:15 of day 2: 10 min before closing, 15 after opening
    assertThat(open(1, 590, 1, 620)).isEqualTo(10 * 60);
    assertThat(open(1, 590, 2, 555)).isEqualTo(10 * 60 + 15 * 60);
    assertThat(open(1, 600, 2, 540)).isZero();
    assertThat(open(1, 500, 1, 570)).isEqualTo(30 * 60);
    // a whole day between
    assertThat(open(1, 590, 3, 550)).isEqualTo((10 + 60 + 10) * 60);
  }

  private static long open(int day, int minute, int toDay, int toMinute) {
    return Use.open(
        Moment.of(day, minute).seconds(), Moment.of(toDay, toMinute).seconds(), NINE_TO_TEN);
  }

  @Test
  void whatIsWaitedForIsToldLongestFirst() {
    WaitingShare told =
        heron(9, 17)
            .dry(PrintDay.minutes(20), null)
            .print("herons")
            .dry(PrintDay.minutes(60), null)
            .timeline()
            .evidence()
            .stream()
            .filter(WaitingShare.class::isInstance)
            .map(WaitingShare.class::cast)
            .findFirst()
            .orElseThrow();
    // The last wait is 60 min, in 10 of which Wren washes the screen.
    assertThat(HoursSpeech.causes(told, Measures.METRIC))
        .containsExactly("dry 60 min (50 min)", "dry 20 min (20 min)");
    assertThat(told.waiting().minutes()).isEqualTo(70);
    // 15 min to lay the cloth, 50 s to print, 10 min to wash
    assertThat(told.work().seconds()).isCloseTo(25 * 60 + 50, offset(1e-6));
    assertThat(told.share().fraction()).isCloseTo(4200 / (4200 + 1550.0), offset(1e-9));
    assertThat(HoursSpeech.shortenFirst(told, Measures.METRIC))
        .isEqualTo("dry 60 min in step 3, 60 min");
    assertThat(
            heron(9, 17).print("herons").timeline().evidence().stream()
                .filter(WaitingShare.class::isInstance))
        .as("nobody waits")
        .isEmpty();
  }

  @Test
  void onTheNextDayNothingIsLeftOver() {
    Timeline day =
        heron(9, 10)
            .print("herons")
            .endOfDay()
            .placed("more", "heron", 120, 20)
            .print("more")
            .timeline();
    // Washed out on the first evening; on the second the print begins as the room opens.
    assertThat(day.impressions().get(1).laid()).isEqualTo(Moment.of(2, 540).plus(seconds(20)));
    assertThat(day.tasks())
        .filteredOn(t -> t.kind() == Task.Kind.CLOSED)
        .singleElement()
        .satisfies(
            t -> {
              // 9:15:50 and 10 min
              assertThat(t.start().seconds()).isEqualTo(Moment.of(1, 565).seconds() + 50);
              assertThat(t.end()).isEqualTo(Moment.of(2, 540));
            });
  }

  @Test
  void whoEndsTheDayBeforeItOpensWaitsForThisMorning() {
    // The first day is over at 9:25:50 and the second at 9:10:50, so the third opens on the third.
    Timeline day =
        heron(9, 10)
            .print("herons")
            .endOfDay()
            .endOfDay()
            .placed("more", "heron", 120, 20)
            .print("more")
            .timeline();
    assertThat(day.impressions().get(1).laid().day()).isEqualTo(3);
  }

  @Test
  void laterIsTheLaterOfTwo() {
    Moment nine = Moment.of(1, 540);
    Moment ten = Moment.of(1, 600);
    assertThat(nine.later(ten)).isEqualTo(ten);
    assertThat(ten.later(nine)).isEqualTo(ten);
    assertThat(nine.toString()).isEqualTo("day 1, 09:00");
  }

  private static Span seconds(double seconds) {
    return Span.ofSeconds(seconds);
  }

  private static List<DayEnd> late(PrintDay day) {
    return day.timeline().evidence().stream()
        .filter(DayEnd.class::isInstance)
        .map(DayEnd.class::cast)
        .filter(DayEnd::afterClosing)
        .toList();
  }

  private static Step batch(int number, double minutes) {
    return new Step.Fix(
        number,
        DyeFixing.BATCH,
        List.of(),
        new Temperature(20),
        new Span(minutes),
        Optional.empty(),
        new PlanPath("run[2]"));
  }

  private static Step rinse(int number, double minutes) {
    return new Step.Rinse(
        number,
        new Temperature(20),
        new Span(minutes),
        Optional.empty(),
        new PlanPath("run[" + (number - 1) + "]"));
  }

  /** Laid, printed and washed out from 9:00 to 9:25:50, batched from 9:15:50 to 21:15:50. */
  @Test
  void whatFollowsABatchAtNightWaitsForTheMorning() {
    PrintDay day = heron(9, 17).print("herons").step(n -> batch(n, 720)).step(n -> rinse(n, 90));
    assertThat(late(day))
        .singleElement()
        .satisfies(
            d -> {
              assertThat(d.stays().minutes()).as("nobody stays for the batch").isZero();
              assertThat(d.rests().seconds()).isEqualTo(4 * 3600 + 15 * 60 + 50);
              assertThat(HoursSpeech.goesOn(d, Measures.METRIC))
                  .isEqualTo(
                      "After that nobody works (fix by batch) until step 3 (rinse at 20 °C) begins"
                          + " on day 1, 21:15");
              assertThat(HoursSpeech.mending(d))
                  .isEqualTo(
                      "Write `- end of day` before step 3, which then begins on day 2, 09:00");
            });
    PrintDay mended =
        heron(9, 17).print("herons").step(n -> batch(n, 720)).endOfDay().step(n -> rinse(n, 90));
    assertThat(late(mended)).isEmpty();
  }

  /** Rinsed from 16:50 to 18:20 and from 21:20 on: the people stay 80 min, then rest 3 h. */
  @Test
  void whoStaysBeforeTheRestIsToldHowLong() {
    PrintDay day =
        heron(9, 17)
            .dry(444 + 10 / 60.0)
            .print("herons")
            .step(n -> rinse(n, 90))
            .step(n -> batch(n, 180))
            .step(n -> rinse(n, 20));
    assertThat(late(day))
        .singleElement()
        .satisfies(
            d -> {
              assertThat(d.stays().minutes()).isEqualTo(80);
              assertThat(d.rests().minutes()).isEqualTo(180);
              assertThat(HoursSpeech.goesOn(d, Measures.METRIC))
                  .startsWith("From 18:20 nobody works (fix by batch)");
              assertThat(d.step()).isEqualTo(3);
              assertThat(HoursSpeech.mending(d)).startsWith("Write `- end of day` before step 3");
            });
  }

  /** Nothing goes before the print but laying the cloth, so no night before it makes it shorter. */
  @Test
  void aFirstStepThatIsTooLongIsParted() {
    PrintDay day = heron(9, 10).series("more", "heron", 60, 60, 120).print("more");
    assertThat(late(day)).isEmpty();
    assertThat(longSteps(day))
        .singleElement()
        .satisfies(s -> assertThat(HoursSpeech.mending(s)).startsWith("Split it by `only:`"))
        .satisfies(s -> assertThat(s.overThen()).isEqualTo(s.over()));
    assertThat(longSteps(heron(9, 10).print("herons").step(n -> rinse(n, 90))))
        .singleElement()
        .satisfies(s -> assertThat(HoursSpeech.mending(s)).startsWith("Make it shorter"));
  }

  /** Of two hours between two colours a night may be made; each colour alone takes a minute. */
  @Test
  void aNightMayFallIntoALongWaitOfAStep() {
    PrintDay day =
        new PrintDay(Medium.DYE)
            .hours(9, 10)
            .paste("blue", 10, 60)
            .paste("ink", 10, 60)
            .design("heron", 30, 40, 10, "s1=blue", "s2=ink")
            .series("herons", "heron", 1, 60, 20)
            .print("herons", PrintOrder.BY_COLOUR, false, 0, PrintDay.minutes(120), Until.NO_WAIT);
    assertThat(longSteps(day))
        .singleElement()
        .satisfies(
            s -> {
              // the wait counts from the lift, and the second print begins a lay before it touches
              assertThat(s.rests().minutes()).isCloseTo(120, offset(0.5));
              assertThat(s.over().minutes()).isCloseTo(61, offset(1.0));
              assertThat(s.overThen().minutes()).isCloseTo(-59, offset(1.0));
            });
  }

  private static List<StepLength> longSteps(PrintDay day) {
    return day.timeline().evidence().stream()
        .filter(StepLength.class::isInstance)
        .map(StepLength.class::cast)
        .filter(step -> step.over().minutes() > 0)
        .toList();
  }

  @Test
  void aBatchLiesAndNobodyStandsBy() {
    Timeline day = heron(9, 17).print("herons").dry(60).step(n -> batch(n, 120)).timeline();
    assertThat(day.tasks())
        .filteredOn(t -> t.kind() == Task.Kind.FIX)
        .singleElement()
        .satisfies(t -> assertThat(t.person()).isEmpty())
        .satisfies(t -> assertThat(t.start().clock()).isEqualTo("10:15"))
        .satisfies(t -> assertThat(t.end().clock()).isEqualTo("12:15"));
  }

  @Test
  void aPrintThatIsAskedToWaitForNothingWaitsForNothing() {
    assertThat(
            heron(9, 17)
                .dry(0)
                .print("herons", PrintOrder.BY_COLOUR, false, 5, Until.NO_WAIT, Until.NO_WAIT)
                .timeline()
                .tasks())
        .noneMatch(t -> t.kind() == Task.Kind.WAIT);
  }

  @Test
  void workInTheMiddleOfAWaitIsNoWaiting() {
    // Waits from 9:00 to 10:00 and to 10:30, work from 8:50 to 9:10, 9:20 to 9:30, 10:20 to 10:40.
    Use use =
        Use.of(
            List.of(
                task(Task.Kind.WASH_SCREEN, new Doing.WashOut("s1"), 530, 550),
                task(Task.Kind.WAIT, Doing.Wait.BETWEEN_COLOURS, 540, 600),
                task(Task.Kind.WASH_SCREEN, new Doing.WashOut("s1"), 560, 570),
                task(Task.Kind.WAIT, Doing.Wait.BEFORE_MOVING, 600, 630),
                task(Task.Kind.WASH_SCREEN, new Doing.WashOut("s1"), 620, 640)),
            new Hours(List.of(new Hours.Day(480, 1020)), new PlanPath("hours")));
    assertThat(use.handsOn().minutes()).isEqualTo(50);
    // 9:10 to 9:20 and 9:30 to 10:00; then 10:00 to 10:20
    assertThat(use.waitedFor())
        .containsExactly(
            new Use.WaitedFor(Doing.Wait.BETWEEN_COLOURS, new Span(40)),
            new Use.WaitedFor(Doing.Wait.BEFORE_MOVING, new Span(20)));
    assertThat(use.waiting().minutes()).isEqualTo(60);
  }

  private static Task task(Task.Kind kind, Doing what, int from, int to) {
    return new Task(
        1,
        kind,
        what,
        Moment.of(1, from),
        Moment.of(1, to),
        kind == Task.Kind.WAIT ? Optional.empty() : Optional.of("Wren"),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        OptionalInt.empty(),
        OptionalInt.empty(),
        new PlanPath("run[0]"));
  }
}
