package strikeoff.day;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToLongFunction;
import strikeoff.layout.Footprint;
import strikeoff.plan.Handling;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.PrintStep;
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
  private final List<String> crew;
  private final ToLongFunction<String> stands;
  private final Map<String, Held> holds = new LinkedHashMap<>();
  private final Map<String, Washed> washed = new LinkedHashMap<>();
  private StillNeeded needed = StillNeeded.NOTHING;

  /**
   * What lies in a screen.
   *
   * @param dries second at which it begins to clog the mesh
   */
  private record Held(String paste, long dries) {}

  /**
   * How a screen was washed last.
   *
   * @param clean second at which the washing ended
   * @param placed second at which it had a place to dry in
   */
  record Washed(long clean, long placed) {}

  /**
   * @param stands how many seconds a paste stands in a mesh before it clogs
   */
  ScreenCare(PrintPlan plan, Daybook book, Shared shared, ToLongFunction<String> stands) {
    this.stands = stands;
    this.book = book;
    this.shared = shared;
    this.takes = plan.handling();
    this.crew = plan.crew().names();
  }

  /** What screens are needed for from now on. */
  void needed(StillNeeded fromNowOn) {
    needed = fromNowOn;
  }

  /** The present step prints this, in this order of each screen's lays. */
  void toPrint(List<Footprint> frames) {
    needed.toPrint(frames);
  }

  /** Who washes a step's next screen out: of several who print whoever is free first. */
  private String washer(PrintStep step) {
    return step.also().isEmpty() || step.washes().isPresent()
        ? step.washes().or(step::by).orElse(crew.get(0))
        : step.people().stream()
            .min(
                Comparator.comparingLong(
                    who -> Math.max(book.floor(), book.freeAt(Resource.person(who)))))
            .orElseThrow();
  }

  /** It prints with a paste until then. */
  void fill(String screen, String paste, long lifted) {
    holds.remove(screen);
    holds.put(screen, new Held(paste, lifted + stands.applyAsLong(paste)));
    needed.printed(screen);
  }

  /**
   * In the order in which their paste would dry in them; of those that are left at the same second
   * the one that was laid first.
   */
  private List<String> firstToDry() {
    return holds.entrySet().stream()
        .sorted(Comparator.comparingLong(held -> held.getValue().dries()))
        .map(Map.Entry::getKey)
        .toList();
  }

  /** How the screen was washed last; long ago if it never was. */
  Washed washed(String screen) {
    return washed.getOrDefault(screen, new Washed(Long.MIN_VALUE, Long.MIN_VALUE));
  }

  /** Washes a screen that holds another paste. */
  void exchange(PrintStep step, String screen, String paste) {
    if (mustWash(screen, paste)) {
      wash(step, washer(step), screen, Daybook.seconds(takes.washScreen()));
    }
  }

  boolean mustWash(String screen, String paste) {
    Held now = holds.get(screen);
    return now != null && !now.paste().equals(paste);
  }

  /** Washes out those of a step's screens that hold paste. */
  void wash(Step.WashScreen step) {
    List<String> full = firstToDry().stream().filter(step.screens()::contains).toList();
    if (full.isEmpty()) {
      return;
    }
    Optional<Span> each = step.takes().map(span -> new Span(span.minutes() / full.size()));
    long seconds = Daybook.seconds(each.orElse(takes.washScreen()));
    full.forEach(screen -> wash(step, step.by().orElse(crew.get(0)), screen, seconds));
  }

  /** A print step is done: washes out every screen that holds paste and does not stay as it is. */
  void washUp(PrintStep step) {
    for (String screen : firstToDry()) {
      if (!needed.stays(screen, holds.get(screen).paste())) {
        wash(step, screen);
      }
    }
  }

  /** Washes a screen out at once. */
  void wash(PrintStep step, String screen) {
    wash(step, washer(step), screen, Daybook.seconds(takes.washScreen()));
  }

  /**
   * While the cloth waits: washes out what is not needed as it is, and what would clog before the
   * wait is over, each if it is done, and dry where it has to be, when the wait ends. First by
   * whoever washes for the step, else by the first of the crew who has the time. The task booked
   * last is the wait.
   */
  void washMeanwhile(Step step, long from, long until) {
    int wait = book.tasks().size() - 1;
    long seconds = Daybook.seconds(takes.washScreen());
    if (until - from < seconds) {
      return;
    }
    List<String> people = new ArrayList<>();
    people.add(
        step instanceof PrintStep print
            ? washer(print)
            : (step instanceof Step.Dry dry ? dry.by() : Optional.<String>empty())
                .orElse(crew.get(0)));
    crew.stream().filter(who -> !people.contains(who)).forEach(people::add);
    for (String screen : firstToDry()) {
      Held held = holds.get(screen);
      boolean stays = needed.stays(screen, held.paste());
      if (stays && (held.dries() >= until || needed.leftToOthers(screen))) {
        continue;
      }
      boolean mustDry = needed.printsAgain(screen, held.paste());
      people.stream()
          .filter(who -> fits(step, who, screen, from, until, mustDry))
          .findFirst()
          .ifPresent(who -> wash(step, who, screen, seconds, from, book.heldUp().by(wait)));
    }
  }

  private boolean fits(
      Step step, String person, String screen, long from, long until, boolean mustDry) {
    long ready = book.start(washedBy(person, screen), from);
    long clean =
        book.over(shared.readyAt(Resource.Kind.SINK, ready, step))
            + Daybook.seconds(takes.washScreen());
    return mustDry
        ? shared.readyAt(Resource.Kind.DRYING_PLACE, clean, step)
                + Daybook.seconds(takes.dryScreen())
            <= until
        : clean <= until;
  }

  private static List<Resource> washedBy(String person, String screen) {
    return List.of(Resource.person(person), Resource.screen(screen));
  }

  private void wash(Step step, String person, String screen, long seconds) {
    wash(step, person, screen, seconds, Long.MIN_VALUE, HeldUp.NOBODY);
  }

  private void wash(Step step, String person, String screen, long seconds, long from, int after) {
    Task washes =
        shared.book(
            Entry.of(step, Task.Kind.WASH_SCREEN, new Doing.WashOut(screen))
                .by(person)
                .screen(screen),
            washedBy(person, screen),
            Resource.Kind.SINK,
            seconds,
            from,
            after);
    Task dries =
        shared.book(
            Entry.of(step, Task.Kind.DRY_SCREEN, new Doing.ScreenDries(screen)).screen(screen),
            List.of(Resource.screen(screen)),
            Resource.Kind.DRYING_PLACE,
            Daybook.seconds(takes.dryScreen()));
    washed.put(screen, new Washed(washes.end().seconds(), dries.start().seconds()));
    holds.remove(screen);
  }
}
