package strikeoff.drying;

import strikeoff.plan.Draught;
import strikeoff.plan.Room;
import strikeoff.policy.Policy;
import strikeoff.units.AirSpeed;
import strikeoff.units.Temperature;

/**
 * The air that the model of drying was compared with measurements for. Nothing is extrapolated
 * beyond it.
 */
public record Tried(Temperature coldest, Temperature hottest, AirSpeed fastest) {

  public static Tried of(Policy policy) {
    return new Tried(
        policy.drying().coldestAir(), policy.drying().hottestAir(), policy.drying().fastestAir());
  }

  /** The nearest temperature that was tried. */
  public Temperature nearest(Temperature stated) {
    return new Temperature(
        Math.max(coldest.celsius(), Math.min(hottest.celsius(), stated.celsius())));
  }

  /** The nearest speed that was tried. */
  public AirSpeed nearest(AirSpeed stated) {
    return new AirSpeed(Math.min(fastest.metresPerSecond(), stated.metresPerSecond()));
  }

  /** The room's air, or the nearest that was tried. */
  Air of(Room room) {
    return moved(
        new Air(nearest(room.temperature()).celsius(), room.humidity().fraction(), 0), room.air());
  }

  /** Air as warm and damp, moved like that or as fast as was tried. */
  Air moved(Air air, Draught draught) {
    double speed = nearest(draught.speed()).metresPerSecond();
    Air.Known how =
        switch (draught.by()) {
          case FAN, HAIR_DRYER -> Air.Known.NAMED;
          case STILL, STATED -> speed > 0 ? Air.Known.STATED : Air.Known.STILL;
        };
    return new Air(air.celsius(), air.humidity(), speed, how);
  }
}
