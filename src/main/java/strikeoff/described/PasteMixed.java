package strikeoff.described;

import java.util.List;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;

/**
 * A paste of the plan.
 *
 * @param medium dye or paint, as the plan says it
 * @param group the dye's reactive group, or its groups joined by “and”; empty for paint
 * @param groups the same one by one
 * @param ingredients what its recipe names, may be empty
 */
public record PasteMixed(
    String paste,
    String medium,
    boolean paint,
    String group,
    List<String> groups,
    boolean alkaliInside,
    boolean amountStated,
    boolean recipeStated,
    boolean strikeOffMeasured,
    List<String> ingredients,
    PlanPath path)
    implements Evidence {

  public PasteMixed {
    groups = List.copyOf(groups);
    ingredients = List.copyOf(ingredients);
  }
}
