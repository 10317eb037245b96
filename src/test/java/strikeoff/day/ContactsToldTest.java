package strikeoff.day;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import strikeoff.day.facts.Causes;
import strikeoff.day.facts.Causes.Cause;
import strikeoff.day.facts.Causes.Pair;
import strikeoff.day.facts.Remedy;
import strikeoff.day.facts.Timeline;
import strikeoff.day.facts.Trials;
import strikeoff.day.facts.WetContact;
import strikeoff.plan.Medium;
import strikeoff.plan.PrintOrder;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Until;
import strikeoff.speech.DryingSpeech;
import strikeoff.speech.RemedySpeech;
import strikeoff.units.Measures;

/**
 * How frames on wet films are told: one finding for each place where a wait is missing. An
 * impression takes 50 s, its frame is down after 20 s and off at its end; loading ends at 9:15.
 */
class ContactsToldTest {

  private static final String FELT =
      "`dry between colours: until frame-safe` in step 1 and feel each film with a gloved finger, or ";

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
        .print("herons", PrintOrder.BY_COLOUR, false, 0, PrintDay.minutes(between), Until.NO_WAIT);
  }

  @Test
  void oneColourOnAnotherIsTooEarlyAsOftenAsThereAreMotifs() {
    WetContact told = the(herons(3, 60, 6, "s1=blue", "s2=ink").timeline());
    // Blue on heron 1 is off at 9:15:50 and safe at 9:25:50; ink's frame is down at 9:23:50.
    assertThat(told.laterColour()).isEqualTo("ink through s2");
    assertThat(told.earlierColour()).isEqualTo("blue through s1");
    assertThat(told.sameMotif()).isTrue();
    assertThat(told.chance().share() >= 0.9).isTrue();
    assertThat(told.likely()).isTrue();
    assertThat(told.early().ordinary().minutes()).isEqualTo(2);
    assertThat(DryingSpeech.times(told)).isEqualTo("3 times");
    assertThat(told.area().squareCm()).isEqualTo(3 * 30 * 40);
    assertThat(told.laterMotif() + " on " + told.earlierMotif()).isEqualTo("herons 1 on herons 1");
    assertThat(told.laid().text()).isEqualTo("day 1, 09:23");
    assertThat(told.safeAt().text()).isEqualTo("day 1, 09:25");
    // 6 + 2 min; the screens are then washed and dry 2 min later than 9:26:30 + 20 + 30
    assertThat(RemedySpeech.cure(told, Measures.METRIC))
        .isEqualTo(
            FELT + "`dry between colours: 8 min` in step 1 (the run then ends day 1, 10:18)");
    assertThat(
            RemedySpeech.otherWay(told, Measures.METRIC)
                + RemedySpeech.also(told)
                + RemedySpeech.further(told))
        .isEmpty();
    assertThat(told.marks()).containsExactly("herons 1", "herons 2", "herons 3");
    assertThat(DryingSpeech.times(the(herons(1, 60, 6, "s1=blue", "s2=ink").timeline())))
        .isEqualTo("once");
  }

  @Test
  void aNeighboursEdgeIsTheLesserMatterEvenWhereItIsWetter() {
    List<WetContact> all = all(herons(2, 35, 6, "s1=blue", "s2=ink").timeline());
    assertThat(all).hasSize(2);
    // Blue 1 is off at 50 s, safe at 650; blue 2 is off at 100, safe at 700. Blue 2 is down at 70:
    // 580 s early on the 5 cm of its neighbour, and so is ink 2 on ink 1.
    WetContact beside = all.get(0);
    assertThat(beside.sameMotif()).isFalse();
    assertThat(beside.early().ordinary().seconds()).isEqualTo(580);
    assertThat(DryingSpeech.times(beside)).isEqualTo("once");
    assertThat(beside.area().squareCm()).isEqualTo(5 * 40);
    assertThat(beside.laterMotif() + " on " + beside.earlierMotif())
        .isEqualTo("herons 2 on herons 1");
    assertThat(RemedySpeech.also(beside))
        .isEqualTo(" Too early as well: ink through s2 on ink through s2 once.");
    assertThat(RemedySpeech.further(beside)).isEmpty();
    // A pause of 580 s, so 10 min, comes three times in four
    // impressions, once beside the 6 min between the colours; printing every other one first asks
    // for 10 min twice. Either way s1 is washed in a wait.
    assertThat(RemedySpeech.cure(beside, Measures.METRIC))
        .isEqualTo(
            "`every other: yes` and `dry between passes: 10 min` in step 1 (the run then ends day"
                + " 1, 10:24)");
    assertThat(RemedySpeech.otherWay(beside, Measures.METRIC))
        .isEqualTo(" Or write `pause: 10 min` in step 1 (the run then ends day 1, 10:28).");
    // Ink 1 is down at 480 s: 170 s early on its own blue and 220 s on the edge of blue 2.
    WetContact above = all.get(1);
    assertThat(above.sameMotif()).isTrue();
    assertThat(above.early().ordinary().seconds()).isEqualTo(170);
    assertThat(DryingSpeech.times(above)).isEqualTo("twice");
    assertThat(above.area().squareCm()).isEqualTo(2 * 30 * 40);
    assertThat(RemedySpeech.further(above)).isEqualTo(" That clears 2 further contacts too.");
    // 6 min and 220 s; the edge counts where it takes longer
    assertThat(RemedySpeech.text(above.remedy(), Measures.METRIC))
        .isEqualTo("`dry between colours: 10 min` in step 1");
  }

  @Test
  void coloursOfOneCauseAreToldWithTheWorst() {
    WetContact told = the(herons(1, 60, 6, "s1=blue", "s2=slow", "s3=rust").timeline());
    // Blue off at 50 s, safe at 650. Slow is down at 430, off at 460, safe at 4060: 220 s early.
    // Rust is down at 840: blue is safe, and slow is 3220 s from it.
    assertThat(told.laterColour()).isEqualTo("rust through s3");
    assertThat(told.early().ordinary().seconds()).isEqualTo(3220);
    assertThat(DryingSpeech.times(told)).isEqualTo("once");
    assertThat(told.area().squareCm()).isEqualTo(30 * 40);
    assertThat(RemedySpeech.also(told))
        .isEqualTo(" Too early as well: slow through s2 on blue through s1 once.");
    // 6 min and 53.67 min
    assertThat(told.remedy().minutes()).isEqualTo(60);
  }

  @Test
  void aWaitThatComesTwiceBetweenTwoColoursNeedBeHalfAsLong() {
    PrintPlan plan = herons(1, 60, 0, "s1=slow", "s2=blue", "s3=rust").plan();
    DayRun day = SmallDay.day(plan);
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
            .print("herons", PrintOrder.BY_COLOUR, true, 0, Until.NO_WAIT, Until.NO_WAIT)
            .plan();
    Map<Cause, List<Pair>> causes = Causes.of(SmallDay.day(plan));
    assertThat(causes.keySet()).containsExactly(new Cause(Remedy.How.DRY_BETWEEN_PASSES, 1));
    assertThat(causes.values().iterator().next()).extracting(Pair::waitsBetween).containsExactly(1);
    WetContact told = the(SmallDay.timeline(plan));
    // Heron 1 is off at 50 s and safe at 650; heron 2 is down at 70: 580 s
    assertThat(RemedySpeech.text(told.remedy(), Measures.METRIC))
        .isEqualTo("`dry between passes: 10 min` in step 1");
    assertThat(RemedySpeech.otherWay(told, Measures.METRIC))
        .as("it is every other one already")
        .isEmpty();
  }

  @Test
  void anotherStepIsWaitedForByAStep() {
    PrintPlan plan =
        herons(1, 60, 0, "s1=slow").placed("over", "heron", 20, 20).print("over").plan();
    WetContact told = the(SmallDay.timeline(plan));
    // Off at 50 s, safe at 3650, down again at 70: 3580 s and nothing that is there already
    assertThat(told.laterStep()).isEqualTo(2);
    assertThat(told.earlierStep()).isEqualTo(1);
    assertThat(RemedySpeech.text(told.remedy(), Measures.METRIC))
        .isEqualTo("a step `- dry: 60 min` before step 2");
    assertThat(told.laterMotif() + " on " + told.earlierMotif()).isEqualTo("over 1 on herons 1");
  }

  @Test
  void whenNothingMoreMayBeTriedArithmeticIsTold() {
    PrintDay day = herons(3, 60, 6, "s1=blue", "s2=ink");
    WetContact told = triedAtMost(day, 5);
    assertThat(told.remedy().minutes()).isEqualTo(8);
    assertThat(told.cured()).isTrue();
    assertThat(told.finish()).isEmpty();
    assertThat(RemedySpeech.cure(told, Measures.METRIC))
        .isEqualTo(FELT + "`dry between colours: 8 min` in step 1");
    // Six impressions are simulated once.
    assertThat(RemedySpeech.cure(triedAtMost(day, 6), Measures.METRIC))
        .contains("the run then ends day 1, 10:18");
  }

  private static WetContact triedAtMost(PrintDay day, int impressions) {
    PrintPlan plan = day.plan();
    Effort usual = Effort.USUAL;
    return the(
        PrintDay.timeline(
            plan, new Effort(usual.tasks(), usual.contacts(), impressions, usual.ways())));
  }

  /**
   * Paint by the estimate: what clears slow drying is asked for, an ordinary day told beside it.
   */
  @Test
  void theWaitAskedForHoldsInSlowDryingToo() {
    PrintPlan plan =
        new PrintDay(Medium.PAINT)
            .paste("blue")
            .paste("ink")
            .design("heron", 30, 40, 2, "s1=blue", "s2=ink")
            .series("herons", "heron", 1, 60, 20)
            .print("herons", PrintOrder.BY_COLOUR, false, 0, PrintDay.minutes(4), Until.NO_WAIT)
            .plan();
    WetContact wet = the(unsure(plan));
    assertThat(wet.chance().share()).isEqualTo(1);
    assertThat(all(unsure(wet.remedy().applied(plan)))).isEmpty();
    // and no minute less would do
    WetContact doubt = the(unsure(wet.remedy().longer(-1).applied(plan)));
    assertThat(doubt.likely()).isFalse();
    assertThat(doubt.chance().share()).isBetween(0.10, 0.15);
    assertThat(DryingSpeech.text(doubt.early())).startsWith("in time on an ordinary day, ");
    // the figure for an ordinary day clears it on half of all days, and no minute less does
    Matcher told =
        Pattern.compile(
                "`dry between colours: until frame-safe` in step 1 and feel each film with a gloved finger, or .*"
                    + "; on an ordinary day (\\d+) min will do")
            .matcher(RemedySpeech.cure(wet, Measures.METRIC));
    assertThat(told.matches()).as(RemedySpeech.cure(wet, Measures.METRIC)).isTrue();
    long ordinary = Long.parseLong(told.group(1));
    assertThat(the(unsure(remedy(ordinary).applied(plan))).likely()).isFalse();
    assertThat(the(unsure(remedy(ordinary - 1).applied(plan))).likely()).isTrue();
  }

  private static Timeline unsure(PrintPlan plan) {
    return PrintDay.timeline(plan, PrintDay.UNSURE);
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
