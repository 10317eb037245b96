package strikeoff.drying;

/** A published correlation of evaporation from a level wet surface. */
enum EvaporationForm {
  /**
   * The ASHRAE form that goes back to Carrier: E = (pw − pa)(0.089 + 0.0782 v)/hv, kg/(m² s), kPa,
   * kJ/kg. Fitted to stirred water in moved air; ASHRAE gives it for 0.05 to 0.15 m/s (from
   * memory), faster air extrapolates it. In still air it is 2.3 to 2.5 times the other forms, so it
   * stands for the fastest credible drying.
   */
  CARRIER {
    @Override
    double rate(double surface, double pressure, Air air, double stretch) {
      double kiloPascal = (pressure - air.vapourPressure()) / 1000;
      return Math.max(0, kiloPascal)
          * (0.089 + 0.0782 * air.speed())
          / MoistAir.latentHeat(surface)
          * 3.6e6;
    }
  },
  /**
   * Shah's form for undisturbed water in still air, kg/(m² h): natural convection C·ρw·(ρr −
   * ρw)^⅓·(Ww − Wr), or 5·10⁻⁵(pw − pa) where that is larger; Shah 2014, ASHRAE Transactions 120(2)
   * (from memory). Checked by its author against pools and vessels from about 7 to 94 °C. It takes
   * no notice of air speed.
   */
  STILL {
    @Override
    double rate(double surface, double pressure, Air air, double stretch) {
      double vapour = air.vapourPressure();
      if (pressure <= vapour) {
        return 0;
      }
      double lift = MoistAir.density(air.celsius(), vapour) - MoistAir.density(surface, pressure);
      double excess = MoistAir.humidityRatio(pressure) - MoistAir.humidityRatio(vapour);
      double natural =
          lift <= 0
              ? 0
              : (lift > 0.02 ? 35 : 40)
                  * MoistAir.dryDensity(surface, pressure)
                  * Math.cbrt(lift)
                  * excess;
      return 1000 * Math.max(natural, 5e-5 * (pressure - vapour));
    }
  },
  /**
   * Laminar flow along a plate, Nu = 0.664 Re^½ Pr^⅓ (Incropera, Fundamentals of Heat and Mass
   * Transfer, ch. 7), turned into evaporation by the Chilton-Colburn analogy; Re up to 5·10⁵, that
   * is 15 m/s over half a metre. Turbulence of a fan makes it faster, so it is on the slow side.
   */
  PLATE {
    @Override
    double rate(double surface, double pressure, Air air, double stretch) {
      double reynolds = air.speed() * stretch / VISCOSITY;
      double heat = 0.664 * Math.sqrt(reynolds) * Math.cbrt(PRANDTL) * CONDUCTIVITY / stretch;
      double transfer = heat / lewis(air);
      double drive =
          MoistAir.vapourDensity(surface, pressure)
              - MoistAir.vapourDensity(air.celsius(), air.vapourPressure());
      return Math.max(0, transfer * drive) * 3.6e6;
    }
  };

  private static final double VISCOSITY = 1.52e-5; // of air at 20 °C, m²/s
  private static final double CONDUCTIVITY = 0.0257; // W/(m K)
  private static final double PRANDTL = 0.71;
  private static final double LEWIS = 0.85; // thermal over vapour diffusivity in air

  /**
   * Water that leaves in g/(m² h), from a surface of that temperature and vapour pressure.
   *
   * @param stretch length of the wet surface along the wind in m; only flow along a plate asks for
   *     it, and falls with its square root
   */
  abstract double rate(double surface, double pressure, Air air, double stretch);

  /** Heat transfer over mass transfer, ρ·cp·Le^⅔, J/(m³ K). */
  static double lewis(Air air) {
    return MoistAir.density(air.celsius(), air.vapourPressure())
        * 1006
        * Math.pow(LEWIS, 2.0 / 3.0);
  }
}
