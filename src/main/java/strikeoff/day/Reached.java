package strikeoff.day;

import java.util.Optional;
import strikeoff.drying.Dried;
import strikeoff.units.Chance;

/**
 * When a film reaches a state of drying. Nobody knows the air, the hand and the deposit of a day to
 * come, so this differs from day to day; where the film is felt, it is safe by then on every day.
 */
public record Reached(Dried days) {

  /** Stands for a state that is never reached in this air. */
  public static final Moment NEVER = new Moment(Long.MAX_VALUE / 4);

  /** In quick drying: one day in ten is quicker still. */
  public Moment earliest() {
    return new Moment(days.earliest());
  }

  /** On an ordinary day: half of all days are quicker. */
  public Moment best() {
    return new Moment(days.best());
  }

  /** In slow drying: one day in ten is slower still. */
  public Moment latest() {
    return new Moment(days.latest());
  }

  /** In slow drying, though the run waits till it is felt: so long that wait may last. */
  public Moment slow() {
    return new Moment(days.slow());
  }

  /** When somebody feels it and may have to wait on; empty if it surely is reached by then. */
  public Optional<Moment> felt() {
    return days.latest() < days.slow() ? Optional.of(latest()) : Optional.empty();
  }

  /** On how many days it is not reached by then. */
  public Chance chanceAfter(Moment moment) {
    return new Chance(days.chanceAfter(moment.seconds()));
  }

  public boolean never() {
    return days.best() >= NEVER.seconds();
  }
}
