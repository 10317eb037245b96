package strikeoff.colour;

import java.util.List;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.policy.Limit;
import strikeoff.units.Ratio;

/**
 * Printed pastes that hardly differ on this ground: each lies close to another of them.
 *
 * @param pastes in the plan's order, at least two
 * @param looks what each is expected to look like on the ground, as hexadecimal triples
 * @param difference the least CIEDE2000 between two of them
 * @param apart CIEDE2000 from which on two are told apart
 * @param whole whether all pairs of pastes of the plan were looked at
 * @param path of the second paste's colour
 */
public record NearLooks(
    List<String> pastes,
    List<String> looks,
    Ratio difference,
    Limit apart,
    boolean whole,
    List<Related> related,
    PlanPath path)
    implements Evidence {

  public NearLooks {
    pastes = List.copyOf(pastes);
    looks = List.copyOf(looks);
    related = List.copyOf(related);
  }
}
