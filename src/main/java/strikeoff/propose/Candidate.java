package strikeoff.propose;

import java.util.List;
import strikeoff.day.facts.Rehearsed;
import strikeoff.plan.Step;

/**
 * A run that was rehearsed.
 *
 * @param run numbered
 * @param pasteShort what it counts that a paste would run out, in seconds
 */
record Candidate(List<Step> run, Rehearsed rehearsed, double pasteShort) {

  /** A second too early counts as so many of work. */
  private static final double TOO_EARLY = 4;

  /** What a step more must save, so that a run stays short to read; in seconds. */
  private static final double STEP = 20;

  /** The same for an option of a step. */
  private static final double OPTION = 4;

  boolean isSound() {
    return rehearsed.shortfall().isNothing() && pasteShort <= 0;
  }

  double worked() {
    return rehearsed.worked().seconds();
  }

  /** Opening hours, what is lacking, and a little for what has to be read; in seconds. */
  double cost() {
    return worked() + lacks() + toRead(STEP, OPTION);
  }

  /**
   * The same for somebody who wants few steps within some time.
   *
   * @param within seconds that it may take
   */
  double costOfFew(double within) {
    return toRead(100, 10) + worked() / 100 + lacks() + TOO_EARLY * Math.max(0, worked() - within);
  }

  private double lacks() {
    return TOO_EARLY * rehearsed.shortfall().seconds() + pasteShort;
  }

  private double toRead(double step, double option) {
    int options = 0;
    for (Step each : run) {
      if (each instanceof Step.Print print) {
        options += options(print);
      }
    }
    return step * run.size() + option * options;
  }

  private static int options(Step.Print print) {
    int options = print.only().isEmpty() && print.numbers().isEmpty() ? 0 : 1;
    options += print.separations().isEmpty() ? 0 : 1;
    options += print.order() == Step.Order.BY_COLOUR ? 0 : 1;
    options += print.everyOther() ? 1 : 0;
    options += print.pause().minutes() > 0 ? 1 : 0;
    options += print.dryBetweenColours().isNone() ? 0 : 1;
    options += print.beforeMoving().isNone() ? 0 : 1;
    options += print.dryBetweenPasses().isNone() ? 0 : 1;
    options += print.mindsNeighbours() ? 1 : 0;
    options += print.air().isPresent() ? 1 : 0;
    options += print.washes().isPresent() ? 1 : 0;
    return options;
  }
}
