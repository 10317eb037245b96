package strikeoff.paste;

import java.util.List;
import strikeoff.plan.Evidence;
import strikeoff.plan.PlanPath;
import strikeoff.units.Temperature;

/**
 * Dye pastes whose life nobody has measured at anything near the room's temperature.
 *
 * @param pastes their names
 * @param room its temperature
 * @param known the temperature that stated lives hold for
 * @param path of the room
 */
public record UnknownLife(List<String> pastes, Temperature room, Temperature known, PlanPath path)
    implements Evidence {

  public UnknownLife {
    pastes = List.copyOf(pastes);
  }
}
