package strikeoff.sequence;

import java.util.List;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.units.Length;

/**
 * Colours of a placed design that can adjoin and for which the plan states no trap. An outline
 * covers where colours meet only if they reach under it, so it counts like them. Two of which one
 * must lie on the other are left out, and so are those whose films tell how they meet: over how
 * much, not at all, or that one lies all on another colour.
 *
 * @param untrapped how many separations are of that kind
 * @param pastes of those separations
 * @param railed true if frames go against a rail and stops, false if they are laid by eye
 * @param tolerance how far a frame can be off on this table
 * @param path of the first of them that lies over another; of the design if there are none
 */
public record Adjoining(
    String design,
    int untrapped,
    List<String> pastes,
    boolean railed,
    Length tolerance,
    List<String> marks,
    PlanPath path)
    implements Evidence {

  public Adjoining {
    pastes = List.copyOf(pastes);
    marks = List.copyOf(marks);
  }
}
