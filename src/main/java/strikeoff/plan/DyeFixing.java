package strikeoff.plan;

/** How dye is fixed. */
public enum DyeFixing {
  SOAK("soak"),
  BATCH("batch"),
  STEAM("steam");

  private final String text;

  DyeFixing(String text) {
    this.text = text;
  }

  public String text() {
    return text;
  }
}
