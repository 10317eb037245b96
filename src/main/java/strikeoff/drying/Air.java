package strikeoff.drying;

import strikeoff.plan.Room;
import strikeoff.units.AirSpeed;

/**
 * The air that a film dries in.
 *
 * @param celsius its temperature; held between 0 and 99 °C
 * @param humidity relative humidity, 0 to 1
 * @param speed over the cloth in m/s; 0 for still air
 */
public record Air(double celsius, double humidity, double speed) {

  /** The strongest wind that is taken seriously; a hair-dryer blows about 10 m/s. */
  private static final double STORM = 30;

  public Air {
    celsius = MoistAir.within(celsius);
    humidity = Math.min(1, Math.max(0, humidity));
    speed = Math.min(STORM, Math.max(0, speed));
  }

  public static Air of(Room room) {
    return new Air(
        room.temperature().celsius(), room.humidity().fraction(), room.air().metresPerSecond());
  }

  /** The same air, moved. */
  public Air moving(AirSpeed air) {
    return new Air(celsius, humidity, air.metresPerSecond());
  }

  /** Pressure of the vapour in it, Pa. */
  public double vapourPressure() {
    return humidity * MoistAir.saturation(celsius);
  }
}
