package strikeoff.drying;

import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import strikeoff.drying.Evaporation.When;
import strikeoff.plan.DryingTime;
import strikeoff.plan.Paste;
import strikeoff.plan.StrikeOff;
import strikeoff.policy.Policy;
import strikeoff.units.Share;
import strikeoff.units.Temperature;

/**
 * What a strike-off tells about the days to come: each figure moves what is unknown about this
 * paste, hand and room, in the air in which it was taken. A time that was taken then stands for an
 * ordinary day in that air.
 */
final class Measured {

  /**
   * A rate of so little, g/(m² h), or less is one that no kitchen scales show. It keeps logarithms
   * finite on days on which the air gives water.
   */
  private static final double NO_RATE = 0.1;

  /** How far {@link #afterwards} looks for a pace, each way; beyond, a time fits no film. */
  private static final double FARTHEST = Math.log(1e4);

  /** Halves of that till nothing is left of it in double precision. */
  private static final int HALVINGS = 60;

  private final Drying drying;
  private final Evaporation evaporation;
  private final Tried tried;
  private final double shortest;
  private final double longest;
  private final double seen;
  private final double weighed;

  Measured(Drying drying, Evaporation evaporation, Tried tried, Policy policy) {
    this.drying = drying;
    this.evaporation = evaporation;
    this.tried = tried;
    this.shortest = policy.drying().shortestTold().seconds();
    this.longest = policy.drying().never().seconds();
    this.seen = policy.drying().seenSpread().value();
    this.weighed = policy.drying().weighedSpread().value();
  }

  /** What a film of that paste must lose, by all that was measured of it. */
  FilmNeed need(Paste paste, Laid laid, Laid piece) {
    Days days = Days.ANY;
    if (paste.strikeOff().isPresent()) {
      days = weighed(days, piece, paste.strikeOff().get());
      days = timed(days, piece, paste.strikeOff().get().dried(), false);
    }
    if (paste.frameSafe().isPresent()) {
      days = timed(days, laid, paste.frameSafe().get(), false);
    }
    if (paste.liftSafe().isPresent()) {
      days = timed(days, laid, paste.liftSafe().get(), true);
    }
    FilmNeed need = new FilmNeed(laid.amounts(days, When.PRINTING));
    if (paste.frameSafe().isPresent()) {
      need = frameSafe(need, paste.frameSafe().get());
    }
    return paste.liftSafe().isPresent() ? afterwards(need, paste.liftSafe().get()) : need;
  }

  /** What evaporated by the scales. */
  private Days weighed(Days days, Laid piece, StrikeOff strikeOff) {
    Air air = airOf(strikeOff.dried());
    double hours = strikeOff.dried().after().hours();
    double rate = strikeOff.evaporated().gramsPerSquareMetre() / hours;
    return days.after(
        d -> each(day -> rateThen(piece, d, day, air)), Math.log(Math.max(NO_RATE, rate)), weighed);
  }

  /** How long it took by watch and finger. */
  private Days timed(Days days, Laid laid, DryingTime time, boolean lift) {
    Air air = airOf(time);
    return days.after(
        d -> {
          FilmNeed need = new FilmNeed(laid.amounts(d, When.STRIKE_OFF));
          return each(
              day -> {
                double rate = rateThen(laid, d, day, air);
                double frame = InOneAir.frameSafe(need, day, rate);
                double at = lift ? InOneAir.liftSafe(need, day, rate, frame) : frame;
                return told(at * 3600);
              });
        },
        Math.log(told(time.after().seconds())),
        seen);
  }

  /** Seconds as a watch can tell them, and no more than are worth telling. */
  private double told(double seconds) {
    return Math.min(longest, Math.max(shortest, seconds));
  }

  private double rateThen(Laid laid, Days days, int day, Air air) {
    double rate = evaporation.onDay(days, day, air, laid.activity(), When.STRIKE_OFF).rate();
    return Math.max(NO_RATE, rate);
  }

  /** On an ordinary day in the air of the strike-off it takes the time that was taken there. */
  private FilmNeed frameSafe(FilmNeed need, DryingTime time) {
    double[] rates = drying.rates(need, airOf(time));
    double ordinary = ordinary(day -> InOneAir.frameSafe(need, day, rates[day]));
    double hours = time.after().hours();
    if (ordinary * 3600 >= shortest && Double.isFinite(ordinary)) {
      return hours > 0 ? need.at(ordinary / hours) : need;
    }
    // A film that is safe at once by the model, or never, has no pace that would fit.
    double[] at = new double[Days.COUNT];
    for (int day = 0; day < at.length; day++) {
      at[day] = hours * Math.exp(seen * need.amounts().days().deviate(Unknown.SEEN, day));
    }
    return need.frameSafeAt(at);
  }

  /** The same for lifting: at what pace it dries on once a frame may be laid on it. */
  private FilmNeed afterwards(FilmNeed need, DryingTime time) {
    double[] rates = drying.rates(need, airOf(time));
    double slow = -FARTHEST;
    double fast = FARTHEST;
    for (int step = 0; step < HALVINGS; step++) {
      double middle = (slow + fast) / 2;
      FilmNeed paced = need.afterwardsAt(Math.exp(middle));
      double ordinary =
          ordinary(
              day -> {
                double frame = InOneAir.frameSafe(paced, day, rates[day]);
                return InOneAir.liftSafe(paced, day, rates[day], frame);
              });
      if (ordinary > time.after().hours()) {
        slow = middle;
      } else {
        fast = middle;
      }
    }
    return need.afterwardsAt(Math.exp(fast));
  }

  /** The figure of the day in the middle. */
  private static double ordinary(IntToDoubleFunction figure) {
    return IntStream.range(0, Days.COUNT).mapToDouble(figure).sorted().toArray()[Drying.point(0.5)];
  }

  /** The natural logarithm of a figure on each day. */
  private static double[] each(IntToDoubleFunction figure) {
    return IntStream.range(0, Days.COUNT)
        .mapToDouble(day -> Math.log(figure.applyAsDouble(day)))
        .toArray();
  }

  /** The air in which a time was taken; what the plan leaves out was as in the room. */
  private Air airOf(DryingTime time) {
    Air room = drying.room();
    Air at =
        new Air(
            time.temperature().map(Temperature::celsius).orElse(room.celsius()),
            time.humidity().map(Share::fraction).orElse(room.humidity()),
            room.speed(),
            room.known());
    return time.air().map(draught -> tried.moved(at, draught)).orElse(at);
  }
}
