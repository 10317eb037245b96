package strikeoff.day;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import strikeoff.day.facts.DayEnd;
import strikeoff.day.facts.FilmsInRoom;
import strikeoff.day.facts.StepLength;
import strikeoff.day.facts.Timeline;
import strikeoff.evidence.Evidence;
import strikeoff.plan.Medium;
import strikeoff.plan.PrintOrder;
import strikeoff.plan.Until;
import strikeoff.speech.DaySpeech;
import strikeoff.speech.DryingSpeech;
import strikeoff.units.Measures;

/** One cause is told once, in words that fit its count. */
class OneCauseTest {

  private static boolean isLate(Evidence fact) {
    return fact instanceof DayEnd day && day.afterClosing();
  }

  private static boolean isTooLong(Evidence fact) {
    return fact instanceof StepLength step && step.over().minutes() > 0;
  }

  /** Two motifs of 50 s beside 90 min of waiting: no day of one hour holds that step. */
  @Test
  void aStepThatFitsNoDayIsToldAndNotTheDaysAfterIt() {
    PrintDay day =
        new PrintDay(Medium.DYE)
            .hours(9, 10)
            .paste("blue", 10, 60)
            .paste("ink", 10, 60)
            .design("heron", 30, 40, 10, "s1=blue", "s2=ink")
            .series("herons", "heron", 1, 60, 20)
            .placed("more", "heron", 120, 20)
            .print("herons", PrintOrder.BY_COLOUR, false, 0, PrintDay.minutes(90), Until.NO_WAIT)
            .endOfDay()
            .dry(120)
            .print("more");
    Timeline timeline = day.timeline();
    // day 2 closes at 10:00; its print begins after 11:00
    assertThat(timeline.evidence())
        .filteredOn(OneCauseTest::isTooLong)
        .extracting(e -> ((StepLength) e).step())
        .containsExactly(1);
    assertThat(timeline.evidence()).noneMatch(OneCauseTest::isLate);
  }

  @Test
  void aDayThatRunsOverBeforeThatStepIsToldBesidesIt() {
    Timeline timeline =
        new PrintDay(Medium.DYE)
            .hours(9, 10)
            .paste("blue", 10, 60)
            .paste("ink", 10, 60)
            .design("heron", 30, 40, 10, "s1=blue", "s2=ink")
            .series("herons", "heron", 1, 60, 20)
            .placed("more", "heron", 120, 20)
            .dry(60)
            .print("more")
            .endOfDay()
            .print("herons", PrintOrder.BY_COLOUR, false, 0, PrintDay.minutes(90), Until.NO_WAIT)
            .timeline();
    assertThat(timeline.evidence())
        .filteredOn(OneCauseTest::isLate)
        .extracting(e -> ((DayEnd) e).step())
        .containsExactly(2);
    assertThat(timeline.evidence()).anyMatch(OneCauseTest::isTooLong);
  }

  /** Two people would end in time; the step is simulated by one, which another finding tells. */
  @Test
  void aScreenNeededTwiceIsTheOneCauseOfALateDay() {
    Timeline timeline =
        new PrintDay(Medium.DYE)
            .hours(9, 10)
            .paste("blue", 10, 60)
            .paste("ink", 10, 60)
            .design("heron", 30, 40, 10, "s1=blue", "s1=ink")
            .series("herons", "heron", 2, 60, 20)
            .printTogether("herons", PrintOrder.BY_COLOUR, false, 0, Until.NO_WAIT, Until.NO_WAIT)
            .timeline();
    assertThat(timeline.finish()).isGreaterThan(Moment.of(1, 600));
    assertThat(timeline.evidence()).filteredOn(e -> isTooLong(e) || isLate(e)).isEmpty();
    assertThat(timeline.evidence())
        .filteredOn(EndlessWait.class::isInstance)
        .singleElement()
        .satisfies(
            e -> assertThat(DaySpeech.after(((EndlessWait) e))).contains("as if one person"));
  }

  @Test
  void oneFilmIsSpokenOfAsOne() {
    List<String> one = never(1).map(DryingSpeech::counted).toList();
    assertThat(one).containsExactly("1 film");
    assertThat(never(2).map(DryingSpeech::counted)).containsExactly("2 films");
  }

  private static Stream<FilmsInRoom> never(int motifs) {
    return new PrintDay(Medium.PAINT)
            .humidity(1)
            .paste("blue")
            .design("heron", 30, 40, 10, "s1=blue")
            .series("herons", "heron", motifs, 60, 20)
            .print("herons")
            .timeline()
            .evidence()
            .stream()
            .filter(FilmsInRoom.class::isInstance)
            .map(FilmsInRoom.class::cast);
  }

  /**
   * Where the cloth goes back from its far end to a first frame that begins 5 cm before the motif.
   */
  private static List<String> movesBack(double firstAt) {
    return new PrintDay(Medium.DYE)
            .table(150)
            .paste("blue", 10, 60)
            .design("heron", 30, 40, 10, "s1=blue")
            .placed("first", "heron", firstAt, 20)
            .placed("last", "heron", 400, 20)
            .print("last")
            .print("first")
            .timeline()
            .tasks()
            .stream()
            .filter(t -> t.kind() == Task.Kind.MOVE)
            .map(t -> DaySpeech.text(t.doing(), Measures.METRIC))
            .toList();
  }

  /** The first frame reaches 5 cm past the cloth's start, where there is no mark to move on to. */
  @Test
  void clothIsMovedBackByWhatTheFirstFrameNeeds() {
    assertThat(movesBack(5)).containsExactly("move back, its start 5 cm inside the table");
  }

  @Test
  void clothThatGoesBackToItsStartIsToldSo() {
    assertThat(movesBack(10)).containsExactly("move back to its start");
  }
}
