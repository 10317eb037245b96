package strikeoff.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import strikeoff.layout.Layout;
import strikeoff.plan.Medium;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Step;
import strikeoff.plan.Until;
import strikeoff.policy.Limit;
import strikeoff.policy.Policy;
import strikeoff.timeline.Causes.Cause;
import strikeoff.timeline.Causes.Pair;
import strikeoff.units.Ratio;

/**
 * How frames on wet films are told: one finding for each place where a wait is missing. An
 * impression takes 50 s, its frame is down after 20 s and off at its end; loading ends at 9:15.
 */
class ContactsToldTest {

  /** Frames reach 10 cm beyond the images, so at a pitch of 35 cm they cover 5 cm of neighbours. */
  private static PrintDay herons(int count, double pitch, int between, String... colours) {
    return new PrintDay(Medium.DYE)
        .table(600)
        .paste("blue", 10, 60)
        .paste("ink", 10, 60)
        .paste("rust", 10, 60)
        .paste("slow", 60, 90)
        .design("heron", 30, 40, 10, colours)
        .series("herons", "heron", count, pitch, 20)
        .print("herons", Step.Order.BY_COLOUR, false, 0, PrintDay.minutes(between), Until.NO_WAIT);
  }

  @Test
  void oneColourOnAnotherIsTooEarlyAsOftenAsThereAreMotifs() {
    WetContact told = the(herons(3, 60, 6, "s1=blue", "s2=ink").timeline());
    // Blue on heron 1 is off at 9:15:50 and safe at 9:25:50; ink's frame is down at 9:23:50.
    assertThat(told.laterColour()).isEqualTo("ink through s2");
    assertThat(told.earlierColour()).isEqualTo("blue through s1");
    assertThat(told.sameMotif()).isTrue();
    assertThat(told.certain()).isTrue();
    assertThat(told.likely()).isTrue();
    assertThat(told.shortBest().minutes()).isEqualTo(2);
    assertThat(told.times()).isEqualTo("3 times");
    assertThat(told.area().squareCm()).isEqualTo(3 * 30 * 40);
    assertThat(told.laterMotif() + " on " + told.earlierMotif()).isEqualTo("herons 1 on herons 1");
    assertThat(told.laid().text()).isEqualTo("day 1, 09:23");
    assertThat(told.safeAt().text()).isEqualTo("day 1, 09:25");
    // 6 + 2 min; the screens are then washed and dry 2 min later than 9:26:30 + 20 + 30
    assertThat(told.cure())
        .isEqualTo("`dry between colours: 8 min` in step 1 (the run then ends day 1, 10:18)");
    assertThat(told.otherWay() + told.also() + told.further()).isEmpty();
    assertThat(told.marks()).containsExactly("herons 1", "herons 2", "herons 3");
    assertThat(the(herons(1, 60, 6, "s1=blue", "s2=ink").timeline()).times()).isEqualTo("once");
  }

  @Test
  void aNeighboursEdgeIsTheLesserMatterEvenWhereItIsWetter() {
    List<WetContact> all = all(herons(2, 35, 6, "s1=blue", "s2=ink").timeline());
    assertThat(all).hasSize(2);
    // Blue 1 is off at 50 s, safe at 650; blue 2 is off at 100, safe at 700. Blue 2 is down at 70:
    // 580 s early on the 5 cm of its neighbour, and so is ink 2 on ink 1.
    WetContact beside = all.get(0);
    assertThat(beside.sameMotif()).isFalse();
    assertThat(beside.shortBest().seconds()).isEqualTo(580);
    assertThat(beside.times()).isEqualTo("once");
    assertThat(beside.area().squareCm()).isEqualTo(5 * 40);
    assertThat(beside.laterMotif() + " on " + beside.earlierMotif())
        .isEqualTo("herons 2 on herons 1");
    assertThat(beside.also())
        .isEqualTo(" Too early as well: ink through s2 on ink through s2 once.");
    assertThat(beside.further()).isEmpty();
    // As written it ends at 10:14. A pause of 580 s, so 10 min, comes three times in four
    // impressions; printing every other one first asks for 10 min twice.
    assertThat(beside.cure())
        .isEqualTo(
            "`every other: yes` and `dry between passes: 10 min` in step 1 (the run then ends day"
                + " 1, 10:34)");
    assertThat(beside.otherWay())
        .isEqualTo(" Or write `pause: 10 min` in step 1 (the run then ends day 1, 10:44).");
    // Ink 1 is down at 480 s: 170 s early on its own blue and 220 s on the edge of blue 2.
    WetContact above = all.get(1);
    assertThat(above.sameMotif()).isTrue();
    assertThat(above.shortBest().seconds()).isEqualTo(170);
    assertThat(above.times()).isEqualTo("2 times");
    assertThat(above.area().squareCm()).isEqualTo(2 * 30 * 40);
    assertThat(above.further()).isEqualTo(" That clears 2 further contacts too.");
    // 6 min and 220 s; the edge counts where it takes longer
    assertThat(above.remedy().text()).isEqualTo("`dry between colours: 10 min` in step 1");
  }

  @Test
  void coloursOfOneCauseAreToldWithTheWorst() {
    WetContact told = the(herons(1, 60, 6, "s1=blue", "s2=slow", "s3=rust").timeline());
    // Blue off at 50 s, safe at 650. Slow is down at 430, off at 460, safe at 4060: 220 s early.
    // Rust is down at 840: blue is safe, and slow is 3220 s from it.
    assertThat(told.laterColour()).isEqualTo("rust through s3");
    assertThat(told.shortBest().seconds()).isEqualTo(3220);
    assertThat(told.times()).isEqualTo("once");
    assertThat(told.area().squareCm()).isEqualTo(30 * 40);
    assertThat(told.also())
        .isEqualTo(" Too early as well: slow through s2 on blue through s1 once.");
    // 6 min and 53.67 min
    assertThat(told.remedy().minutes()).isEqualTo(60);
  }

  @Test
  void aWaitThatComesTwiceBetweenTwoColoursNeedBeHalfAsLong() {
    PrintPlan plan = herons(1, 60, 0, "s1=slow", "s2=blue", "s3=rust").plan();
    Timeline.Day day = SmallDay.day(plan);
    Map<Cause, List<Pair>> causes = Causes.of(day);
    Cause colours = new Cause(Remedy.How.DRY_BETWEEN_COLOURS, 1);
    assertThat(causes.keySet()).containsExactly(colours);
    assertThat(causes.get(colours))
        .extracting(
            p ->
                p.contact().later().footprint().screen().name()
                    + " on "
                    + p.contact().earlier().footprint().screen().name()
                    + " "
                    + p.waitsBetween())
        .containsExactly("s2 on s1 1", "s3 on s1 2", "s3 on s2 1");
    // Slow is off at 50 s and safe at 3650. Rust is down at 120 s: 3530 s are missing, which is
    // 29.42 min in each of two waits.
    Pair twice = causes.get(colours).get(1);
    assertThat(Trials.minutes(plan, colours, List.of(twice), false)).isEqualTo(30);
    // Blue is down at 70 s: 3580 s are missing in one wait.
    assertThat(Trials.minutes(plan, colours, List.of(causes.get(colours).get(0)), false))
        .isEqualTo(60);
    assertThat(Trials.minutes(plan, colours, causes.get(colours), true)).isEqualTo(60);
    assertThat(Trials.minutes(plan, colours, List.of(), true)).isZero();
  }

  @Test
  void aPauseComesOnceForEachImpressionBetweenTheTwo() {
    // A frame reaches 10 cm beyond a motif of 30, so 40 cm from its start; the motif after next
    // begins 36 cm before it, ends 6 cm before it, so that its last 4 cm lie under the frame's
    // edge.
    PrintPlan plan = herons(3, 18, 0, "s1=blue").plan();
    Cause pause = new Cause(Remedy.How.PAUSE, 1);
    assertThat(Causes.of(SmallDay.day(plan)).get(pause))
        .extracting(
            p ->
                p.contact().later().footprint().placement().number()
                    + " on "
                    + p.contact().earlier().footprint().placement().number()
                    + " "
                    + p.waitsBetween())
        .contains("2 on 1 1", "3 on 2 1", "3 on 1 2");
  }

  @Test
  void passesComeOnceForEachSetOfOddAndEvenBetweenThem() {
    PrintPlan plan =
        new PrintDay(Medium.DYE)
            .table(600)
            .paste("blue", 10, 60)
            .design("heron", 30, 40, 10, "s1=blue")
            .series("herons", "heron", 2, 35, 20)
            .print("herons", Step.Order.BY_COLOUR, true, 0, Until.NO_WAIT, Until.NO_WAIT)
            .plan();
    Map<Cause, List<Pair>> causes = Causes.of(SmallDay.day(plan));
    assertThat(causes.keySet()).containsExactly(new Cause(Remedy.How.DRY_BETWEEN_PASSES, 1));
    assertThat(causes.values().iterator().next()).extracting(Pair::waitsBetween).containsExactly(1);
    WetContact told = the(SmallDay.timeline(plan));
    // Heron 1 is off at 50 s and safe at 650; heron 2 is down at 70: 580 s
    assertThat(told.remedy().text()).isEqualTo("`dry between passes: 10 min` in step 1");
    assertThat(told.otherWay()).as("it is every other one already").isEmpty();
  }

  @Test
  void anotherStepIsWaitedForByAStep() {
    PrintPlan plan =
        herons(1, 60, 0, "s1=slow").placed("over", "heron", 20, 20).print("over").plan();
    WetContact told = the(SmallDay.timeline(plan));
    // Off at 50 s, safe at 3650, down again at 70: 3580 s and nothing that is there already
    assertThat(told.laterStep()).isEqualTo(2);
    assertThat(told.earlierStep()).isEqualTo(1);
    assertThat(told.remedy().text()).isEqualTo("a step `- dry: 60 min` before step 2");
    assertThat(told.laterMotif() + " on " + told.earlierMotif()).isEqualTo("over 1 on herons 1");
  }

  @Test
  void whenNothingMoreMayBeTriedArithmeticIsTold() {
    PrintDay day = herons(3, 60, 6, "s1=blue", "s2=ink");
    WetContact told = the(day, triedAtMost(5));
    assertThat(told.remedy().minutes()).isEqualTo(8);
    assertThat(told.cured()).isTrue();
    assertThat(told.finish()).isEmpty();
    assertThat(told.cure()).isEqualTo("`dry between colours: 8 min` in step 1");
    // Six impressions are simulated once for the likely drying, and once for the slow.
    assertThat(the(day, triedAtMost(6)).cure()).isEqualTo("`dry between colours: 8 min` in step 1");
    assertThat(the(day, triedAtMost(12)).cure()).contains("the run then ends day 1, 10:18");
  }

  private static WetContact the(PrintDay day, Policy policy) {
    PrintPlan plan = day.plan();
    return the(Timeline.of(plan, Layout.of(plan, policy), policy));
  }

  private static Policy triedAtMost(int impressions) {
    Policy built = PrintDay.POLICY;
    Map<String, Limit> limits = new HashMap<>(built.limits());
    limits.computeIfPresent(
        "time/most-trials",
        (name, limit) -> new Limit(name, new Ratio(impressions), limit.why(), limit.source()));
    return new Policy(limits, built.defaults(), built.groups(), built.fibres(), built.substances());
  }

  /** Paint by the estimate, whose range is told apart: by the likely drying and by the slowest. */
  @Test
  void slowDryingAsksForItsOwnWait() {
    PrintDay paint =
        new PrintDay(Medium.PAINT)
            .paste("blue")
            .paste("ink")
            .design("heron", 30, 40, 2, "s1=blue", "s2=ink")
            .series("herons", "heron", 1, 60, 20);
    PrintPlan plan =
        paint
            .print("herons", Step.Order.BY_COLOUR, false, 0, PrintDay.minutes(4), Until.NO_WAIT)
            .plan();
    WetContact wet = the(SmallDay.timeline(plan));
    // what the most likely drying asks for leaves a doubt, which is told as one
    WetContact doubt = the(SmallDay.timeline(wet.remedy().applied(plan)));
    assertThat(doubt.certain()).isFalse();
    assertThat(doubt.likely()).isFalse();
    assertThat(doubt.inDoubt()).endsWith("too early; most likely it is dry by then");
    assertThat(wet.cure())
        .endsWith("; with " + doubt.remedy().minutes() + " min slow drying is clear too");
    // and no minute less would do
    assertThat(all(SmallDay.timeline(doubt.remedy().applied(plan)))).isEmpty();
    assertThat(all(SmallDay.timeline(doubt.remedy().longer(-1).applied(plan)))).hasSize(1);
    assertThat(doubt.cure()).doesNotContain("slow drying is clear too");
    // a minute less than the likely drying asks for is too early by less than a minute
    WetContact early = the(SmallDay.timeline(wet.remedy().longer(-1).applied(plan)));
    assertThat(early.likely()).isTrue();
    assertThat(early.shortBest().seconds()).isBetween(0.0, 60.0);
    assertThat(early.inDoubt())
        .startsWith("most likely that is ")
        .endsWith("; if the film dries quickly it is safe by then");
  }

  /** A month is worth saying and no longer: a wait that nobody would write is not told. */
  @Test
  void aLongerWaitForSlowDryingIsToldOnlyIfItIsLonger() {
    Remedy likely = remedy(20);
    assertThat(likely.andFor(remedy(21))).isEqualTo("; with 21 min slow drying is clear too");
    assertThat(likely.andFor(remedy(20))).isEmpty();
    assertThat(likely.andFor(remedy(30 * 24 * 60))).contains("43200 min");
    assertThat(likely.andFor(remedy(30 * 24 * 60 + 1))).isEmpty();
  }

  private static Remedy remedy(long minutes) {
    return new Remedy(Remedy.How.DRY_BETWEEN_COLOURS, 1, minutes, Optional.empty());
  }

  private static WetContact the(Timeline day) {
    List<WetContact> all = all(day);
    assertThat(all).hasSize(1);
    return all.get(0);
  }

  private static List<WetContact> all(Timeline day) {
    return day.evidence().stream()
        .filter(WetContact.class::isInstance)
        .map(WetContact.class::cast)
        .toList();
  }
}
