package strikeoff.screens;

import strikeoff.plan.Cloth;
import strikeoff.plan.Medium;
import strikeoff.plan.Paste;
import strikeoff.plan.Screen;
import strikeoff.plan.StrikeOff;
import strikeoff.policy.Limits;
import strikeoff.policy.Policy;
import strikeoff.units.Range;
import strikeoff.units.Share;

/**
 * What one pull lays down on the area it prints.
 *
 * @param gramsPerSquareMetre paste per printed area and pull
 * @param measured true if the printer weighed it on a strike-off, false if the mesh tells it
 * @param pulls what further pulls add
 */
public record Deposit(Range gramsPerSquareMetre, boolean measured, Pulls pulls) {

  /**
   * What pulls after the first add, as shares of what the first lays down: the cloth is wet by then
   * and takes less.
   *
   * @param second the second pull
   * @param further each pull after that
   */
  public record Pulls(Range second, Range further) {

    static Pulls of(Policy policy) {
      Limits.Screens shares = policy.screens();
      return new Pulls(
          about(shares.secondPull(), shares.secondPullLeast(), shares.secondPullMost()),
          about(shares.furtherPull(), shares.furtherPullLeast(), shares.furtherPullMost()));
    }

    private static Range about(Share best, Share least, Share most) {
      return new Range(
          Math.min(best.fraction(), least.fraction()),
          best.fraction(),
          Math.max(best.fraction(), most.fraction()));
    }

    /** What several pulls lay down, where one lays down 1. */
    Range times(int pulls) {
      Range all = Range.exactly(Math.min(1, pulls));
      for (int pull = 2; pull <= pulls; pull++) {
        all = all.plus(pull == 2 ? second : further);
      }
      return all;
    }
  }

  /**
   * The measured deposit where the plan gives one; else the mesh's theoretical volume times the
   * paste's density and the share of the volume that a pull leaves on the cloth. Light cloth sucks
   * less out of the mesh than usual, heavy cloth more; the range is that of all cloth.
   */
  public static Deposit of(Screen screen, Paste paste, Cloth cloth, Policy policy) {
    Pulls pulls = Pulls.of(policy);
    if (paste.deposit().isPresent()) {
      return new Deposit(Range.exactly(paste.deposit().get().gramsPerSquareMetre()), true, pulls);
    }
    if (paste.strikeOff().isPresent()) {
      StrikeOff piece = paste.strikeOff().get();
      double byOne = piece.deposit().gramsPerSquareMetre() / pulls.times(piece.pulls()).best();
      return new Deposit(Range.exactly(byOne), true, pulls);
    }
    return new Deposit(estimate(screen, paste.medium(), cloth, policy), false, pulls);
  }

  private static Range estimate(Screen screen, Medium medium, Cloth cloth, Policy policy) {
    Range volume = Mesh.of(screen).theoreticalVolume();
    double gramsPerMl = policy.screens().density(medium).gramsPerLitre() / 1000;
    return new Range(
        volume.low() * gramsPerMl * policy.screens().transferLeast().fraction(),
        volume.best() * gramsPerMl * usualTransfer(cloth, policy),
        volume.high() * gramsPerMl * policy.screens().transferMost().fraction());
  }

  private static double usualTransfer(Cloth cloth, Policy policy) {
    double mass = cloth.mass().told().gramsPerSquareMetre();
    if (mass < policy.screens().lightCloth().gramsPerSquareMetre()) {
      return policy.screens().transferLightCloth().fraction();
    }
    return mass > policy.screens().heavyCloth().gramsPerSquareMetre()
        ? policy.screens().transferHeavyCloth().fraction()
        : policy.screens().transferUsual().fraction();
  }

  /** What several pulls of one impression lay down, one on the other. */
  public Range afterPulls(int pulls) {
    Range times = this.pulls.times(pulls);
    return new Range(
        gramsPerSquareMetre.low() * times.low(),
        gramsPerSquareMetre.best() * times.best(),
        gramsPerSquareMetre.high() * times.high());
  }
}
