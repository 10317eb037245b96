package strikeoff.propose;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import strikeoff.plan.Begins;
import strikeoff.plan.Draught;
import strikeoff.plan.PrintOrder;
import strikeoff.plan.PrintStep;
import strikeoff.plan.Step;
import strikeoff.plan.Until;
import strikeoff.plan.Wait;
import strikeoff.units.Span;

/** A print step that is being written. */
final class PrintDraft {

  List<String> arrangements;
  List<Integer> only;
  List<Integer> colours;
  PrintOrder order;
  boolean everyOther;
  Span pause;
  Wait betweenColours;
  Wait beforeMoving;
  Wait betweenPasses;
  List<String> people;
  Optional<String> washes;
  boolean washBetweenColours;
  Until betweenNeighbours = Until.NO_WAIT;
  Optional<Draught> air = Optional.empty();
  Begins begins = Begins.IN_TURN;
  private Map<String, List<Integer>> numbers = Map.of();

  PrintDraft(List<String> arrangements, List<Integer> only, List<String> people) {
    this.arrangements = arrangements;
    this.only = only;
    this.colours = List.of();
    this.order = PrintOrder.BY_COLOUR;
    this.pause = new Span(0);
    this.betweenColours = Wait.NONE;
    this.beforeMoving = Wait.NONE;
    this.betweenPasses = Wait.NONE;
    this.people = people;
    this.washes = Optional.empty();
  }

  PrintDraft(PrintStep step) {
    this.arrangements = step.arrangements();
    this.only = step.only();
    this.colours = step.separations();
    this.order = step.order();
    this.everyOther = step.everyOther();
    this.pause = step.pause();
    this.betweenColours = step.dryBetweenColours();
    this.beforeMoving = step.beforeMoving();
    this.betweenPasses = step.dryBetweenPasses();
    this.people = step.people();
    this.washes = step.washes();
    this.washBetweenColours = step.washBetweenColours();
    this.betweenNeighbours = step.dryBetweenNeighbours();
    this.numbers = step.numbers();
    this.air = step.air();
    this.begins = step.begins();
  }

  /**
   * Prints these and no others.
   *
   * @param each numbers of the placements of each arrangement, in the order of printing; empty for
   *     all of them
   */
  void prints(Map<String, List<Integer>> each) {
    arrangements = List.copyOf(each.keySet());
    boolean alike = each.values().stream().distinct().count() == 1;
    only = alike ? each.values().iterator().next() : List.of();
    numbers = alike ? Map.of() : each;
  }

  /** What the language lets nobody write together is left out. */
  PrintStep step() {
    boolean several = people.size() > 1 || begins == Begins.WHEN_FREE;
    boolean passes = everyOther && !several;
    return new PrintStep(
        1,
        arrangements,
        only,
        colours,
        arrangements.size() < 2 && order == PrintOrder.SET_BY_SET ? PrintOrder.BY_COLOUR : order,
        everyOther,
        pause,
        betweenColours,
        beforeMoving,
        people.stream().findFirst(),
        people.stream().skip(1).toList(),
        washes,
        passes ? betweenPasses : Wait.NONE,
        washBetweenColours && !several && order != PrintOrder.BY_STATION,
        betweenNeighbours,
        numbers,
        air,
        begins,
        Step.path(1));
  }
}
