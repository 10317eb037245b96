package strikeoff.day;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;
import org.junit.jupiter.api.Test;
import strikeoff.day.facts.ClearedRun;
import strikeoff.day.facts.ClothTakenUp;
import strikeoff.day.facts.Remedy;
import strikeoff.day.facts.Timeline;
import strikeoff.document.PlanPath;
import strikeoff.plan.DyeFixing;
import strikeoff.plan.HeatSource;
import strikeoff.plan.Medium;
import strikeoff.plan.PrintOrder;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Step;
import strikeoff.plan.Until;
import strikeoff.policy.Policy;
import strikeoff.speech.DryingSpeech;
import strikeoff.speech.RemedySpeech;
import strikeoff.units.Measures;
import strikeoff.units.Span;
import strikeoff.units.Temperature;

/**
 * Cloth that leaves its place before its films bear it, worked by hand. Loading ends at 9:15, an
 * impression takes 50 s, washing a screen 10 min.
 */
class TakenUpTest {

  private static PrintDay herons(int count, String... colours) {
    return herons(Medium.DYE, count, colours);
  }

  private static PrintDay herons(Medium medium, int count, String... colours) {
    return new PrintDay(medium)
        .paste("blue", 10, 60)
        .paste("ink", 10, 90)
        .design("heron", 30, 40, 10, colours)
        .series("herons", "heron", count, 60, 20)
        .print("herons", PrintOrder.BY_COLOUR, false, 0, PrintDay.minutes(10), Until.NO_WAIT);
  }

  @Test
  void clothThatIsSewnTooEarlyLiesOnFromWhenThePrintWasDone() {
    PrintDay day = herons(1, "s1=blue").sew();
    ClothTakenUp told = the(day.timeline());
    // Off at 9:15:50 and lift-safe at 10:15:50. Wren washes the screen till 9:25:50 and then sews.
    assertThat(DryingSpeech.done(told)).isEqualTo("sewn");
    assertThat(told.sewn()).isTrue();
    assertThat(told.moved() || told.fixed()).isFalse();
    assertThat(told.state()).isEqualTo("lift-safe");
    assertThat(told.at().text()).isEqualTo("day 1, 09:25");
    assertThat(told.early().ordinary().minutes()).isEqualTo(50);
    assertThat(told.chance().share() >= 0.9).isTrue();
    assertThat(told.likely()).isTrue();
    assertThat(told.paint()).isFalse();
    assertThat(DryingSpeech.filmsAre(told)).isEqualTo("1 film is");
    assertThat(told.example()).isEqualTo("herons 1, blue through s1");
    assertThat(told.marks()).containsExactly("herons 1");
    // A drying step begins while the screen is washed: 60 min, and 30 min of sewing to 10:45:50.
    assertThat(RemedySpeech.cure(told, Measures.METRIC))
        .isEqualTo(
            "a step `- dry: until lift-safe` before step 2 and feel the films with a gloved finger,"
                + " or a step `- dry: 60 min` before step 2 (the run then ends day 1, 10:45)");
    assertThat(all(SmallDay.timeline(told.remedy().applied(day.plan())))).isEmpty();
    assertThat(all(SmallDay.timeline(told.remedy().longer(-1).applied(day.plan())))).hasSize(1);
  }

  @Test
  void theFilmThatDriesLastIsNamedAndAllThatAreWetAreCounted() {
    ClothTakenUp told = the(herons(2, "s1=ink", "s2=blue").sew().timeline());
    // Ink off at 9:15:50 and 9:16:40, dry 10 min, blue off at 9:27:30 and 9:28:20. Ink takes
    // 90 min, to 10:46:40 at last; blue 60, to 10:28:20. Ink's screen is washed
    // in the wait, the other one to 9:38:20.
    assertThat(told.example()).isEqualTo("herons 2, ink through s1");
    assertThat(told.safeAt().text()).isEqualTo("day 1, 10:46");
    assertThat(told.early().ordinary().seconds()).isEqualTo(68 * 60 + 20);
    assertThat(DryingSpeech.filmsAre(told)).isEqualTo("4 films are");
    assertThat(told.marks()).containsExactly("herons 1", "herons 2");
  }

  @Test
  void aFilmThatIsSafeByThenIsNotCounted() {
    // As above, but dried till 10:40: blue is safe, and one ink at 10:45:50, the other at 10:46:40.
    ClothTakenUp told = the(herons(2, "s1=ink", "s2=blue").dry(71.67).sew().timeline());
    assertThat(told.at().text()).isEqualTo("day 1, 10:40");
    assertThat(DryingSpeech.filmsAre(told)).isEqualTo("2 films are");
    // dried to the very second at which the last is safe: 9:28:20 + 78:20 = 10:46:40
    assertThat(all(herons(2, "s1=ink", "s2=blue").dry(78 + 20 / 60.0).sew().timeline())).isEmpty();
    assertThat(all(herons(2, "s1=ink", "s2=blue").dry(78).sew().timeline())).hasSize(1);
  }

  @Test
  void eachStepIsToldByItsWorstOccasion() {
    // Stations for two: the cloth moves on after 9:16:40 and again.
    PrintDay day =
        new PrintDay(Medium.DYE)
            .table(150)
            .stations(2)
            .paste("blue", 5, 60)
            .design("heron", 30, 40, 10, "s1=blue")
            .series("herons", "heron", 5, 60, 20)
            .print("herons", PrintOrder.BY_COLOUR, false, 0, Until.NO_WAIT, PrintDay.minutes(20));
    ClothTakenUp told = the(day.timeline());
    assertThat(DryingSpeech.done(told)).isEqualTo("moved on");
    assertThat(told.moved()).isTrue();
    assertThat(told.occasions()).isEqualTo(2);
    assertThat(DryingSpeech.filmsAre(told)).isEqualTo("2 films are");
    // both times the last film is 40 min short; the first occasion stands for both
    assertThat(told.early().ordinary().minutes()).isEqualTo(40);
    assertThat(told.at().text()).isEqualTo("day 1, 09:36");
    assertThat(RemedySpeech.text(told.remedy(), Measures.METRIC))
        .isEqualTo("`before moving: 60 min` in step 1");
    assertThat(RemedySpeech.cure(told, Measures.METRIC))
        .startsWith("`before moving: until lift-safe` in step 1 and feel");
    assertThat(all(SmallDay.timeline(told.remedy().applied(day.plan())))).isEmpty();
  }

  @Test
  void aWaitUntilFrameSafeThatIsReplacedIsReplacedWhole() {
    // Two herons off by 9:16:40, frame-safe 5 min later, when the cloth moves; lift-safe at
    // 10:16:40.
    PrintDay day =
        new PrintDay(Medium.DYE)
            .table(150)
            .stations(2)
            .paste("blue", 5, 60)
            .design("heron", 30, 40, 10, "s1=blue")
            .series("herons", "heron", 3, 60, 20)
            .print(
                "herons",
                PrintOrder.BY_COLOUR,
                false,
                0,
                Until.NO_WAIT,
                PrintDay.until(Until.Dryness.FRAME_SAFE));
    ClothTakenUp told = the(day.timeline());
    assertThat(told.at().text()).isEqualTo("day 1, 09:21");
    assertThat(told.early().ordinary().minutes()).isEqualTo(55);
    assertThat(RemedySpeech.text(told.remedy(), Measures.METRIC))
        .isEqualTo("`before moving: 60 min` in step 1");
    assertThat(all(SmallDay.timeline(told.remedy().applied(day.plan())))).isEmpty();
    assertThat(all(SmallDay.timeline(told.remedy().longer(-1).applied(day.plan())))).hasSize(1);
  }

  @Test
  void whatGoesIntoWaterOrHeatMustBeDryAllThrough() {
    assertThat(DryingSpeech.done(fixed(n -> new Step.Rinse(n, COLD, MIN, NOBODY, AT))))
        .isEqualTo("rinsed");
    assertThat(DryingSpeech.done(fixed(n -> new Step.Wash(n, COLD, MIN, NOBODY, AT))))
        .isEqualTo("washed");
    // Heat asks for paint that is dry through, not for a day's rest, and lift-safe is not enough.
    IntFunction<Step> iron = n -> new Step.HeatSet(n, HeatSource.IRON, COLD, MIN, 1, NOBODY, AT);
    ClothTakenUp ironed = fixed(Medium.PAINT, iron);
    assertThat(DryingSpeech.done(ironed)).isEqualTo("heat-set");
    assertThat(ironed.heated()).isTrue();
    // Each way of fixing asks for its own medium.
    assertThat(all(herons(Medium.DYE, 1, "s1=blue").dry(50).step(iron).timeline())).isEmpty();
    ClothTakenUp steamed =
        fixed(n -> new Step.Fix(n, DyeFixing.STEAM, List.of(), COLD, MIN, NOBODY, AT));
    assertThat(DryingSpeech.done(steamed)).isEqualTo("put to fixing");
    assertThat(steamed.fixed()).isTrue();
    assertThat(steamed.sewn() || steamed.moved()).isFalse();
  }

  private static final Temperature COLD = new Temperature(20);
  private static final Span MIN = new Span(10);
  private static final Optional<String> NOBODY = Optional.empty();
  private static final PlanPath AT = new PlanPath("run[2]");

  /** Lift-safe at 10:15:50, dry through later, and taken up ten minutes before that. */
  private static ClothTakenUp fixed(IntFunction<Step> step) {
    return fixed(Medium.DYE, step);
  }

  private static ClothTakenUp fixed(Medium medium, IntFunction<Step> step) {
    ClothTakenUp told = the(herons(medium, 1, "s1=blue").dry(50).step(step).timeline());
    assertThat(told.at().text()).isEqualTo("day 1, 10:05");
    assertThat(told.early().ordinary().minutes()).isGreaterThan(20);
    assertThat(told.state()).isEqualTo("fix-safe");
    assertThat(RemedySpeech.cure(told, Measures.METRIC))
        .startsWith("a step `- dry: until fix-safe` before step 3 and feel the thickest spot");
    return told;
  }

  @Test
  void aClearedRunHoldsEveryWaitThatIsMissing() {
    // Ink is down at 70 s: 580 s early on blue. Then the cloth is sewn 10 min after its last film.
    PrintDay day =
        new PrintDay(Medium.DYE)
            .paste("blue", 10, 60)
            .paste("ink", 10, 60)
            .design("heron", 30, 40, 10, "s1=blue", "s2=ink")
            .series("herons", "heron", 1, 60, 20)
            .print("herons")
            .sew();
    List<ClearedRun> runs = runs(unsure(day.plan()));
    assertThat(runs).extracting(ClearedRun::surely).containsExactly(false, true);
    // 580 s are 10 min whole. Ink is then off at 9:15 + 50 s + 10 min + 50 s = 9:26:40, safe 60 min
    // later; both screens are washed by then.
    assertThat(RemedySpeech.written(runs.get(0), Measures.METRIC))
        .containsExactly(
            "`dry between colours: 10 min` in step 1", "a step `- dry: 60 min` before step 2");
    // as written: 9:16:40, washed to 9:36:40, sewn to 10:06:40, the second screen dry then too
    assertThat(runs.get(0).asWritten().text()).isEqualTo("day 1, 10:06");
    // sewn from 10:26:40 to 10:56:40
    assertThat(runs.get(0).finish().text()).isEqualTo("day 1, 10:56");
    assertThat(runs.get(0).longer().minutes()).isEqualTo(50);
    assertThat(runs.get(0).cleared()).as("one frame and one sewing").isEqualTo(2);
    assertThat(runs.get(0).left()).isZero();
    assertThat(runs.get(0).days()).hasSize(1);
    assertThat(runs(mended(day.plan(), runs.get(0), PrintDay.POLICY))).isEmpty();
  }

  /** By the estimate: what the likely drying asks for, and what the slowest does, are two runs. */
  @Test
  void aRunClearedOfSlowDryingTooIsLonger() {
    PrintDay day =
        new PrintDay(Medium.PAINT)
            .paste("blue")
            .paste("ink")
            .design("heron", 30, 40, 10, "s1=blue", "s2=ink")
            .series("herons", "heron", 2, 60, 20)
            .print("herons")
            .sew();
    List<ClearedRun> runs = runs(unsure(day.plan()));
    assertThat(runs).extracting(ClearedRun::surely).containsExactly(false, true);
    ClearedRun likely = runs.get(0);
    ClearedRun surely = runs.get(1);
    assertThat(surely.longer()).isGreaterThan(likely.longer());
    assertThat(surely.waits()).hasSameSizeAs(likely.waits());
    for (int i = 0; i < likely.waits().size(); i++) {
      assertThat(surely.waits().get(i).minutes()).isGreaterThan(likely.waits().get(i).minutes());
    }
    // the likely run leaves doubts and nothing likely; the other leaves nothing
    assertThat(runs(mended(day.plan(), likely, PrintDay.UNSURE)))
        .extracting(ClearedRun::surely)
        .containsExactly(true);
    assertThat(runs(mended(day.plan(), surely, PrintDay.UNSURE))).isEmpty();
    assertThat(mended(day.plan(), likely, PrintDay.UNSURE).finish()).isEqualTo(likely.finish());
    assertThat(mended(day.plan(), surely, PrintDay.UNSURE).finish()).isEqualTo(surely.finish());
    // and no wait of either could be a minute shorter
    for (ClearedRun run : runs) {
      for (Remedy wait : run.waits()) {
        PrintPlan plan = day.plan();
        for (Remedy each : run.waits()) {
          plan = (each == wait ? each.longer(-1) : each).applied(plan);
        }
        assertThat(runs(unsure(plan)))
            .as("a minute less of %s", RemedySpeech.text(wait, Measures.METRIC))
            .anyMatch(left -> left.surely() == run.surely());
      }
    }
  }

  @Test
  void aWaitForPaintThatMayBeWetIsADoubt() {
    PrintDay day =
        new PrintDay(Medium.PAINT)
            .paste("blue")
            .design("heron", 30, 40, 10, "s1=blue")
            .series("herons", "heron", 1, 60, 20)
            .print("herons")
            .sew();
    PrintPlan plan = day.plan();
    ClothTakenUp wet = the(unsure(plan));
    assertThat(wet.chance().share()).isEqualTo(1);
    assertThat(wet.paint()).isTrue();
    assertThat(wet.early().quick()).isLessThan(wet.early().ordinary());
    assertThat(wet.early().ordinary()).isLessThan(wet.early().slow());
    assertThat(RemedySpeech.cure(wet, Measures.METRIC))
        .endsWith("; on an ordinary day " + wet.ordinary().minutes() + " min will do");
    assertThat(all(unsure(wet.remedy().applied(plan)))).isEmpty();
    assertThat(all(unsure(wet.remedy().longer(-1).applied(plan)))).hasSize(1);
    ClothTakenUp doubt = the(unsure(wet.ordinary().applied(plan)));
    assertThat(doubt.chance().share()).isBetween(0.1, 0.5);
    assertThat(doubt.likely()).isFalse();
    assertThat(DryingSpeech.filmsAre(doubt)).isEqualTo("1 film is");
    assertThat(DryingSpeech.text(doubt.early())).startsWith("in time on an ordinary day, ");
    ClothTakenUp early = the(unsure(wet.ordinary().longer(-1).applied(plan)));
    assertThat(early.likely()).isTrue();
    assertThat(early.chance().share()).isLessThan(0.9);
  }

  private static Timeline unsure(PrintPlan plan) {
    return PrintDay.timeline(plan, PrintDay.UNSURE);
  }

  private static Timeline mended(PrintPlan plan, ClearedRun run, Policy policy) {
    PrintPlan mended = plan;
    for (Remedy wait : run.waits()) {
      mended = wait.applied(mended);
    }
    return PrintDay.timeline(mended, policy);
  }

  private static List<ClearedRun> runs(Timeline day) {
    return day.evidence().stream()
        .filter(ClearedRun.class::isInstance)
        .map(ClearedRun.class::cast)
        .toList();
  }

  private static List<ClothTakenUp> all(Timeline day) {
    return day.evidence().stream()
        .filter(ClothTakenUp.class::isInstance)
        .map(ClothTakenUp.class::cast)
        .toList();
  }

  private static ClothTakenUp the(Timeline day) {
    List<ClothTakenUp> all = all(day);
    assertThat(all).hasSize(1);
    return all.get(0);
  }

  /** Blue may be dry by then, ink surely is not: both are counted, and the last is the example. */
  @Test
  void filmsThatMayBeWetAreCountedBesideThoseThatSurelyAre() {
    Film blue = unsure(twoFilms().sew().plan()).impressions().get(0).film();
    long minutes = (long) blue.liftSafe().best().since(Moment.of(1, 9 * 60 + 15)).minutes();
    ClothTakenUp told = the(unsure(twoFilms().dry(minutes).sew().plan()));
    assertThat(told.chance().share()).isEqualTo(1);
    assertThat(told.films()).isEqualTo(2);
    assertThat(told.marks()).containsExactlyInAnyOrder("herons 1", "shells 1");
    assertThat(told.example()).isEqualTo("shells 1, ink through s2");
  }

  /** Blue by the estimate, ink measured as safe after ten hours. */
  private static PrintDay twoFilms() {
    return new PrintDay(Medium.PAINT)
        .paste("blue")
        .paste("ink", 10, 600)
        .design("heron", 30, 40, 2, "s1=blue")
        .design("shell", 30, 40, 2, "s2=ink")
        .placed("herons", "heron", 20, 20)
        .placed("shells", "shell", 120, 20)
        .print("herons")
        .print("shells");
  }
}
