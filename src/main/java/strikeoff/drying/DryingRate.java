package strikeoff.drying;

/**
 * How fast water leaves a film in a given air, g/(m² h).
 *
 * <p>Published forms differ by more than a factor of two in still air, and a thin film cools below
 * the air by a further factor. So the fastest credible rate takes the Carrier form with a film as
 * warm as the air; the slowest takes the still-air form (or flow along a plate, where that is
 * faster) with a film that no heat reaches but the air's, so that it cools to the wet bulb; the
 * best value takes the same forms with the film at the temperature where heat from air,
 * surroundings and backing balances evaporation.
 *
 * @param slowest never above {@code best}
 * @param fastest never below {@code best}
 */
public record DryingRate(double slowest, double best, double fastest) {

  /** Air in which nothing dries. */
  public static final DryingRate NONE = new DryingRate(0, 0, 0);

  /**
   * @param activity vapour pressure of the film over that of pure water; at or above this humidity
   *     the film takes water from the air
   * @param sideHeat heat that reaches the film by radiation and through the backing, W/(m² K)
   */
  public static DryingRate in(Air air, double activity, double sideHeat) {
    if (air.humidity() >= activity) {
      return NONE;
    }
    double warm = air.celsius();
    double carrier = EvaporationForm.CARRIER.rate(warm, activity * MoistAir.saturation(warm), air);
    double best = rate(filmTemperature(air, activity, sideHeat), activity, air);
    double slow = rate(filmTemperature(air, activity, 0), activity, air);
    return new DryingRate(Math.min(slow, best), best, Math.max(carrier, best));
  }

  /** The larger of still-air and plate flow at a film temperature. */
  private static double rate(double surface, double activity, Air air) {
    double pressure = activity * MoistAir.saturation(surface);
    return Math.max(
        EvaporationForm.STILL.rate(surface, pressure, air),
        EvaporationForm.PLATE.rate(surface, pressure, air));
  }

  /**
   * Where heat brought equals heat used: (hc + side)(ta − ts) = E·hv, with hc tied to E by the
   * Lewis relation. Solved by halving between the wet bulb of dry air and the air's temperature.
   */
  static double filmTemperature(Air air, double activity, double sideHeat) {
    double cold = -40;
    double warm = air.celsius();
    for (int i = 0; i < 60; i++) {
      double surface = (cold + warm) / 2;
      if (heatBrought(surface, air, activity, sideHeat) < heatUsed(surface, air, activity)) {
        warm = surface;
      } else {
        cold = surface;
      }
    }
    return (cold + warm) / 2;
  }

  private static double heatUsed(double surface, Air air, double activity) {
    return rate(surface, activity, air) / 3600 * MoistAir.latentHeat(surface);
  }

  private static double heatBrought(double surface, Air air, double activity, double sideHeat) {
    double pressure = activity * MoistAir.saturation(surface);
    double drive =
        MoistAir.vapourDensity(surface, pressure)
            - MoistAir.vapourDensity(air.celsius(), air.vapourPressure());
    if (drive <= 0) {
      return Double.MAX_VALUE;
    }
    double transfer = rate(surface, activity, air) / 3.6e6 / drive;
    return (transfer * EvaporationForm.lewis(air) + sideHeat) * (air.celsius() - surface);
  }
}
