package strikeoff.propose;

import java.util.OptionalLong;
import strikeoff.timeline.Surety;

/**
 * What a printer asks of a proposed run.
 *
 * @param surety for how slow a day its waits must do
 * @param shortest true for the last minute, false for the fewest steps that come close to it
 * @param anyOrder true to take a run though the rules advise against its order
 * @param hairDryer true if somebody may stand and hold one
 * @param effort how many runs are tried at most; counted, so that every machine finds the same
 * @param seconds after how long the search ends where no effort is given
 */
public record Asked(
    Surety surety,
    boolean shortest,
    boolean anyOrder,
    boolean hairDryer,
    OptionalLong effort,
    int seconds) {}
