package strikeoff.described;

import strikeoff.plan.Evidence;
import strikeoff.plan.PlanPath;

/** What the room has for everybody to share. */
public record EquipmentThere(int sinks, int fans, int hairDryers, int dryingPlaces, PlanPath path)
    implements Evidence {}
