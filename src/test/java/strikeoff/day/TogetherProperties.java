package strikeoff.day;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import strikeoff.checks.Draws;
import strikeoff.layout.Tube;
import strikeoff.plan.Medium;
import strikeoff.plan.PrintOrder;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Until;
import strikeoff.plan.Wait;

/** Several people who run ahead on one stretch, tried on generated print days. */
class TogetherProperties {

  /**
   * One person, two or three print rows of herons and shells in one step.
   *
   * @param shells where the shells lie: set from the herons, between them, or far off
   * @param table length in cm; a short one shows few herons at once
   * @param between minutes between colours
   * @param fan m/s between colours; 0 for none
   */
  record PairDay(
      Medium medium,
      int herons,
      int pitch,
      int colours,
      Shells shells,
      boolean shareScreen,
      Work work,
      int between,
      int fan) {

    PrintPlan plan() {
      PrintDay day = new PrintDay(medium).table(work.table());
      List<String> separations = new ArrayList<>();
      for (int i = 0; i < colours; i++) {
        day.paste("p" + i);
        separations.add("s" + i + "=p" + i);
      }
      day.paste("sand");
      day.design("heron", 30, 40, 10, separations.toArray(String[]::new))
          .design("shell", 20, 20, 8, (shareScreen ? "s0" : "t") + "=sand")
          .series("herons", "heron", herons, pitch, 15);
      switch (shells) {
        case ANCHORED -> day.anchored("shells", "shell", "herons", 60);
        case BETWEEN -> day.placed("shells", "shell", 25, 30, 60, 30, 140, 30);
        case FAR -> day.placed("shells", "shell", 15, 110, 70, 110, 300, 110);
      }
      if (work.tube()) {
        day.tube(Math.max(360, herons * pitch));
      }
      return day.printInAir(
              List.of("Wren", "Tam", "Ada").subList(0, work.people()),
              "herons, shells",
              work.order(),
              work.everyOther(),
              0,
              new Wait(PrintDay.minutes(between), PrintDay.air(fan == 0 ? null : (double) fan)),
              Until.NO_WAIT)
          .plan();
    }
  }

  enum Shells {
    ANCHORED,
    BETWEEN,
    FAR
  }

  record Work(int people, int table, boolean tube, PrintOrder order, boolean everyOther) {}

  @Provide
  Arbitrary<PairDay> days() {
    Arbitrary<Work> work =
        Combinators.combine(
                Arbitraries.integers().between(1, 3),
                Arbitraries.of(120, 250, 500),
                Arbitraries.of(true, false),
                Arbitraries.of(PrintOrder.class),
                Arbitraries.of(true, false))
            .as(Work::new);
    Arbitrary<Integer> minutes = Arbitraries.of(0, 0, 5, 60);
    return Combinators.combine(
            Arbitraries.of(Medium.class),
            Arbitraries.integers().between(1, 5),
            Arbitraries.integers().between(35, 65),
            Arbitraries.integers().between(1, 3),
            Arbitraries.of(Shells.class),
            Arbitraries.of(true, false, false),
            work,
            Combinators.combine(minutes, Arbitraries.of(0, 0, 2)).as(List::of))
        .as(
            (m, h, p, c, s, share, w, b) ->
                new PairDay(m, h, p, c, s, share, w, b.get(0), b.get(1)));
  }

  @Property(tries = 1000, seed = Draws.ALIKE)
  void everythingIsPrintedAndNobodyIsInTwoPlaces(@ForAll("days") PairDay pair) {
    PrintPlan plan = pair.plan();
    DayRun day = SmallDay.day(plan);
    int shells = pair.shells() == Shells.ANCHORED ? pair.herons() : 3;
    assertThat(day.impressions()).hasSize(pair.herons() * pair.colours() + shells);
    Map<String, Moment> free = new HashMap<>();
    for (Task task : day.tasks()) {
      List<String> held = new ArrayList<>();
      task.person().ifPresent(p -> held.add("person " + p));
      task.screen().ifPresent(s -> held.add("screen " + s));
      for (String one : held) {
        assertThat(task.start()).isGreaterThanOrEqualTo(free.getOrDefault(one, day.start()));
        free.put(one, task.end());
      }
    }
  }

  @Property(tries = 1000, seed = Draws.ALIKE)
  void theClothLiesStillWhileAnybodyPrints(@ForAll("days") PairDay pair) {
    List<Task> tasks = SmallDay.day(pair.plan()).tasks();
    for (Task move : tasks) {
      if (move.kind() == Task.Kind.MOVE || move.kind() == Task.Kind.LOAD) {
        assertThat(tasks)
            .filteredOn(t -> t.kind() == Task.Kind.PRINT)
            .allMatch(
                t -> t.end().compareTo(move.start()) <= 0 || t.start().compareTo(move.end()) >= 0);
      }
    }
  }

  @Property(tries = 1000, seed = Draws.ALIKE)
  void framesThatMeetAndAnchorsKeepTheOrderOfThePlan(@ForAll("days") PairDay pair) {
    PrintPlan plan = pair.plan();
    Tube tube = Tube.of(plan.cloth());
    List<Impression> impressions = SmallDay.day(plan).impressions();
    boolean asListed = pair.work().order() != PrintOrder.SET_BY_SET;
    for (Impression one : impressions) {
      for (Impression other : impressions) {
        if (one.id() == other.id()) {
          continue;
        }
        boolean atOnce =
            one.laid().compareTo(other.lifted()) < 0 && other.laid().compareTo(one.lifted()) < 0;
        if (atOnce) {
          assertThat(tube.overlaps(one.footprint().frame(), other.footprint().frame())).isFalse();
        }
        boolean anchored =
            one.footprint().placement().anchor().orElse(-1) == other.footprint().placement().id();
        boolean shellOnHeron =
            asListed
                && one.footprint().placement().arrangement().equals("shells")
                && other.footprint().placement().arrangement().equals("herons")
                && tube.overlaps(one.footprint().frame(), other.footprint().image());
        if (anchored || shellOnHeron) {
          assertThat(one.laid()).isGreaterThanOrEqualTo(other.lifted());
        }
      }
    }
  }

  @Property(tries = 1000, seed = Draws.ALIKE)
  void everyPairComparedWithEveryOtherGivesTheSameContacts(@ForAll("days") PairDay pair) {
    PrintPlan plan = pair.plan();
    DayRun day = SmallDay.day(plan);
    assertThat(day.contacts())
        .extracting(c -> new ClockProperties.Pair(c.earlier().id(), c.later().id(), c.area()))
        .isEqualTo(ClockProperties.naive(day.impressions(), Tube.of(plan.cloth())));
  }
}
