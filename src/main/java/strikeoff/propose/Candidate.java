package strikeoff.propose;

import java.util.List;
import strikeoff.day.Impression;
import strikeoff.day.facts.Rehearsal;
import strikeoff.day.facts.Rehearsed;
import strikeoff.plan.Begins;
import strikeoff.plan.PrintOrder;
import strikeoff.plan.PrintStep;
import strikeoff.plan.Step;

/**
 * A run that was rehearsed.
 *
 * @param run numbered
 * @param printed seconds of opening hours until its last frame is laid
 * @param pasteShort what it counts that a paste would run out, in seconds
 */
record Candidate(List<Step> run, Rehearsed rehearsed, double printed, double pasteShort) {

  /** A second too early counts as so many of work. */
  private static final double TOO_EARLY = 4;

  /** What a step more must save, so that a run stays short to read; in seconds. */
  private static final double STEP = 20;

  /** The same for an option of a step. */
  private static final double OPTION = 4;

  /** Of an option: what it counts to set a fan up where it saves next to nothing. */
  private static final double A_FAN = 0.1;

  /**
   * What it counts that the prints are done later, second by second: hardly anything, but of runs
   * that end alike, as those do that fix in the morning, the one with time to spare is better.
   */
  private static final double PRINTED_LATER = 0.05;

  /**
   * What it counts by the clock that it ends later: hardly anything, but of runs that end in the
   * same break, which has no opening hours, the sooner one is better.
   */
  private static final double ENDS_LATER = 0.001;

  static Candidate of(List<Step> run, Rehearsed rehearsed, Rehearsal rehearsal, PasteLeft stock) {
    List<Impression> all = rehearsed.impressions();
    double printed = all.isEmpty() ? 0 : rehearsal.worked(all.get(all.size() - 1).laid()).seconds();
    return new Candidate(run, rehearsed, printed, stock.missing(rehearsed));
  }

  /** The same run, rehearsed for the day that it is to do for. */
  Candidate with(Rehearsed surely) {
    return new Candidate(run, surely, printed, pasteShort);
  }

  boolean isSound() {
    return rehearsed.shortfall().isNothing() && pasteShort <= 0;
  }

  double worked() {
    return rehearsed.worked().seconds();
  }

  /** The same for somebody who wants the last minute, however much there is to read. */
  double costOfShortest() {
    return worked()
        + ENDS_LATER * rehearsed.finish().seconds()
        + lacks()
        + (PRINTED_LATER * printed + toRead(STEP, OPTION)) / STEP;
  }

  /** Opening hours, what is lacking, and a little for what has to be read; in seconds. */
  double cost() {
    return worked() + PRINTED_LATER * printed + lacks() + toRead(STEP, OPTION);
  }

  /**
   * The same for somebody who wants few steps within some time.
   *
   * @param within seconds that it may take
   */
  double costOfFew(double within) {
    return toRead(100, 10) + costWithin(within);
  }

  /**
   * The same for somebody who wants few lines of the plan changed.
   *
   * @param changed lines that are
   */
  double costOfChange(int changed, double within) {
    return 100 * changed + costWithin(within);
  }

  private double costWithin(double within) {
    return worked() / 100 + lacks() + TOO_EARLY * Math.max(0, worked() - within);
  }

  private double lacks() {
    return TOO_EARLY * (rehearsed.shortfall().seconds() + rehearsed.liesFor()) + pasteShort;
  }

  private double toRead(double step, double option) {
    double options = 0;
    for (Step each : run) {
      if (each instanceof PrintStep print) {
        options += options(print);
      }
      options += each.begins() == Begins.IN_TURN ? 0 : 1;
      options += A_FAN * each.draughts().size();
    }
    return step * run.size() + option * options;
  }

  private static int options(PrintStep print) {
    int options = print.only().isEmpty() && print.numbers().isEmpty() ? 0 : 1;
    options += print.separations().isEmpty() ? 0 : 1;
    options += print.order() == PrintOrder.BY_COLOUR ? 0 : 1;
    options += print.everyOther() ? 1 : 0;
    options += print.pause().minutes() > 0 ? 1 : 0;
    options += print.dryBetweenColours().isNone() ? 0 : 1;
    options += print.beforeMoving().isNone() ? 0 : 1;
    options += print.dryBetweenPasses().isNone() ? 0 : 1;
    options += print.mindsNeighbours() ? 1 : 0;
    options += print.air().isPresent() ? 1 : 0;
    options += print.washes().isPresent() ? 1 : 0;
    options += print.washBetweenColours() ? 1 : 0;
    return options;
  }
}
