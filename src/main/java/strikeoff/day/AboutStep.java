package strikeoff.day;

import strikeoff.evidence.Evidence;
import strikeoff.plan.Step;

/** A fact about one step of the run. */
public interface AboutStep extends Evidence {

  /** The step itself. */
  Step doing();
}
