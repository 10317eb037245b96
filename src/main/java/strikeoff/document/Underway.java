package strikeoff.document;

import java.util.EnumMap;
import java.util.Map;

/**
 * How far the work on a plan has come and how much there turned out to be of it, for whoever waits
 * and may give it up. The thread that works notes it; where nobody waits, noting does nothing.
 */
public final class Underway {

  private static final ThreadLocal<Underway> OF_THIS_THREAD = new ThreadLocal<>();

  /** What is done with a plan, in this order. */
  public enum Stage {
    NOTHING,
    READING,
    DERIVING,
    JUDGING,
    MENDING,
    TELLING
  }

  /** What a plan can have much of. */
  public enum Much {
    BYTES,
    FILMS,
    POINTS,
    SEPARATIONS,
    STEPS,
    COPIES,
    PRINTS,
    IMPRESSIONS,
    CONTACTS
  }

  private final Map<Much, Long> much = new EnumMap<>(Much.class);
  private Stage stage = Stage.NOTHING;

  private Underway() {}

  /** What this thread notes from now on. */
  public static Underway begin() {
    Underway underway = new Underway();
    OF_THIS_THREAD.set(underway);
    return underway;
  }

  /** A stage begins. Trials do all of it again, within theirs: stages don't go back. */
  public static void at(Stage next) {
    Underway own = OF_THIS_THREAD.get();
    if (own != null) {
      own.begins(next);
    }
  }

  /** There is so much. */
  public static void has(Much of, long many) {
    Underway own = OF_THIS_THREAD.get();
    if (own != null) {
      own.put(of, many, false);
    }
  }

  /** There is so much more. */
  public static void more(Much of, long many) {
    Underway own = OF_THIS_THREAD.get();
    if (own != null) {
      own.put(of, many, true);
    }
  }

  private synchronized void begins(Stage next) {
    stage = next.compareTo(stage) > 0 ? next : stage;
  }

  /** What trials come to is not the plan's. */
  private synchronized void put(Much of, long many, boolean add) {
    if (stage.compareTo(Stage.MENDING) < 0) {
      much.merge(of, many, (old, now) -> add ? old + now : now);
    }
  }

  public synchronized Stage stage() {
    return stage;
  }

  /** How much there is, as far as it is known; 0 if it isn't. */
  public synchronized long of(Much what) {
    return much.getOrDefault(what, 0L);
  }
}
