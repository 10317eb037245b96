package strikeoff.paste;

import java.util.List;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.units.Temperature;

/**
 * Dye pastes that are printed and stand in the room until then.
 *
 * @param pastes their names
 * @param room its temperature
 * @param known the temperature that stated lives hold for
 * @param carried how many degrees Celsius warmer or colder they are carried over
 * @param path of the room
 */
public record KeptInRoom(
    List<String> pastes, Temperature room, Temperature known, double carried, PlanPath path)
    implements Evidence {

  public KeptInRoom {
    pastes = List.copyOf(pastes);
  }

  /** How many degrees the room is warmer or colder than where their lives are known. */
  public double away() {
    return Math.abs(room.celsius() - known.celsius());
  }

  /** How many degrees further that is than their lives are carried over; below zero if nearer. */
  public double beyond() {
    return away() - carried;
  }
}
