package strikeoff.paste;

/** The alkali that a dye paste holds, as far as its life goes. */
public enum HeldAlkali {
  NONE,

  /** Baking soda alone, which turns into soda only in the steam. */
  BICARBONATE,

  /** Soda of any kind, or an alkali that the plan doesn't name. */
  SODA
}
