package strikeoff.findings;

import java.util.List;
import java.util.OptionalInt;

/**
 * What a studio's policy made of one plan's findings: whoever reads a verdict sees whose policy it
 * rests on.
 *
 * @param where the policy's file, and the line if it is known
 * @param what id of a rule, or name of a limit
 * @param from the severity or value that comes with the program
 * @param to the one that counts; {@link #OFF} for a rule that is left out
 * @param findings findings of the plan that it changes; empty for a limit, of which nobody can tell
 */
public record PolicyChange(
    String where, String what, String from, String to, OptionalInt findings) {

  /** What a rule counts as that doesn't judge. */
  public static final String OFF = "off";

  /** How many findings of a plan are no stops for these changes alone. */
  public static int passed(List<PolicyChange> changes) {
    return changes.stream()
        .filter(c -> c.from().equals(Severity.STOP.text()) && !c.to().equals(c.from()))
        .mapToInt(c -> c.findings().orElse(0))
        .sum();
  }

  /** In one sentence, without its full stop. */
  public String text() {
    if (findings.isEmpty()) {
      return where + " sets the limit " + what + " to " + to + ", instead of " + from;
    }
    int found = findings.getAsInt();
    String here = found == 1 ? "1 finding here" : found + " findings here";
    return to.equals(OFF)
        ? where + " switches " + what + " off, a " + from + " otherwise: " + here + " left out"
        : where + " counts " + what + " as " + to + ", instead of " + from + ": " + here;
  }
}
