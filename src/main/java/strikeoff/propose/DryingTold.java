package strikeoff.propose;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import strikeoff.day.facts.Rehearsal;
import strikeoff.layout.Footprint;
import strikeoff.plan.Design;
import strikeoff.plan.Draught;
import strikeoff.plan.Until.Dryness;
import strikeoff.units.Span;

/**
 * Says in a run's comments how long its felt waits are: who stands at the table needs minutes, and
 * the state as well.
 */
final class DryingTold {

  private final List<Footprint> prints;
  private final Map<Key, Optional<Times>> times = new HashMap<>();

  private record Key(Design.Separation separation, Dryness state, Optional<Draught> air) {}

  /**
   * @param ordinary from the print on, on an ordinary day
   */
  private record Times(Span ordinary, Span slow) {

    Times or(Times other) {
      return new Times(longer(ordinary, other.ordinary), longer(slow, other.slow));
    }

    private static Span longer(Span a, Span b) {
      return a.compareTo(b) >= 0 ? a : b;
    }

    String text() {
      if (slow.minutes() < 1) {
        return "in less than a minute";
      }
      String usual = ordinary.minutes() < 1 ? "a minute" : ordinary.wholeMinutesUp().text();
      String slowly = slow.wholeMinutesUp().text();
      return usual.equals(slowly)
          ? "about " + usual
          : "about " + usual + ", on a slow day " + slowly;
    }
  }

  private DryingTold() {
    this.prints = List.of();
  }

  /** Says nothing of any wait. */
  static DryingTold nothing() {
    return new DryingTold();
  }

  /** All that may be asked, since searches share it. */
  DryingTold(Leeway leeway, Rehearsal rehearsal) {
    this.prints = leeway.layout().footprints();
    for (Footprint print : prints) {
      for (Dryness state : Dryness.values()) {
        for (Optional<Draught> air : leeway.airs()) {
          times.computeIfAbsent(
              new Key(print.separation(), state, air),
              key ->
                  rehearsal
                      .dries(print, state, air, false)
                      .flatMap(
                          usual ->
                              rehearsal
                                  .dries(print, state, air, true)
                                  .map(slow -> new Times(usual, slow))));
        }
      }
    }
  }

  /**
   * How long the slowest of some films takes.
   *
   * @return with a colon and a space at its end; nothing where one of them never is in that state
   */
  String of(Predicate<Footprint> films, Dryness state, Optional<Draught> air) {
    Times most = null;
    for (Footprint print : prints) {
      if (films.test(print)) {
        Optional<Times> takes =
            times.getOrDefault(new Key(print.separation(), state, air), Optional.empty());
        if (takes.isEmpty()) {
          return "";
        }
        most = most == null ? takes.get() : most.or(takes.get());
      }
    }
    return most == null ? "" : most.text() + ": ";
  }
}
