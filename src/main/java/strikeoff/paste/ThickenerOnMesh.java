package strikeoff.paste;

import java.util.List;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.evidence.Tie;
import strikeoff.policy.Limit;
import strikeoff.units.Mass;
import strikeoff.units.MeshCount;
import strikeoff.units.Range;

/**
 * A dye paste's thickener against a mesh that it goes through: a coarse mesh floods with thin
 * paste, a fine one lets no thick paste through.
 *
 * @param thickener its name
 * @param share g for each ml of paste
 * @param thinnest how little thickener any paste may hold
 * @param thickest how much
 * @param thinForCoarse how little one for a coarse mesh
 * @param thickForFine how much one for a fine mesh
 * @param screen one of that mesh
 * @param count its mesh
 * @param gramsForCoarse thickener in one batch that suits a coarse mesh at least
 * @param gramsForFine thickener in one batch that suits a fine mesh at most
 * @param path of its line in the recipe
 */
public record ThickenerOnMesh(
    String paste,
    String thickener,
    Range share,
    Limit thinnest,
    Limit thickest,
    Limit thinForCoarse,
    Limit thickForFine,
    String screen,
    MeshCount count,
    Mass gramsForCoarse,
    Mass gramsForFine,
    PlanPath screenPath,
    PlanPath path)
    implements Evidence {

  @Override
  public List<Related> related() {
    return List.of(new Related(Tie.SCREEN, screenPath));
  }
}
