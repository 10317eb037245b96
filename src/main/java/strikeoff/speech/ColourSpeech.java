package strikeoff.speech;

import strikeoff.colour.ColourOnGround;
import strikeoff.colour.Overprint;

/** Says how colours look on their ground and over each other. */
public final class ColourSpeech {

  private ColourSpeech() {}

  public static String text(Overprint.Model model) {
    return switch (model) {
      case ABSORPTIONS_ADD ->
          "estimate: K/S of both pastes and the ground added in three bands (Kubelka–Munk, single"
              + " constant); the order of printing changes nothing in it";
      case UPPER_HIDES_A_PART ->
          "estimate: translucent paint hides the policy's usual share of what lies under it and tints"
              + " the rest";
      case UPPER_HIDES -> "estimate: the upper paint hides a stated share of what lies under it";
    };
  }

  /** How it comes out on the ground, in words: one colour, or from one to another. */
  public static String looks(ColourOnGround ground) {
    String least = ground.extremes().get(0).hex();
    String most = ground.extremes().get(1).hex();
    return least.equals(most)
        ? "about as " + ground.look().hex()
        : "somewhere from " + least + " to " + most;
  }
}
