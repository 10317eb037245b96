package strikeoff.screens;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import strikeoff.plan.PullWay;
import strikeoff.plan.Screen;
import strikeoff.policy.Policy;
import strikeoff.units.Length;

/** Which way a printer would pull: a plan doesn't say at which side of the table one stands. */
final class Pulled {

  private Pulled() {}

  /**
   * The way in which the blade spans the image; if both or neither, the one that lacks less. Along
   * the length where both are alike.
   */
  static PullWay best(Screen screen, Policy policy) {
    List<PullWay> ways = screen.pullWays();
    return (ways.isEmpty() ? Arrays.stream(PullWay.values()) : ways.stream())
        .min(
            Comparator.comparingDouble((PullWay way) -> misfit(screen, way))
                .thenComparingDouble(way -> scant(screen, way, policy)))
        .orElseThrow();
  }

  /** How much too short or too long the blade is, in mm on one side. */
  private static double misfit(Screen screen, PullWay way) {
    return screen
        .squeegee()
        .map(
            blade ->
                lack(0, FrameMargin.oneSide(blade, image(screen, way)))
                    + lack(0, FrameMargin.oneSide(inside(screen, way), blade)))
        .orElse(0.0);
  }

  /** What lacks of the room for paste, beside the blade and under its ends, in mm. */
  private static double scant(Screen screen, PullWay way, Policy policy) {
    FrameMargin margin = FrameMargin.of(screen, way, policy);
    double overlap = policy.screens().squeegeeOverlap().mm();
    return lack(policy.screens().wellMargin().amount(), margin.well())
        + lack(policy.screens().sideMargin().amount(), margin.side())
        + screen
            .squeegee()
            .map(blade -> lack(overlap, FrameMargin.oneSide(blade, image(screen, way))))
            .orElse(0.0);
  }

  private static double lack(double wanted, Length there) {
    return Math.max(0, wanted - there.mm());
  }

  private static Length image(Screen screen, PullWay way) {
    return way.underBlade(screen.imageLength(), screen.imageWidth());
  }

  private static Length inside(Screen screen, PullWay way) {
    return way.underBlade(screen.insideLength(), screen.insideWidth());
  }
}
