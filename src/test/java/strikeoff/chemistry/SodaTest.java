package strikeoff.chemistry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleSupplier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import strikeoff.checks.Check;
import strikeoff.checks.CheckRow;
import strikeoff.checks.CheckRow.Status;
import strikeoff.units.Range;

/** Sodas by mass, how much of them dissolves, and how temperature drives a reaction. */
public class SodaTest {

  private static final String JECFA = "JECFA, FAO FNP 52 (1992, rev. 2002)";
  private static final String SEIDELL = "compilation after Seidell and Comey & Hahn";

  public static List<Check> checks() {
    List<Check> checks = new ArrayList<>();
    checks.add(
        published(
            "M(Na2CO3), g/mol",
            "anhydrous",
            105.99,
            0.005,
            "soda producer's data page",
            () -> Carbonate.ANHYDROUS));
    checks.add(
        computed(
            "M(Na2CO3·10H2O), g/mol",
            "washing soda",
            286.14,
            0.02,
            "IUPAC weights",
            () -> Carbonate.DECAHYDRATE));
    checks.add(
        computed(
            "M(Na2CO3·H2O), g/mol",
            "monohydrate",
            124.00,
            0.02,
            "IUPAC weights",
            () -> Carbonate.MONOHYDRATE));
    checks.add(
        published(
            "M(NaHCO3), g/mol", "baking soda", 84.01, 0.01, JECFA, () -> Carbonate.BICARBONATE));
    checks.add(
        computed(
            "g of washing soda for 1 g of soda ash",
            "same alkali",
            2.6997,
            0.002,
            "mole ratio",
            () -> Carbonate.DECAHYDRATE / Carbonate.ANHYDROUS));
    checks.add(
        computed(
            "g of monohydrate for 1 g of soda ash",
            "same alkali",
            1.1700,
            0.001,
            "mole ratio",
            () -> Carbonate.MONOHYDRATE / Carbonate.ANHYDROUS));
    checks.add(
        new Check(
            CheckRow.within(
                55, 65, "water in the decahydrate, %", "loss on drying", JECFA, Status.PUBLISHED),
            () -> 100 * (1 - Carbonate.ANHYDROUS / Carbonate.DECAHYDRATE)));
    checks.add(
        new Check(
            CheckRow.within(
                0,
                15,
                "water in the monohydrate, %",
                "loss on drying, at most 15",
                JECFA,
                Status.PUBLISHED),
            () -> 100 * (1 - Carbonate.ANHYDROUS / Carbonate.MONOHYDRATE)));
    checks.add(
        computed(
            "soda ash left of baking soda, %",
            "2 NaHCO3 → Na2CO3 + H2O + CO2",
            63.083,
            0.01,
            "stoichiometry",
            () -> 100 * Carbonate.ANHYDROUS / (2 * Carbonate.BICARBONATE)));
    double[] temperatures = {0, 10, 20, 25, 30, 40, 50, 60, 80, 100};
    double[] solubility = {7, 12.2, 21.8, 29.4, 39.7, 48.8, 47.3, 46.4, 45.1, 44.7};
    for (int i = 0; i < temperatures.length; i++) {
      double t = temperatures[i];
      checks.add(
          published(
              "soda ash dissolved, g per 100 g water",
              Math.round(t) + " °C",
              solubility[i],
              0.03 * solubility[i],
              SEIDELL,
              () -> SodaSolubility.gramsPer100GramsOfWater(t)));
    }
    checks.add(
        published(
            "soda ash dissolved, mass % of solution",
            "20 °C", 17.7, 0.03 * 17.7, "soda producer's data page", () -> percentOfSolution(20)));
    checks.add(
        published(
            "soda ash dissolved, mass % of solution",
            "100 °C",
            31.3,
            0.03 * 31.3,
            "soda producer's data page",
            () -> percentOfSolution(100)));
    checks.add(
        published(
            "soda ash dissolved, g/L",
            "20 °C",
            212.5,
            0.03 * 212.5,
            "ECHA registration summary",
            () -> SodaSolubility.gramsPerLitreOfWater(20)));
    // 30.50 % by mass, to 5 % of it
    checks.add(
        published(
            "soda ash dissolved, g in 100 g of water",
            "90 °C",
            43.88,
            0.05 * 43.88,
            "solubilities of NaCl, Na2CO3 and NaOH at 363.15 K, ACS Omega 2020, 5:4875, table 8",
            () -> SodaSolubility.gramsPer100GramsOfWater(90)));
    // one part in 2.75 to 2.85 of water
    checks.add(
        new Check(
            CheckRow.within(
                351,
                364,
                "common salt dissolved, g/L",
                "15 °C, one part in 2.8 of water; ours is that of 20 °C",
                "A Treatise on Beverages, sodium chloride",
                Status.PUBLISHED),
            () -> strikeoff.checks.Worked.POLICY.limit("fixing/salt-dissolves").amount()));
    arrhenius(checks, 60, 20, 30, 2.252, 1e-3);
    arrhenius(checks, 80, 20, 30, 2.953, 1e-3);
    arrhenius(checks, 100, 20, 30, 3.870, 1e-3);
    arrhenius(checks, 60, 25, 5, 0.1755, 1e-4);
    arrhenius(checks, 80, 25, 5, 0.0982, 1e-4);
    arrhenius(checks, 100, 25, 5, 0.0550, 1e-4);
    return checks;
  }

  private static double percentOfSolution(double celsius) {
    double dissolved = SodaSolubility.gramsPer100GramsOfWater(celsius);
    return 100 * dissolved / (100 + dissolved);
  }

  private static void arrhenius(
      List<Check> checks, double ea, double from, double to, double value, double tolerance) {
    checks.add(
        new Check(
            new CheckRow(
                "factor of a reaction's rate",
                "Ea "
                    + Math.round(ea)
                    + " kJ/mol, "
                    + Math.round(from)
                    + " → "
                    + Math.round(to)
                    + " °C",
                value,
                tolerance,
                "Arrhenius, CODATA gas constant",
                Status.COMPUTED),
            () -> Arrhenius.factor(Range.exactly(ea), from, to).best()));
  }

  private static Check published(
      String quantity,
      String when,
      double value,
      double tolerance,
      String source,
      DoubleSupplier is) {
    return new Check(new CheckRow(quantity, when, value, tolerance, source, Status.PUBLISHED), is);
  }

  private static Check computed(
      String quantity,
      String when,
      double value,
      double tolerance,
      String source,
      DoubleSupplier is) {
    return new Check(new CheckRow(quantity, when, value, tolerance, source, Status.COMPUTED), is);
  }

  @ParameterizedTest
  @MethodSource("checks")
  void figuresAreThePublishedOnes(Check check) {
    check.assertHolds();
  }

  @Test
  void betweenMeasuredPointsSolubilityRunsStraight() {
    // By hand from the table: half-way from 12.2 to 21.8, and a quarter from 46.4 to 45.1.
    assertThat(SodaSolubility.gramsPer100GramsOfWater(15)).isEqualTo(17.0, within(1e-9));
    assertThat(SodaSolubility.gramsPer100GramsOfWater(65)).isEqualTo(46.075, within(1e-9));
    assertThat(SodaSolubility.gramsPer100GramsOfWater(-3)).isEqualTo(7);
    assertThat(SodaSolubility.gramsPer100GramsOfWater(104)).isEqualTo(44.7);
  }
}
