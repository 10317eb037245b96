package strikeoff.paste;

/** The alkali that a dye paste holds, as far as its life goes. */
public enum HeldAlkali {
  NONE("without alkali"),

  /** Baking soda alone, which turns into soda only in the steam. */
  BICARBONATE("with baking soda in it"),

  /** Soda of any kind, or an alkali that the plan doesn't name. */
  SODA("with alkali in it");

  private final String text;

  HeldAlkali(String text) {
    this.text = text;
  }

  public String text() {
    return text;
  }

  /** The same with the name that the plan has for baking soda. */
  String text(String named) {
    return this == BICARBONATE ? "with " + named + " in it" : text;
  }
}
