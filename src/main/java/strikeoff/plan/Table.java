package strikeoff.plan;

import java.util.Optional;
import strikeoff.document.PlanPath;
import strikeoff.units.Length;

/**
 * The print table; length runs along the cloth's length.
 *
 * @param length of the padded top
 * @param width of the padded top
 * @param railed true with a registration rail and stops, false if frames are laid by eye
 * @param clothAt where the near edge of the cloth lies, from the table's near edge; empty if in the
 *     middle of the table
 * @param stations the boards or stretches that hold one placement each; empty if the table is used
 *     as one run
 */
public record Table(
    Length length,
    Length width,
    boolean railed,
    Optional<Length> clothAt,
    Optional<Stations> stations,
    PlanPath path) {

  /** Where a cloth's near edge lies, from the table's; below zero if it hangs over. */
  public Length nearEdgeOf(Cloth cloth) {
    return clothAt.orElse(new Length((width.mm() - cloth.width().mm()) / 2));
  }

  /**
   * Equal boards along the table, each for one placement.
   *
   * @param count how many the plan wants
   * @param length of one, along the table
   * @param width of one, across the table
   * @param gap free length between neighbours that are fixed
   * @param clearance working room that a frame needs around it inside its station
   * @param fixed true if they stand where they are, false if they are set under the motifs
   */
  public record Stations(
      int count,
      Length length,
      Length width,
      Length gap,
      Length clearance,
      boolean fixed,
      PlanPath path) {}
}
