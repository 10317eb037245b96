package strikeoff.described;

import java.util.List;
import strikeoff.plan.Evidence;
import strikeoff.plan.PlanPath;

/**
 * A paste of the plan.
 *
 * @param medium dye or paint, as the plan says it
 * @param group the dye's reactive group; empty for paint
 * @param ingredients what its recipe names, may be empty
 */
public record PasteMixed(
    String paste,
    String medium,
    boolean paint,
    String group,
    boolean alkaliInside,
    boolean amountStated,
    boolean recipeStated,
    boolean strikeOffMeasured,
    List<String> ingredients,
    PlanPath path)
    implements Evidence {

  public PasteMixed {
    ingredients = List.copyOf(ingredients);
  }
}
