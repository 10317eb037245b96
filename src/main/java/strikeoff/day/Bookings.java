package strikeoff.day;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The core of the clock: until when each resource is held. Operations are booked in the order they
 * are written; each starts at the first second at which everything it needs is free. Nothing is
 * slipped into an earlier gap, since people work in the order of their plan.
 */
final class Bookings {

  /** Longer than any operation of a print day, so that sums of seconds cannot overflow. */
  private static final long LONGEST = 10L * 366 * 86_400;

  private static final long NEVER_HELD = Long.MIN_VALUE / 4;

  private final Map<Resource, Held> held = new HashMap<>();

  /** Until when one is held. */
  private static final class Held {
    long until = NEVER_HELD;
  }

  /** When all of them are free, not before {@code earliest}. */
  long start(List<Resource> resources, long earliest) {
    long start = earliest;
    for (Resource resource : resources) {
      start = Math.max(start, freeAt(resource));
    }
    return start;
  }

  /** When one is free; the start of time if it was never held. */
  long freeAt(Resource resource) {
    Held now = held.get(resource);
    return now == null ? NEVER_HELD : now.until;
  }

  /**
   * Holds resources from a start on.
   *
   * @return the end
   * @throws IllegalStateException if one of them is still held at the start: a fault of the caller
   */
  long hold(List<Resource> resources, long start, long seconds) {
    long end = start + Math.min(LONGEST, Math.max(0, seconds));
    for (Resource resource : resources) {
      Held now = held.computeIfAbsent(resource, r -> new Held());
      if (now.until > start) {
        throw new IllegalStateException(resource.name() + " is held at " + new Moment(start));
      }
      now.until = end;
    }
    return end;
  }
}
