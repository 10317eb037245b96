package strikeoff.described;

import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;

/** What the room has for everybody to share. */
public record EquipmentThere(int sinks, int fans, int hairDryers, int dryingPlaces, PlanPath path)
    implements Evidence {}
