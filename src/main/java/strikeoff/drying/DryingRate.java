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
   * @param stretch length of the wet motif along the wind, m
   */
  public static DryingRate in(Air air, double activity, double sideHeat, double stretch) {
    if (air.humidity() >= activity) {
      return NONE;
    }
    double warm = air.celsius();
    double carrier =
        EvaporationForm.CARRIER.rate(warm, activity * MoistAir.saturation(warm), air, stretch);
    double best = rate(filmTemperature(air, activity, sideHeat, stretch), activity, air, stretch);
    double slow = rate(filmTemperature(air, activity, 0, stretch), activity, air, stretch);
    return new DryingRate(Math.min(slow, best), best, Math.max(carrier, best));
  }

  /** The larger of still-air and plate flow at a film temperature. */
  private static double rate(double surface, double activity, Air air, double stretch) {
    double pressure = activity * MoistAir.saturation(surface);
    return Math.max(
        EvaporationForm.STILL.rate(surface, pressure, air, stretch),
        EvaporationForm.PLATE.rate(surface, pressure, air, stretch));
  }

  /**
   * Where heat brought equals heat used: (hc + side)(ta − ts) = E·hv, with hc tied to E by the
   * Lewis relation. Solved by halving between the wet bulb of dry air and the air's temperature.
   */
  static double filmTemperature(Air air, double activity, double sideHeat, double stretch) {
    double cold = -40;
    double warm = air.celsius();
    for (int i = 0; i < 60; i++) {
      double surface = (cold + warm) / 2;
      if (heatBrought(surface, air, activity, sideHeat, stretch)
          < heatUsed(surface, air, activity, stretch)) {
        warm = surface;
      } else {
        cold = surface;
      }
    }
    return (cold + warm) / 2;
  }

  private static double heatUsed(double surface, Air air, double activity, double stretch) {
    return rate(surface, activity, air, stretch) / 3600 * MoistAir.latentHeat(surface);
  }

  private static double heatBrought(
      double surface, Air air, double activity, double sideHeat, double stretch) {
    double pressure = activity * MoistAir.saturation(surface);
    double drive =
        MoistAir.vapourDensity(surface, pressure)
            - MoistAir.vapourDensity(air.celsius(), air.vapourPressure());
    if (drive <= 0) {
      return Double.MAX_VALUE;
    }
    double transfer = rate(surface, activity, air, stretch) / 3.6e6 / drive;
    return (transfer * EvaporationForm.lewis(air) + sideHeat) * (air.celsius() - surface);
  }
}
