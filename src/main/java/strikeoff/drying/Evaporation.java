package strikeoff.drying;

import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.Map;
import strikeoff.policy.Limits;
import strikeoff.policy.Policy;

/**
 * How fast water leaves an open film in a given air on each of the {@link Days}.
 *
 * <p>Heat transfer is hc = 8.0 max(v, 0.10)^0.6 (0.5 m / L)^0.3 W/(m² K): 2.0 at rest, which is the
 * coefficient of evaporation for quiet pools of VDI 2089 and of Shah (HVAC&amp;R Research 8(1),
 * 2002), and within a fifth of the coefficients for people and for turbulent flow along a plate
 * where the air moves. L is the wet length along the draught. What "still" means is the widest
 * unknown of all.
 */
final class Evaporation {

  private static final double BY_SPEED = 0.6;
  private static final double BY_LENGTH = 0.3;

  /** m; the length that the coefficient is given for. */
  private static final double GIVEN_LENGTH = 0.5;

  private final double transfer;
  private final double creep;
  private final double lengths;
  private final double emissivity;
  private final double backing;
  private final double backingSpread;
  private final Map<Air.Known, Double> airSpread;
  private final double todaySpread;
  private final double temperatureSpread;
  private final double humiditySpread;
  private final double wallsSpread;

  /** By day, air and activity of the film. */
  private final Map<Days, Map<Air, Map<Double, double[]>>> rates = new IdentityHashMap<>();

  Evaporation(Policy policy) {
    Limits.Drying drying = policy.drying();
    this.transfer = drying.heatTransfer().value();
    this.creep = drying.stillAir().metresPerSecond();
    double stretch = drying.wetStretch().mm() / 1000;
    this.lengths = Math.pow(GIVEN_LENGTH / stretch, BY_LENGTH);
    this.emissivity = drying.emissivity().fraction();
    this.backing = drying.backing().value();
    this.backingSpread = drying.backingSpread().value();
    this.airSpread =
        Map.of(
            Air.Known.STILL, drying.stillAirSpread().value(),
            Air.Known.STATED, drying.movedAirSpread().value(),
            Air.Known.NAMED, drying.namedAirSpread().value());
    this.todaySpread = drying.airTodaySpread().value();
    this.temperatureSpread = drying.temperatureSpread().value();
    this.humiditySpread = drying.humiditySpread().fraction();
    this.wallsSpread = drying.wallsSpread().value();
  }

  /** Water that leaves the film on each day, g/(m² h); zero where the air gives it water. */
  double[] rates(Days days, Air air, double activity) {
    return rates
        .computeIfAbsent(days, d -> new HashMap<>())
        .computeIfAbsent(air, a -> new HashMap<>())
        .computeIfAbsent(
            activity,
            w -> {
              double[] each = new double[Days.COUNT];
              for (int day = 0; day < each.length; day++) {
                each[day] = onDay(days, day, air, activity, When.PRINTING).rate();
              }
              return each;
            });
  }

  /** The film's heat balance on one of the days, or on the day of the strike-off before it. */
  HeatBalance onDay(Days days, int day, Air air, double activity, When when) {
    double celsius = air.celsius() + temperatureSpread * days.deviate(when.temperature, day);
    double humidity =
        Math.min(
            1, Math.max(0, air.humidity() + humiditySpread * days.deviate(when.humidity, day)));
    Unknown lasting = air.known() == Air.Known.STILL ? Unknown.STILL_AIR : Unknown.MOVED_AIR;
    double spread =
        airSpread.get(air.known()) * days.deviate(lasting, day)
            + todaySpread * days.deviate(when.air, day);
    return balance(
        celsius,
        humidity,
        air.speed(),
        Math.exp(spread),
        Math.exp(backingSpread * days.deviate(Unknown.BACKING, day)),
        wallsSpread * days.deviate(when.walls, day),
        activity);
  }

  /** The film's heat balance where all is as expected. */
  HeatBalance expected(Air air, double activity) {
    return balance(air.celsius(), air.humidity(), air.speed(), 1, 1, 0, activity);
  }

  private HeatBalance balance(
      double celsius,
      double humidity,
      double speed,
      double timesTransfer,
      double timesBacking,
      double walls,
      double activity) {
    double vapour = humidity * MoistAir.saturation(celsius);
    return HeatBalance.of(
        celsius,
        MoistAir.vapourDensity(celsius, vapour),
        transfer(speed) * timesTransfer,
        backing * timesBacking,
        walls,
        emissivity,
        activity);
  }

  /** Heat transfer from air of that speed, W/(m² K). */
  double transfer(double speed) {
    return transfer * Math.pow(Math.max(creep, speed), BY_SPEED) * lengths;
  }

  /** On which day a film dries: that of the printing, or that of the strike-off. */
  enum When {
    PRINTING(Unknown.PULL, Unknown.AIR_TODAY, Unknown.TEMPERATURE, Unknown.HUMIDITY, Unknown.WALLS),
    STRIKE_OFF(
        Unknown.PULL_THEN,
        Unknown.AIR_THEN,
        Unknown.TEMPERATURE_THEN,
        Unknown.HUMIDITY_THEN,
        Unknown.WALLS_THEN);

    final Unknown pull;
    final Unknown air;
    final Unknown temperature;
    final Unknown humidity;
    final Unknown walls;

    When(Unknown pull, Unknown air, Unknown temperature, Unknown humidity, Unknown walls) {
      this.pull = pull;
      this.air = air;
      this.temperature = temperature;
      this.humidity = humidity;
      this.walls = walls;
    }
  }
}
