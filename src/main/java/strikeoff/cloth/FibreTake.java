package strikeoff.cloth;

import java.util.List;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.units.Ratio;
import strikeoff.units.Share;

/**
 * How much of a reactive dye the printed cloth takes, as a share of what cotton takes.
 *
 * @param takes sum over the fibres of their share times what they take
 * @param dyeable share of its mass in fibres that take any, whatever that is
 * @param blend the fibres with their shares, in words
 * @param resisting fibres that take none or less of it
 * @param protein fibres such as silk and wool, which take the dye otherwise than cotton
 * @param strongest how many times as strong as usual a paste may be mixed
 * @param dyes the dye pastes that are printed
 * @param path of the fibres
 */
public record FibreTake(
    Share takes,
    Share dyeable,
    String blend,
    List<String> resisting,
    List<String> protein,
    List<String> dyes,
    double strongest,
    PlanPath path)
    implements Evidence {

  public FibreTake {
    resisting = List.copyOf(resisting);
    protein = List.copyOf(protein);
    dyes = List.copyOf(dyes);
  }

  /**
   * How many times as strong a paste must be mixed to lay as much dye on the cloth as on cotton,
   * rounded to a twentieth, so that 1 / 80 % stays 1.25; one if it takes none.
   */
  public Ratio stronger() {
    return takes.fraction() > 0 ? new Ratio(Math.rint(20 / takes.fraction()) / 20) : new Ratio(1);
  }

  /** How much paler than on cotton. */
  public Share paler() {
    return new Share(1 - takes.fraction());
  }
}
