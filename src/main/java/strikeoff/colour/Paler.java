package strikeoff.colour;

import strikeoff.plan.Colour;

/** A dye's look on a ground when only a part of it is fixed. */
public final class Paler {

  private Paler() {}

  /**
   * What is left of a transparent colour: its K/S in proportion to the dye.
   *
   * @param named its look on white cloth with all of it
   * @param share of it that is left, 0 to 1
   */
  public static Colour of(Colour named, double share, Colour ground) {
    return Coat.transparent(Reflectance.of(named))
        .times(share)
        .over(Reflectance.of(ground))
        .colour();
  }
}
