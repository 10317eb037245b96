package strikeoff.day;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import strikeoff.checks.Draws;
import strikeoff.day.facts.CriticalChain;
import strikeoff.day.facts.RunFigures;
import strikeoff.layout.Tube;
import strikeoff.plan.Hours;
import strikeoff.plan.PrintPlan;

/** What holds of every invented run on days with breaks. */
class BreakProperties {

  @Provide
  Arbitrary<List<Hours.Break>> breaks() {
    // Minutes of work and of rest by turns, from the opening on.
    return Arbitraries.integers()
        .between(1, 90)
        .list()
        .ofSize(6)
        .map(
            lengths -> {
              List<Hours.Break> breaks = new ArrayList<>();
              int at = 540;
              for (int i = 0; i < lengths.size() && at + 180 < 1020; i += 2) {
                int from = at + lengths.get(i);
                at = from + lengths.get(i + 1);
                breaks.add(new Hours.Break(from, at));
              }
              return breaks;
            });
  }

  private static boolean inBreak(Moment moment, List<Hours.Break> breaks) {
    double minute = moment.minuteOfDay();
    return breaks.stream().anyMatch(rest -> minute >= rest.from() && minute < rest.to());
  }

  @Property(tries = 500, seed = Draws.ALIKE)
  void noWorkBeginsInABreak(
      @ForAll(supplier = AnyRun.Any.class) AnyRun run, @ForAll("breaks") List<Hours.Break> breaks) {
    DayRun day = SmallDay.day(run.with(c -> c.breaks = breaks));
    assertThat(day.tasks())
        .filteredOn(Task::worked)
        .noneMatch(task -> inBreak(task.start(), breaks));
    assertThat(day.impressions()).hasSameSizeAs(SmallDay.day(run.plan()).impressions());
  }

  @Property(tries = 250, seed = Draws.ALIKE)
  void whoJoinsInNeverMakesARunWithBreaksLater(
      @ForAll(supplier = AnyRun.Any.class) AnyRun run, @ForAll("breaks") List<Hours.Break> breaks) {
    Moment asWritten = SmallDay.day(run.with(c -> c.breaks = breaks)).finish();
    for (int step = 0; step < run.parts().size(); step++) {
      int at = step;
      DayRun joined =
          SmallDay.day(
              run.with(
                  c -> {
                    c.breaks = breaks;
                    c.joined = at;
                  }));
      if (joined.run().simulated() < Effort.USUAL.ways()) {
        assertThat(joined.finish()).as("step %s of %s", step, run).isLessThanOrEqualTo(asWritten);
      }
    }
  }

  @Property(tries = 250, seed = Draws.ALIKE)
  void contactsAndTheChainAreWholeOnDaysWithBreaks(
      @ForAll(supplier = AnyRun.Any.class) AnyRun run, @ForAll("breaks") List<Hours.Break> breaks) {
    PrintPlan plan = run.with(c -> c.breaks = breaks);
    DayRun day = SmallDay.day(plan);
    assertThat(day.contacts())
        .extracting(c -> new ClockProperties.Pair(c.earlier().id(), c.later().id(), c.area()))
        .isEqualTo(ClockProperties.naive(day.impressions(), Tube.of(plan.cloth())));
    assertThat(day.use().waiting().minutes()).isNotNegative();
    Moment last = day.start();
    for (Task task : day.tasks()) {
      boolean counts =
          task.kind() != Task.Kind.DRY_SCREEN
              && task.kind() != Task.Kind.QUEUE
              && task.kind() != Task.Kind.CLOSED;
      last = counts ? last.later(task.end()) : last;
    }
    double chain = 0;
    for (CriticalChain.Link link : RunFigures.of(day, plan).chain().links()) {
      chain += link.span().minutes();
    }
    assertThat(chain).as("%s", run).isCloseTo(last.since(day.start()).minutes(), offset(1e-6));
  }
}
