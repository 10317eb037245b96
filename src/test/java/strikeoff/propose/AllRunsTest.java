package strikeoff.propose;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import strikeoff.day.Moment;
import strikeoff.day.facts.Rehearsed;
import strikeoff.findings.Severity;
import strikeoff.plan.Step;
import strikeoff.propose.SmallPlan.Seam;

/**
 * Small plans of which all {@link SmallRuns} are tried, one after the other: none ends before the
 * bound, and none that the check accepts before the one that the search finds. {@code
 * -Dall-runs=300} draws as many plans, those with more runs than can be tried in seconds left out,
 * and wants the bound met in half of them.
 */
class AllRunsTest {

  private static final long EFFORT = 1_200;

  /** Three prints by two people across a seam on boards have some ten times as many. */
  private static final int MOST_RUNS = 30_000;

  static Stream<SmallPlan> plans() {
    List<SmallPlan> plans = new ArrayList<>();
    for (boolean paint : new boolean[] {false, true}) {
      plans.add(new SmallPlan(1, 1, 52, 180, 1, paint));
      plans.add(new SmallPlan(1, 3, 52, 180, 1, paint));
      plans.add(new SmallPlan(2, 1, 30, 180, 1, paint));
      plans.add(new SmallPlan(2, 2, 52, 180, 1, paint));
      plans.add(new SmallPlan(2, 1, 90, 100, 1, paint));
      plans.add(new SmallPlan(2, 1, 52, 180, 2, paint));
      plans.add(new SmallPlan(3, 1, 52, 180, 1, paint));
      plans.add(new SmallPlan(2, 2, 90, 100, 1, paint));
      plans.add(new SmallPlan(2, 1, 55, 180, 1, paint).sewn(Seam.BESIDE));
      plans.add(new SmallPlan(2, 1, 60, 180, 1, paint).sewn(Seam.ACROSS));
      plans.add(new SmallPlan(2, 1, 90, 100, 2, paint).sewn(Seam.ACROSS));
      plans.add(new SmallPlan(2, 1, 55, 180, 1, paint).on(1));
      plans.add(new SmallPlan(1, 2, 52, 180, 1, paint).open("09:00-11:30"));
    }
    // A break in the middle of the prints, as they dry, before the baths and between them.
    for (String hours : List.of("09:00-09:20, 10:10-17:00", "09:00-09:30, 10:00-17:00")) {
      plans.add(new SmallPlan(2, 1, 52, 180, 1, false).open(hours));
      plans.add(new SmallPlan(2, 2, 52, 180, 2, false).open(hours));
      plans.add(new SmallPlan(2, 1, 30, 180, 2, true).open(hours));
      plans.add(new SmallPlan(2, 1, 90, 100, 2, true).open(hours));
    }
    plans.add(new SmallPlan(2, 1, 52, 180, 1, false).open("09:00-12:10, 13:10-17:00"));
    plans.add(new SmallPlan(1, 2, 52, 180, 2, true).open("09:00-09:30, 10:00-10:20, 11:00-17:00"));
    plans.add(
        new SmallPlan(2, 1, 55, 180, 1, false)
            .sewn(Seam.BESIDE)
            .open("09:00-09:50, 10:30-12:30, 13:30-17:00"));
    // Its best run washes screens between colours while the other person has nothing to do.
    plans.add(new SmallPlan(2, 2, 81, 112, 2, true));
    // Ends in a break, in which a fan among the prints saves some minutes.
    plans.add(new SmallPlan(1, 3, 73, 116, 2, false).open("09:00-11:35, 12:05-17:00"));
    return plans.stream();
  }

  /** Drawn until there are so many: up to three copies and three colours, all kinds of rooms. */
  private static List<SmallPlan> drawn(int many) {
    List<SmallPlan> plans = new ArrayList<>();
    SplittableRandom random = new SplittableRandom(300);
    while (plans.size() < many) {
      boolean longTable = random.nextInt(3) > 0;
      int motifs = 1 + random.nextInt(longTable ? 3 : 2);
      int colours = 1 + random.nextInt(motifs < 3 ? 3 : 1);
      SmallPlan plan =
          new SmallPlan(
              motifs,
              colours,
              longTable ? 30 + random.nextInt(25) : 60 + random.nextInt(35),
              longTable ? 180 : 100 + random.nextInt(20),
              longTable || motifs * colours < 4 ? 1 + random.nextInt(2) : 1,
              random.nextBoolean());
      int kind = random.nextInt(6);
      if (kind < 2 && motifs * colours < 4) {
        plan = plan.sewn(kind == 0 || motifs == 1 ? Seam.ACROSS : Seam.BESIDE);
      }
      if (random.nextInt(5) == 0 && plan.pitch() > 51) {
        plan = plan.on(plan.table() > 110 ? 1 + random.nextInt(2) : 1);
      }
      if (random.nextInt(4) == 0) {
        plan = plan.open(random.nextBoolean() ? "09:00-11:30" : "09:00-12:30");
      } else if (random.nextInt(3) == 0) {
        int first = 9 * 60 + 10 + 5 * random.nextInt(50);
        int then = first + 15 * (1 + random.nextInt(4));
        plan = plan.open("09:00-" + clock(first) + ", " + clock(then) + "-17:00");
      }
      if (SmallRuns.of(plan, plan.bench()).size() <= MOST_RUNS) {
        plans.add(plan);
      }
    }
    return plans;
  }

  private static String clock(int minute) {
    return String.format("%02d:%02d", minute / 60, minute % 60);
  }

  /**
   * What all runs of one plan showed.
   *
   * @param above seconds by which what was found ends after the bound
   */
  private record Shown(int runs, int sound, long above) {
    boolean met() {
      return above <= 0;
    }
  }

  @ParameterizedTest
  @MethodSource("plans")
  void noneEndsBeforeTheBoundNorBeforeWhatIsFound(SmallPlan plan) {
    assertThat(shown(plan).sound()).isPositive();
  }

  @Test
  void soItIsForAllThatAreDrawn() {
    int many = Integer.getInteger("all-runs", 0);
    Assumptions.assumeTrue(many > 0, "asked for by -Dall-runs");
    List<String> wrong = new ArrayList<>();
    int met = 0;
    int judged = 0;
    long runs = 0;
    for (SmallPlan plan : drawn(many)) {
      try {
        Shown shown = shown(plan);
        judged++;
        met += shown.met() ? 1 : 0;
        runs += shown.runs();
      } catch (AssertionError | ClassCastException e) {
        wrong.add(plan + ": " + e.getMessage());
      }
    }
    String told = judged + " plans, " + runs + " runs, bound met in " + met;
    assertThat(wrong).as(told).isEmpty();
    assertThat(2 * met).as(told).isGreaterThanOrEqualTo(judged);
  }

  private static Shown shown(SmallPlan plan) {
    SmallPlan.Bench bench = plan.bench();
    Bound bound = bench.bound();
    Proposal.Found found = plan.proposed(EFFORT);
    assertThat(found.bound().finish()).isEqualTo(bound.finish());
    assertThat(found.finish().seconds()).isGreaterThanOrEqualTo(bound.finish().seconds());
    assertThat(found.after().findings().stream().filter(f -> f.severity() != Severity.ADVICE))
        .isEmpty();
    Judge judge =
        new Judge(SmallPlan.CHECKER, bench.judged(), new RunText(plan.text(), bench.leeway()))
            .taking(Set.of(), true, false);
    int sound = 0;
    Set<List<Step>> runs = SmallRuns.of(plan, bench);
    for (List<Step> run : runs) {
      Rehearsed ordinary = bench.rehearsal().of(run);
      if (!ordinary.shortfall().isNothing()) {
        continue;
      }
      Rehearsed rehearsed = bench.rehearsal().surely(run, ordinary);
      if (rehearsed.shortfall().isNothing()) {
        sound++;
        Moment finish = rehearsed.finish();
        assertThat(finish.seconds()).as("%s", run).isGreaterThanOrEqualTo(bound.finish().seconds());
        if (finish.compareTo(found.finish()) < 0 && !rehearsed.lies()) {
          assertThat(judge.judged(run).filter(judge::accepts))
              .as("%s ends %s before %s", run, finish.when(), found.finish().when())
              .isEmpty();
        }
      }
    }
    long above = found.finish().seconds() - bound.finish().seconds();
    return new Shown(runs.size(), sound, above);
  }
}
