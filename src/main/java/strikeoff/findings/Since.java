package strikeoff.findings;

/** How a finding stands to those of an earlier run, the baseline. */
public enum Since {
  /** The baseline didn't have it, or had it as less, or the plan accepted it then. */
  NEW("new"),
  /** The baseline had it with other figures. */
  UPDATED("updated"),
  /** The baseline had it. */
  UNCHANGED("unchanged");

  private final String text;

  Since(String text) {
    this.text = text;
  }

  public String text() {
    return text;
  }

  /** True if nothing fails for it any more. */
  public boolean isOld() {
    return this != NEW;
  }

  /** As people are told: new or old. */
  public String spoken() {
    return isOld() ? "old" : "new";
  }
}
