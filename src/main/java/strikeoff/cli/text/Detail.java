package strikeoff.cli.text;

/** How much is told. */
public enum Detail {
  /** One verdict line a plan. */
  QUIET,
  /** Verdict, findings with what to do, and a summary. */
  USUAL,
  /** Also reasons, sources, figures, and what was assumed. */
  FULL
}
