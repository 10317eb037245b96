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
   * How far published models and measurements lie apart at the strength of a bath, and so how well
   * the pH is known: the Geological Survey's data bases differ by 0.08 at 0.1 mol/kg.
   */
  public static final double UNCERTAINTY = 0.1;

  private static final int ROUNDS = 60;

  /**
   * The solution, or nothing where the model does not hold: colder, hotter, weaker or stronger than
   * the limits of this class.
   */
  public static Optional<SodaSolution> of(double celsius, double carbonate, double bicarbonate) {
    double both = carbonate + bicarbonate;
    boolean holds =
        celsius >= COLDEST
            && celsius <= HOTTEST
            && carbonate >= 0
            && bicarbonate >= 0
            && both >= WEAKEST
            && both <= STRONGEST;
    return holds ? Optional.of(solve(celsius, carbonate, bicarbonate)) : Optional.empty();
  }

  /** From grams of anhydrous soda for each litre of water poured in. */
  public static Optional<SodaSolution> ofGramsPerLitre(
      double celsius, double sodaPerLitre, double bicarbonatePerLitre) {
    double kilograms = Water.density(Math.max(COLDEST, Math.min(HOTTEST, celsius)));
    return of(
        celsius,
        sodaPerLitre / Carbonate.ANHYDROUS / kilograms,
        bicarbonatePerLitre / Carbonate.BICARBONATE / kilograms);
  }

  private static SodaSolution solve(double celsius, double carbonate, double bicarbonate) {
    Pitzer pitzer = new Pitzer(celsius);
    double carbon = carbonate + bicarbonate;
    double sodium = 2 * carbonate + bicarbonate;
    Pitzer.Coefficients gamma = pitzer.at(0, bicarbonate, carbonate);
    double pH = 0;
    for (int round = 0; round < ROUNDS; round++) {
      Species species = Species.atBalance(celsius, sodium, carbon, gamma);
      double change = Math.abs(species.pH - pH);
      pH = species.pH;
      gamma = pitzer.at(species.hydroxide, species.bicarbonate, species.carbonate);
      if (change < 1e-10) {
        break;
      }
    }
    return new SodaSolution(celsius, carbonate, bicarbonate, gamma.ionicStrength(), pH);
  }

  /** How the carbon and the hydroxide lie at one pH. */
  private record Species(double pH, double hydroxide, double bicarbonate, double carbonate) {

    /** The pH at which charges balance, by halving: the balance falls steadily with rising pH. */
    static Species atBalance(
        double celsius, double sodium, double carbon, Pitzer.Coefficients gamma) {
      double low = 4;
      double high = 14;
      Species middle = at(celsius, (low + high) / 2, carbon, gamma);
      for (int halving = 0; halving < 50; halving++) {
        if (sodium + middle.hydrogen() > middle.negative()) {
          low = middle.pH;
        } else {
          high = middle.pH;
        }
        middle = at(celsius, (low + high) / 2, carbon, gamma);
      }
      return middle;
    }

    private static Species at(double celsius, double pH, double carbon, Pitzer.Coefficients gamma) {
      double hydroxide = Math.pow(10, pH - Carbonate.pKw(celsius) - gamma.hydroxide());
      double perBicarbonate =
          Math.pow(
              10, pH - Carbonate.pK2WithPitzer(celsius) + gamma.bicarbonate() - gamma.carbonate());
      double dissolvedGas = Math.pow(10, Carbonate.pK1(celsius) - pH + gamma.bicarbonate());
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
