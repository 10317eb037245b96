package strikeoff.findings;

import java.util.function.Function;
import strikeoff.policy.Limit;

/**
 * How bad a finding is where that follows from how likely it is.
 *
 * @param severity what the finding counts as
 * @param from name of the limit that holds the least chance of it; empty for all that is left
 */
public record Grade(Severity severity, String from) {

  boolean holds(double share, Function<String, Limit> limits) {
    return from.isEmpty() || share >= limits.apply(from).amount();
  }
}
