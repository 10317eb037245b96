package strikeoff.propose;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import strikeoff.day.Moment;
import strikeoff.layout.Footprint;
import strikeoff.plan.Draught;
import strikeoff.plan.Until.Dryness;
import strikeoff.units.Span;

/** Bounds of small plans, each as one reckons it by hand from how its films dry. */
class BoundingTest {

  private static final long OPENING = 9 * 3600;
  private static final long LOAD = 15 * 60;
  private static final long MIX = 10 * 60;
  private static final long MOVE = 10 * 60;

  /** Lay 20 s, two pulls 20 s, lift 10 s. */
  private static final long IMPRESSION = 50;

  /** Soak 60 min, rinse 20 min, wash 15 min. */
  private static final long BATHS = 95 * 60;

  private static long dries(SmallPlan.Bench bench, Dryness state) {
    Footprint film = bench.judged().facts().layout().footprints().get(0);
    long soonest = Long.MAX_VALUE;
    for (Optional<Draught> air : bench.leeway().airs()) {
      long best = (long) bench.rehearsal().dries(film, state, air, false).get().seconds();
      soonest = Math.min(soonest, best);
    }
    return soonest;
  }

  @Test
  void oneHandLoadsMixesAndPrintsAndTheLastFilmDries() {
    SmallPlan.Bench bench = new SmallPlan(2, 1, 52, 180, 1, false).bench();
    Bound bound = bench.bound();
    long byHand = OPENING + LOAD + MIX + 2 * IMPRESSION + dries(bench, Dryness.FIX_SAFE) + BATHS;
    assertThat(bound.finish()).isEqualTo(new Moment(byHand));
    assertThat(bound.because().text()).contains("one person");
  }

  @Test
  void twoHandsShareTheMixingButNotTheScreen() {
    SmallPlan.Bench bench = new SmallPlan(2, 1, 52, 180, 2, false).bench();
    long byHand =
        OPENING
            + Math.max(LOAD, (LOAD + MIX + 1) / 2)
            + 2 * IMPRESSION
            + dries(bench, Dryness.FIX_SAFE)
            + BATHS;
    assertThat(bench.bound().finish()).isEqualTo(new Moment(byHand));
  }

  @Test
  void theFirstOfTwoStretchesDriesBeforeTheClothMoves() {
    SmallPlan.Bench bench = new SmallPlan(2, 1, 90, 100, 1, false).bench();
    Bound bound = bench.bound();
    // Only one paste, and it is printed in both stretches: it is mixed before the first print.
    long byHand =
        OPENING
            + LOAD
            + MIX
            + 2 * IMPRESSION
            + dries(bench, Dryness.LIFT_SAFE)
            + MOVE
            + dries(bench, Dryness.FIX_SAFE)
            + BATHS;
    assertThat(bound.finish()).isEqualTo(new Moment(byHand));
    assertThat(bound.because())
        .isInstanceOfSatisfying(Bound.Stretches.class, b -> assertThat(b.stretches()).isEqualTo(2));
  }

  /** There is one board only, so each motif takes the cloth to be laid anew for it. */
  @Test
  void boardsThatAreFewMakeMoreStretches() {
    SmallPlan.Bench bench = new SmallPlan(2, 1, 52, 180, 1, false).on(1).bench();
    long byHand =
        OPENING
            + LOAD
            + MIX
            + 2 * IMPRESSION
            + dries(bench, Dryness.LIFT_SAFE)
            + MOVE
            + dries(bench, Dryness.FIX_SAFE)
            + BATHS;
    assertThat(bench.bound().finish()).isEqualTo(new Moment(byHand));
    SmallPlan.Bench enough = new SmallPlan(2, 1, 52, 180, 1, false).on(2).bench();
    assertThat(enough.bound().finish()).isLessThan(bench.bound().finish());
  }

  @Test
  void whatCannotBeDoneBeforeClosingBeginsInTheMorning() {
    Proposal.Found found = new SmallPlan(2, 1, 52, 180, 1, false).open("09:00-11:00").proposed(300);
    assertThat(found.bound().finish()).isEqualTo(Moment.of(2, 9 * 60 + 95));
    assertThat(found.bound().because()).isInstanceOf(Bound.Night.class);
    assertThat(found.isProved()).isTrue();
  }

  /**
   * It may be sewn when all is printed, so the bound counts neither it nor laying the cloth again.
   */
  @Test
  void aSeamThatNothingLiesAcrossIsSewnAndDelaysNoPrint() {
    SmallPlan plan = new SmallPlan(2, 1, 55, 180, 1, false).sewn(SmallPlan.Seam.BESIDE);
    Proposal.Found found = plan.proposed(600);
    assertThat(found.text()).contains("- sew: side");
    assertThat(found.finish()).isGreaterThanOrEqualTo(found.bound().finish());
    assertThat(found.finish().since(found.bound().finish()).minutes()).isLessThan(46);
  }

  private static final long BREAK = 40 * 60;

  /**
   * The cloth is laid at 09:15, as the break begins. Of any run so much of mixing as takes ten
   * minutes may fall into the break; the prints come after it.
   */
  @Test
  void nobodyBeginsToPrintInABreak() {
    SmallPlan.Bench bench =
        new SmallPlan(2, 1, 52, 180, 1, false).open("09:00-09:15, 09:55-17:00").bench();
    long byHand = OPENING + LOAD + BREAK + 2 * IMPRESSION + dries(bench, Dryness.FIX_SAFE) + BATHS;
    assertThat(bench.bound().finish()).isEqualTo(new Moment(byHand));
    assertThat(bench.bound().text()).contains("with drying and the break they are ready");
  }

  @Test
  void aBathThatWouldBeginInABreakBeginsWhenItIsOver() {
    SmallPlan allDay = new SmallPlan(2, 1, 52, 180, 1, false);
    Moment dry = allDay.bench().bound().dry();
    // The break begins as the soak ends, so the rinse waits for as long as it lasts.
    Moment soaked = dry.plus(new Span(60));
    String hours = "09:00-" + soaked.clock() + ", " + soaked.plus(new Span(40)).clock() + "-17:00";
    Bound bound = allDay.open(hours).bench().bound();
    assertThat(bound.dry()).isEqualTo(dry);
    long rests = BREAK - (soaked.seconds() % 60);
    assertThat(bound.finish().seconds()).isEqualTo(dry.seconds() + BATHS + rests);
    assertThat(bound.text()).endsWith("min with the break");
  }

  /** The day's few minutes over closing are as good as none, for prints as for baths. */
  @Test
  void whoPrintsAFewMinutesPastClosingIsNotSentHome() {
    // Loading, mixing and two prints end at 09:26:40; the room closes at 09:20.
    Bound bound =
        new SmallPlan(2, 1, 52, 180, 1, false).open("[09:00-09:20, 09:00-17:00]").bench().bound();
    assertThat(bound.finish()).isEqualTo(Moment.of(2, 9 * 60 + 95));
  }
}
