package strikeoff.day;

import strikeoff.plan.Until.Dryness;

/** How the film of one impression dries. */
public record Film(Reached frameSafe, Reached liftSafe, Reached fixSafe) {

  /** When it is in one of the states. */
  public Reached in(Dryness state) {
    return switch (state) {
      case FRAME_SAFE -> frameSafe;
      case LIFT_SAFE -> liftSafe;
      case FIX_SAFE -> fixSafe;
    };
  }
}
