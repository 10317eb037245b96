package strikeoff.day;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tuple;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import strikeoff.checks.Draws;
import strikeoff.day.facts.CriticalChain;
import strikeoff.day.facts.RunFigures;
import strikeoff.document.PlanPath;
import strikeoff.layout.Layout;
import strikeoff.layout.Tube;
import strikeoff.plan.Draught;
import strikeoff.plan.Medium;
import strikeoff.plan.PrintOrder;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.PrintSteps;
import strikeoff.plan.Step;
import strikeoff.plan.Until;
import strikeoff.plan.Wait;
import strikeoff.units.AirSpeed;
import strikeoff.units.Span;
import strikeoff.units.Temperature;

/** What the room has to share is never used by more than it can serve, on generated days. */
class SharedRoomProperties {

  private static final List<String> PEOPLE = List.of("Wren", "Tam");

  /** A day of any steps in any order, in a room that has little. */
  record Room(int sinks, int fans, int hairDryers, int places, List<Part> parts) {

    PrintPlan plan() {
      PrintDay day =
          new PrintDay(Medium.PAINT)
              .table(200)
              .equipment(sinks, fans, hairDryers, places)
              .unmixedPaste("p0")
              .paste("p1")
              .paste("p2")
              .design("d", 30, 40, 10, "s0=p1", "s1=p2")
              .design("e", 30, 40, 10, "s2=p1", "s0=p2")
              .series("row", "d", 3, 55, 10)
              .placed("beside", "e", 15, 70, 60, 70);
      parts.forEach(part -> part.into(day));
      return day.plan();
    }
  }

  /** One step by one person; some take a while. */
  record Part(int kind, int person, int other, int minutes) {

    void into(PrintDay day) {
      Optional<String> by = Optional.of(PEOPLE.get(person));
      day.step(
          n -> {
            PlanPath path = new PlanPath("run[" + (n - 1) + "]");
            return switch (kind) {
              case 0 -> new Step.Mix(n, List.of("p0"), Optional.of(new Span(minutes)), by, path);
              case 1, 2 -> print(n, kind == 1 ? "row" : "beside", path);
              case 3 -> new Step.Dry(n, time(), air(Draught.By.FAN), by, path);
              case 4 -> new Step.Dry(n, time(), air(Draught.By.HAIR_DRYER), by, path);
              case 5 ->
                  new Step.Dry(
                      n, PrintDay.until(Until.Dryness.FRAME_SAFE), air(Draught.By.FAN), by, path);
              case 6 -> new Step.Rinse(n, new Temperature(20), new Span(minutes + 1), by, path);
              case 7 -> washScreen(n, List.of("s0", "s1", "s2"), by, path);
              case 8 -> washScreen(n, List.of("s" + minutes % 3), by, path);
              default -> new Step.EndOfDay(n, path);
            };
          });
    }

    private Step print(int n, String what, PlanPath path) {
      return PrintSteps.plain(n, List.of(what), List.of(), List.of(), PrintOrder.BY_COLOUR, path)
          .change()
          .dryBetweenColours(
              new Wait(time(), minutes % 2 == 0 ? air(Draught.By.FAN) : Optional.empty()))
          .beforeMoving(
              new Wait(time(), minutes % 3 == 0 ? Optional.empty() : air(Draught.By.HAIR_DRYER)))
          .by(
              minutes % 3 == 0
                  ? List.of(PEOPLE.get(person), PEOPLE.get(1 - person))
                  : List.of(PEOPLE.get(person)))
          .made()
          .washedBy(PEOPLE.get(other));
    }

    private Step washScreen(int n, List<String> screens, Optional<String> by, PlanPath path) {
      Optional<Span> takes = minutes % 2 == 0 ? Optional.empty() : Optional.of(new Span(minutes));
      return new Step.WashScreen(n, screens, takes, by, path);
    }

    private Until time() {
      return PrintDay.minutes(minutes);
    }

    private static Optional<Draught> air(Draught.By by) {
      return Optional.of(new Draught(by, new AirSpeed(2)));
    }
  }

  @Provide
  Arbitrary<Room> rooms() {
    Arbitrary<Part> part =
        Combinators.combine(
                Arbitraries.frequency(
                    Tuple.of(2, 0),
                    Tuple.of(5, 1),
                    Tuple.of(5, 2),
                    Tuple.of(2, 3),
                    Tuple.of(2, 4),
                    Tuple.of(1, 5),
                    Tuple.of(1, 6),
                    Tuple.of(2, 7),
                    Tuple.of(2, 8),
                    Tuple.of(1, 9)),
                Arbitraries.integers().between(0, 1),
                Arbitraries.integers().between(0, 1),
                Arbitraries.integers().between(0, 50))
            .as(Part::new);
    return Combinators.combine(
            Arbitraries.integers().between(0, 2),
            Arbitraries.integers().between(0, 2),
            Arbitraries.integers().between(0, 2),
            Arbitraries.integers().between(0, 3),
            part.list().ofMinSize(1).ofMaxSize(9))
        .as(Room::new);
  }

  @Property(tries = 1000, seed = Draws.ALIKE)
  void nothingSharedServesMoreThanItCan(@ForAll("rooms") Room room) {
    DayRun day = day(room.plan());
    Map<Resource.Kind, Integer> has =
        Map.of(
            Resource.Kind.SINK, room.sinks(),
            Resource.Kind.FAN, room.fans(),
            Resource.Kind.HAIR_DRYER, room.hairDryers(),
            Resource.Kind.DRYING_PLACE, room.places());
    for (Task task : day.tasks()) {
      int[] atOnce = new int[Resource.Kind.values().length];
      for (Task other : day.tasks()) {
        boolean meanwhile =
            other.start().compareTo(task.start()) <= 0 && other.end().compareTo(task.start()) > 0;
        if (meanwhile && other.kind() != Task.Kind.QUEUE && other.piece().isPresent()) {
          atOnce[other.piece().get().kind().ordinal()]++;
        }
      }
      // A room without one is followed as if it had one, and that is told.
      has.forEach(
          (kind, count) ->
              assertThat(atOnce[kind.ordinal()]).isLessThanOrEqualTo(Math.max(1, count)));
    }
    assertThat(day.run().missing().keySet()).allMatch(kind -> has.get(kind) == 0);
  }

  @Property(tries = 1000, seed = Draws.ALIKE)
  void handsScreensAndPiecesDoOneThingAtATime(@ForAll("rooms") Room room) {
    Map<Resource, Moment> freeAt = new HashMap<>();
    for (Task task : day(room.plan()).tasks()) {
      List<Resource> held = new ArrayList<>();
      task.person().map(Resource::person).ifPresent(held::add);
      task.screen().map(Resource::screen).ifPresent(held::add);
      if (task.kind() != Task.Kind.QUEUE) {
        task.piece().ifPresent(held::add);
      }
      if (task.end().compareTo(task.start()) > 0) {
        for (Resource resource : held) {
          assertThat(task.start())
              .isGreaterThanOrEqualTo(freeAt.getOrDefault(resource, task.start()));
          freeAt.put(resource, task.end());
        }
      }
    }
  }

  @Property(tries = 1000, seed = Draws.ALIKE)
  void whatNeedsASinkHasOneAndNobodyQueuesAtAFreeOne(@ForAll("rooms") Room room) {
    List<Task> tasks = day(room.plan()).tasks();
    for (Task task : tasks) {
      switch (task.kind()) {
        case WASH_SCREEN, RINSE, WASH ->
            assertThat(task.piece().orElseThrow().kind()).isEqualTo(Resource.Kind.SINK);
        case DRY_SCREEN ->
            assertThat(task.piece().orElseThrow().kind()).isEqualTo(Resource.Kind.DRYING_PLACE);
        case QUEUE -> {
          // Whoever had it before lets go just when the queue ends.
          assertThat(task.end()).isGreaterThan(task.start());
          assertThat(tasks)
              .anyMatch(
                  t ->
                      t.kind() != Task.Kind.QUEUE
                          && t.piece().equals(task.piece())
                          && t.end().equals(task.end()));
        }
        default -> {}
      }
    }
  }

  @Property(tries = 1000, seed = Draws.ALIKE)
  void theChainIsAsLongAsTheRunInAnyRoom(@ForAll("rooms") Room room) {
    PrintPlan plan = room.plan();
    DayRun day = day(plan);
    Moment last = day.start();
    for (Task task : day.tasks()) {
      boolean counts =
          task.kind() != Task.Kind.DRY_SCREEN
              && task.kind() != Task.Kind.QUEUE
              && task.kind() != Task.Kind.CLOSED;
      last = counts ? last.later(task.end()) : last;
    }
    double chain = 0;
    for (CriticalChain.Link link : RunFigures.of(day, plan).chain().links()) {
      chain += link.span().minutes();
    }
    assertThat(chain).isCloseTo(last.since(day.start()).minutes(), offset(1e-6));
    assertThat(day.use().waiting().minutes()).isNotNegative();
  }

  /** With as many of all as anybody can ask for at once, nobody queues. */
  @Property(tries = 300, seed = Draws.ALIKE)
  void aRoomWithPlentyHasNoQueues(@ForAll("rooms") Room room) {
    Room plenty = new Room(4, 4, 4, 40, room.parts());
    assertThat(day(plenty.plan()).tasks()).noneMatch(t -> t.kind() == Task.Kind.QUEUE);
  }

  @Property(tries = 1000, seed = Draws.ALIKE)
  void everyPairComparedWithEveryOtherGivesTheSameContactsInAnyRoom(@ForAll("rooms") Room room) {
    PrintPlan plan = room.plan();
    DayRun day = day(plan);
    assertThat(day.contacts())
        .extracting(c -> new ClockProperties.Pair(c.earlier().id(), c.later().id(), c.area()))
        .isEqualTo(ClockProperties.naive(day.impressions(), Tube.of(plan.cloth())));
  }

  /**
   * A sink and one drying place are two machines that every screen passes in the same order: the
   * completion times of a two-machine permutation flow-shop, C2(i) = max(C1(i), C2(i - 1)) + p2, as
   * in S. M. Johnson, Optimal two- and three-stage production schedules, 1954, from memory.
   */
  @Property(tries = 300, seed = Draws.ALIKE)
  void oneSinkAndOnePlaceAreAFlowShopOfTwoMachines(
      @ForAll @Size(min = 1, max = 6) List<@IntRange(min = 1, max = 60) Integer> washing) {
    PrintDay day = new PrintDay(Medium.DYE).equipment(1, 1, 1, 1);
    String[] separations = new String[washing.size()];
    for (int i = 0; i < separations.length; i++) {
      separations[i] = "s" + i + "=p";
    }
    day.paste("p", 1, 60)
        .design("d", 30, 40, 10, separations)
        .placed("one", "d", 20, 20)
        .print("one");
    for (int i = 0; i < separations.length; i++) {
      int screen = i;
      day.step(
          n ->
              new Step.WashScreen(
                  n,
                  List.of("s" + screen),
                  Optional.of(new Span(washing.get(screen))),
                  Optional.empty(),
                  new PlanPath("run[" + (n - 1) + "]")));
    }
    List<Task> tasks = day(day.plan()).tasks();
    // load 15 min, and 50 s for each colour
    long first = Moment.of(1, 9 * 60 + 15).seconds() + 50L * washing.size();
    long second = 0;
    for (int i = 0; i < separations.length; i++) {
      first += 60L * washing.get(i);
      second = Math.max(first, second) + 30 * 60;
      assertThat(end(tasks, Task.Kind.WASH_SCREEN, "s" + i)).isEqualTo(first);
      assertThat(end(tasks, Task.Kind.DRY_SCREEN, "s" + i)).isEqualTo(second);
    }
  }

  private static long end(List<Task> tasks, Task.Kind kind, String screen) {
    return tasks.stream()
        .filter(t -> t.kind() == kind && t.screen().equals(Optional.of(screen)))
        .findFirst()
        .orElseThrow()
        .end()
        .seconds();
  }

  private static DayRun day(PrintPlan plan) {
    return DayRun.of(plan, Layout.of(plan, PrintDay.POLICY), PrintDay.POLICY);
  }

  /** Found by the law above: a wait for a screen begins when its printer comes from the sink. */
  @Example
  void aWaitThatBeginsLateHangsOnWhoCameLate() {
    theChainIsAsLongAsTheRunInAnyRoom(
        new Room(
            0,
            0,
            0,
            0,
            List.of(
                new Part(2, 0, 1, 0),
                new Part(1, 0, 0, 0),
                new Part(0, 0, 0, 23),
                new Part(7, 0, 0, 0))));
  }
}
