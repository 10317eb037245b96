package strikeoff.screens;

import strikeoff.plan.Cloth;
import strikeoff.plan.Medium;
import strikeoff.plan.Paste;
import strikeoff.plan.Screen;
import strikeoff.policy.Policy;
import strikeoff.units.Range;

/**
 * What one pull lays down on the area it prints.
 *
 * @param gramsPerSquareMetre paste per printed area and pull
 * @param measured true if the printer weighed it on a strike-off, false if the mesh tells it
 */
public record Deposit(Range gramsPerSquareMetre, boolean measured) {

  /**
   * The measured deposit where the plan gives one; else the mesh's theoretical volume times the
   * paste's density and the share of the volume that a pull leaves on the cloth. Light cloth sucks
   * less out of the mesh than usual, heavy cloth more; the range is that of all cloth.
   */
  public static Deposit of(Screen screen, Paste paste, Cloth cloth, Policy policy) {
    return paste
        .deposit()
        .map(weighed -> new Deposit(Range.exactly(weighed.gramsPerSquareMetre()), true))
        .orElseGet(() -> new Deposit(estimate(screen, paste.medium(), cloth, policy), false));
  }

  private static Range estimate(Screen screen, Medium medium, Cloth cloth, Policy policy) {
    Range volume = Mesh.of(screen).theoreticalVolume();
    double gramsPerMl =
        amount(policy, medium == Medium.DYE ? "density-dye-paste" : "density-paint") / 1000;
    return new Range(
        volume.low() * gramsPerMl * amount(policy, "transfer-least"),
        volume.best() * gramsPerMl * usualTransfer(cloth, policy),
        volume.high() * gramsPerMl * amount(policy, "transfer-most"));
  }

  private static double usualTransfer(Cloth cloth, Policy policy) {
    double mass = cloth.mass().gramsPerSquareMetre();
    if (mass < amount(policy, "light-cloth")) {
      return amount(policy, "transfer-light-cloth");
    }
    return mass > amount(policy, "heavy-cloth")
        ? amount(policy, "transfer-heavy-cloth")
        : amount(policy, "transfer-usual");
  }

  private static double amount(Policy policy, String name) {
    return policy.limit("screens/" + name).amount();
  }

  /** What several pulls of one impression lay down, one on the other. */
  public Range afterPulls(int pulls) {
    return gramsPerSquareMetre.times(pulls);
  }
}
