package strikeoff.bath;

import java.util.List;
import java.util.Optional;
import strikeoff.document.Edit;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.paste.SodaLife;
import strikeoff.units.Mass;
import strikeoff.units.Range;

/**
 * What alkali dye finds where it is soaked, batched or steamed.
 *
 * @param how soak, batch or steam
 * @param inBath true if its own bath holds some
 * @param inCloth true if a soak before has left some in the cloth
 * @param dyes the pastes without any of their own; what follows is for them, and empty where they
 *     find some
 * @param shortLived those of them that would not live to their last print with soda in them
 * @param sodaForBath soda ash that makes a soak's water a bath of the usual strength
 * @param saltForBath salt that such a bath lacks to keep dye on a print; empty if it has enough, or
 *     if no dye lies on the cloth yet
 * @param protein true on silk and wool, which are steamed with baking soda alone
 * @param weighedIn g of alkali that recipes hold in a kilogram
 * @param steam true if it is steamed, false for a batch
 * @param edits what writes alkali, and salt for a bath, into the plan; none on such cloth, nor for
 *     a paste of which no recipe tells what is in it
 * @param path of the fix step
 */
public record AlkaliForDye(
    int step,
    String how,
    boolean inBath,
    boolean inCloth,
    List<String> dyes,
    List<SodaLife> shortLived,
    List<Related> related,
    Optional<Mass> sodaForBath,
    Optional<Mass> saltForBath,
    boolean protein,
    Range weighedIn,
    boolean steam,
    List<List<Edit>> edits,
    PlanPath path)
    implements Evidence {

  public AlkaliForDye {
    dyes = List.copyOf(dyes);
    shortLived = List.copyOf(shortLived);
    related = List.copyOf(related);
    edits = List.copyOf(edits);
  }

  /** How many pastes have none of their own. */
  public int without() {
    return dyes.size();
  }
}
