package strikeoff.propose;

import java.util.OptionalLong;
import java.util.function.DoubleSupplier;
import strikeoff.day.facts.Surety;

/**
 * What a printer asks of a proposed run.
 *
 * @param surety for how slow a day its waits must do
 * @param shortest true for the last minute, false for the fewest steps that come close to it
 * @param anyOrder true to take a run though the rules advise against its order
 * @param hairDryer true if somebody may stand and hold one
 * @param effort how many runs are tried at most; counted, so that every machine finds the same
 * @param timeUsed the share of its time that is over, where no effort is given; from 1 on the
 *     search ends
 * @param onlooker who may have had enough before
 */
public record RunWanted(
    Surety surety,
    boolean shortest,
    boolean anyOrder,
    boolean hairDryer,
    OptionalLong effort,
    DoubleSupplier timeUsed,
    Onlooker onlooker) {

  /** The same for somebody who waits to the end. */
  public RunWanted(
      Surety surety,
      boolean shortest,
      boolean anyOrder,
      boolean hairDryer,
      OptionalLong effort,
      DoubleSupplier timeUsed) {
    this(surety, shortest, anyOrder, hairDryer, effort, timeUsed, Onlooker.PATIENT);
  }

  /** The same for one of several parts of a run, that are arranged one after the other. */
  RunWanted part(int number, int count) {
    return new RunWanted(
        surety,
        shortest,
        anyOrder,
        hairDryer,
        effort.isPresent() ? OptionalLong.of(effort.getAsLong() / count) : effort,
        () -> timeUsed.getAsDouble() * count - (number - 1),
        onlooker);
  }
}
