package strikeoff.day;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import strikeoff.day.facts.ClothTakenUp;
import strikeoff.day.facts.Timeline;
import strikeoff.day.facts.WetContact;
import strikeoff.plan.Medium;
import strikeoff.plan.PrintOrder;
import strikeoff.plan.Until;
import strikeoff.plan.Wait;
import strikeoff.speech.RemedySpeech;
import strikeoff.units.Measures;
import strikeoff.units.Span;

/** A fan in a wait dries what lies there for as long as the wait lasts, and no longer. */
class MovedAirTest {

  /**
   * Measured 60 min in still air; the second colour follows 20 min after the first, and a fan blows
   * only later. By then the film would be safe sooner than by waiting, but no frame can be laid on
   * it by then either: 40 min are missing, and a wait of 60 min is what it takes.
   */
  @Test
  void aFanThatBlowsLaterIsNoPartOfTheWait() {
    PrintDay day = inkOnRust(Wait.of(PrintDay.minutes(20))).dry(PrintDay.minutes(40), 1.5);
    assertThat(likely(day.timeline()))
        .singleElement()
        .satisfies(
            c -> {
              // the frame comes down 20 s after the wait
              assertThat(c.early().ordinary().seconds()).isEqualTo(40 * 60 - 20);
              assertThat(c.safeAt().since(c.laid())).isEqualTo(c.early().ordinary());
              assertThat(RemedySpeech.cure(c, Measures.METRIC))
                  .contains(" or `dry between colours: 60 min` in step 1");
            });
    assertThat(
            likely(SmallDay.timeline(likely(day.timeline()).get(0).remedy().applied(day.plan()))))
        .isEmpty();
  }

  /** The films dry in the fan's air for as long as the wait lasts, and the remedy keeps the fan. */
  @Test
  void aFanInTheWaitShortensIt() {
    Wait fanned = new Wait(PrintDay.minutes(10), PrintDay.air(1.5));
    WetContact still = likely(inkOnRust(Wait.of(PrintDay.minutes(20))).timeline()).get(0);
    PrintDay day = inkOnRust(fanned);
    WetContact blown = likely(day.timeline()).get(0);
    assertThat(blown.remedy().minutes()).isBetween(11L, still.remedy().minutes() - 10);
    assertThat(RemedySpeech.cure(blown, Measures.METRIC))
        .contains("{for: " + blown.remedy().minutes() + " min, air: 1.5 m/s}");
    assertThat(likely(SmallDay.timeline(blown.remedy().applied(day.plan())))).isEmpty();
    assertThat(likely(SmallDay.timeline(blown.remedy().longer(-1).applied(day.plan()))))
        .isNotEmpty();
  }

  /** What is printed after a drying step dries in the room's air again. */
  @Test
  void theAirIsStillAgainAfterTheStepThatMovesIt() {
    assertThat(driesIn(herons().dry(PrintDay.minutes(30), 2.0).print("shells").timeline()))
        .isEqualTo(driesIn(herons().dry(30).print("shells").timeline()));
    assertThat(driesIn(herons().dry(30).blown(2).print("shells").timeline()))
        .isLessThan(driesIn(herons().dry(30).print("shells").timeline()));
  }

  /** How long the last film takes to get frame-safe, by the best estimate. */
  private static Span driesIn(Timeline day) {
    Impression last = day.impressions().get(day.impressions().size() - 1);
    return last.film().frameSafe().best().since(last.lifted());
  }

  /** Paint by the estimate; the shells lie apart from the herons. */
  private static PrintDay herons() {
    return new PrintDay(Medium.PAINT)
        .paste("rust")
        .paste("ink")
        .design("heron", 30, 40, 2, "s1=rust")
        .design("shell", 30, 40, 2, "s2=ink")
        .placed("herons", "heron", 20, 20)
        .placed("shells", "shell", 120, 20)
        .print("herons");
  }

  /** Who sews too early has felt nothing; what is felt afterwards doesn't tell how early it was. */
  @Test
  void aWaitAfterTheClothIsTakenUpIsNoPartOfWhatWasMissing() {
    ClothTakenUp alone = takenUp(unsure(herons().sew()));
    ClothTakenUp felt =
        takenUp(unsure(herons().sew().dry(PrintDay.until(Until.Dryness.LIFT_SAFE), null)));
    assertThat(alone.early().ordinary()).isLessThan(alone.early().slow());
    assertThat(felt.early().quick()).isEqualTo(alone.early().quick());
    assertThat(felt.early().ordinary()).isEqualTo(alone.early().ordinary());
    assertThat(felt.early().slow()).isEqualTo(alone.early().slow());
  }

  private static Timeline unsure(PrintDay day) {
    return PrintDay.timeline(day.plan(), PrintDay.UNSURE);
  }

  private static ClothTakenUp takenUp(Timeline day) {
    return day.evidence().stream()
        .filter(ClothTakenUp.class::isInstance)
        .map(ClothTakenUp.class::cast)
        .findFirst()
        .orElseThrow();
  }

  private static PrintDay inkOnRust(Wait between) {
    return new PrintDay(Medium.PAINT)
        .paste("rust", 60, 300)
        .paste("ink", 60, 300)
        .design("heron", 30, 40, 2, "s1=rust", "s2=ink")
        .series("herons", "heron", 1, 60, 20)
        .printInAir(List.of(), "herons", PrintOrder.BY_COLOUR, false, 0, between, Until.NO_WAIT);
  }

  private static List<WetContact> likely(Timeline day) {
    return day.evidence().stream()
        .filter(WetContact.class::isInstance)
        .map(WetContact.class::cast)
        .filter(WetContact::likely)
        .toList();
  }
}
