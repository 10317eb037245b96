package strikeoff.layout;

import java.util.List;
import strikeoff.plan.Evidence;

/**
 * Everything's place on the cloth.
 *
 * @param placements in order of arrangements and numbers; a placement's id is its index
 * @param footprints of every separation of every placement, by placement id and separation number
 * @param evidence further facts for rules: spans and misfits, closings, seam crossings, overlaps,
 *     clearances, fits of frames on table and cloth
 */
public record Layout(
    List<Placement> placements, List<Footprint> footprints, List<Evidence> evidence) {

  public Layout {
    placements = List.copyOf(placements);
    footprints = List.copyOf(footprints);
    evidence = List.copyOf(evidence);
  }

  /** The placements of one arrangement, by number. */
  public List<Placement> of(String arrangement) {
    return placements.stream().filter(p -> p.arrangement().equals(arrangement)).toList();
  }
}
