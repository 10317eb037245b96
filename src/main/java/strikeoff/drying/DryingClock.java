package strikeoff.drying;

import java.util.AbstractList;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import strikeoff.plan.Medium;
import strikeoff.plan.Until.Dryness;
import strikeoff.units.Span;

/**
 * Drying through air that changes: a fan in a drying step, a hair-dryer, the still room at night.
 *
 * <p>For each medium it keeps how much water an open film would have lost since the start, at the
 * slowest, best and fastest rate. A film that began at some second has reached a state once that
 * sum has grown by what it needs, which makes every question a search in a short list however long
 * the film has lain. The last air goes on for ever. Times are whole seconds of the caller's clock.
 */
public final class DryingClock {

  /** A state that is not reached in any time worth telling. */
  public static final long NEVER = Long.MAX_VALUE / 4;

  private final Drying drying;
  private final Air room;
  private final long longest;
  private long changed;
  private Air blowing;
  private final Map<Medium, List<Sums>> sums = new EnumMap<>(Medium.class);

  /**
   * @param room the air in which times were measured, and the first air
   * @param start second at which the clock starts
   * @param longest drying time that counts as never
   */
  public DryingClock(Drying drying, Air room, long start, Span longest) {
    this.drying = drying;
    this.room = room;
    this.changed = start;
    this.blowing = room;
    this.longest = (long) Math.min(longest.seconds(), NEVER / 2.0);
    for (Medium medium : Medium.values()) {
      List<Sums> first = new ArrayList<>();
      first.add(new Sums(start, 0, 0, 0, drying.rate(medium, room)));
      sums.put(medium, first);
    }
  }

  /**
   * From that second on the films lie in another air.
   *
   * @throws IllegalArgumentException if the second lies before an earlier change
   */
  public void change(long second, Air air) {
    for (Map.Entry<Medium, List<Sums>> entry : sums.entrySet()) {
      List<Sums> list = entry.getValue();
      Sums last = list.get(list.size() - 1);
      if (second < last.start()) {
        throw new IllegalArgumentException(
            "time runs forward: " + second + " after " + last.start());
      }
      list.add(last.until(second, drying.rate(entry.getKey(), air)));
    }
    changed = second;
    blowing = air;
  }

  /** True if from a second on the films lie in that air and no other. */
  public boolean staysFrom(long second, Air air) {
    return changed <= second && blowing.equals(air);
  }

  /** When a film that began to dry at {@code from} becomes frame-safe. */
  public Dried frameSafe(Medium medium, FilmNeed need, long from) {
    return frameSafe(sums.get(medium), need, from);
  }

  /** When it becomes lift-safe; never before it is frame-safe. */
  public Dried liftSafe(Medium medium, FilmNeed need, long from) {
    return states(medium, need, from).liftSafe();
  }

  /** When it becomes fix-safe: dry through, and cured if the medium needs it. */
  public Dried fixSafe(Medium medium, FilmNeed need, long from) {
    return states(medium, need, from).fixSafe();
  }

  /** When it becomes each of them. */
  public States states(Medium medium, FilmNeed need, long from) {
    return states(sums.get(medium), need, from);
  }

  /**
   * The same if from some second on the films were left in one air, whatever the run does with it.
   *
   * @param left not before {@code from}
   */
  public States statesIfLeft(Medium medium, FilmNeed need, long from, long left, Air air) {
    List<Sums> list = sums.get(medium);
    int now = segment(list, left);
    Sums last = list.get(now).until(left, drying.rate(medium, air));
    List<Sums> cut =
        new AbstractList<>() {
          @Override
          public Sums get(int segment) {
            return segment <= now ? list.get(segment) : last;
          }

          @Override
          public int size() {
            return now + 2;
          }
        };
    return states(cut, need, from);
  }

  private States states(List<Sums> list, FilmNeed need, long from) {
    Dried frame = frameSafe(list, need, from);
    Dried lift = liftSafe(list, need, from).later(frame);
    return new States(frame, lift, cured(need, from, lift));
  }

  private Dried frameSafe(List<Sums> list, FilmNeed need, long from) {
    return need.frameMeasured().isPresent()
        ? measured(list, need.frameMeasured().get(), need.sinksIn(), from)
        : estimated(list, need.frameSafe(), need.sinksIn(), from);
  }

  private Dried liftSafe(List<Sums> list, FilmNeed need, long from) {
    return need.liftMeasured().isPresent()
        ? measured(list, need.liftMeasured().get(), 0, from)
        : estimated(list, need.liftSafe(), 0, from);
  }

  private static Dried cured(FilmNeed need, long from, Dried liftSafe) {
    long cured = from + (long) Math.ceil(Math.min(need.cure().seconds(), NEVER / 2.0));
    return liftSafe.later(new Dried(cured, cured, cured));
  }

  private Dried estimated(List<Sums> list, double loss, double sinksIn, long from) {
    int began = segment(list, from);
    return new Dried(
        search(list, began, Speed.FASTEST, loss, sinksIn, from),
        search(list, began, Speed.BEST, loss, sinksIn, from),
        search(list, began, Speed.SLOWEST, loss, sinksIn, from));
  }

  /**
   * A measured time holds in the room's air; other air shortens or stretches it by its best rate.
   */
  private Dried measured(List<Sums> list, Span span, double sinksIn, long from) {
    double seconds = Math.max(0, span.seconds());
    double usual = list.get(0).rates().best() + sinksIn;
    double loss = usual * seconds / 3600;
    long at =
        usual > 0
            ? search(list, segment(list, from), Speed.BEST, loss, sinksIn, from)
            : from + (long) Math.ceil(Math.min(seconds, NEVER / 2.0));
    return new Dried(at, at, at);
  }

  /**
   * @param began the segment of {@code from}
   * @param sinksIn what leaves the surface in any air, besides what evaporates, g/(m² h)
   */
  private long search(
      List<Sums> list, int began, Speed speed, double loss, double sinksIn, long from) {
    Sums first = list.get(began);
    double target =
        gone(list, speed, sinksIn, began)
            + (first.rate(speed) + sinksIn) * (from - first.start()) / 3600.0
            + loss;
    int low = began;
    int high = list.size() - 1;
    while (low < high) { // the last segment that has not passed the target at its start
      int middle = (low + high + 1) >>> 1;
      if (gone(list, speed, sinksIn, middle) < target) {
        low = middle;
      } else {
        high = middle - 1;
      }
    }
    double rest = target - gone(list, speed, sinksIn, low);
    double rate = list.get(low).rate(speed) + sinksIn;
    if (rest <= 0) {
      return Math.max(from, list.get(low).start());
    }
    double after = rate > 0 ? rest / rate * 3600 : Double.POSITIVE_INFINITY;
    double at = list.get(low).start() + Math.ceil(after - 1e-6);
    return at - from > longest ? NEVER : Math.max(from, (long) at);
  }

  /** What has left an open film's surface from the start to the beginning of a segment. */
  private static double gone(List<Sums> list, Speed speed, double sinksIn, int segment) {
    Sums at = list.get(segment);
    return at.sum(speed) + sinksIn * (at.start() - list.get(0).start()) / 3600.0;
  }

  private static int segment(List<Sums> list, long second) {
    int low = 0;
    int high = list.size() - 1;
    while (low < high) {
      int middle = (low + high + 1) >>> 1;
      if (list.get(middle).start() <= second) {
        low = middle;
      } else {
        high = middle - 1;
      }
    }
    return low;
  }

  /**
   * When a state is reached, in seconds; {@link #NEVER} stands for never.
   *
   * @param earliest at the fastest credible rate
   * @param best at the most likely rate
   * @param latest at the slowest credible rate
   */
  public record Dried(long earliest, long best, long latest) {

    Dried later(Dried other) {
      return new Dried(
          Math.max(earliest, other.earliest),
          Math.max(best, other.best),
          Math.max(latest, other.latest));
    }
  }

  /** When one film is in each state. */
  public record States(Dried frameSafe, Dried liftSafe, Dried fixSafe) {

    /** When it is in one of them. */
    public Dried in(Dryness state) {
      return switch (state) {
        case FRAME_SAFE -> frameSafe;
        case LIFT_SAFE -> liftSafe;
        case FIX_SAFE -> fixSafe;
      };
    }
  }

  private enum Speed {
    SLOWEST,
    BEST,
    FASTEST
  }

  /** From one change of air to the next: water lost before, g/m², and the rates from here on. */
  private record Sums(long start, double slowest, double best, double fastest, DryingRate rates) {

    Sums until(long second, DryingRate next) {
      double hours = (second - start) / 3600.0;
      return new Sums(
          second,
          slowest + rates.slowest() * hours,
          best + rates.best() * hours,
          fastest + rates.fastest() * hours,
          next);
    }

    double sum(Speed speed) {
      return speed == Speed.SLOWEST ? slowest : speed == Speed.BEST ? best : fastest;
    }

    double rate(Speed speed) {
      return speed == Speed.SLOWEST
          ? rates.slowest()
          : speed == Speed.BEST ? rates.best() : rates.fastest();
    }
  }
}
