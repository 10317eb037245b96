package strikeoff.day;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import strikeoff.checks.Draws;
import strikeoff.document.PlanPath;
import strikeoff.plan.Begins;
import strikeoff.plan.DyeFixing;
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
 * A clock of its own, which knows no bookings: it goes through a day minute by minute, and in each
 * minute looks who and what has something to do. What plans/README.md says of steps, hands, the
 * cloth and breaks is written down here a second time. All times are whole minutes.
 */
class MinuteByMinuteProperties {

  private static final List<String> PEOPLE = List.of("Wren", "Tam", "Ada");
  private static final int OPENS = 540;
  private static final int LOAD = 15;
  private static final int WASH = 10;

  enum Kind {
    MIX,
    PRINT,
    DRY,
    RINSE,
    BATCH
  }

  /**
   * One step.
   *
   * @param place where a print lies, from 0
   * @param begins beside the step above it; only a mixing and a print can choose
   */
  record Part(Kind kind, int person, int minutes, int place, Begins begins) {

    Part {
      begins = kind == Kind.MIX || kind == Kind.PRINT ? begins : Begins.IN_TURN;
    }
  }

  /**
   * A day.
   *
   * @param rests minutes of work and of rest by turns from the opening on
   */
  record Day(List<Part> parts, List<Integer> rests) {

    List<Hours.Break> breaks() {
      List<Hours.Break> breaks = new ArrayList<>();
      int at = OPENS;
      for (int i = 0; i + 1 < rests.size(); i += 2) {
        breaks.add(new Hours.Break(at + rests.get(i), at + rests.get(i) + rests.get(i + 1)));
        at += rests.get(i) + rests.get(i + 1);
      }
      return breaks;
    }

    PrintPlan plan() {
      PrintDay day =
          new PrintDay(Medium.DYE)
              .crew(PEOPLE.toArray(String[]::new))
              .table(400)
              .equipment(9, 1, 1, 20)
              .hours(new Hours.Day(OPENS, 1440, breaks()))
              .handling(handling())
              .unmixedPaste("other");
      for (int i = 0; i < parts.size(); i++) {
        Part part = parts.get(i);
        if (part.kind == Kind.PRINT) {
          day.paste("p" + i)
              .design("d" + i, 30, 40, 10, "s" + i + "=p" + i)
              .placed("m" + i, "d" + i, 20 + 100 * part.place, 20);
        }
      }
      for (int i = 0; i < parts.size(); i++) {
        int at = i;
        day.step(n -> step(parts.get(at), at, n));
      }
      return day.plan();
    }
  }

  /** A print takes a minute in all, and no part of it for laying the frame. */
  private static Handling handling() {
    return new Handling(
        Span.ofSeconds(0),
        Span.ofSeconds(20),
        Span.ofSeconds(20),
        new Span(LOAD),
        new Span(10),
        new Span(10),
        new Span(30),
        new Span(15),
        new Span(WASH),
        new Span(30),
        new PlanPath("handling"));
  }

  private static Step step(Part part, int i, int n) {
    PlanPath path = new PlanPath("run[" + (n - 1) + "]");
    Optional<String> by = Optional.of(PEOPLE.get(part.person));
    Span takes = new Span(part.minutes);
    return switch (part.kind) {
      case MIX -> new Step.Mix(n, List.of("other"), Optional.of(takes), by, part.begins, path);
      case PRINT ->
          new PrintStep(
              n,
              List.of("m" + i),
              List.of(),
              List.of(),
              PrintOrder.BY_COLOUR,
              false,
              new Span(0),
              Wait.NONE,
              Wait.NONE,
              by,
              List.of(),
              Optional.empty(),
              Wait.NONE,
              false,
              Until.NO_WAIT,
              Map.of(),
              Optional.empty(),
              part.begins,
              path);
      case DRY -> new Step.Dry(n, PrintDay.minutes(part.minutes), Optional.empty(), by, path);
      case RINSE -> new Step.Rinse(n, new Temperature(20), takes, by, path);
      case BATCH ->
          new Step.Fix(
              n, DyeFixing.BATCH, List.of(), new Temperature(20), takes, Optional.empty(), path);
    };
  }

  /** The day once more, minute by minute. */
  private static final class Clock {
    private final Map<String, BitSet> busy = new HashMap<>();
    private final BitSet rest = new BitSet();
    private int begun = OPENS;

    /** When the cloth was last laid, taken up or left to dry. */
    private int touched = OPENS;

    private boolean lies;

    Clock(Day day) {
      day.breaks().forEach(rest -> this.rest.set(rest.from(), rest.to()));
      // It is laid first, unless it is taken up before it is printed.
      List<Part> onCloth =
          day.parts().stream().filter(p -> p.kind != Kind.MIX && p.kind != Kind.DRY).toList();
      if (!onCloth.isEmpty() && onCloth.get(0).kind == Kind.PRINT) {
        touched = work(OPENS, LOAD, true, PEOPLE.get(0), "cloth") + LOAD;
        lies = true;
      }
    }

    /** In the first minute in which nobody and nothing that it takes is busy any more. */
    private int work(int from, int minutes, boolean hands, String... takes) {
      int minute = from;
      while (hands && rest.get(minute) || busyFrom(minute, takes)) {
        minute++;
      }
      for (String one : takes) {
        busy.computeIfAbsent(one, o -> new BitSet()).set(minute, minute + minutes);
      }
      return minute;
    }

    private boolean busyFrom(int minute, String... takes) {
      for (String one : takes) {
        if (busy.getOrDefault(one, new BitSet()).nextSetBit(minute) >= 0) {
          return true;
        }
      }
      return false;
    }

    /** When the step's own work begins. */
    int step(Part part) {
      String who = PEOPLE.get(part.person);
      int from =
          switch (part.begins) {
            case IN_TURN -> begun;
            case WHEN_FREE -> OPENS;
            case WHEN_DONE ->
                Math.max(begun, busy.values().stream().mapToInt(BitSet::length).max().orElse(0));
          };
      int first;
      int own;
      if (part.kind == Kind.MIX) {
        own = first = work(from, part.minutes, true, who);
      } else if (part.kind == Kind.PRINT) {
        first = lies ? -1 : work(from, LOAD, true, who, "cloth");
        touched = lies ? touched : first + LOAD;
        lies = true;
        boolean beside = part.begins == Begins.WHEN_FREE;
        own =
            beside
                ? work(touched, 1, true, who, "place " + part.place)
                : work(from, 1, true, who, "cloth");
        for (String held : List.of("cloth", "place " + part.place)) {
          busy.computeIfAbsent(held, o -> new BitSet()).set(own);
        }
        first = first < 0 ? own : first;
        work(own + 1, WASH, true, who);
      } else {
        own =
            first =
                switch (part.kind) {
                  case RINSE -> work(from, part.minutes, true, who, "cloth");
                  case BATCH -> work(from, part.minutes, true, "cloth");
                  default -> work(from, part.minutes, false, "cloth");
                };
        touched = own + part.minutes;
        lies &= part.kind == Kind.DRY;
      }
      begun = part.begins == Begins.WHEN_FREE ? begun : first;
      return own;
    }
  }

  @Provide
  Arbitrary<Day> days() {
    Arbitrary<Part> part =
        Combinators.combine(
                Arbitraries.of(Kind.class),
                Arbitraries.integers().between(0, 2),
                Arbitraries.integers().between(1, 40),
                Arbitraries.integers().between(0, 2),
                Arbitraries.of(Begins.class))
            .as(Part::new);
    return Combinators.combine(
            part.list().ofMinSize(1).ofMaxSize(7),
            Arbitraries.integers().between(1, 60).list().ofMaxSize(6))
        .as(Day::new);
  }

  @Property(tries = 2000, seed = Draws.ALIKE)
  void everyStepBeginsInTheMinuteInWhichItCan(@ForAll("days") Day day) {
    DayRun run = SmallDay.day(day.plan());
    Clock clock = new Clock(day);
    List<Integer> asRun = new ArrayList<>();
    List<Integer> asClocked = new ArrayList<>();
    IntStream.range(0, day.parts().size())
        .forEach(
            i -> {
              Task.Kind kind =
                  switch (day.parts().get(i).kind) {
                    case MIX -> Task.Kind.MIX;
                    case PRINT -> Task.Kind.PRINT;
                    case DRY -> Task.Kind.WAIT;
                    case RINSE -> Task.Kind.RINSE;
                    case BATCH -> Task.Kind.FIX;
                  };
              asClocked.add(clock.step(day.parts().get(i)));
              run.tasks().stream()
                  .filter(t -> t.step() == i + 1 && t.kind() == kind)
                  .findFirst()
                  .ifPresent(t -> asRun.add((int) (t.start().seconds() / 60)));
            });
    assertThat(asRun).isEqualTo(asClocked);
  }
}
