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

  /** Rooms that the forms of evaporation were checked for, °C. */
  public static final double COLDEST_ROOM = 5;

  public static final double HOTTEST_ROOM = 45;

  /** Fastest air over the cloth that they are used for, m/s; a hair-dryer held close. */
  public static final double FASTEST = 10;

  /** The strongest wind that is taken seriously; a hair-dryer blows about 10 m/s. */
  private static final double STORM = 30;

  public Air {
    celsius = MoistAir.within(celsius);
    humidity = Math.min(1, Math.max(0, humidity));
    speed = Math.min(STORM, Math.max(0, speed));
  }

  /** The room's air, held inside the limits above: nothing is extrapolated beyond them. */
  public static Air of(Room room) {
    return new Air(
        Math.max(COLDEST_ROOM, Math.min(HOTTEST_ROOM, room.temperature().celsius())),
        room.humidity().fraction(),
        Math.min(FASTEST, room.air().speed().metresPerSecond()));
  }

  @Override
  public int hashCode() {
    return 31 * (31 * Double.hashCode(celsius) + Double.hashCode(humidity))
        + Double.hashCode(speed);
  }

  /** The same air, moved, no faster than {@link #FASTEST}. */
  public Air moving(AirSpeed air) {
    return new Air(celsius, humidity, Math.min(FASTEST, air.metresPerSecond()));
  }

  /** Pressure of the vapour in it, Pa. */
  public double vapourPressure() {
    return humidity * MoistAir.saturation(celsius);
  }
}
