package strikeoff.day;

import static org.assertj.core.api.Assertions.assertThat;
import static strikeoff.day.SmallDay.day;
import static strikeoff.day.SmallDay.timeline;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import strikeoff.checks.Draws;
import strikeoff.day.facts.Causes;
import strikeoff.day.facts.ClearedRun;
import strikeoff.day.facts.ClothTakenUp;
import strikeoff.day.facts.Outlasted;
import strikeoff.day.facts.Remedy;
import strikeoff.day.facts.Timeline;
import strikeoff.day.facts.WetContact;
import strikeoff.layout.Layout;
import strikeoff.layout.Tube;
import strikeoff.plan.Medium;
import strikeoff.plan.PrintOrder;
import strikeoff.plan.PrintPlan;

/** What waits do to contacts, tried on generated print days. */
class WaitProperties {

  @Property(tries = 100, seed = Draws.ALIKE)
  void theClearedRunIsDryAndNeverShorter(@ForAll(supplier = SmallDay.Any.class) SmallDay small) {
    PrintPlan plan = small.plan(0);
    for (Object evidence : timeline(plan).evidence()) {
      if (evidence instanceof ClearedRun cleared && cleared.left() == 0) {
        PrintPlan written = plan;
        for (Remedy wait : cleared.waits()) {
          written = wait.applied(written);
        }
        DayRun dry = day(written);
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
  @Property(tries = 1300, seed = Draws.ALIKE)
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

  private static Set<List<Integer>> pairs(DayRun day) {
    Set<List<Integer>> pairs = new LinkedHashSet<>();
    day.contacts().forEach(c -> pairs.add(List.of(c.earlier().id(), c.later().id())));
    return pairs;
  }

  /**
   * Worked without what tells the remedy: each film, and each frame that lies on it before it is
   * frame-safe on an ordinary day, with what the finding asks for written into the plan and with a
   * minute less. More than the least is asked for where one screen prints several colours, since
   * part of a longer wait falls into its washing and drying, and where several waits lie between a
   * film and the frame, since each is told its share; and where with a minute less paste would dry
   * in a screen that stood in no such wait before.
   */
  @Property(tries = 300, seed = Draws.ALIKE)
  void whatIsAskedForIsTheLeastThatClearsItsPlace(
      @ForAll(supplier = SmallDay.Alone.class) SmallDay small) {
    for (WetContact told : contacts(timeline(small.plan(0)))) {
      if (told.likely() && told.cured()) {
        int asked = (int) told.remedy().minutes();
        assertThat(wet(small, told, asked)).as("%s %s", told.remedy(), small).isEmpty();
        List<Wet> less = wet(small, told, asked - 1);
        boolean exact =
            !small.shape().oneScreen() && wet(small, told, 0).stream().allMatch(Wet::once);
        boolean dries = !outlasted(small, told, asked - 1).without(asWritten(small)).isNothing();
        assertThat(exact && less.isEmpty() && !dries)
            .as("a minute less than %s does too in %s", told.remedy(), small)
            .isFalse();
      }
    }
  }

  private static Outlasted outlasted(SmallDay small, WetContact told, int minutes) {
    return outlasted(small.waiting(place(told.remedy().how()), told.laterStep(), minutes));
  }

  private static Outlasted asWritten(SmallDay small) {
    return outlasted(small.plan(0));
  }

  private static Outlasted outlasted(PrintPlan plan) {
    Layout layout = Layout.of(plan, PrintDay.POLICY);
    return Outlasted.in(
        day(plan), plan, Beforehand.of(plan, layout, PrintDay.POLICY, Effort.USUAL));
  }

  /** The film of the second set, which two waits follow, dries while the first set waits. */
  @Example
  void whatIsAskedForIsNoMoreWhereTheMotifsTakeTwoSets() {
    whatIsAskedForIsTheLeastThatClearsItsPlace(
        new SmallDay(
            new SmallDay.Shape(Medium.PAINT, 5, 40, 2, false, 0, true),
            new SmallDay.Crew(1, PrintOrder.OVER_ALL, true),
            2,
            0,
            0,
            0,
            0));
  }

  /**
   * A frame on a film too early.
   *
   * @param once if what is waited at lies only once between the two
   */
  private record Wet(int earlier, int later, boolean once) {}

  private static SmallDay.Place place(Remedy.How how) {
    return switch (how) {
      case DRY_BETWEEN_COLOURS -> SmallDay.Place.BETWEEN_COLOURS;
      case DRY_BETWEEN_PASSES -> SmallDay.Place.BETWEEN_PASSES;
      case PAUSE -> SmallDay.Place.PAUSE;
      case DRY_STEP -> SmallDay.Place.BEFORE;
      default -> throw new AssertionError("no wait for a contact: " + how);
    };
  }

  /** Frames on films too early, where a wait in that place would have parted them. */
  private static List<Wet> wet(SmallDay small, WetContact told, int minutes) {
    SmallDay.Place place = place(told.remedy().how());
    PrintPlan plan = small.waiting(place, told.laterStep(), minutes);
    int last = plan.run().get(plan.run().size() - 1).number();
    Tube tube = Tube.of(plan.cloth());
    List<Impression> impressions = day(plan).impressions();
    List<Wet> wet = new ArrayList<>();
    for (Impression later : impressions) {
      for (Impression earlier : impressions.subList(0, later.id())) {
        if (later.laid().compareTo(earlier.film().frameSafe().best()) < 0
            && (told.laterStep() == 1) == (later.step() < last)
            && place == between(small, impressions, earlier, later)
            && tube.overlaps(earlier.footprint().image(), later.footprint().frame())) {
          List<Impression> from = impressions.subList(earlier.id(), later.id() + 1);
          wet.add(new Wet(earlier.id(), later.id(), once(small, place, impressions, from)));
        }
      }
    }
    return wet;
  }

  private static boolean once(
      SmallDay small, SmallDay.Place place, List<Impression> all, List<Impression> from) {
    long colours = 0;
    for (int i = 1; i < from.size(); i++) {
      colours +=
          from.get(i).footprint().separation().number()
                  == from.get(i - 1).footprint().separation().number()
              ? 0
              : 1;
    }
    Impression first = from.get(0);
    Impression last = from.get(from.size() - 1);
    return switch (place) {
      case BETWEEN_COLOURS -> colours == 1;
      case BETWEEN_PASSES ->
          secondPasses(small, all).stream().filter(m -> lies(m, first, last)).count() == 1;
      case PAUSE -> from.size() == 2;
      case BEFORE -> true;
    };
  }

  private static boolean lies(Moment moment, Impression earlier, Impression later) {
    return moment.compareTo(earlier.laid()) > 0 && moment.compareTo(later.laid()) <= 0;
  }

  /** The place that is waited at between two prints. */
  private static SmallDay.Place between(
      SmallDay small, List<Impression> all, Impression earlier, Impression later) {
    if (earlier.step() != later.step()) {
      return SmallDay.Place.BEFORE;
    }
    if (earlier.footprint().separation().number() != later.footprint().separation().number()) {
      return SmallDay.Place.BETWEEN_COLOURS;
    }
    return small.crew().everyOther()
            && secondPasses(small, all).stream().anyMatch(m -> lies(m, earlier, later))
        ? SmallDay.Place.BETWEEN_PASSES
        : SmallDay.Place.PAUSE;
  }

  /** When each set, and each colour of it, comes to its placements 2, 4, 6 …. */
  private static Collection<Moment> secondPasses(SmallDay small, List<Impression> all) {
    List<Impression> row = all.stream().filter(i -> i.step() == 1).toList();
    Map<Integer, SortedSet<Integer>> sets = new HashMap<>();
    row.forEach(
        i ->
            sets.computeIfAbsent(i.set(), s -> new TreeSet<>())
                .add(i.footprint().placement().number()));
    boolean byStation = small.crew().order() == PrintOrder.BY_STATION;
    Map<List<Integer>, Moment> begins = new HashMap<>();
    for (Impression print : row) {
      int before = sets.get(print.set()).headSet(print.footprint().placement().number()).size();
      int colour = byStation ? 0 : print.footprint().separation().number();
      if (before % 2 == 1) {
        begins.merge(
            List.of(print.set(), colour), print.laid(), (m, n) -> m.compareTo(n) < 0 ? m : n);
      }
    }
    return begins.values();
  }

  /** What a finding says the wait costs is what it costs when it is written and simulated. */
  @Property(tries = 200, seed = Draws.ALIKE)
  void theCostThatIsToldIsTheCostThatIsPaid(@ForAll(supplier = SmallDay.Any.class) SmallDay small) {
    PrintPlan plan = small.plan(0);
    Timeline asWritten = timeline(plan);
    for (Object evidence : asWritten.evidence()) {
      if (evidence instanceof WetContact contact && contact.finish().isPresent()) {
        assertThat(day(contact.remedy().applied(plan)).finish()).isEqualTo(contact.finish().get());
      } else if (evidence instanceof ClothTakenUp taken && taken.tried().finish().isPresent()) {
        assertThat(day(taken.remedy().applied(plan)).finish())
            .isEqualTo(taken.tried().finish().get());
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
