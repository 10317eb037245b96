package strikeoff.plan;

/** What sets paint by dry heat. */
public enum HeatSource {
  /** Heats only what lies under its sole. */
  IRON("iron"),
  PRESS("press"),
  OVEN("oven");

  private final String text;

  HeatSource(String text) {
    this.text = text;
  }

  public String text() {
    return text;
  }
}
