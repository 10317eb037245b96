package strikeoff.day;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import strikeoff.layout.Footprint;

/** What the screens that hold paste are still needed for on a day, as its prints are made. */
final class StillNeeded {

  private final Map<String, Deque<String>> inStep = new HashMap<>();
  private final Map<String, Optional<String>> later;
  private final Set<String> othersWash;

  /** No screen is needed any more. */
  static final StillNeeded NOTHING = new StillNeeded(Map.of(), Set.of());

  /**
   * @param later screens that later steps of the day print with, with the paste they use there
   *     first, or without one if a step washes them out before that
   * @param othersWash those of them that a step washes out at once, by somebody whose hands are
   *     free
   */
  StillNeeded(Map<String, Optional<String>> later, Set<String> othersWash) {
    this.later = later;
    this.othersWash = othersWash;
  }

  /**
   * The present step prints this, in this order of each screen's lays.
   *
   * @param frames all of the step
   */
  void toPrint(List<Footprint> frames) {
    for (Footprint frame : frames) {
      inStep
          .computeIfAbsent(frame.screen().name(), s -> new ArrayDeque<>())
          .add(frame.paste().name());
    }
  }

  /** A screen has been printed with. */
  void printed(String screen) {
    Deque<String> left = inStep.get(screen);
    if (left != null) {
      left.poll();
    }
  }

  /** True if a screen is to stay as it is with the paste it holds, or is left to another step. */
  boolean stays(String screen, String holds) {
    Optional<String> next = nextPaste(screen);
    return next.isPresent() ? next.get().equals(holds) : later.containsKey(screen);
  }

  /** True if it prints again that day with the paste it holds. */
  boolean printsAgain(String screen, String holds) {
    return nextPaste(screen).equals(Optional.of(holds));
  }

  /** True if somebody else washes it out at once by a step of the plan. */
  boolean leftToOthers(String screen) {
    return nextPaste(screen).isEmpty() && othersWash.contains(screen);
  }

  /** The paste it prints with next; none if it is washed by a step before, or not needed. */
  private Optional<String> nextPaste(String screen) {
    Deque<String> left = inStep.get(screen);
    return left != null && !left.isEmpty()
        ? Optional.of(left.peek())
        : later.getOrDefault(screen, Optional.empty());
  }
}
