package strikeoff.start;

import java.util.List;

/** How a first plan fixes its colours; which one suits the fibre, the check tells. */
public enum FixingMethod {
  /** Soda ash as cotton and linen bear it. */
  SOAK(true),
  /** Half of it, for silk. */
  GENTLE_SOAK(true),
  /** Half of it and a cool wash, for wool. */
  GENTLE_SOAK_AND_WASH(true),
  /** Baking soda in the paste, then steam. */
  STEAM(true),
  /** An iron at the heat of cotton. */
  HOT_IRON(false),
  /** Cooler and longer, for fibres that melt or yellow. */
  COOL_IRON(false);

  private final boolean dye;

  FixingMethod(boolean dye) {
    this.dye = dye;
  }

  /** The ways to fix dye, or paint, the usual one first. */
  public static List<FixingMethod> of(boolean dye) {
    return List.of(values()).stream().filter(f -> f.dye == dye).toList();
  }
}
