package strikeoff.propose;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import strikeoff.plan.Draught;
import strikeoff.plan.Step;
import strikeoff.plan.Until;
import strikeoff.plan.Wait;
import strikeoff.units.Span;

/** A print step that is being written. */
final class PrintDraft {

  List<String> arrangements;
  List<Integer> only;
  List<Integer> colours;
  Step.Order order;
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
  Step.Begins begins = Step.Begins.IN_TURN;
  private Map<String, List<Integer>> numbers = Map.of();

  PrintDraft(List<String> arrangements, List<Integer> only, List<String> people) {
    this.arrangements = arrangements;
    this.only = only;
    this.colours = List.of();
    this.order = Step.Order.BY_COLOUR;
    this.pause = new Span(0);
    this.betweenColours = Wait.NONE;
    this.beforeMoving = Wait.NONE;
    this.betweenPasses = Wait.NONE;
    this.people = people;
    this.washes = Optional.empty();
  }

  PrintDraft(Step.Print step) {
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
  Step.Print step() {
    boolean several = people.size() > 1 || begins == Step.Begins.WHEN_FREE;
    boolean passes = everyOther && !several;
    return new Step.Print(
        1,
        arrangements,
        only,
        colours,
        arrangements.size() < 2 && order == Step.Order.SET_BY_SET ? Step.Order.BY_COLOUR : order,
        everyOther,
        pause,
        betweenColours,
        beforeMoving,
        people.stream().findFirst(),
        people.stream().skip(1).toList(),
        washes,
        passes ? betweenPasses : Wait.NONE,
        washBetweenColours && !several && order != Step.Order.BY_STATION,
        betweenNeighbours,
        numbers,
        air,
        begins,
        Step.path(1));
  }
}
