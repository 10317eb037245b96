package strikeoff.chemistry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumMap;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import strikeoff.chemistry.ExcessEnergy.Ion;

/**
 * Activity coefficients as slopes of the excess energy; and that energy against measured mean
 * coefficients, so that the oracle itself is held to the world.
 */
class PitzerOracleTest {

  private static final double LN10 = Math.log(10);

  /**
   * His approximation of J is good to about this much of a logarithm in a bath; what it is off by
   * grows with the ions, so in brine that is nearly saturated it is twice as much, a fiftieth of
   * what a bath's pH is known by.
   */
  private static double tolerance(double strength) {
    return strength < 5 ? 0.002 : 0.004;
  }

  @ParameterizedTest
  @CsvSource({
    "25, 0.2, 0, 0, 0, 0",
    "25, 1, 0, 0, 0, 0",
    "25, 0, 0.5, 0, 0, 0",
    "25, 0, 1, 0, 0, 0",
    "25, 0, 0, 0.05, 0, 0",
    "25, 0, 0, 0.3, 0, 0",
    "25, 0, 0, 1, 0, 0",
    "25, 0.3, 0, 0.5, 0, 0",
    "25, 0, 0.5, 0.5, 0, 0",
    "25, 0.4, 0.3, 0.6, 0, 0",
    "5, 0.5, 0, 0, 0, 0",
    "5, 0, 0.8, 0, 0, 0",
    "5, 0, 0, 0.8, 0, 0",
    "50, 0.5, 0, 0, 0, 0",
    "50, 0, 0.8, 0, 0, 0",
    "50, 0, 0, 0.8, 0, 0",
    "60, 0.4, 0.3, 0.6, 0, 0",
    "25, 0.1, 0.1, 0.3, 2.5, 0",
    "25, 0.1, 0.1, 0.3, 5.5, 0",
    "35, 0.1, 0.1, 0.3, 0, 0.7",
    "35, 0.1, 0.1, 0.3, 1.2, 0.5",
  })
  void coefficientsAreSlopesOfTheExcessEnergy(
      double celsius,
      double hydroxide,
      double bicarbonate,
      double carbonate,
      double chloride,
      double sulphate) {
    Map<Ion, Double> molal = new EnumMap<>(Ion.class);
    molal.put(Ion.SODIUM, hydroxide + bicarbonate + 2 * carbonate + chloride + 2 * sulphate);
    molal.put(Ion.HYDROXIDE, hydroxide);
    molal.put(Ion.BICARBONATE, bicarbonate);
    molal.put(Ion.CARBONATE, carbonate);
    molal.put(Ion.CHLORIDE, chloride);
    molal.put(Ion.SULPHATE, sulphate);
    double strength = hydroxide + bicarbonate + 3 * carbonate + chloride + 3 * sulphate;
    ExcessEnergy energy = new ExcessEnergy(celsius);
    // MacInnes: chloride is given the mean coefficient of potassium chloride of this strength.
    double scale =
        Math.log(energy.mean(Ion.POTASSIUM, Ion.CHLORIDE, strength))
            - energy.slope(molal, Ion.CHLORIDE);

    Pitzer.Coefficients tool =
        new Pitzer(celsius)
            .at(hydroxide, bicarbonate, carbonate, new SaltWater(chloride, sulphate));

    assertThat(tool.ionicStrength()).isEqualTo(strength, within(1e-12));
    assertThat(tool.hydroxide())
        .isEqualTo(
            (energy.slope(molal, Ion.HYDROXIDE) + scale) / LN10, within(tolerance(strength)));
    assertThat(tool.bicarbonate())
        .isEqualTo(
            (energy.slope(molal, Ion.BICARBONATE) + scale) / LN10, within(tolerance(strength)));
    assertThat(tool.carbonate())
        .isEqualTo(
            (energy.slope(molal, Ion.CARBONATE) + 2 * scale) / LN10, within(tolerance(strength)));
  }

  /** Mean coefficients at 25 °C: Hamer & Wu 1972, J. Phys. Chem. Ref. Data 1:1047, from memory. */
  @ParameterizedTest
  @CsvSource({
    "POTASSIUM, CHLORIDE, 0.1, 0.768",
    "POTASSIUM, CHLORIDE, 0.5, 0.649",
    "POTASSIUM, CHLORIDE, 1, 0.604",
    "SODIUM, CHLORIDE, 0.1, 0.779",
    "SODIUM, CHLORIDE, 0.5, 0.681",
    "SODIUM, CHLORIDE, 1, 0.657",
  })
  void theEnergyGivesTheMeasuredMeanCoefficients(
      Ion cation, Ion anion, double molality, double published) {
    assertThat(new ExcessEnergy(25).mean(cation, anion, molality))
        .isEqualTo(published, within(0.005));
  }

  /**
   * The same table for lye. Pitzer's published parameters lie up to 1.7 % from it, which is less
   * than 0.01 of a pH: a tenth of what a bath's pH is known by.
   */
  @ParameterizedTest
  @CsvSource({"0.1, 0.764", "0.5, 0.688", "1, 0.677"})
  void lyeIsWithinAHundredthOfAPH(double molality, double published) {
    double ours = new ExcessEnergy(25).mean(Ion.SODIUM, Ion.HYDROXIDE, molality);
    assertThat(Math.log10(ours)).isEqualTo(Math.log10(published), within(0.01));
  }
}
