package strikeoff.care;

import java.util.List;
import strikeoff.plan.Protection;

/** What can hurt in a print room, with the body that says so. */
public enum Hazard {
  DYE_POWDER(Protection.DUST_MASK, Protection.GLOVES),
  ALKALI(Protection.GOGGLES, Protection.GLOVES),
  VESSELS,
  CHILDREN,
  LIFTING,
  ELECTRICITY,
  STEAM(Protection.HEAT_GLOVES),
  AMMONIA,
  HOT_WATER(Protection.HEAT_GLOVES),
  HOT_IRON(Protection.HEAT_GLOVES),
  OVEN(Protection.HEAT_GLOVES),
  SCREEN_WASHING,
  DRAIN;

  private final List<Protection> needed;

  Hazard(Protection... needed) {
    this.needed = List.of(needed);
  }

  /** What is worn against it. */
  public List<Protection> needed() {
    return needed;
  }
}
