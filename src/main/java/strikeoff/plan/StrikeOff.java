package strikeoff.plan;

import strikeoff.document.PlanPath;
import strikeoff.units.Area;
import strikeoff.units.ArealMass;
import strikeoff.units.Mass;

/**
 * A strike-off that was weighed: a piece of the cloth, printed all over.
 *
 * @param area that was printed
 * @param cloth mass of the piece before it was printed
 * @param printed mass as soon as the frame was lifted
 * @param touchDry mass when a gloved finger took nothing off
 * @param dried how long that took, and in what air
 * @param pulls it was printed with
 */
public record StrikeOff(
    Area area,
    Mass cloth,
    Mass printed,
    Mass touchDry,
    DryingTime dried,
    int pulls,
    PlanPath path) {

  /** Paste that its pulls left on the cloth. */
  public ArealMass deposit() {
    return perSquareMetre(printed.grams() - cloth.grams());
  }

  /** Water that had gone into the air when it was touch-dry. */
  public ArealMass evaporated() {
    return perSquareMetre(printed.grams() - touchDry.grams());
  }

  private ArealMass perSquareMetre(double grams) {
    return new ArealMass(grams / area.squareCm() * 10_000);
  }
}
