package strikeoff.check;

/** What a plan's check came to. */
public enum Verdict {
  /** No stop stands against it, or every one is accepted. */
  PRINTABLE("printable"),
  /** At least one stop that nobody accepted. */
  NOT_PRINTABLE("not printable"),
  /** The file isn't a plan that can be checked. */
  UNREADABLE("unreadable"),
  /** The tool failed before it could tell; says nothing about the plan. */
  NOT_CHECKED("not checked");

  private final String text;

  Verdict(String text) {
    this.text = text;
  }

  public String text() {
    return text;
  }

  /** With the stops that a printable plan accepts: {@code printable, 6 stops accepted}. */
  public String text(int acceptedStops) {
    return VerdictSentence.verdict(this, acceptedStops);
  }
}
