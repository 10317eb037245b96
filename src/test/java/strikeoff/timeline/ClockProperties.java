package strikeoff.timeline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

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
import org.locationtech.jts.geom.util.AffineTransformation;
import strikeoff.layout.Layout;
import strikeoff.layout.Tube;
import strikeoff.plan.Medium;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Step;
import strikeoff.plan.Until;
import strikeoff.units.Area;

/** What holds on every print day, tried on generated ones. */
class ClockProperties {

  /**
   * A small day.
   *
   * @param pitch from motif to motif, less than the frame's 50 cm for neighbours that overhang
   * @param two whether two people print at the same time
   * @param between minutes between colours; below zero for a wait until frame-safe
   */
  record SmallDay(
      Medium medium,
      int motifs,
      int pitch,
      int colours,
      boolean oneScreen,
      int stations,
      boolean tube,
      Step.Order order,
      boolean everyOther,
      boolean two,
      int pause,
      int between,
      int dryStep) {

    PrintPlan plan(int moreBetween) {
      PrintDay day = new PrintDay(medium).table(200);
      List<String> separations = new ArrayList<>();
      for (int i = 0; i < colours; i++) {
        day.paste("p" + i);
        separations.add((oneScreen ? "s" : "s" + i) + "=p" + i);
      }
      if (stations > 0) {
        day.stations(stations);
      }
      if (tube) {
        day.tube(Math.max(60, motifs * pitch));
      }
      Until wait =
          between < 0
              ? PrintDay.until(Until.Dryness.FRAME_SAFE)
              : PrintDay.minutes(between + moreBetween);
      day.design("d", 30, 40, 10, separations.toArray(String[]::new))
          .series("row", "d", motifs, pitch, 10)
          .placed("beside", "d", 15, 70, 60, 70);
      if (two) {
        day.printTogether("row", order, everyOther, pause, wait, Until.NO_WAIT);
      } else {
        day.print("row", order, everyOther, pause, wait, Until.NO_WAIT);
      }
      return day.dry(dryStep).print("beside").plan();
    }
  }

  @Provide
  Arbitrary<SmallDay> days() {
    Arbitrary<SmallDay> shape =
        Combinators.combine(
                Arbitraries.of(Medium.class),
                Arbitraries.integers().between(1, 8),
                Arbitraries.integers().between(25, 60),
                Arbitraries.integers().between(1, 3),
                Arbitraries.of(true, false),
                Arbitraries.integers().between(0, 3),
                Arbitraries.of(true, false),
                Arbitraries.of(Step.Order.class))
            .as(
                (m, n, p, c, one, s, t, o) ->
                    new SmallDay(m, n, p, c, one, s, t, o, false, false, 0, 0, 0));
    return Combinators.combine(
            shape,
            Arbitraries.of(true, false),
            Arbitraries.of(true, false),
            Arbitraries.integers().between(0, 5),
            Arbitraries.integers().between(-1, 90),
            Arbitraries.integers().between(0, 90))
        .as(
            (d, every, two, pause, between, dry) ->
                new SmallDay(
                    d.medium,
                    d.motifs,
                    d.pitch,
                    d.colours,
                    d.oneScreen,
                    d.stations,
                    d.tube,
                    d.order,
                    every,
                    two,
                    pause,
                    between,
                    dry));
  }

  @Property(tries = 1000)
  void everyPairComparedWithEveryOtherGivesTheSameContacts(@ForAll("days") SmallDay small) {
    PrintPlan plan = small.plan(0);
    Timeline.Day day = day(plan);
    assertThat(day.contacts()).isEqualTo(naive(day.impressions(), Tube.of(plan.cloth())));
  }

  /** Deliberately without index or window; turns round a tube are tried one by one. */
  private static List<Contact> naive(List<Impression> impressions, Tube tube) {
    List<Contact> contacts = new ArrayList<>();
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
          contacts.add(
              new Contact(
                  earlier,
                  later,
                  new Area(Math.round(squareMm) / 100.0),
                  earlier.film().frameSafe().earliest().since(later.laid()),
                  earlier.film().frameSafe().best().since(later.laid()),
                  latest.since(later.laid())));
        }
      }
    }
    return contacts;
  }

  @Property(tries = 300)
  void timeRunsForwardAndNothingIsUsedTwiceAtOnce(@ForAll("days") SmallDay small) {
    Timeline day = timeline(small.plan(0));
    Map<String, Moment> freeAt = new HashMap<>();
    Moment before = day.start();
    for (Task task : day.tasks()) {
      assertThat(task.start()).isGreaterThanOrEqualTo(before);
      assertThat(task.end()).isGreaterThanOrEqualTo(task.start());
      before = task.start();
      List<String> held = new ArrayList<>();
      task.person().ifPresent(p -> held.add("person " + p));
      task.screen().ifPresent(s -> held.add("screen " + s));
      boolean screensOnly =
          task.kind() == Task.Kind.WASH_SCREEN || task.kind() == Task.Kind.DRY_SCREEN;
      boolean shared = small.two && task.kind() == Task.Kind.PRINT;
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

  @Property(tries = 300)
  void noFrameIsLaidOnAnotherAndNoColourBeforeTheOneBelowIt(@ForAll("days") SmallDay small) {
    PrintPlan plan = small.plan(0);
    Tube tube = Tube.of(plan.cloth());
    List<Impression> impressions = day(plan).impressions();
    Map<Integer, Impression> below = new HashMap<>();
    for (Impression later : impressions) {
      for (Impression earlier : impressions.subList(0, later.id())) {
        assertThat(earlier.laid()).isLessThanOrEqualTo(later.laid());
        boolean atOnce = earlier.lifted().compareTo(later.laid()) > 0;
        if (atOnce) {
          assertThat(tube.overlapArea(earlier.footprint().frame(), later.footprint().frame()))
              .isZero();
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

  @Property(tries = 300)
  void theChainIsAsLongAsTheRunAndWaitsAreNeverNegative(@ForAll("days") SmallDay small) {
    PrintPlan plan = small.plan(0);
    Timeline.Day day = day(plan);
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
    }
  }

  @Property(tries = 100)
  void theClearedRunIsDryAndNeverShorter(@ForAll("days") SmallDay small) {
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
        if (!small.two) {
          assertThat(cleared.longer().minutes()).isNotNegative();
        }
      }
    }
  }

  @Property(tries = 300)
  void aLongerWaitNeverAddsAContact(@ForAll("days") SmallDay small) {
    if (small.between < 0 || small.two) {
      return;
    }
    int asWritten = day(small.plan(0)).contacts().size();
    assertThat(day(small.plan(7)).contacts().size()).isLessThanOrEqualTo(asWritten);
  }

  @Property(tries = 200)
  void whatEachFindingAsksForClearsItsCause(@ForAll("days") SmallDay small) {
    if (small.two) {
      return;
    }
    PrintPlan plan = small.plan(0);
    Timeline.Day asWritten = day(plan);
    for (WetContact contact : contacts(timeline(plan))) {
      if (!contact.cured()) {
        continue;
      }
      Map<Causes.Cause, List<Causes.Pair>> left = Causes.of(day(contact.remedy().applied(plan)));
      Causes.Cause cause =
          Causes.of(asWritten).keySet().stream()
              .filter(c -> c.how() == contact.remedy().how() && c.step() == contact.laterStep())
              .findFirst()
              .orElseThrow();
      assertThat(left.getOrDefault(cause, List.of()))
          .noneMatch(p -> contact.likely() ? p.likely() : true);
    }
  }

  private static List<WetContact> contacts(Timeline day) {
    return day.evidence().stream()
        .filter(e -> e instanceof WetContact)
        .map(e -> (WetContact) e)
        .toList();
  }

  private static Timeline.Day day(PrintPlan plan) {
    return Timeline.Day.of(plan, Layout.of(plan, PrintDay.POLICY), PrintDay.POLICY);
  }

  private static Timeline timeline(PrintPlan plan) {
    return Timeline.of(plan, Layout.of(plan, PrintDay.POLICY), PrintDay.POLICY);
  }
}
