package strikeoff.cli.commands;

import java.util.Set;
import strikeoff.cli.text.Exit;
import strikeoff.cli.text.Tally;
import strikeoff.findings.Severity;

/** From which findings on plans make a run fail. Those that a plan accepts never do. */
enum FailOn {
  /** A plan that is not printable. */
  STOP,
  /** Also one with a risk. */
  RISK,
  /** Also one with advice. */
  ADVICE,
  /** Nothing that is wrong with a plan, not even that it can't be read: to look, not to gate. */
  NONE;

  /** True if it makes a run fail: also what the tool could not do. */
  boolean fails(Tally.Counted plan) {
    return exit(plan.exit(), plan.open()) != Exit.PRINTABLE;
  }

  /**
   * How the program ends. What the tool could not do counts always.
   *
   * @param worst of what the plans and the tool came to
   * @param open severities of findings that no plan accepts
   */
  Exit exit(Exit worst, Set<Severity> open) {
    if (worst == Exit.FAULT || worst == Exit.USAGE) {
      return worst;
    }
    if (this == NONE) {
      return Exit.PRINTABLE;
    }
    boolean fails = open.stream().anyMatch(severity -> severity.ordinal() <= ordinal());
    return worst == Exit.PRINTABLE && fails ? Exit.NOT_PRINTABLE : worst;
  }
}
