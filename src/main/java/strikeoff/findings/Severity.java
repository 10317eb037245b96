package strikeoff.findings;

/** How bad it is, worst first. */
public enum Severity {
  /** Printing this spoils cloth. */
  STOP("stop"),
  /** It may go wrong, or goes wrong within the range of the estimate. */
  RISK("risk"),
  /** Better known before than after. */
  ADVICE("advice");

  private final String text;

  Severity(String text) {
    this.text = text;
  }

  public String text() {
    return text;
  }
}
