package strikeoff.cli.commands;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import strikeoff.report.outcome.Outcome;

/**
 * What is told of a plan, wherever it stands in the batch.
 *
 * @param page in HTML, and {@code sheets} for the wall, if they are made
 */
record PlanTold(
    List<String> lines, Outcome outcome, Optional<byte[]> page, Optional<byte[]> sheets) {

  /** The same with more to tell. */
  PlanTold and(List<String> more) {
    List<String> all = new ArrayList<>(lines);
    all.addAll(more);
    return new PlanTold(all, outcome, page, sheets);
  }
}
