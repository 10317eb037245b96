package strikeoff.cli.text;

/** How much is told. */
public enum Detail {
  /** The verdict line of each plan that fails. */
  QUIET,
  /** One verdict line a plan. */
  VERDICTS,
  /** Verdict, findings with what to do, and a summary. */
  USUAL,
  /** Also reasons, sources, figures, and what was assumed. */
  FULL;

  /** True if a plan's verdict is all that is told of it. */
  public boolean verdictsAlone() {
    return this == QUIET || this == VERDICTS;
  }
}
