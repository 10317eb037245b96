package strikeoff.plan;

import java.util.List;

/** What carries the colour, and so how it dries and how it is fixed. */
public enum Medium {
  /** Thickened reactive-dye paste: soaks into the fibre, fixed by alkali or steam. */
  DYE("dye paste", Protection.GLOVES),
  /** Water-based pigment paint: a film held by a binder, fixed by dry heat. */
  PAINT("paint", Protection.GLOVES);

  private final String text;
  private final List<Protection> worn;

  Medium(String text, Protection... worn) {
    this.text = text;
    this.worn = List.of(worn);
  }

  /**
   * What whoever prints it wears where the studio has it: dyes, and what keeps paint from going
   * off, can sensitise skin (from memory).
   */
  public List<Protection> worn() {
    return worn;
  }

  public String text() {
    return text;
  }
}
