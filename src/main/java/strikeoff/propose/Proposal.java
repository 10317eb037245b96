package strikeoff.propose;

import java.util.List;
import strikeoff.check.Checked;
import strikeoff.day.Moment;
import strikeoff.findings.Finding;

/** What came of looking for a better run. */
public sealed interface Proposal {

  /** The plan as it was read and judged. */
  Checked before();

  /** It can't be read, or not be judged. */
  record Unread(Checked before) implements Proposal {}

  /**
   * No run cures it.
   *
   * @param why in one sentence
   * @param findings what stands against the plan whatever its run is; may be none
   */
  record Refused(Checked.Judged before, String why, List<Finding> findings) implements Proposal {
    public Refused {
      findings = List.copyOf(findings);
    }
  }

  /**
   * A run that the check accepts.
   *
   * @param text the plan's text with it; as it was if no better run was found
   * @param after what the check makes of it
   * @param slowFinish when it ends if everything dries slowly
   * @param bound no run ends before
   * @param tried how many runs were tried
   * @param notes what a printer should know of it, a sentence each
   */
  record Found(
      Checked.Judged before,
      String text,
      Checked.Judged after,
      Moment slowFinish,
      Bound bound,
      long tried,
      List<String> notes)
      implements Proposal {

    public Found {
      notes = List.copyOf(notes);
    }

    public Moment finish() {
      return after.facts().timeline().finish();
    }

    /** True if nothing was changed. */
    public boolean isAsItWas() {
      return after == before;
    }

    /** True if no run ends sooner. */
    public boolean isProved() {
      return finish().compareTo(bound.finish()) <= 0;
    }
  }
}
