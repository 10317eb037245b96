package strikeoff.timeline;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import strikeoff.plan.Handling;
import strikeoff.plan.Step;
import strikeoff.units.Span;

/**
 * Which paste lies in which screen, and the washing out: at a sink, by one person, and then the
 * screen dries by itself in a drying place.
 */
final class ScreenCare {

  private final Daybook book;
  private final Shared shared;
  private final Handling takes;
  private final Map<String, String> holds = new LinkedHashMap<>();
  private final Map<String, Washed> washed = new LinkedHashMap<>();

  /**
   * How a screen was washed last.
   *
   * @param clean second at which the washing ended
   * @param placed second at which it had a place to dry in
   */
  record Washed(long clean, long placed) {}

  ScreenCare(Daybook book, Shared shared, Handling takes) {
    this.book = book;
    this.shared = shared;
    this.takes = takes;
  }

  void fill(String screen, String paste) {
    holds.put(screen, paste);
  }

  /** How the screen was washed last; long ago if it never was. */
  Washed washed(String screen) {
    return washed.getOrDefault(screen, new Washed(Long.MIN_VALUE, Long.MIN_VALUE));
  }

  /** Washes a screen that holds another paste. */
  void exchange(Step step, String person, String screen, String paste) {
    if (mustWash(screen, paste)) {
      wash(step, person, screen, Daybook.seconds(takes.washScreen()));
    }
  }

  boolean mustWash(String screen, String paste) {
    String now = holds.get(screen);
    return now != null && !now.equals(paste);
  }

  /**
   * Washes out those of some screens that hold paste.
   *
   * @param all the time for all of them; each takes its usual time if it is empty
   */
  void wash(Step step, String person, List<String> screens, Optional<Span> all) {
    List<String> full = screens.stream().distinct().filter(holds::containsKey).toList();
    if (full.isEmpty()) {
      return;
    }
    Optional<Span> each = all.map(span -> new Span(span.minutes() / full.size()));
    long seconds = Daybook.seconds(each.orElse(takes.washScreen()));
    full.forEach(screen -> wash(step, person, screen, seconds));
  }

  /** Washes out every screen that holds paste, but for those that are needed again. */
  void washAllBut(Step step, String person, Set<String> needed) {
    for (String screen : List.copyOf(holds.keySet())) {
      if (!needed.contains(screen)) {
        wash(step, person, screen, Daybook.seconds(takes.washScreen()));
      }
    }
  }

  private void wash(Step step, String person, String screen, long seconds) {
    Task washes =
        shared.book(
            Entry.of(step, Task.Kind.WASH_SCREEN, "wash out " + screen).by(person).screen(screen),
            List.of(Resource.person(person), Resource.screen(screen)),
            Resource.Kind.SINK,
            seconds);
    Task dries =
        shared.book(
            Entry.of(step, Task.Kind.DRY_SCREEN, screen + " dries").screen(screen),
            List.of(Resource.screen(screen)),
            Resource.Kind.DRYING_PLACE,
            Daybook.seconds(takes.dryScreen()));
    washed.put(screen, new Washed(washes.end().seconds(), dries.start().seconds()));
    holds.remove(screen);
  }
}
