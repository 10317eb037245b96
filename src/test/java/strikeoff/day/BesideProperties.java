package strikeoff.day;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import strikeoff.checks.Draws;
import strikeoff.layout.Tube;
import strikeoff.plan.PrintPlan;

/** What holds of every invented run in which a step begins when it can. */
class BesideProperties {

  private static PrintPlan plan(AnyRun run, int free) {
    return run.with(
        c -> {
          c.free = free % run.parts().size();
          c.blown = (free + 1) % run.parts().size();
        });
  }

  @Property(tries = 500, seed = Draws.ALIKE)
  void everythingIsPrintedAndNobodyIsInTwoPlaces(
      @ForAll(supplier = AnyRun.Any.class) AnyRun run, @ForAll @IntRange(max = 5) int free) {
    DayRun day = SmallDay.day(plan(run, free));
    assertThat(day.impressions()).hasSameSizeAs(SmallDay.day(run.plan()).impressions());
    Map<Resource, Moment> freeAt = new HashMap<>();
    for (Task task : day.tasks()) {
      if (task.end().compareTo(task.start()) > 0) {
        for (String person : task.people()) {
          once(freeAt, Resource.person(person), task);
        }
        if (task.kind() != Task.Kind.QUEUE) {
          task.screen().ifPresent(screen -> once(freeAt, Resource.screen(screen), task));
        }
      }
    }
  }

  private static void once(Map<Resource, Moment> freeAt, Resource resource, Task task) {
    assertThat(task.start()).isGreaterThanOrEqualTo(freeAt.getOrDefault(resource, task.start()));
    freeAt.put(resource, task.end());
  }

  @Property(tries = 500, seed = Draws.ALIKE)
  void theClothLiesStillWhileAnybodyPrints(
      @ForAll(supplier = AnyRun.Any.class) AnyRun run, @ForAll @IntRange(max = 5) int free) {
    DayRun day = SmallDay.day(plan(run, free));
    for (Task task : day.tasks()) {
      if (task.onCloth() && task.kind() != Task.Kind.PRINT) {
        assertThat(day.tasks())
            .filteredOn(t -> t.kind() == Task.Kind.PRINT)
            .allMatch(
                t -> t.end().compareTo(task.start()) <= 0 || t.start().compareTo(task.end()) >= 0);
      }
    }
  }

  /** Two frames that meet are laid in the order of the plan, never at once. */
  @Property(tries = 500, seed = Draws.ALIKE)
  void framesThatMeetKeepTheOrderOfThePlan(
      @ForAll(supplier = AnyRun.Any.class) AnyRun run, @ForAll @IntRange(max = 5) int free) {
    PrintPlan plan = plan(run, free);
    Tube tube = Tube.of(plan.cloth());
    DayRun day = SmallDay.day(plan);
    for (Impression later : day.impressions()) {
      for (Impression earlier : day.impressions().subList(0, later.id())) {
        if (earlier.lifted().compareTo(later.laid()) > 0) {
          assertThat(tube.overlaps(earlier.footprint().frame(), later.footprint().frame()))
              .as("%s before %s of %s", earlier.id(), later.id(), run)
              .isFalse();
        }
      }
    }
    assertThat(day.contacts())
        .extracting(c -> new ClockProperties.Pair(c.earlier().id(), c.later().id(), c.area()))
        .containsExactlyInAnyOrderElementsOf(ClockProperties.naive(day.impressions(), tube));
  }

  @Property(tries = 250, seed = Draws.ALIKE)
  void whoJoinsInNeverMakesSuchARunLater(
      @ForAll(supplier = AnyRun.Any.class) AnyRun run, @ForAll @IntRange(max = 5) int free) {
    Moment asWritten = SmallDay.day(plan(run, free)).finish();
    for (int step = 0; step < run.parts().size(); step++) {
      int at = step;
      DayRun joined =
          SmallDay.day(
              run.with(
                  c -> {
                    c.free = free % run.parts().size();
                    c.blown = (free + 1) % run.parts().size();
                    c.joined = at;
                  }));
      if (joined.run().simulated() < Effort.USUAL.ways()) {
        assertThat(joined.finish()).as("step %s of %s", step, run).isLessThanOrEqualTo(asWritten);
      }
    }
  }
}
