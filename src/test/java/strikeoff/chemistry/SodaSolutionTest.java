package strikeoff.chemistry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import strikeoff.checks.Check;
import strikeoff.checks.CheckRow;
import strikeoff.checks.CheckRow.Status;

/** The pH of soda in water, from a buffer's strength to a bath's. */
public class SodaSolutionTest {

  private static final String NBS = "Staples & Bates 1969, J. Res. NBS 73A:37";
  private static final String USGS = "USGS PHREEQC 3.8.9, ";

  public static List<Check> checks() {
    List<Check> checks = new ArrayList<>();
    double[] buffer = {
      10.317, 10.245, 10.179, 10.118, 10.062, 10.012, 9.966, 9.925, 9.889, 9.857, 9.828
    };
    for (int i = 0; i < buffer.length; i++) {
      double t = 5 * i;
      checks.add(
          new Check(
              new CheckRow(
                  "pH",
                  "0.025 mol/kg Na2CO3 + 0.025 mol/kg NaHCO3, " + Math.round(t) + " °C",
                  buffer[i],
                  0.03,
                  NBS,
                  Status.PUBLISHED),
              () -> pH(t, 0.025, 0.025)));
    }
    soda(checks, 25, 0.005, 10.870, 0.05, "phreeqc.dat");
    soda(checks, 25, 0.01, 11.000, 0.05, "phreeqc.dat");
    soda(checks, 25, 0.05, 11.263, 0.08, "phreeqc.dat");
    soda(checks, 25, 0.05, 11.240, 0.08, "pitzer.dat");
    soda(checks, 25, 0.05, 11.190, 0.08, "wateq4f.dat");
    soda(checks, 25, 0.1, 11.367, 0.08, "phreeqc.dat");
    soda(checks, 25, 0.1, 11.341, 0.08, "pitzer.dat");
    soda(checks, 25, 0.1, 11.264, 0.08, "wateq4f.dat");
    miss(checks, "this data base lies 0.08 to 0.10 below the other two of its makers");
    soda(checks, 10, 0.1, 11.722, 0.08, "phreeqc.dat");
    soda(checks, 20, 0.1, 11.478, 0.08, "phreeqc.dat");
    soda(checks, 30, 0.1, 11.263, 0.08, "phreeqc.dat");
    soda(checks, 40, 0.1, 11.074, 0.08, "phreeqc.dat");
    soda(checks, 25, 0.2, 11.470, 0.10, "phreeqc.dat");
    soda(checks, 25, 0.2, 11.442, 0.10, "pitzer.dat");
    soda(checks, 25, 0.5, 11.613, 0.10, "phreeqc.dat");
    soda(checks, 25, 0.5, 11.583, 0.10, "pitzer.dat");
    soda(checks, 25, 1.0, 11.729, 0.10, "phreeqc.dat");
    soda(checks, 25, 1.0, 11.713, 0.10, "pitzer.dat");
    checks.add(
        new Check(
            new CheckRow(
                "pH",
                "0.1 mol/L Na2CO3, about 25 °C",
                11.6,
                0.3,
                "chemical vendor's compilation",
                Status.PUBLISHED),
            () -> pH(25, 0.1, 0)));
    checks.add(
        new Check(
            new CheckRow(
                "pH",
                "0.1 mol/L NaHCO3, about 25 °C",
                8.3,
                0.3,
                "chemical vendor's compilation",
                Status.PUBLISHED),
            () -> pH(25, 0, 0.1)));
    checks.add(
        new Check(
            new CheckRow(
                "pH",
                "0.1 N Na2CO3, room temperature",
                11.5,
                0.4,
                "laboratory reagent table",
                Status.PUBLISHED),
            () -> pH(25, 0.05, 0)));
    checks.add(
        new Check(
            new CheckRow(
                "pH",
                "0.01 N Na2CO3, room temperature",
                11.0,
                0.4,
                "laboratory reagent table",
                Status.PUBLISHED),
            () -> pH(25, 0.005, 0)));
    // Percent by mass. Pages that repeat the figures read the percent as g/L, which they can't be.
    double[][] handbook = {{1, 11.37}, {5, 11.58}, {10, 11.70}};
    for (double[] row : handbook) {
      double molal = row[0] / (100 - row[0]) * 1000 / Carbonate.ANHYDROUS;
      checks.add(
          new Check(
              new CheckRow(
                  "pH",
                  Math.round(row[0]) + " % of soda ash by mass, 25 °C",
                  row[1],
                  0.1,
                  "soda producers' handbooks, from memory",
                  Status.FROM_MEMORY),
              () -> pH(25, molal, 0)));
    }
    return checks;
  }

  private static void soda(
      List<Check> checks, double t, double molal, double value, double tolerance, String base) {
    checks.add(
        new Check(
            new CheckRow(
                "pH",
                molal + " mol/kg Na2CO3, " + Math.round(t) + " °C, no CO2 taken up",
                value,
                tolerance,
                USGS + base,
                Status.COMPUTED),
            () -> pH(t, molal, 0)));
  }

  /** The row before this, which ours misses. */
  private static void miss(List<Check> checks, String why) {
    Check last = checks.remove(checks.size() - 1);
    checks.add(new Check(last.row().missed(why), last.computed()));
  }

  private static double pH(double celsius, double carbonate, double bicarbonate) {
    return SodaSolution.of(celsius, carbonate, bicarbonate).orElseThrow().pH();
  }

  @ParameterizedTest
  @MethodSource("checks")
  void pHIsThePublishedOne(Check check) {
    check.assertHolds();
  }

  /**
   * Davies' formula is another school's way to the same figure, right up to an ionic strength of
   * about 0.5: an oracle that shares none of Pitzer's parameters.
   */
  @ParameterizedTest
  @CsvSource({"5, 0.002", "20, 0.005", "25, 0.02", "25, 0.05", "40, 0.1", "50, 0.1"})
  void inThinSolutionsDaviesAgrees(double celsius, double molal) {
    assertThat(pH(celsius, molal, 0))
        .isBetween(davies(celsius, molal) - 0.05, davies(celsius, molal) + 0.05);
  }

  private static double davies(double celsius, double molal) {
    double hydroxide = 0;
    double pH = 0;
    for (int round = 0; round < 200; round++) {
      double strength = 3 * molal - hydroxide;
      double root = Math.sqrt(strength);
      double single = -Water.debyeHueckel(celsius) * (root / (1 + root) - 0.3 * strength);
      double constant =
          Math.pow(10, Carbonate.pK2(celsius) - Carbonate.pKw(celsius) + 4 * single - 2 * single);
      double next = (-constant + Math.sqrt(constant * constant + 4 * constant * molal)) / 2;
      hydroxide = (hydroxide + next) / 2;
      pH = Carbonate.pKw(celsius) + Math.log10(hydroxide) + single;
    }
    return pH;
  }

  @Test
  void outsideWhatItWasCheckedForItSaysNothing() {
    assertThat(SodaSolution.of(61, 0.1, 0)).isEmpty();
    assertThat(SodaSolution.of(-1, 0.1, 0)).isEmpty();
    assertThat(SodaSolution.of(25, 1.21, 0)).isEmpty();
    assertThat(SodaSolution.of(25, 0, 0)).isEmpty();
    assertThat(SodaSolution.of(25, Double.NaN, 0)).isEmpty();
    assertThat(SodaSolution.of(25, 1e300, 0)).isEmpty();
  }

  @Test
  void aBathOfOneCupToTheGallonIsAboutAThirdMolal() {
    SodaSolution bath = SodaSolution.ofGramsPerLitre(25, 38, 0).orElseThrow();
    // By hand: 38 g / 105.99 g/mol in 0.99705 kg of water; half of Σ m·z² is 3 m less what
    // hydrolyses.
    assertThat(bath.carbonate()).isEqualTo(0.3596, within(2e-4));
    assertThat(bath.ionicStrength()).isBetween(1.06, 1.079);
  }

  @Test
  void bakingSodaIsWeighedByItsOwnMolarMass() {
    // By hand: 21 g / 84.007 g/mol in 0.99821 kg of water at 20 °C.
    SodaSolution bath = SodaSolution.ofGramsPerLitre(20, 0, 21).orElseThrow();
    assertThat(bath.bicarbonate()).isEqualTo(0.2504, within(2e-4));
  }

  /** {@link Carbonate} claims that its constant for this model brings the buffer out so well. */
  @ParameterizedTest
  @CsvSource({"0, 10.317", "10, 10.179", "25, 10.012", "40, 9.889", "50, 9.828"})
  void theBuffersOfTheBureauOfStandardsComeOutWithinAHundredth(double celsius, double published) {
    assertThat(pH(celsius, 0.025, 0.025)).isEqualTo(published, within(0.0105));
  }

  @Test
  void theLimitsOfWhatItWasCheckedForBelongToIt() {
    assertThat(SodaSolution.of(0, 0.1, 0)).isPresent();
    assertThat(SodaSolution.of(60, 0.1, 0)).isPresent();
    assertThat(SodaSolution.of(25, 1.2, 0)).isPresent();
    assertThat(SodaSolution.of(25, 0, 0.001)).isPresent();
  }
}
