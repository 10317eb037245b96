package strikeoff.drying;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import strikeoff.drying.Dried.Points;
import strikeoff.plan.Until.Dryness;

/**
 * Drying through air that changes: a fan in a drying step, a hair-dryer, the still room at night.
 *
 * <p>It keeps from which second on the films lie in which air; the last air goes on for ever. Each
 * film is followed through them on each of the {@link Days}. Times are whole seconds of the
 * caller's clock.
 */
public final class DryingClock {

  /** A state that is not reached in any time worth telling. */
  public static final long NEVER = Long.MAX_VALUE / 4;

  private final Drying drying;
  private final Points points;
  private final long longest;
  private final List<Change> changes = new ArrayList<>();
  private final Set<Air> airs = new LinkedHashSet<>();
  private long lastChange;

  /**
   * @param start second at which the clock starts, in the room's own air
   */
  public DryingClock(Drying drying, long start) {
    this.drying = drying;
    this.points = drying.points();
    this.longest = drying.longest();
    this.lastChange = start;
    changes.add(new Change(start, drying.room()));
    airs.add(drying.room());
  }

  /** From a second on the films lie in that air. */
  record Change(long second, Air air) {

    // A film's way is looked up by its changes, of which there is one at a second.
    @Override
    public int hashCode() {
      return Long.hashCode(second);
    }

    @Override
    public boolean equals(Object other) {
      return other instanceof Change change && second == change.second && air.equals(change.air);
    }
  }

  /**
   * From that second on the films lie in another air. An air that nothing has lain in, since it
   * changes again in the same second, is forgotten.
   *
   * @throws IllegalArgumentException if the second lies before an earlier change
   */
  public void change(long second, Air air) {
    if (second < lastChange) {
      throw new IllegalArgumentException("time runs forward: " + second + " after " + lastChange);
    }
    lastChange = second;
    int last = changes.size() - 1;
    if (last > 0 && changes.get(last).second() == second) {
      changes.remove(last--);
    }
    if (last == 0 && changes.get(0).second() == second) {
      changes.set(0, new Change(second, air));
    } else if (!changes.get(last).air().equals(air)) {
      changes.add(new Change(second, air));
    }
    airs.add(air);
  }

  /** When the air changed last, or somebody set it as it was; the start if nobody did. */
  public long lastChange() {
    return lastChange;
  }

  /** True if from a second on the films lie in that air and no other. */
  public boolean staysFrom(long second, Air air) {
    Change last = changes.get(changes.size() - 1);
    return last.second() <= second && last.air().equals(air);
  }

  /**
   * Since when a film may have begun that surely is in a state by the time at which one of the same
   * need is that began after it: what only ever loses water stays ahead for as long as both lie in
   * the same air. Never so in air so damp that films take water from it, nor of a film that counts
   * as never dry for having begun so early.
   *
   * @param at when the later one is in the state
   */
  public long aheadSince(FilmNeed need, long at) {
    for (Air air : airs) {
      if (!drying.onlyDries(need, air)) {
        return NEVER;
      }
    }
    return at - longest;
  }

  /** When a film that began to dry at {@code from} is in each state. */
  public States states(FilmNeed need, long from) {
    return states(need, from, changes);
  }

  /**
   * When such a film is in one state. Where all days reach it before the air changes, what comes
   * afterwards is not followed.
   */
  public Dried state(FilmNeed need, long from, Dryness state) {
    int began = began(changes, from);
    Times steady = drying.inOneAir(need, changes.get(began).air(), longest);
    long next = began + 1 < changes.size() ? changes.get(began + 1).second() : NEVER;
    return next == NEVER || from + steady.last(state) <= next
        ? steady.from(from, state, points)
        : states(need, from, changes).in(state);
  }

  /**
   * The same if from some second on the films were left in one air, whatever the run does with it.
   *
   * @param left not before {@code from}
   */
  public States statesIfLeft(FilmNeed need, long from, long left, Air air) {
    List<Change> cut = new ArrayList<>(changes.subList(0, current(left) + 1));
    if (!cut.get(cut.size() - 1).air().equals(air)) {
      cut.add(new Change(left, air));
    }
    return states(need, from, cut);
  }

  /** The same if the air had not changed from a second on. */
  public States statesIfUnchanged(FilmNeed need, long from, long second) {
    return states(need, from, changes.subList(0, current(second - 1) + 1));
  }

  private States states(FilmNeed need, long from, List<Change> through) {
    int began = began(through, from);
    Times steady = drying.inOneAir(need, through.get(began).air(), longest);
    long next = began + 1 < through.size() ? through.get(began + 1).second() : NEVER;
    if (next == NEVER || from + steady.last() <= next) {
      return steady.from(from, points);
    }
    Optional<Times> known = drying.followed().times(need, from, through, began);
    if (known.isPresent()) {
      return known.get().from(from, points);
    }
    Through airs = new Through(drying, need, through, began, from);
    Times times = Times.of(longest, airs::onDay);
    drying.followed().keep(need, from, through, began, times);
    return times.from(from, points);
  }

  private int current(long second) {
    return began(changes, second);
  }

  /** The last change that is not after a second. */
  private static int began(List<Change> changes, long second) {
    int low = 0;
    int high = changes.size() - 1;
    while (low < high) {
      int middle = (low + high + 1) >>> 1;
      if (changes.get(middle).second() <= second) {
        low = middle;
      } else {
        high = middle - 1;
      }
    }
    return low;
  }

  /** The airs that a film lies in one after the other. */
  private static final class Through {

    private final Drying drying;
    private final FilmNeed need;
    private final List<Change> changes;
    private final int began;

    /** Hours from the film's beginning to the end of each air, by its number from the first. */
    private final double[] ends;

    /** In each air; null where no film has lasted so long. */
    private final double[][] rates;

    Through(Drying drying, FilmNeed need, List<Change> changes, int began, long from) {
      this.drying = drying;
      this.need = need;
      this.changes = changes;
      this.began = began;
      this.ends = new double[changes.size() - began];
      this.rates = new double[ends.length][];
      for (int i = 0; i + 1 < ends.length; i++) {
        ends[i] = Math.max(0, changes.get(began + i + 1).second() - from) / 3600.0;
      }
      ends[ends.length - 1] = Double.POSITIVE_INFINITY;
    }

    private double rate(int air, int day) {
      if (rates[air] == null) {
        rates[air] = drying.rates(need, changes.get(began + air).air());
      }
      return rates[air][day];
    }

    Times.Hours onDay(int day) {
      double frame = Double.POSITIVE_INFINITY;
      double lift = Double.POSITIVE_INFINITY;
      double evaporated = 0;
      double left = need.amounts().lift()[day];
      double leftThrough = need.amounts().dryThrough()[day];
      double through = Double.POSITIVE_INFINITY;
      double hours = 0;
      for (int i = 0; i < ends.length; i++) {
        double end = ends[i];
        double rate = rate(i, day);
        double full = end; // till then the film dries at the full rate
        if (Double.isInfinite(frame)) {
          if (!InOneAir.isWetAfter(need, day, rate, hours, evaporated, end)) {
            double safe = InOneAir.frameSafe(need, day, rate, hours, evaporated);
            if (safe <= end) {
              frame = safe;
            }
            full = Math.min(safe, end);
          }
        } else {
          full = hours;
        }
        double throughSkin = rate * need.skin(day);
        double goes = evaporates(hours, full, end, rate, throughSkin);
        if (Double.isInfinite(lift)) {
          lift = reaches(left, hours, full, end, rate, throughSkin);
          left -= goes;
        }
        if (Double.isInfinite(through)) {
          // No less goes till then than till it may be lifted.
          if (Double.isFinite(lift)) {
            through = reaches(leftThrough, hours, full, end, rate, throughSkin);
          }
          leftThrough -= goes;
        }
        if (Double.isFinite(through) && Double.isFinite(frame)) {
          break;
        }
        evaporated += rate * (full - hours);
        hours = end;
      }
      return new Times.Hours(frame, Math.max(frame, lift), Math.max(frame, through));
    }
  }

  /**
   * What evaporates in one air: at the full rate first, then through the film's skin.
   *
   * @param full until when it is the full rate
   */
  private static double evaporates(
      double start, double full, double end, double rate, double throughSkin) {
    return Double.isInfinite(end) ? 0 : rate * (full - start) + throughSkin * (end - full);
  }

  /** When so much more has evaporated; infinite if not in this air. */
  private static double reaches(
      double left, double start, double full, double end, double rate, double throughSkin) {
    if (left <= 0) {
      return start;
    }
    double atFull = rate * (Math.min(full, end) - start);
    if (left <= atFull) {
      return start + left / rate;
    }
    if (throughSkin <= 0 || full >= end) {
      return Double.POSITIVE_INFINITY;
    }
    double at = full + (left - atFull) / throughSkin;
    return at <= end ? at : Double.POSITIVE_INFINITY;
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
}
