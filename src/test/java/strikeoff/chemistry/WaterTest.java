package strikeoff.chemistry;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import strikeoff.checks.Check;
import strikeoff.checks.CheckRow;
import strikeoff.checks.CheckRow.Status;

/** Water and the constants of the carbonate equilibria. */
public class WaterTest {

  private static final String PB = "Plummer & Busenberg 1982, coefficients as in USGS phreeqc.dat";

  public static List<Check> checks() {
    List<Check> checks = new ArrayList<>();
    double[] all = {0, 5, 10, 15, 20, 25, 30, 40, 50, 60};
    double[] pK1 = {6.5786, 6.5163, 6.4633, 6.4188, 6.3819, 6.3519, 6.3281, 6.2974, 6.2858, 6.2903};
    double[] pK2 = {
      10.6286, 10.5544, 10.4879, 10.4284, 10.3756, 10.3289, 10.2879, 10.2217, 10.1744, 10.1438
    };
    for (int i = 0; i < all.length; i++) {
      double t = all[i];
      checks.add(at(t, "pK1", pK1[i], 0.0005, PB, () -> Carbonate.pK1(t)));
      checks.add(at(t, "pK2", pK2[i], 0.0005, PB, () -> Carbonate.pK2(t)));
    }
    double[] some = {0, 10, 20, 25, 30, 40, 60};
    double[] pKw = {14.9421, 14.5338, 14.1682, 13.9995, 13.8395, 13.5431, 13.0323};
    double[] slope = {0.4918, 0.4989, 0.5067, 0.5108, 0.5151, 0.5243, 0.5449};
    for (int i = 0; i < some.length; i++) {
      double t = some[i];
      checks.add(at(t, "pKw", pKw[i], 0.0005, "USGS wateq4f.dat", () -> Carbonate.pKw(t)));
      checks.add(
          at(
              t,
              "Debye–Hückel slope A",
              slope[i],
              0.003,
              "Malmberg & Maryott 1956 with Kell 1975",
              () -> Water.debyeHueckel(t)));
    }
    density(checks, "Handbook of Chemistry and Physics, 53rd ed., p. F-4", 1e-5);
    density(checks, "International Critical Tables, 1928", 4e-5);
    double[][] hot = {{60, 0.98319}, {80, 0.97179}, {100, 0.95836}};
    for (double[] row : hot) {
      checks.add(
          new Check(
              new CheckRow(
                  "density of water, kg/L",
                  Math.round(row[0]) + " °C",
                  row[1],
                  4e-5,
                  "Kell 1975, J. Chem. Eng. Data 20:97, table, from memory",
                  Status.FROM_MEMORY),
              () -> Water.density(row[0])));
    }
    // The other school's constants: agreement of two independent measurements, not of one fit.
    double[] harned = {0, 10, 25, 40};
    double[] pK1Harned = {6.5766, 6.4643, 6.3511, 6.2959};
    double[] pK2Harned = {10.6259, 10.4885, 10.3297, 10.2202};
    for (int i = 0; i < harned.length; i++) {
      double t = harned[i];
      checks.add(at(t, "pK1", pK1Harned[i], 0.003, "Harned & Davis 1943", () -> Carbonate.pK1(t)));
      checks.add(
          at(t, "pK2", pK2Harned[i], 0.003, "Harned & Scholes 1941", () -> Carbonate.pK2(t)));
    }
    return checks;
  }

  /**
   * Kell's formula against two older tables. Before 1964 a litre was 1.000028 dm³, so the older one
   * reads that much higher, besides half of its last digit.
   */
  private static void density(List<Check> checks, String source, double tolerance) {
    double[][] table =
        tolerance < 2e-5
            ? new double[][] {{0, 0.999841}, {5, 0.999965}, {10, 0.999700}, {15, 0.999099}}
            : new double[][] {{20, 0.99823}, {25, 0.99707}, {30, 0.99568}, {35, 0.99406}};
    for (double[] row : table) {
      checks.add(
          new Check(
              new CheckRow(
                  "density of water, kg/L",
                  Math.round(row[0]) + " °C",
                  row[1],
                  tolerance,
                  source,
                  Status.PUBLISHED),
              () -> Water.density(row[0])));
    }
  }

  private static Check at(
      double celsius,
      String quantity,
      double value,
      double tolerance,
      String source,
      java.util.function.DoubleSupplier computed) {
    return new Check(
        new CheckRow(
            quantity,
            Math.round(celsius) + " °C, infinite dilution",
            value,
            tolerance,
            source,
            Status.COMPUTED),
        computed);
  }

  @ParameterizedTest
  @MethodSource("checks")
  void constantsAreThePublishedOnes(Check check) {
    check.assertHolds();
  }
}
