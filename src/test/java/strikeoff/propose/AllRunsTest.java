package strikeoff.propose;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import strikeoff.day.Moment;
import strikeoff.day.facts.Rehearsed;
import strikeoff.plan.Draught;
import strikeoff.plan.Step;
import strikeoff.plan.Until.Dryness;
import strikeoff.plan.Wait;

/**
 * Small plans of which every run of a space is tried, one after the other: none ends before the
 * bound, and none that the check accepts before the one that the search finds. The space: whole
 * numbers in every way in one or two steps, colours together or one after the other, waits until
 * frame-safe or none, one person or both, a wait before the cloth moves, in either air, and a
 * drying step before the last ones in either air or none. {@code -Dall-runs=300} draws more plans.
 */
class AllRunsTest {

  private static final long EFFORT = 1_200;

  static Stream<SmallPlan> plans() {
    List<SmallPlan> plans = new ArrayList<>();
    for (boolean paint : new boolean[] {false, true}) {
      plans.add(new SmallPlan(1, 1, 52, 180, 1, paint, false));
      plans.add(new SmallPlan(1, 2, 52, 180, 1, paint, false));
      plans.add(new SmallPlan(2, 1, 30, 180, 1, paint, false));
      plans.add(new SmallPlan(2, 1, 52, 180, 1, paint, false));
      plans.add(new SmallPlan(2, 2, 52, 180, 1, paint, false));
      plans.add(new SmallPlan(2, 1, 90, 100, 1, paint, false));
      plans.add(new SmallPlan(2, 1, 52, 180, 2, paint, false));
      plans.add(new SmallPlan(3, 1, 52, 180, 1, paint, false));
      plans.add(new SmallPlan(3, 1, 52, 180, 2, paint, false));
      plans.add(new SmallPlan(2, 2, 90, 100, 1, paint, false));
    }
    // Its best run washes screens between colours while the other person has nothing to do.
    plans.add(new SmallPlan(2, 2, 81, 112, 2, true, false));
    int more = Integer.getInteger("all-runs", 0);
    SplittableRandom random = new SplittableRandom(300);
    while (plans.size() < more) {
      boolean longTable = random.nextInt(3) > 0;
      int motifs = 1 + random.nextInt(longTable ? 3 : 2);
      plans.add(
          new SmallPlan(
              motifs,
              motifs < 3 ? 1 + random.nextInt(2) : 1,
              longTable ? 30 + random.nextInt(25) : 60 + random.nextInt(35),
              longTable ? 180 : 100 + random.nextInt(20),
              1 + random.nextInt(2),
              random.nextBoolean(),
              false));
    }
    return plans.stream();
  }

  @ParameterizedTest
  @MethodSource("plans")
  void noneEndsBeforeTheBoundNorBeforeWhatIsFound(SmallPlan plan) {
    SmallPlan.Bench bench = plan.bench();
    Bound bound = bench.bound();
    Proposal.Found found = plan.proposed(EFFORT);
    assertThat(found.bound().finish()).isEqualTo(bound.finish());
    assertThat(found.finish().seconds()).isGreaterThanOrEqualTo(bound.finish().seconds());
    assertThat(found.after().findings().stream().filter(f -> !f.severity().name().equals("ADVICE")))
        .isEmpty();
    Judge judge =
        new Judge(
            SmallPlan.CHECKER.withoutTrials(),
            "row.yaml",
            new RunText(plan.text(), bench.leeway(), bench.rehearsal()),
            Set.of(),
            true,
            false);
    int sound = 0;
    for (List<Step> run : runs(bench)) {
      Rehearsed rehearsed = bench.rehearsal().surely(run, bench.rehearsal().of(run));
      if (rehearsed.shortfall().isNothing()) {
        sound++;
        Moment finish = rehearsed.finish();
        assertThat(finish.seconds()).as("%s", run).isGreaterThanOrEqualTo(bound.finish().seconds());
        if (finish.compareTo(found.finish()) < 0) {
          assertThat(judge.judged(run).filter(judge::accepts)).as("%s", run).isEmpty();
        }
      }
    }
    assertThat(sound).isPositive();
  }

  private static Set<List<Step>> runs(SmallPlan.Bench bench) {
    Set<List<Step>> runs = new LinkedHashSet<>();
    List<String> crew = bench.leeway().crew();
    List<List<String>> hands =
        crew.size() == 1 ? List.of(List.of()) : List.of(List.of(), List.of(crew.get(1)), crew);
    List<Integer> numbers =
        bench.judged().facts().layout().of("row").stream().map(p -> p.number()).toList();
    int colours = bench.leeway().colours("row");
    for (List<String> mixes : hands) {
      if (mixes.size() > 1) {
        continue;
      }
      for (List<List<Step.Print>> way : ways(numbers, colours, hands, bench)) {
        for (Optional<Step> dry : dries(bench)) {
          for (List<Step.Print> prints : way.isEmpty() ? List.<List<Step.Print>>of() : way) {
            List<Step> run = new ArrayList<>();
            run.add(
                new Step.Mix(
                    1,
                    bench.leeway().mixed(),
                    Optional.empty(),
                    mixes.stream().findFirst(),
                    Step.path(1)));
            run.addAll(prints);
            dry.ifPresent(run::add);
            run.addAll(bench.leeway().last());
            List<Step> numbered = Order.numbered(bench.order().mixedInOrder(run));
            if (bench.order().keeps(numbered)) {
              runs.add(numbered);
            }
          }
        }
      }
    }
    return runs;
  }

  private static List<Optional<Step>> dries(SmallPlan.Bench bench) {
    List<Optional<Step>> dries = new ArrayList<>(List.of(Optional.empty()));
    for (Optional<Draught> air : bench.leeway().airs()) {
      dries.add(Optional.of(Repair.dry(Dryness.FIX_SAFE, air)));
    }
    return dries;
  }

  /** Print steps in every way: in one step, or in two that share out numbers or colours. */
  private static List<List<List<Step.Print>>> ways(
      List<Integer> numbers, int colours, List<List<String>> hands, SmallPlan.Bench bench) {
    List<List<Step.Print>> all = new ArrayList<>();
    for (Step.Print whole : prints(List.of(), List.of(), hands, bench)) {
      all.add(List.of(whole));
    }
    for (int set = 1; set < (1 << numbers.size()) - 1; set++) {
      List<Integer> one = new ArrayList<>();
      List<Integer> other = new ArrayList<>();
      for (int i = 0; i < numbers.size(); i++) {
        ((set >> i & 1) == 1 ? one : other).add(numbers.get(i));
      }
      for (Step.Print first : prints(one, List.of(), hands, bench)) {
        for (Step.Print second : prints(other, List.of(), hands, bench)) {
          all.add(List.of(first, second));
        }
      }
    }
    if (colours == 2) {
      for (Step.Print first : prints(List.of(), List.of(1), hands, bench)) {
        for (Step.Print second : prints(List.of(), List.of(2), hands, bench)) {
          all.add(List.of(first, second));
        }
      }
    }
    return List.of(all);
  }

  private static List<Step.Print> prints(
      List<Integer> only, List<Integer> colours, List<List<String>> hands, SmallPlan.Bench bench) {
    List<Step.Print> prints = new ArrayList<>();
    boolean moves = bench.leeway().plan().table().length().cm() < 150;
    for (List<String> people : hands) {
      for (boolean everyOther : new boolean[] {false, true}) {
        for (Wait between : waits(Dryness.FRAME_SAFE, true, bench)) {
          for (Wait moving : waits(Dryness.LIFT_SAFE, moves, bench)) {
            PrintDraft draft = new PrintDraft(List.of("row"), only, people);
            draft.colours = colours;
            draft.everyOther = everyOther;
            draft.betweenColours = between;
            draft.betweenPasses = everyOther ? between : Wait.NONE;
            draft.beforeMoving = moving;
            prints.add(draft.step());
            if (moves && bench.leeway().colours("row") > 1 && people.size() < 2) {
              draft.washBetweenColours = true;
              prints.add(draft.step());
            }
          }
        }
      }
    }
    return prints;
  }

  private static List<Wait> waits(Dryness state, boolean any, SmallPlan.Bench bench) {
    List<Wait> waits = new ArrayList<>(List.of(Wait.NONE));
    if (any) {
      bench.leeway().airs().forEach(air -> waits.add(Repair.wait(state, air)));
    }
    return waits;
  }
}
