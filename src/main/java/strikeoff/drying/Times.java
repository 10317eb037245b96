package strikeoff.drying;

import java.util.Arrays;
import java.util.function.IntFunction;
import strikeoff.drying.Dried.Points;
import strikeoff.drying.DryingClock.States;
import strikeoff.plan.Until.Dryness;

/**
 * Seconds from a film's beginning to each state, one for each of the {@link Days}, sorted. Shared
 * by all films that dry alike.
 */
record Times(int[] frame, int[] lift, int[] fix) {

  /** Hours from a film's beginning to each state, on one day; infinite for never. */
  record Hours(double frameSafe, double liftSafe, double dryThrough) {}

  /**
   * @param longest seconds beyond which a time counts as never
   */
  static Times of(long longest, IntFunction<Hours> onDay) {
    int[] frame = new int[Days.COUNT];
    int[] lift = new int[Days.COUNT];
    int[] fix = new int[Days.COUNT];
    for (int day = 0; day < Days.COUNT; day++) {
      Hours hours = onDay.apply(day);
      frame[day] = seconds(hours.frameSafe(), longest);
      lift[day] = Math.max(frame[day], seconds(hours.liftSafe(), longest));
      fix[day] = Math.max(lift[day], seconds(hours.dryThrough(), longest));
    }
    Arrays.sort(frame);
    Arrays.sort(lift);
    Arrays.sort(fix);
    return new Times(frame, lift, fix);
  }

  private static int seconds(double hours, long longest) {
    double seconds = hours * 3600 - 1e-6;
    if (seconds > longest) {
      return Dried.NO_TIME;
    }
    int whole = (int) seconds;
    return whole < seconds ? whole + 1 : whole;
  }

  /** Seconds till nothing changes any more, on the slowest day. */
  long last() {
    int last = fix[fix.length - 1];
    return last == Dried.NO_TIME ? DryingClock.NEVER : last;
  }

  /** Seconds till one state is reached on the slowest day. */
  long last(Dryness state) {
    int[] own = of(state);
    int last = own[own.length - 1];
    return last == Dried.NO_TIME ? DryingClock.NEVER : last;
  }

  private int[] of(Dryness state) {
    return switch (state) {
      case FRAME_SAFE -> frame;
      case LIFT_SAFE -> lift;
      case FIX_SAFE -> fix;
    };
  }

  /** When a film that began at a second is in one state. */
  Dried from(long from, Dryness state, Points points) {
    return new Dried(of(state), points, from);
  }

  States from(long from, Points points) {
    return new States(
        new Dried(frame, points, from),
        new Dried(lift, points, from),
        new Dried(fix, points, from));
  }
}
