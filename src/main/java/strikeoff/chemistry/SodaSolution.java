package strikeoff.chemistry;

import java.util.Optional;

/**
 * Water with soda in it, out of contact with the air: closed against carbon dioxide, which lowers
 * the pH of a bath that stands open for hours.
 *
 * @param celsius its temperature
 * @param carbonate moles of Na₂CO₃ put into a kilogram of water
 * @param bicarbonate moles of NaHCO₃ put into a kilogram of water
 * @param ionicStrength mol/kg
 * @param pH −log₁₀ of the hydrogen ions' activity
 */
public record SodaSolution(
    double celsius, double carbonate, double bicarbonate, double ionicStrength, double pH) {

  /** Temperatures that the constants were measured at; a bath has no others. */
  public static final double COLDEST = 0;

  public static final double HOTTEST = 60;

  /** Weaker than this, the water's own carbon dioxide decides the pH. */
  public static final double WEAKEST = 1e-3;

  /**
   * Strongest mixture the model is used for, mol/kg of both sodas together. It is checked against
   * the Geological Survey's program up to 1.0.
   */
  public static final double STRONGEST = 1.2;

  /**
   * How well the pH is known at the strength of a bath: the Geological Survey's data bases lie 0.11
   * apart at 0.1 mol/kg and 0.18 to 0.31 at 0.2 to 1 mol/kg, so either end is within this of the
   * middle.
   */
  public static final double UNCERTAINTY = 0.2;

  private static final int ROUNDS = 60;

  /** Between these lies the pH of any of these solutions. */
  private static final double LOWEST = 4;

  private static final double HIGHEST = 14;

  /**
   * The solution, or nothing where the model does not hold: colder, hotter, weaker or stronger than
   * the limits of this class.
   */
  public static Optional<SodaSolution> of(double celsius, double carbonate, double bicarbonate) {
    return of(celsius, carbonate, bicarbonate, SaltWater.NONE);
  }

  /** The same in salt water; nothing either where that is saltier than the model holds for. */
  public static Optional<SodaSolution> of(
      double celsius, double carbonate, double bicarbonate, SaltWater salt) {
    double both = carbonate + bicarbonate;
    boolean holds =
        celsius >= COLDEST
            && celsius <= HOTTEST
            && carbonate >= 0
            && bicarbonate >= 0
            && both >= WEAKEST
            && both <= STRONGEST
            && salt.ionicStrength() <= SaltWater.STRONGEST;
    return holds ? Optional.of(solve(celsius, carbonate, bicarbonate, salt)) : Optional.empty();
  }

  /** From grams of anhydrous soda for each litre of water poured in. */
  public static Optional<SodaSolution> ofGramsPerLitre(
      double celsius, double sodaPerLitre, double bicarbonatePerLitre) {
    return ofGramsPerLitre(celsius, sodaPerLitre, bicarbonatePerLitre, 0, 0);
  }

  /** The same with grams of common salt and of Glauber's salt without its water. */
  public static Optional<SodaSolution> ofGramsPerLitre(
      double celsius,
      double sodaPerLitre,
      double bicarbonatePerLitre,
      double commonSalt,
      double glaubersSalt) {
    double kilograms = Water.density(Math.max(COLDEST, Math.min(HOTTEST, celsius)));
    return of(
        celsius,
        sodaPerLitre / Carbonate.ANHYDROUS / kilograms,
        bicarbonatePerLitre / Carbonate.BICARBONATE / kilograms,
        new SaltWater(
            commonSalt / SaltWater.COMMON_SALT / kilograms,
            glaubersSalt / SaltWater.GLAUBERS_SALT / kilograms));
  }

  private static SodaSolution solve(
      double celsius, double carbonate, double bicarbonate, SaltWater salt) {
    Pitzer pitzer = new Pitzer(celsius);
    Constants constants = Constants.at(celsius);
    double carbon = carbonate + bicarbonate;
    double sodium = 2 * carbonate + bicarbonate;
    Pitzer.Coefficients gamma = pitzer.at(0, bicarbonate, carbonate, salt);
    double pH = (LOWEST + HIGHEST) / 2;
    for (int round = 0; round < ROUNDS; round++) {
      Species species = Species.atBalance(constants, sodium, carbon, gamma, pH);
      double change = Math.abs(species.pH - pH);
      pH = species.pH;
      gamma = pitzer.at(species.hydroxide, species.bicarbonate, species.carbonate, salt);
      if (change < 1e-10) {
        break;
      }
    }
    return new SodaSolution(celsius, carbonate, bicarbonate, gamma.ionicStrength(), pH);
  }

  /** Of balance, at one temperature. */
  private record Constants(double pKw, double pK1, double pK2) {
    static Constants at(double celsius) {
      return new Constants(
          Carbonate.pKw(celsius), Carbonate.pK1(celsius), Carbonate.pK2WithPitzer(celsius));
    }
  }

  /** How the carbon and the hydroxide lie at one pH. */
  private record Species(double pH, double hydroxide, double bicarbonate, double carbonate) {

    /**
     * The pH at which charges balance. The balance falls steadily with rising pH, so Newton's steps
     * from the last estimate find it; one that leaves what is known of it is replaced by halving.
     */
    static Species atBalance(
        Constants constants, double sodium, double carbon, Pitzer.Coefficients gamma, double from) {
      double low = LOWEST;
      double high = HIGHEST;
      double pH = from;
      Species species = at(constants, pH, carbon, gamma);
      for (int round = 0; round < ROUNDS; round++) {
        double surplus = sodium + species.hydrogen() - species.negative();
        if (surplus > 0) {
          low = pH;
        } else {
          high = pH;
        }
        double next = pH + surplus / (Math.log(10) * species.steepness(carbon));
        if (next <= low || next >= high) {
          next = (low + high) / 2;
        }
        double step = Math.abs(next - pH);
        pH = next;
        species = at(constants, pH, carbon, gamma);
        if (step < 1e-12) {
          break;
        }
      }
      return species;
    }

    /** By how much charges get more negative with pH, for each e-fold of the hydrogen ions. */
    private double steepness(double carbon) {
      double gas = carbon - bicarbonate - carbonate;
      double more = bicarbonate * (gas - carbonate) / carbon;
      double moreCarbonate = carbonate * (gas - carbonate) / carbon + carbonate;
      return hydroxide + hydrogen() + more + 2 * moreCarbonate;
    }

    private static Species at(
        Constants constants, double pH, double carbon, Pitzer.Coefficients gamma) {
      double hydroxide = Math.pow(10, pH - constants.pKw - gamma.hydroxide());
      double perBicarbonate =
          Math.pow(10, pH - constants.pK2 + gamma.bicarbonate() - gamma.carbonate());
      double dissolvedGas = Math.pow(10, constants.pK1 - pH + gamma.bicarbonate());
      double bicarbonate = carbon / (1 + perBicarbonate + dissolvedGas);
      return new Species(pH, hydroxide, bicarbonate, bicarbonate * perBicarbonate);
    }

    /** Too little to need an activity coefficient wherever there is soda. */
    private double hydrogen() {
      return Math.pow(10, -pH);
    }

    private double negative() {
      return hydroxide + bicarbonate + 2 * carbonate;
    }
  }
}
