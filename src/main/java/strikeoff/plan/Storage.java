package strikeoff.plan;

/** Where something is kept between uses. */
public enum Storage {
  ROOM("at room temperature"),
  COLD("cold");

  private final String text;

  Storage(String text) {
    this.text = text;
  }

  public String text() {
    return text;
  }
}
