package strikeoff.plan;

import strikeoff.document.PlanPath;
import strikeoff.units.Quantity;

/**
 * One line of a recipe or of a bath.
 *
 * @param substance as the policy's table of substances knows it: soda ash, urea, alginate, water …
 * @param amount a {@link strikeoff.units.Mass} or a {@link strikeoff.units.Volume}, as written
 * @param written the amount as the plan writes it
 */
public record Ingredient(String substance, Quantity amount, String written, PlanPath path) {

  /** The substance in the plan's own word for it. */
  public String named() {
    String text = path.text();
    return text.substring(text.lastIndexOf('.') + 1);
  }
}
