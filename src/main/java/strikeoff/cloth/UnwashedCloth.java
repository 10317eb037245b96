package strikeoff.cloth;

import java.util.List;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;

/**
 * Printed cloth that was not washed before the print day: its finish and its wax, or its size, lie
 * on the fibre until it is.
 *
 * @param dyes the dye pastes that are printed
 * @param paints the paints that are printed
 * @param loomState true for cloth as it comes off the loom
 * @param washedFirst true if the run washes it before it prints
 * @param path where the plan says whether the cloth was washed
 */
public record UnwashedCloth(
    List<String> dyes, List<String> paints, boolean loomState, boolean washedFirst, PlanPath path)
    implements Evidence {

  public UnwashedCloth {
    dyes = List.copyOf(dyes);
    paints = List.copyOf(paints);
  }

  /** True if dye is printed on it. */
  public boolean dyed() {
    return !dyes.isEmpty();
  }

  /** True if it is scoured when it is printed: a wash takes the finish out, but no size. */
  public boolean scoured() {
    return washedFirst && !loomState;
  }
}
