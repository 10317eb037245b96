package strikeoff.day;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;
import static strikeoff.day.SmallDay.day;
import static strikeoff.day.SmallDay.timeline;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.locationtech.jts.geom.util.AffineTransformation;
import strikeoff.checks.Draws;
import strikeoff.day.facts.Busy;
import strikeoff.day.facts.CriticalChain;
import strikeoff.day.facts.RunFigures;
import strikeoff.day.facts.Timeline;
import strikeoff.layout.Tube;
import strikeoff.plan.PrintPlan;
import strikeoff.units.Area;

/** What holds on every print day, tried on generated ones. */
class ClockProperties {

  @Property(tries = 1000, seed = Draws.ALIKE)
  void everyPairComparedWithEveryOtherGivesTheSameContacts(
      @ForAll(supplier = SmallDay.Any.class) SmallDay small) {
    PrintPlan plan = small.plan(0);
    DayRun day = day(plan);
    assertThat(day.contacts())
        .extracting(c -> new Pair(c.earlier().id(), c.later().id(), c.area()))
        .isEqualTo(naive(day.impressions(), Tube.of(plan.cloth())));
    if (small.still()) {
      assertThat(day.contacts())
          .allSatisfy(
              c -> {
                Reached film = c.earlier().film().frameSafe();
                assertThat(c.safe().earliest()).isEqualTo(film.earliest());
                assertThat(c.safe().best()).isEqualTo(film.best());
                // who feels the film later knows more then, which is no part of this wait
                assertThat(c.safe().latest()).isGreaterThanOrEqualTo(film.latest());
              });
    }
  }

  /** A frame on a film, by the ids of their impressions. */
  record Pair(int earlier, int later, Area area) {}

  /** Deliberately without index or window; turns round a tube are tried one by one. */
  static List<Pair> naive(List<Impression> impressions, Tube tube) {
    List<Pair> contacts = new ArrayList<>();
    for (Impression later : impressions) {
      for (Impression earlier : impressions) {
        Moment latest = earlier.film().frameSafe().latest();
        if (earlier.id() >= later.id() || later.laid().seconds() >= latest.seconds()) {
          continue;
        }
        double squareMm = 0;
        for (int turn = tube.closed() ? -40 : 0; turn <= (tube.closed() ? 40 : 0); turn++) {
          squareMm +=
              AffineTransformation.translationInstance(turn * tube.circumference(), 0)
                  .transform(earlier.footprint().image())
                  .intersection(later.footprint().frame())
                  .getArea();
        }
        if (squareMm > 0) {
          contacts.add(new Pair(earlier.id(), later.id(), new Area(Math.round(squareMm) / 100.0)));
        }
      }
    }
    return contacts;
  }

  @Property(tries = 1000, seed = Draws.ALIKE)
  void timeRunsForwardAndNothingIsUsedTwiceAtOnce(
      @ForAll(supplier = SmallDay.Any.class) SmallDay small) {
    Timeline day = timeline(small.plan(0));
    Map<String, Moment> freeAt = new HashMap<>();
    Moment before = day.start();
    for (Task task : day.tasks()) {
      assertThat(task.start()).isGreaterThanOrEqualTo(before);
      assertThat(task.end()).isGreaterThanOrEqualTo(task.start());
      before = task.start();
      List<String> held = new ArrayList<>();
      task.people().forEach(p -> held.add("person " + p));
      task.screen().ifPresent(s -> held.add("screen " + s));
      boolean screensOnly =
          task.kind() == Task.Kind.WASH_SCREEN || task.kind() == Task.Kind.DRY_SCREEN;
      boolean shared = small.together() && task.kind() == Task.Kind.PRINT;
      if (!screensOnly && !shared) {
        held.add("cloth");
      }
      for (String resource : held) {
        assertThat(task.start()).isGreaterThanOrEqualTo(freeAt.getOrDefault(resource, day.start()));
        freeAt.put(resource, task.end());
      }
    }
    assertThat(day.finish()).isGreaterThanOrEqualTo(before);
    for (Impression impression : day.impressions()) {
      Film film = impression.film();
      assertThat(impression.laid()).isLessThan(impression.lifted());
      assertThat(impression.lifted()).isLessThanOrEqualTo(film.frameSafe().earliest());
      assertThat(film.frameSafe().best()).isLessThanOrEqualTo(film.liftSafe().best());
      assertThat(film.liftSafe().best()).isLessThanOrEqualTo(film.fixSafe().best());
    }
  }

  @Property(tries = 1000, seed = Draws.ALIKE)
  void noFrameIsLaidOnAnotherAndNoColourBeforeTheOneBelowIt(
      @ForAll(supplier = SmallDay.Any.class) SmallDay small) {
    PrintPlan plan = small.plan(0);
    Tube tube = Tube.of(plan.cloth());
    List<Impression> impressions = day(plan).impressions();
    Map<Integer, Impression> below = new HashMap<>();
    for (Impression later : impressions) {
      for (Impression earlier : impressions.subList(0, later.id())) {
        assertThat(earlier.laid()).isLessThanOrEqualTo(later.laid());
        boolean atOnce = earlier.lifted().compareTo(later.laid()) > 0;
        if (atOnce) {
          assertThat(tube.overlaps(earlier.footprint().frame(), later.footprint().frame()))
              .isFalse();
        }
      }
      Impression before = below.put(later.footprint().placement().id(), later);
      if (before != null) {
        assertThat(later.footprint().separation().number())
            .isEqualTo(before.footprint().separation().number() + 1);
        assertThat(later.laid()).isGreaterThanOrEqualTo(before.lifted());
      }
    }
  }

  @Property(tries = 1000, seed = Draws.ALIKE)
  void theChainIsAsLongAsTheRunAndWaitsAreNeverNegative(
      @ForAll(supplier = SmallDay.Any.class) SmallDay small) {
    PrintPlan plan = small.plan(0);
    DayRun day = day(plan);
    RunFigures figures = RunFigures.of(day, plan);
    Moment last = day.start();
    for (Task task : day.tasks()) {
      last = task.kind() == Task.Kind.DRY_SCREEN ? last : last.later(task.end());
    }
    double chain = 0;
    for (CriticalChain.Link link : figures.chain().links()) {
      assertThat(link.span().minutes()).isPositive();
      chain += link.span().minutes();
    }
    assertThat(chain).isCloseTo(last.since(day.start()).minutes(), offset(1e-6));
    assertThat(day.use().waiting().minutes()).isNotNegative();
    for (Busy busy : figures.busy()) {
      assertThat(busy.busy().minutes()).isNotNegative();
      if (busy.resource().kind() != Resource.Kind.SINK) {
        assertThat(busy.share().fraction()).as("%s", busy).isBetween(0.0, 1 + 1e-9);
      }
    }
  }
}
