package strikeoff.plan;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import strikeoff.document.PlanPath;
import strikeoff.plan.Until.Dryness;
import strikeoff.units.Span;

/**
 * Print arrangements.
 *
 * @param arrangements names, printed one after the other
 * @param only numbers of the placements to print, from 1; empty for all
 * @param separations numbers of the separations to print, in this order, from 1; empty for all in
 *     the design's order
 * @param order in which order colours, stations and sets are worked
 * @param everyOther true to print placements 1, 3, 5 … of a set and then 2, 4, 6 … in each colour
 * @param pause waiting after each impression before the next frame is laid
 * @param dryBetweenColours waiting after each colour before the next one starts
 * @param beforeMoving waiting before the cloth moves on to the next set, and on to this step's
 *     first set
 * @param by who prints; empty for the first of the crew
 * @param also who prints at the same time: colours, or stations, go round among them and the first
 *     one
 * @param washes who washes screens out; empty for whoever prints
 * @param dryBetweenPasses waiting after placements 1, 3, 5 … before 2, 4, 6 … are printed between
 *     them; only where every other one is printed
 * @param washBetweenColours true to wash each screen out before the next one prints
 * @param dryBetweenNeighbours waiting before a frame lies on films of its own colour beside it
 * @param numbers of an arrangement, where they differ from one to the next; for those that it does
 *     not name, {@code only} holds
 * @param air what moves the air over the cloth for as long as the step prints; empty for the room's
 *     own
 * @param begins when free to print beside the step above it
 */
public record PrintStep(
    int number,
    List<String> arrangements,
    List<Integer> only,
    List<Integer> separations,
    PrintOrder order,
    boolean everyOther,
    Span pause,
    Wait dryBetweenColours,
    Wait beforeMoving,
    Optional<String> by,
    List<String> also,
    Optional<String> washes,
    Wait dryBetweenPasses,
    boolean washBetweenColours,
    Until dryBetweenNeighbours,
    Map<String, List<Integer>> numbers,
    Optional<Draught> air,
    Begins begins,
    PlanPath path)
    implements Step {

  public PrintStep {
    arrangements = List.copyOf(arrangements);
    only = List.copyOf(only);
    separations = List.copyOf(separations);
    also = List.copyOf(also);
    numbers = Collections.unmodifiableMap(new LinkedHashMap<>(numbers));
  }

  @Override
  public boolean feels() {
    return dryBetweenColours.until() instanceof Until.State
        || dryBetweenPasses.until() instanceof Until.State
        || dryBetweenNeighbours instanceof Until.State
        || beforeMoving.until() instanceof Until.State;
  }

  @Override
  public Map<PlanPath, Draught> draughts() {
    Map<PlanPath, Draught> all = new LinkedHashMap<>();
    air.ifPresent(draught -> all.put(path.key("air"), draught));
    dryBetweenColours
        .air()
        .ifPresent(air -> all.put(path.key("dry between colours").key("air"), air));
    dryBetweenPasses
        .air()
        .ifPresent(air -> all.put(path.key("dry between passes").key("air"), air));
    beforeMoving.air().ifPresent(air -> all.put(path.key("before moving").key("air"), air));
    return all;
  }

  /** Numbers of the placements of an arrangement that it prints, from 1; empty for all. */
  public List<Integer> only(String arrangement) {
    return numbers.getOrDefault(arrangement, only);
  }

  /** True if it prints a placement. */
  public boolean prints(String arrangement, int number) {
    List<Integer> own = only(arrangement);
    return arrangements.contains(arrangement) && (own.isEmpty() || own.contains(number));
  }

  /** True if frames wait for films of their own colour beside them. */
  public boolean mindsNeighbours() {
    return dryBetweenNeighbours.isWait();
  }

  /** True if it is printed beside others: by several, or beside the step above it. */
  public boolean beside() {
    return !also.isEmpty() || begins == Begins.WHEN_FREE;
  }

  /** The same step, to be changed in some of its values. */
  public PrintChange change() {
    return new PrintChange(this);
  }

  /** The same step, printed by the first of its people alone. */
  public PrintStep byOne() {
    return by(by.stream().toList());
  }

  /**
   * The same step, printed by others.
   *
   * @param people who; none for the first of the crew
   */
  public PrintStep by(List<String> people) {
    return change().by(people).made();
  }

  /** The same step, with somebody who washes its screens out. */
  public PrintStep washedBy(String person) {
    return change().washedBy(person).made();
  }

  @Override
  public Optional<Dryness> needs() {
    return Optional.of(Dryness.LIFT_SAFE);
  }

  @Override
  public PrintStep at(int place) {
    return change().at(place).made();
  }

  /** Who prints it, if the plan says so. */
  public List<String> people() {
    return Stream.concat(by.stream(), also.stream()).toList();
  }
}
