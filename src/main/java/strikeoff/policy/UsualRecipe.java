package strikeoff.policy;

import java.util.List;
import strikeoff.plan.Ingredient;
import strikeoff.plan.Medium;
import strikeoff.plan.Paste;

/**
 * What a studio mixes pastes from for which a plan has no recipe. Only its proportions count, and
 * only for what is bought and weighed: no rule judges a paste by it.
 *
 * @param parts as in a plan's recipe
 * @param where the file and line
 */
public record UsualRecipe(List<Ingredient> parts, String where) {

  public UsualRecipe {
    parts = List.copyOf(parts);
  }

  /** What a studio may have a usual recipe for, in its own words. */
  public enum For {
    DYE("dye"),
    DYE_WITH_ALKALI("dye with alkali"),
    PAINT("paint");

    private final String text;

    For(String text) {
      this.text = text;
    }

    public String text() {
      return text;
    }

    static For paste(Paste paste) {
      return paste.medium() == Medium.PAINT ? PAINT : paste.alkaliInPaste() ? DYE_WITH_ALKALI : DYE;
    }
  }
}
