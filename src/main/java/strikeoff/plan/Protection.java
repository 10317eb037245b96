package strikeoff.plan;

/** What keeps dust, alkali and heat off people. */
public enum Protection {
  DUST_MASK("dust mask"),
  GLOVES("gloves"),
  GOGGLES("goggles"),
  HEAT_GLOVES("heat gloves");

  private final String text;

  Protection(String text) {
    this.text = text;
  }

  public String text() {
    return text;
  }
}
