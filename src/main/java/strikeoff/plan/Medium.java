package strikeoff.plan;

/** What carries the colour, and so how it dries and how it is fixed. */
public enum Medium {
  /** Thickened reactive-dye paste: soaks into the fibre, fixed by alkali or steam. */
  DYE("dye paste"),
  /** Water-based pigment paint: a film held by a binder, fixed by dry heat. */
  PAINT("paint");

  private final String text;

  Medium(String text) {
    this.text = text;
  }

  public String text() {
    return text;
  }
}
