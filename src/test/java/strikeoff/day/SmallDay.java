package strikeoff.day;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ArbitrarySupplier;
import net.jqwik.api.Combinators;
import strikeoff.day.facts.Timeline;
import strikeoff.layout.Layout;
import strikeoff.plan.Draught;
import strikeoff.plan.Medium;
import strikeoff.plan.PrintOrder;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Until;
import strikeoff.plan.Wait;

/**
 * A small day to try what holds on all of them.
 *
 * @param pitch from motif to motif, less than the frame's 50 cm for neighbours that overhang
 * @param people how many print at the same time
 * @param between minutes between colours; below zero for a wait until frame-safe
 * @param air m/s over the cloth in waits between colours and between passes; 0 for the room's own
 * @param dryAir the same in the drying step
 */
record SmallDay(Shape shape, Crew crew, int pause, int between, int dryStep, int air, int dryAir) {

  /** What is printed. */
  record Shape(
      Medium medium,
      int motifs,
      int pitch,
      int colours,
      boolean oneScreen,
      int stations,
      boolean tube) {}

  /** How they go about it. */
  record Crew(int people, PrintOrder order, boolean everyOther) {}

  private static final List<String> NAMES = List.of("Wren", "Tam", "Ada");

  boolean together() {
    return crew.people > 1;
  }

  boolean still() {
    return air == 0 && dryAir == 0;
  }

  /** The same with a stated time between colours. */
  SmallDay stated() {
    return new SmallDay(shape, crew, pause, Math.max(0, between), dryStep, air, dryAir);
  }

  SmallDay pausing(int minutes) {
    return new SmallDay(shape, crew, minutes, between, dryStep, air, dryAir);
  }

  SmallDay drying(int minutes) {
    return new SmallDay(shape, crew, pause, between, minutes, air, dryAir);
  }

  /** The same with a longer wait between colours, which must be a stated time. */
  PrintPlan plan(int moreBetween) {
    return written(between < 0 ? between : between + moreBetween, pause, 0, 0, 0, 0);
  }

  /** Places of the plan where a wait can be written. */
  enum Place {
    BETWEEN_COLOURS,
    BETWEEN_PASSES,
    PAUSE,
    /** A drying step of its own, before the last print step. */
    BEFORE
  }

  /** The same with so many minutes written in a place of a print step, whatever stood there. */
  PrintPlan waiting(Place place, int step, int minutes) {
    boolean row = step == 1;
    return written(
        row && place == Place.BETWEEN_COLOURS ? minutes : between,
        row && place == Place.PAUSE ? minutes : pause,
        place == Place.BETWEEN_PASSES ? minutes : 0,
        place == Place.BEFORE ? minutes : 0,
        !row && place == Place.BETWEEN_COLOURS ? minutes : 0,
        !row && place == Place.PAUSE ? minutes : 0);
  }

  private PrintPlan written(
      int between, int pause, int passes, int before, int betweenAfter, int pauseAfter) {
    PrintDay day = new PrintDay(shape.medium).table(200);
    List<String> separations = new ArrayList<>();
    for (int i = 0; i < shape.colours; i++) {
      day.paste("p" + i);
      separations.add((shape.oneScreen ? "s" : "s" + i) + "=p" + i);
    }
    if (shape.stations > 0) {
      day.stations(shape.stations);
    }
    if (shape.tube) {
      day.tube(Math.max(60, shape.motifs * shape.pitch));
    }
    Until wait = between < 0 ? PrintDay.until(Until.Dryness.FRAME_SAFE) : PrintDay.minutes(between);
    Optional<Draught> moved = PrintDay.air(air == 0 ? null : (double) air);
    boolean inPasses = crew.everyOther && !together();
    day.design("d", 30, 40, 10, separations.toArray(String[]::new))
        .series("row", "d", shape.motifs, shape.pitch, 10)
        .placed("beside", "d", 15, 70, 60, 70)
        .printInAir(
            together() ? NAMES.subList(0, crew.people) : List.of(),
            "row",
            crew.order,
            crew.everyOther,
            pause,
            new Wait(wait, moved),
            inPasses ? new Wait(PrintDay.minutes(passes), moved) : Wait.NONE,
            Until.NO_WAIT)
        .dry(PrintDay.minutes(dryStep), dryAir == 0 ? null : (double) dryAir);
    return (before > 0 ? day.dry(before) : day)
        .print(
            "beside",
            PrintOrder.BY_COLOUR,
            false,
            pauseAfter,
            PrintDay.minutes(betweenAfter),
            Until.NO_WAIT)
        .plan();
  }

  static DayRun day(PrintPlan plan) {
    return DayRun.of(plan, Layout.of(plan, PrintDay.POLICY), PrintDay.POLICY);
  }

  static Timeline timeline(PrintPlan plan) {
    return Timeline.of(plan, Layout.of(plan, PrintDay.POLICY), PrintDay.POLICY);
  }

  /** One person prints, in any air. */
  static final class Alone implements ArbitrarySupplier<SmallDay> {
    @Override
    public Arbitrary<SmallDay> get() {
      return days(1, 1);
    }
  }

  /** One person to three. */
  static final class Any implements ArbitrarySupplier<SmallDay> {
    @Override
    public Arbitrary<SmallDay> get() {
      return days(1, 3);
    }
  }

  private static Arbitrary<SmallDay> days(int fewest, int most) {
    Arbitrary<Shape> shapes =
        Combinators.combine(
                Arbitraries.of(Medium.class),
                Arbitraries.integers().between(1, 8),
                Arbitraries.integers().between(25, 60),
                Arbitraries.integers().between(1, 3),
                Arbitraries.of(true, false),
                Arbitraries.integers().between(0, 3),
                Arbitraries.of(true, false))
            .as(Shape::new);
    Arbitrary<Crew> crews =
        Combinators.combine(
                Arbitraries.integers().between(fewest, most),
                Arbitraries.of(PrintOrder.class),
                Arbitraries.of(true, false))
            .as(Crew::new);
    return Combinators.combine(
            shapes,
            crews,
            Arbitraries.integers().between(0, 5),
            Arbitraries.integers().between(-1, 90),
            Arbitraries.integers().between(0, 90),
            Arbitraries.of(0, 0, 1, 5),
            Arbitraries.of(0, 0, 2, 5))
        .as(SmallDay::new);
  }
}
