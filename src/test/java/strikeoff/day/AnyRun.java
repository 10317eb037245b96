package strikeoff.day;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ArbitrarySupplier;
import net.jqwik.api.Combinators;
import strikeoff.document.PlanPath;
import strikeoff.plan.Begins;
import strikeoff.plan.Handling;
import strikeoff.plan.Hours;
import strikeoff.plan.Medium;
import strikeoff.plan.PrintOrder;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.PrintStep;
import strikeoff.plan.Step;
import strikeoff.plan.Until;
import strikeoff.plan.Wait;
import strikeoff.units.Span;
import strikeoff.units.Temperature;

/**
 * A run of any steps by one to three people, to try laws on.
 *
 * @param pitch of herons in cm, whose frames are 50 cm long
 * @param table length in cm
 * @param shared whether a screen serves two pastes
 */
record AnyRun(
    Medium medium, int pitch, int colours, int table, List<AnyRun.Part> parts, boolean shared) {

  private static final List<String> PEOPLE = List.of("Wren", "Tam", "Ada");

  /** Washes screens where none is shared, and does nothing else. */
  static final String WASHER = "Mo";

  /** What is different from the run as invented. */
  static final class Change {
    int moreSinks;
    int morePlaces;
    int longerTable;

    /** Loose ones of 50 cm; 0 for a top without boards. */
    int boards;

    double humidity = 0.5;

    List<Hours.Break> breaks = List.of();

    /** Of each kind of work, in the order of {@link Handling}. */
    double[] hands = {1, 1, 1, 1, 1, 1, 1, 1, 1};

    /** The step that waits longer. */
    int longer = -1;

    int minutes;

    /** The step in which one more prints. */
    int joined = -1;

    /** The step in which frames wait for their neighbours until they are frame-safe. */
    int neighbours = -1;

    /** The step in which a fan blows. */
    int blown = -1;

    /** The step that begins when it can. */
    int free = -1;

    /** The step before which a day ends. */
    int night = -1;

    private Handling handling() {
      int[] usual = {20, 10, 10, 900, 600, 600, 1800, 900, 600};
      Span[] takes = new Span[usual.length];
      for (int i = 0; i < usual.length; i++) {
        takes[i] = Span.ofSeconds(usual[i] * hands[i]);
      }
      return new Handling(
          takes[0],
          takes[1],
          takes[2],
          takes[3],
          takes[4],
          takes[5],
          takes[6],
          takes[7],
          takes[8],
          Span.ofSeconds(1800),
          new PlanPath("handling"));
    }
  }

  PrintPlan plan() {
    return with(change -> {});
  }

  PrintPlan with(Consumer<Change> what) {
    Change change = new Change();
    what.accept(change);
    PrintDay day =
        new PrintDay(medium)
            .table(table + change.longerTable)
            .humidity(change.humidity)
            .hours(new Hours.Day(540, 1020, change.breaks))
            .crew(PEOPLE.toArray(String[]::new))
            .equipment(1 + change.moreSinks, 1, 1, 2 + change.morePlaces)
            .handling(change.handling());
    if (change.boards > 0) {
      day.stations(change.boards);
    }
    List<String> separations = new ArrayList<>();
    for (int i = 0; i < colours; i++) {
      day.unmixedPaste("p" + i);
      separations.add("s" + i + "=p" + i);
    }
    // The shells' second colour goes through the herons' first screen.
    day.unmixedPaste("sand")
        .design("heron", 30, 40, 10, separations.toArray(String[]::new))
        .design("shell", 20, 20, 8, "t=sand", (shared ? "s0" : "u") + "=sand")
        .series("herons", "heron", 4, pitch, 15)
        .placed("shells", "shell", 25, 30, 120, 100, 190, 30);
    for (int i = 0; i < parts.size(); i++) {
      int at = i;
      if (change.night == i) {
        day.endOfDay();
      }
      int more = change.longer == i ? change.minutes : 0;
      day.step(
          n ->
              step(
                  parts.get(at),
                  n,
                  more,
                  change.joined == at,
                  change.free == at,
                  change.blown == at,
                  change.neighbours == at));
    }
    return day.plan();
  }

  /** The same with one person to each step. */
  AnyRun alone() {
    return new AnyRun(
        medium,
        pitch,
        colours,
        table,
        parts.stream()
            .map(p -> new Part(p.kind, p.who, p.who, p.order, p.minutes, p.pause, p.state))
            .toList(),
        shared);
  }

  /** One step; what its numbers mean depends on its kind. */
  record Part(
      int kind, int who, int other, PrintOrder order, int minutes, int pause, boolean state) {

    boolean prints() {
      return kind <= 3;
    }

    boolean everyOther() {
      return kind == 3;
    }
  }

  private Step step(
      Part part, int n, int more, boolean joined, boolean free, boolean blown, boolean neighbours) {
    Begins begins = free ? Begins.WHEN_FREE : Begins.IN_TURN;
    PlanPath path = new PlanPath("run[" + (n - 1) + "]");
    Optional<String> by = Optional.of(PEOPLE.get(part.who));
    return switch (part.kind) {
      case 0, 1, 2, 3 -> print(part, n, path, more, joined, begins, blown, neighbours);
      case 4 ->
          new Step.Dry(
              n,
              part.state
                  ? PrintDay.until(Until.Dryness.FRAME_SAFE)
                  : PrintDay.minutes(part.minutes + more),
              Optional.empty(),
              by,
              path);
      case 5 -> {
        List<String> pastes = new ArrayList<>();
        for (int i = 0; i < colours; i++) {
          pastes.add("p" + i);
        }
        pastes.add("sand");
        yield new Step.Mix(n, pastes, Optional.empty(), by, begins, path);
      }
      case 6 -> new Step.WashScreen(n, List.of("s0", "t"), Optional.empty(), by, begins, path);
      case 7 -> new Step.Rinse(n, new Temperature(20), new Span(part.minutes), by, path);
      default -> new Step.EndOfDay(n, path);
    };
  }

  private Step print(
      Part part,
      int n,
      PlanPath path,
      int more,
      boolean joined,
      Begins begins,
      boolean blown,
      boolean neighbours) {
    List<String> people = new ArrayList<>(List.of(PEOPLE.get(part.who)));
    if (part.other != part.who) {
      people.add(PEOPLE.get(part.other));
    }
    if (joined) {
      PEOPLE.stream().filter(p -> !people.contains(p)).findFirst().ifPresent(people::add);
    }
    return new PrintStep(
        n,
        part.kind == 0
            ? List.of("shells")
            : part.kind == 1 ? List.of("herons", "shells") : List.of("herons"),
        List.of(),
        List.of(),
        part.order,
        part.everyOther(),
        new Span(part.pause),
        Wait.of(
            part.state
                ? PrintDay.until(Until.Dryness.FRAME_SAFE)
                : PrintDay.minutes(part.minutes + more)),
        Wait.of(PrintDay.minutes(part.minutes / 2)),
        Optional.of(people.get(0)),
        people.subList(1, people.size()),
        shared ? Optional.empty() : Optional.of(WASHER),
        Wait.NONE,
        false,
        neighbours ? PrintDay.until(Until.Dryness.FRAME_SAFE) : Until.NO_WAIT,
        Map.of(),
        blown ? PrintDay.air(2.0) : Optional.empty(),
        begins,
        path);
  }

  /** Any of them. */
  static final class Any implements ArbitrarySupplier<AnyRun> {
    @Override
    public Arbitrary<AnyRun> get() {
      Arbitrary<Part> part =
          Combinators.combine(
                  Arbitraries.of(0, 1, 2, 3, 4, 5, 6, 7, 8),
                  Arbitraries.integers().between(0, 2),
                  Arbitraries.integers().between(0, 2),
                  Arbitraries.of(PrintOrder.class),
                  Arbitraries.of(0, 3, 20, 90),
                  Arbitraries.of(0, 0, 2),
                  Arbitraries.of(true, false, false))
              .as(Part::new);
      return Combinators.combine(
              Arbitraries.of(Medium.class),
              Arbitraries.integers().between(35, 65),
              Arbitraries.integers().between(1, 3),
              Arbitraries.of(90, 160, 400),
              part.list().ofMinSize(1).ofMaxSize(6),
              Arbitraries.of(true, false))
          .as(AnyRun::new);
    }
  }
}
