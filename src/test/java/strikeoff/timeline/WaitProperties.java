package strikeoff.timeline;

import static org.assertj.core.api.Assertions.assertThat;
import static strikeoff.timeline.SmallDay.day;
import static strikeoff.timeline.SmallDay.timeline;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Step;
import strikeoff.plan.Until;

/** What waits do to contacts, tried on generated print days. */
class WaitProperties {

  @Property(tries = 100)
  void theClearedRunIsDryAndNeverShorter(@ForAll(supplier = SmallDay.Any.class) SmallDay small) {
    PrintPlan plan = small.plan(0);
    for (Object evidence : timeline(plan).evidence()) {
      if (evidence instanceof ClearedRun cleared && cleared.left() == 0) {
        PrintPlan written = plan;
        for (Remedy wait : cleared.waits()) {
          written = wait.applied(written);
        }
        Timeline.Day dry = day(written);
        assertThat(dry.finish()).isEqualTo(cleared.finish());
        assertThat(Causes.of(dry).values().stream().flatMap(List::stream))
            .noneMatch(p -> cleared.surely() || p.likely());
        if (!small.together()) {
          assertThat(cleared.longer().minutes()).isNotNegative();
        }
      }
    }
  }

  /** With several printers it is no law: a wait can send another one ahead. */
  @Property(tries = 1300)
  void aWaitMoreNeverAddsAContact(
      @ForAll(supplier = SmallDay.Alone.class) SmallDay any,
      @ForAll @IntRange(min = 1, max = 40) int more,
      @ForAll Place where) {
    SmallDay small = any.stated();
    Set<List<Integer>> asWritten = pairs(day(small.plan(0)));
    SmallDay longer =
        switch (where) {
          case BETWEEN -> small;
          case PAUSE -> small.pausing(small.pause() + more);
          case STEP -> small.drying(small.dryStep() + more);
        };
    PrintPlan plan = longer.plan(where == Place.BETWEEN ? more : 0);
    assertThat(asWritten).containsAll(pairs(day(plan)));
  }

  private enum Place {
    BETWEEN,
    PAUSE,
    STEP
  }

  private static Set<List<Integer>> pairs(Timeline.Day day) {
    Set<List<Integer>> pairs = new LinkedHashSet<>();
    day.contacts().forEach(c -> pairs.add(List.of(c.earlier().id(), c.later().id())));
    return pairs;
  }

  @Property(tries = 300)
  void whatEachFindingAsksForClearsItsCause(
      @ForAll(supplier = SmallDay.Alone.class) SmallDay small) {
    PrintPlan plan = small.plan(0);
    for (WetContact contact : contacts(timeline(plan))) {
      if (!contact.cured()) {
        continue;
      }
      assertThat(left(contact, contact.remedy(), plan))
          .noneMatch(p -> contact.likely() ? p.likely() : true);
    }
  }

  /**
   * A fan that blows later in the run is no part of a wait in still air: so much too early is so
   * much longer to wait there, and a minute less is not enough. Where one screen prints several
   * colours, part of a longer wait falls into its washing and drying, so more is asked for.
   */
  @Property(tries = 300)
  void howMuchTooEarlyIsHowMuchLongerToWait(
      @ForAll(supplier = SmallDay.Alone.class) SmallDay small) {
    PrintPlan plan = small.plan(0);
    Assume.that(!small.shape().oneScreen());
    Map<Causes.Cause, List<Causes.Pair>> causes = Causes.of(day(plan));
    for (WetContact contact : contacts(timeline(plan))) {
      List<Causes.Pair> pairs = causes.get(cause(contact));
      if (!contact.likely()
          || !contact.cured()
          || pairs.stream().anyMatch(p -> p.waitsBetween() > 1)) {
        continue;
      }
      double most =
          pairs.stream().mapToDouble(p -> p.contact().shortBest().minutes()).max().orElseThrow();
      double present =
          plan.run().stream()
              .filter(s -> s.number() == contact.laterStep())
              .map(s -> Remedy.written(contact.remedy().how(), (Step.Print) s).until())
              .mapToDouble(u -> u instanceof Until.Time t ? t.span().minutes() : Double.NaN)
              .sum();
      if (Double.isNaN(present)) {
        continue;
      }
      assertThat((double) contact.remedy().minutes()).isEqualTo(Math.ceil(present + most - 1e-9));
      assertThat(left(contact, contact.remedy().longer(-1), plan)).anyMatch(Causes.Pair::likely);
    }
  }

  private static Causes.Cause cause(WetContact contact) {
    return new Causes.Cause(contact.remedy().how(), contact.laterStep());
  }

  private static List<Causes.Pair> left(WetContact contact, Remedy remedy, PrintPlan plan) {
    return Causes.of(day(remedy.applied(plan))).getOrDefault(cause(contact), List.of());
  }

  /** What a finding says the wait costs is what it costs when it is written and simulated. */
  @Property(tries = 200)
  void theCostThatIsToldIsTheCostThatIsPaid(@ForAll(supplier = SmallDay.Any.class) SmallDay small) {
    PrintPlan plan = small.plan(0);
    Timeline asWritten = timeline(plan);
    for (Object evidence : asWritten.evidence()) {
      if (evidence instanceof WetContact contact && contact.finish().isPresent()) {
        assertThat(day(contact.remedy().applied(plan)).finish()).isEqualTo(contact.finish().get());
      } else if (evidence instanceof TakenUpWet taken && taken.finish().isPresent()) {
        assertThat(day(taken.remedy().applied(plan)).finish()).isEqualTo(taken.finish().get());
      } else if (evidence instanceof ClearedRun cleared) {
        PrintPlan written = plan;
        for (Remedy wait : cleared.waits()) {
          written = wait.applied(written);
        }
        assertThat(cleared.asWritten()).isEqualTo(asWritten.finish());
        assertThat(cleared.longer().seconds())
            .isEqualTo((double) day(written).finish().since(asWritten.finish()).seconds());
      }
    }
  }

  private static List<WetContact> contacts(Timeline day) {
    return day.evidence().stream()
        .filter(e -> e instanceof WetContact)
        .map(e -> (WetContact) e)
        .toList();
  }
}
