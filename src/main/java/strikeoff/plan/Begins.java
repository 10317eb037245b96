package strikeoff.plan;

/** When a step begins beside the one above it. */
public enum Begins {
  /** Not before that one has begun. */
  IN_TURN("in turn"),
  /** As soon as its own hands and what it needs are free; nothing below waits for that. */
  WHEN_FREE("when free"),
  /** Not before all above it is done. */
  WHEN_DONE("when done");

  private final String text;

  Begins(String text) {
    this.text = text;
  }

  /** As a plan says it; a step in its turn says nothing. */
  public String text() {
    return text;
  }
}
