package strikeoff.drying;

/**
 * A wet film at rest with the room: what evaporates from it takes as much heat as air, walls and
 * table bring.
 *
 * <p>λE = hc (Ta − Ts) + hr (Ta − Ts) + U (Ta − Ts) + q, and E = hm (aw ρvs(Ts) − ρv), solved for
 * the temperature Ts of the film. Heat and vapour pass the same layer of air, so that hm = hc / (ρ
 * cp Le^⅔) (Chilton and Colburn, Ind. Eng. Chem. 26, 1934) with ρ = 1.2 kg/m³, cp = 1006 J/(kg K)
 * and Le = 0.865. Radiation is that of a film and walls as warm as the air, hr = 4 ε σ Tm³ with Tm
 * half-way between.
 *
 * @param celsius temperature of the film, °C
 * @param rate water that leaves it, g/(m² h); never negative
 * @param fromAir heat that the air brings, W/m²
 * @param fromRoom heat that walls and ceiling bring, W/m²
 * @param fromTable heat that comes through padding and table, W/m²
 */
record HeatBalance(double celsius, double rate, double fromAir, double fromRoom, double fromTable) {

  /** Of vapour through air over that of heat: ρ cp Le^⅔, J/(m³ K). */
  static final double LEWIS = 1096;

  private static final double STEFAN_BOLTZMANN = 5.67e-8; // W/(m² K⁴)
  private static final double KELVIN = 273.15;

  /** Degrees; the film's temperature is found to that. */
  private static final double CLOSE = 1e-9;

  private static final int MOST_STEPS = 40;

  /**
   * What meets at the film.
   *
   * @param celsius temperature of air and walls, °C
   * @param vapour mass of vapour in the air, kg/m³
   * @param convection heat transfer from the air, W/(m² K); above zero
   * @param backing heat transfer through the table, W/(m² K)
   * @param walls heat that walls bring beyond those as warm as the air, W/m²; may be negative
   * @param emissivity of the film
   * @param activity vapour pressure of the film over that of pure water
   */
  static HeatBalance of(
      double celsius,
      double vapour,
      double convection,
      double backing,
      double walls,
      double emissivity,
      double activity) {
    double transfer = convection / LEWIS;
    double film = celsius;
    // The surplus of heat falls ever more steeply with the film's temperature, so that Newton's
    // steps come down to it from above whatever they begin with.
    for (int step = 0; step < MOST_STEPS; step++) {
      double latent = 1000 * MoistAir.latentHeat(film);
      double saturated = activity * MoistAir.vapourDensity(film, MoistAir.saturation(film));
      double radiation = radiation(celsius, film, emissivity);
      double surplus =
          (convection + radiation + backing) * (celsius - film)
              + walls
              - latent * transfer * (saturated - vapour);
      double slope =
          convection + radiation + backing + latent * transfer * saturated * steepness(film);
      double warmer = surplus / slope;
      film += warmer;
      if (Math.abs(warmer) < CLOSE) {
        break;
      }
    }
    double saturated = activity * MoistAir.vapourDensity(film, MoistAir.saturation(film));
    return new HeatBalance(
        film,
        Math.max(0, transfer * (saturated - vapour)) * 3.6e6,
        convection * (celsius - film),
        radiation(celsius, film, emissivity) * (celsius - film) + walls,
        backing * (celsius - film));
  }

  /** hr = 4 ε σ Tm³, W/(m² K). */
  private static double radiation(double celsius, double film, double emissivity) {
    double middle = (celsius + film) / 2 + KELVIN;
    return 4 * emissivity * STEFAN_BOLTZMANN * middle * middle * middle;
  }

  /** Relative growth of saturated vapour density by a degree; only guides the steps. */
  private static double steepness(double celsius) {
    double magnus = celsius + 243.04;
    return 17.625 * 243.04 / (magnus * magnus) - 1 / (celsius + KELVIN);
  }

  /** All heat that the film gets, W/m². */
  double heat() {
    return fromAir + fromRoom + fromTable;
  }
}
