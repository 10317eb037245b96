package strikeoff.speech;

import java.util.ArrayList;
import java.util.List;
import strikeoff.colour.ColourOnGround;
import strikeoff.colour.NearLooks;
import strikeoff.colour.Overprint;

/** Says how colours look on their ground and over each other. */
public final class ColourSpeech {

  /** More than that are told by their number. */
  private static final int LISTED = 6;

  private ColourSpeech() {}

  /** How much stronger it would have to be mixed to show after wash-off. */
  public static String strengthening(ColourOnGround colour) {
    return colour
        .timesAsStrong()
        .map(
            times ->
                times.value() == 1
                    ? "as strong as it is, it shows"
                    : "mixed " + times.text() + " times as strong, it would show")
        .orElse("no stronger mix of it would show");
  }

  /** What shows in the place of a colour that is too light for the ground; empty for others. */
  public static String instead(ColourOnGround colour) {
    if (!colour.tooLight()) {
      return "";
    }
    List<String> ways = new ArrayList<>();
    colour
        .paler()
        .ifPresent(
            least -> ways.add("a ground of L* " + least + (least < 100 ? " or lighter" : "")));
    ways.add("an opaque paint for this colour");
    colour.deeper().ifPresent(most -> ways.add("a colour of L* " + most + " or darker"));
    return String.join(", or ", ways);
  }

  /** The first of the pastes, and how many more there are. */
  public static List<String> named(NearLooks looks) {
    return brief(looks.pastes(), looks.whole());
  }

  /** The looks of those that are named. */
  public static List<String> shown(NearLooks looks) {
    return brief(looks.looks(), looks.whole());
  }

  private static List<String> brief(List<String> all, boolean whole) {
    if (all.size() <= LISTED && whole) {
      return all;
    }
    List<String> brief = new ArrayList<>(all.subList(0, Math.min(all.size(), LISTED)));
    int more = all.size() - brief.size();
    brief.add(more > 0 ? more + (whole ? " more" : " or more others") : "perhaps others");
    return brief;
  }

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
