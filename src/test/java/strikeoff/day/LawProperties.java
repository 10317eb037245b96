package strikeoff.day;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import strikeoff.checks.Draws;
import strikeoff.plan.PrintOrder;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Step;
import strikeoff.speech.DaySpeech;
import strikeoff.units.Measures;

/**
 * Laws of the trade's common sense that every invented run of one to three people keeps. Where
 * plans/README.md names an exception, the law has that exception and no other.
 */
class LawProperties {

  /** Seconds: lay, pull and lift. */
  private static final long PRINT = 40;

  /** As far as all choices of who stays out are weighed. */
  @Property(tries = 250, seed = Draws.ALIKE)
  void whoJoinsInNeverMakesARunLater(@ForAll(supplier = AnyRun.Any.class) AnyRun run) {
    Moment asWritten = SmallDay.day(run.plan()).finish();
    for (int step = 0; step < run.parts().size(); step++) {
      int at = step;
      DayRun joined = SmallDay.day(run.with(c -> c.joined = at));
      if (joined.run().simulated() < Effort.USUAL.ways()) {
        assertThat(joined.finish()).as("step %s of %s", step, run).isLessThanOrEqualTo(asWritten);
      }
    }
  }

  @Property(tries = 250, seed = Draws.ALIKE)
  void aSinkOrADryingPlaceNeverMakesARunLater(@ForAll(supplier = AnyRun.Any.class) AnyRun run) {
    Moment asWritten = SmallDay.day(run.plan()).finish();
    DayRun two = SmallDay.day(run.with(c -> c.moreSinks = 1));
    DayRun three = SmallDay.day(run.with(c -> c.moreSinks = 2));
    // As far as all choices of people, sets and sinks are weighed.
    if (three.run().simulated() < Effort.USUAL.ways()) {
      assertThat(two.finish()).isLessThanOrEqualTo(asWritten);
      assertThat(three.finish()).isLessThanOrEqualTo(two.finish());
    }
    assertThat(SmallDay.day(run.with(c -> c.morePlaces = 1)).finish())
        .isLessThanOrEqualTo(asWritten);
  }

  /** In all that she does, or in one kind of work. */
  @Property(tries = 250, seed = Draws.ALIKE)
  void aFasterHandNeverMakesARunLater(
      @ForAll(supplier = AnyRun.Any.class) AnyRun run, @ForAll @IntRange(max = 9) int kind) {
    PrintPlan faster =
        run.with(
            c -> {
              for (int i = 0; i < c.hands.length; i++) {
                c.hands[i] = kind == 9 || kind == i ? 0.8 : 1;
              }
            });
    assertThat(SmallDay.day(faster).finish())
        .as("%s %s", kind, run)
        .isLessThanOrEqualTo(SmallDay.day(run.plan()).finish());
  }

  @Property(tries = 250, seed = Draws.ALIKE)
  void aLongerTableNeverAsksForMoreMoves(
      @ForAll(supplier = AnyRun.Any.class) AnyRun run,
      @ForAll @IntRange(min = 1, max = 150) int cm) {
    assertThat(moves(run.with(c -> c.longerTable = cm)))
        .as("%s", run)
        .isLessThanOrEqualTo(moves(run.plan()));
  }

  /**
   * By as much as a print. Seconds come and go with what is felt. Several people share the copies
   * out evenly; not where the copies of several arrangements lie between one another, nor where
   * each set has its own wait between the copies 1, 3, 5 … and 2, 4, 6 ….
   */
  @Property(tries = 600, seed = Draws.ALIKE)
  void aLongerTableThatSavesNoMoveNeverMakesARunLater(
      @ForAll(supplier = AnyRun.Any.class) AnyRun run,
      @ForAll @IntRange(min = 1, max = 150) int cm,
      @ForAll @IntRange(max = 4) int boards) {
    DayRun asWritten = SmallDay.day(run.with(c -> c.boards = boards));
    DayRun longer =
        SmallDay.day(
            run.with(
                c -> {
                  c.boards = boards;
                  c.longerTable = cm;
                }));
    boolean excepted =
        run.parts().stream()
            .anyMatch(p -> p.everyOther() || p.prints() && p.order() == PrintOrder.SET_BY_SET);
    if (!excepted && longer.run().moves() == asWritten.run().moves()) {
      assertThat(longer.run().ends() - asWritten.run().ends())
          .as("%s, %s cm, %s boards", run, cm, boards)
          .isLessThan(PRINT);
    }
  }

  private static long moves(PrintPlan plan) {
    return SmallDay.day(plan).run().moves();
  }

  /**
   * Its screens may be washed later, which were washed while the cloth waited to be moved; so one
   * that prints with two pastes may come later, too. Not where several go by station: two people at
   * three boards are two rounds, as at four. Not where each colour goes over all sets: each dries
   * while the others are printed, and a longer one leaves them less time.
   */
  @Property(tries = 250, seed = Draws.ALIKE)
  void aLongerTableThatSavesAMoveNeverMakesTheLastPrintLater(
      @ForAll(supplier = AnyRun.Any.class) AnyRun run,
      @ForAll @IntRange(min = 1, max = 150) int cm) {
    boolean excepted =
        run.shared()
            || run.parts().stream()
                .anyMatch(
                    p ->
                        p.order() == PrintOrder.OVER_ALL
                            || p.order() == PrintOrder.BY_STATION && p.who() != p.other());
    DayRun asWritten = SmallDay.day(run.plan());
    DayRun longer = SmallDay.day(run.with(c -> c.longerTable = cm));
    if (!excepted && longer.run().moves() < asWritten.run().moves()) {
      assertThat(lastLift(longer)).as("%s", run).isLessThanOrEqualTo(lastLift(asWritten));
    }
  }

  private static Moment lastLift(DayRun day) {
    return day.impressions().stream()
        .map(Impression::lifted)
        .max(Comparator.naturalOrder())
        .orElse(day.start());
  }

  @Property(tries = 250, seed = Draws.ALIKE)
  void aLongerWaitNeverBringsAContact(@ForAll(supplier = AnyRun.Any.class) AnyRun run) {
    Ran asWritten = new Ran(run.plan());
    for (int step = 0; step < run.parts().size(); step++) {
      int at = step;
      asWritten.nothingNew(
          new Ran(
              run.with(
                  c -> {
                    c.longer = at;
                    c.minutes = 25;
                  })),
          "step " + step + " of " + run);
    }
  }

  @Property(tries = 250, seed = Draws.ALIKE)
  void aNightBetweenNeverAddsAContact(@ForAll(supplier = AnyRun.Any.class) AnyRun run) {
    Ran asWritten = new Ran(run.plan());
    for (int step = 0; step < run.parts().size(); step++) {
      int at = step;
      asWritten.nothingNew(new Ran(run.with(c -> c.night = at)), "step " + step + " of " + run);
    }
  }

  @Property(tries = 250, seed = Draws.ALIKE)
  void damperAirNeverTakesAContactAway(@ForAll(supplier = AnyRun.Any.class) AnyRun run) {
    Ran asWritten = new Ran(run.plan());
    Ran damper = new Ran(run.with(c -> c.humidity = 0.7));
    if (damper.chosen().equals(asWritten.chosen())) {
      assertThat(damper.contacts()).containsAll(asWritten.contacts());
    }
  }

  /** A print by its step, counted without nights, its place and its colour. */
  private record Print(long step, String placement, int separation) {}

  /** The later print's frame on the earlier one's film. */
  private record Pair(Print earlier, Print later) {}

  /** A run, of which prints can be found in another. */
  private static final class Ran {

    private static final Set<Task.Kind> OTHER_WORK =
        Set.of(Task.Kind.WASH_SCREEN, Task.Kind.MIX, Task.Kind.QUEUE);

    private static final Set<String> WRITTEN =
        Set.of(
            "dry between colours",
            "dry between neighbours",
            "dry between passes",
            "before moving",
            "pause");

    private final PrintPlan plan;
    private final DayRun day;
    private final Map<Print, Impression> prints = new HashMap<>();

    Ran(PrintPlan plan) {
      this.plan = plan;
      this.day = SmallDay.day(plan);
      day.impressions().forEach(i -> prints.put(print(i), i));
    }

    private Print print(Impression impression) {
      return new Print(
          plan.run().stream()
              .filter(s -> s.number() <= impression.step() && !(s instanceof Step.EndOfDay))
              .count(),
          impression.footprint().placement().name(),
          impression.footprint().separation().number());
    }

    Set<Pair> contacts() {
      Set<Pair> pairs = new LinkedHashSet<>();
      day.contacts().forEach(c -> pairs.add(new Pair(print(c.earlier()), print(c.later()))));
      return pairs;
    }

    /** Who prints at a step, and what lies on the table together, where a run ends soonest. */
    private Set<List<Object>> chosen() {
      Set<List<Object>> chosen = new LinkedHashSet<>();
      prints.forEach(
          (print, i) -> {
            chosen.add(List.of(print.step(), i.person()));
            chosen.add(List.of(print, i.set()));
          });
      return chosen;
    }

    void nothingNew(Ran changed, String what) {
      if (!chosen().equals(changed.chosen())) {
        return;
      }
      Set<Pair> fresh = new LinkedHashSet<>(changed.contacts());
      fresh.removeAll(contacts());
      assertThat(fresh).as(what).allMatch(this::driedByTheWay);
    }

    /**
     * True if a film dried while the cloth waited for something that isn't written as a wait: a
     * paste, a screen, or somebody who mixed, washed or queued. With a longer wait elsewhere that
     * may be done by then, and nobody waits here.
     */
    private boolean driedByTheWay(Pair pair) {
      return between(prints.get(pair.earlier), prints.get(pair.later))
          .anyMatch(
              t ->
                  t.kind() == Task.Kind.WAIT
                      ? !WRITTEN.contains(DaySpeech.text(t.doing(), Measures.METRIC))
                          && !DaySpeech.text(t.doing(), Measures.METRIC).startsWith("dry ")
                      : OTHER_WORK.contains(t.kind()) && !t.people().contains(AnyRun.WASHER));
    }

    private Stream<Task> between(Impression earlier, Impression later) {
      return day.tasks().stream()
          .filter(t -> t.start().compareTo(later.laid()) < 0)
          .filter(t -> t.end().compareTo(earlier.lifted()) > 0);
    }
  }
}
