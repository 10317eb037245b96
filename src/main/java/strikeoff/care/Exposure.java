package strikeoff.care;

import java.util.List;
import strikeoff.plan.Evidence;
import strikeoff.plan.PlanPath;
import strikeoff.plan.Protection;

/**
 * Work with one hazard, over the whole plan.
 *
 * @param hazard which
 * @param where the steps in words
 * @param missing what the plan's protection lacks against it
 * @param related further steps of the kind
 * @param path of the first step
 */
public record Exposure(
    Hazard hazard,
    List<String> where,
    List<Protection> missing,
    List<Related> related,
    PlanPath path)
    implements Evidence {

  public Exposure {
    where = List.copyOf(where);
    missing = List.copyOf(missing);
    related = List.copyOf(related);
  }

  public boolean dyePowder() {
    return hazard == Hazard.DYE_POWDER;
  }

  public boolean alkali() {
    return hazard == Hazard.ALKALI;
  }

  public boolean heat() {
    return hazard == Hazard.STEAM || hazard == Hazard.HOT_IRON;
  }

  public boolean withoutMask() {
    return missing.contains(Protection.DUST_MASK);
  }

  public boolean withoutGloves() {
    return missing.contains(Protection.GLOVES);
  }

  public boolean withoutGoggles() {
    return missing.contains(Protection.GOGGLES);
  }

  public boolean withoutHeatGloves() {
    return missing.contains(Protection.HEAT_GLOVES);
  }
}
