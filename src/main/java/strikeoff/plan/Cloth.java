package strikeoff.plan;

import java.util.Map;
import java.util.Optional;
import strikeoff.document.PlanPath;
import strikeoff.units.ArealMass;
import strikeoff.units.Length;
import strikeoff.units.Pair;
import strikeoff.units.Share;

/**
 * The cloth that is printed. Coordinates: x runs along the length from the end the printer starts
 * at, y across from the edge that lies nearest to the printer.
 *
 * @param fibres shares by fibre name as the policy knows it (cotton, linen, polyester …); they add
 *     up to 1
 * @param closed true for a length that is closed into a tube: x = 0 and x = length are one place
 * @param washed true if washed or scoured before printing, so that it has shrunk already
 * @param shrinkLength expected loss of length in the first wash, as a positive share
 * @param shrinkWidth expected loss of width in the first wash, as a positive share
 * @param startAllowance strip at x = 0 that is turned in, cut away or sewn and holds no image
 * @param endAllowance the same at the far end of the length
 * @param nearAllowance the same along y = 0, without the selvedge
 * @param farAllowance the same along y = width, without the selvedge
 * @param selvedge width of the selvedge at both long edges
 * @param loomState true for cloth as it comes off the loom, with its size and wax
 * @param finished length and width that it is to have when it is sewn and washed, if the plan asks
 *     for them
 */
public record Cloth(
    Map<String, Share> fibres,
    ArealMass mass,
    Length width,
    Length length,
    boolean closed,
    Colour ground,
    boolean washed,
    Share shrinkLength,
    Share shrinkWidth,
    Length startAllowance,
    Length endAllowance,
    Length nearAllowance,
    Length farAllowance,
    Length selvedge,
    boolean loomState,
    Optional<Pair> finished,
    PlanPath path) {

  public Cloth {
    fibres = Ordered.copy(fibres);
  }

  /** Cloth that is no loom-state one and is to finish at no size. */
  public Cloth(
      Map<String, Share> fibres,
      ArealMass mass,
      Length width,
      Length length,
      boolean closed,
      Colour ground,
      boolean washed,
      Share shrinkLength,
      Share shrinkWidth,
      Length startAllowance,
      Length endAllowance,
      Length nearAllowance,
      Length farAllowance,
      Length selvedge,
      PlanPath path) {
    this(
        fibres,
        mass,
        width,
        length,
        closed,
        ground,
        washed,
        shrinkLength,
        shrinkWidth,
        startAllowance,
        endAllowance,
        nearAllowance,
        farAllowance,
        selvedge,
        false,
        Optional.empty(),
        path);
  }
}
