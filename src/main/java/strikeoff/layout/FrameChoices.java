package strikeoff.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.plan.Arrangement;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Screen;
import strikeoff.policy.Policy;
import strikeoff.units.Angle;
import strikeoff.units.Length;

/**
 * What other frames would mean for the lays of an arrangement and for the table: the smallest one
 * that leaves room for paste, the one of the plan, and longer ones with two motifs and more.
 *
 * @param screen the one with the longest frame among the arrangement's
 * @param choices from the smallest frame to the longest
 */
public record FrameChoices(String arrangement, String screen, List<Choice> choices, PlanPath path)
    implements Evidence {

  /** More motifs on one frame are no choice but a banner. */
  private static final int MOST_MOTIFS = 12;

  public FrameChoices {
    choices = List.copyOf(choices);
  }

  /**
   * One frame.
   *
   * @param motifs on it, at the arrangement's pitch
   * @param length of it, as it lies along the cloth
   * @param lays that the arrangement then takes, all its separations together
   * @param abreast how many such frames lie side by side on the table, with the stations' gap and
   *     clearance if it has stations
   * @param present true for the frame of the plan
   * @param byHand true if one person can lay it
   */
  public record Choice(
      int motifs, Length length, int lays, int abreast, boolean present, boolean byHand) {}

  static Optional<FrameChoices> of(
      PrintPlan plan, Layout layout, Policy policy, Arrangement arrangement) {
    List<Placement> own = layout.of(arrangement.name());
    if (own.isEmpty() || layout.footprintsOf(own.get(0).id()).isEmpty()) {
      return Optional.empty();
    }
    List<Footprint> footprints = layout.footprintsOf(own.get(0).id());
    Footprint longest = footprints.get(0);
    for (Footprint footprint : footprints) {
      longest = length(footprint) > length(longest) ? footprint : longest;
    }
    double hand = policy.table().longestHandFrame().amount();
    int separations = footprints.size();
    double present = length(longest);
    List<Choice> choices = new ArrayList<>();
    double smallest = smallest(longest.screen(), policy, arrangement.turn());
    if (smallest < present - Length.TOLERANCE) {
      choices.add(choice(plan, hand, 1, smallest, own.size() * separations, false));
    }
    choices.add(choice(plan, hand, 1, present, own.size() * separations, true));
    double pitch = Lays.pitchOnOneFrame(arrangement);
    for (int motifs = 2; pitch > 0 && motifs <= Math.min(own.size(), MOST_MOTIFS); motifs++) {
      double length = present + (motifs - 1) * pitch;
      if (length > plan.table().length().mm()) {
        break;
      }
      int lays = (own.size() + motifs - 1) / motifs * separations;
      choices.add(choice(plan, hand, motifs, length, lays, false));
    }
    return Optional.of(
        new FrameChoices(arrangement.name(), longest.screen().name(), choices, arrangement.path()));
  }

  /** Image, rails, and the policy's room at either end; no side longer than the frame's own. */
  private static double smallest(Screen screen, Policy policy, Angle turn) {
    double ends = 2 * (screen.rail().mm() + policy.screens().wellMargin().amount());
    double sides = 2 * (screen.rail().mm() + policy.screens().sideMargin().amount());
    double length = Math.min(screen.frameLength().mm(), screen.imageLength().mm() + ends);
    double width = Math.min(screen.frameWidth().mm(), screen.imageWidth().mm() + sides);
    double turned = Math.toRadians(turn.degrees());
    return length * Math.abs(Math.cos(turned)) + width * Math.abs(Math.sin(turned));
  }

  private static Choice choice(
      PrintPlan plan, double hand, int motifs, double length, int lays, boolean present) {
    double gap = plan.table().stations().map(s -> s.gap().mm()).orElse(0.0);
    double clear = plan.table().stations().map(s -> 2 * s.clearance().mm()).orElse(0.0);
    double table = plan.table().length().mm();
    int abreast = (int) Math.floor((table + gap + Length.TOLERANCE) / (length + clear + gap));
    return new Choice(motifs, new Length(length), lays, abreast, present, length <= hand);
  }

  private static double length(Footprint footprint) {
    return footprint.frame().getEnvelopeInternal().getWidth();
  }
}
