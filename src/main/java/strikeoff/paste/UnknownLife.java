package strikeoff.paste;

import java.util.List;
import strikeoff.plan.Evidence;
import strikeoff.plan.PlanPath;
import strikeoff.units.Measures;
import strikeoff.units.Temperature;

/**
 * Dye pastes whose life nobody has measured at anything near the room's temperature.
 *
 * @param pastes their names
 * @param room its temperature
 * @param known the temperature that stated lives hold for
 * @param carried how many degrees Celsius warmer or colder they are carried over
 * @param path of the room
 */
public record UnknownLife(
    List<String> pastes, Temperature room, Temperature known, double carried, PlanPath path)
    implements Evidence {

  public UnknownLife {
    pastes = List.copyOf(pastes);
  }

  /** How far they are carried over, in words. */
  public String within(Measures units) {
    return Temperature.difference(carried, units);
  }
}
