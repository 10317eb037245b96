package strikeoff.drying;

/**
 * The air that a film dries in.
 *
 * @param celsius its temperature; held between 0 and 99 °C
 * @param humidity relative humidity, 0 to 1
 * @param speed over the cloth in m/s; 0 for still air
 * @param known how well the speed is known
 */
public record Air(double celsius, double humidity, double speed, Known known) {

  /** How well anybody knows the speed of the air. */
  public enum Known {
    /** Air that nothing moves; how far it creeps differs from room to room. */
    STILL,
    /** A speed that somebody measured. */
    STATED,
    /** A fan or a hair-dryer whose speed nobody measured. */
    NAMED
  }

  public Air {
    celsius = MoistAir.within(celsius);
    humidity = Math.min(1, Math.max(0, humidity));
    speed = Math.max(0, speed);
  }

  /** Still air, or air of a measured speed. */
  public Air(double celsius, double humidity, double speed) {
    this(celsius, humidity, speed, speed > 0 ? Known.STATED : Known.STILL);
  }

  // A run asks often, and mostly whether an air is that very one.
  @Override
  public boolean equals(Object other) {
    return this == other
        || other instanceof Air air
            && known == air.known
            && Double.compare(speed, air.speed) == 0
            && Double.compare(celsius, air.celsius) == 0
            && Double.compare(humidity, air.humidity) == 0;
  }

  @Override
  public int hashCode() {
    return 31 * (31 * (31 * Double.hashCode(celsius) + Double.hashCode(humidity)) + known.ordinal())
        + Double.hashCode(speed);
  }

  /** Pressure of the vapour in it, Pa. */
  public double vapourPressure() {
    return humidity * MoistAir.saturation(celsius);
  }
}
