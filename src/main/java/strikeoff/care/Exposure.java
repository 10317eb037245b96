package strikeoff.care;

import java.util.List;
import strikeoff.document.Edit;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.plan.Protection;

/**
 * Work with one hazard, over the whole plan.
 *
 * @param hazard which
 * @param substances names of what does the harm: kinds of soda, pastes weighed from powder
 * @param missing what the plan's protection lacks against it
 * @param lacking what it lacks against all hazards of the plan
 * @param children true if a class of children works along
 * @param named true if the plan names who does each of the steps
 * @param related further steps of the kind
 * @param path of the first step
 */
public record Exposure(
    Hazard hazard,
    List<Workplace> where,
    List<String> substances,
    List<Protection> missing,
    List<Protection> lacking,
    boolean children,
    boolean named,
    List<Related> related,
    PlanPath path)
    implements Evidence {

  public Exposure {
    where = List.copyOf(where);
    substances = List.copyOf(substances);
    missing = List.copyOf(missing);
    lacking = List.copyOf(lacking);
    related = List.copyOf(related);
  }

  /**
   * What to write: all that is lacking, since several findings ask for lines of one list, and who
   * writes each of them writes the list several times.
   */
  public List<List<Edit>> protect() {
    return List.of(
        lacking.stream()
            .<Edit>map(p -> new Edit.Append(new PlanPath("protection"), p.text()))
            .toList());
  }

  public boolean dyePowder() {
    return hazard == Hazard.DYE_POWDER;
  }

  public boolean alkali() {
    return hazard == Hazard.ALKALI;
  }

  /** Dry heat or steam. */
  public boolean heat() {
    return hazard == Hazard.STEAM || hazard == Hazard.HOT_IRON || hazard == Hazard.OVEN;
  }

  public boolean hotWater() {
    return hazard == Hazard.HOT_WATER;
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
