package strikeoff.paste;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import strikeoff.checks.Check;
import strikeoff.checks.CheckRow;
import strikeoff.checks.CheckRow.Status;
import strikeoff.checks.Worked;
import strikeoff.speech.Kitchen;
import strikeoff.units.Mass;
import strikeoff.units.Volume;

/** Powders by the spoon, and amounts told in spoons. */
public class SpoonsTest {

  private static final double TEASPOON = 4.92892159375e-3;
  private static final double CUP = 0.2365882365;

  public static List<Check> checks() {
    List<Check> checks = new ArrayList<>();
    checks.add(
        row(
            "alginate, g",
            "level spoon of 5 ml",
            2.6,
            0.26,
            "hydrocolloid conversion page, 2025",
            Status.PUBLISHED,
            grams("alginate", 0.005)));
    checks.add(
        row(
            "alginate, g",
            "level spoon of 5 ml",
            2.5,
            0.25,
            "second hydrocolloid page",
            Status.PUBLISHED,
            grams("alginate", 0.005)));
    checks.add(
        row(
            "alginate, g",
            "US teaspoon at 0.52 g/ml",
            2.563,
            0.001,
            "UCUM (teaspoon)",
            Status.COMPUTED,
            grams("alginate", TEASPOON)));
    checks.add(
        row(
            "urea, g",
            "US cup, from 1 lb in 2.5 cups",
            181.4,
            18.1,
            "supplier guidance",
            Status.PUBLISHED,
            grams("urea", CUP)));
    checks.add(
        row(
            "urea, US cups",
            "1 lb",
            2.5,
            0.25,
            "supplier guidance",
            Status.PUBLISHED,
            Worked.POLICY.substance("urea").millilitres(new Mass(453.59237)).orElseThrow().best()
                / (CUP * 1000)));
    checks.add(
        new Check(
            CheckRow.within(
                134.9,
                153.8,
                "light soda ash, g",
                "US cup",
                "soda producer's data page",
                Status.PUBLISHED),
            () -> grams("soda ash", CUP)));
    checks.add(
        new Check(
            CheckRow.within(
                236.6,
                248.4,
                "dense soda ash, g",
                "US cup",
                "soda producer's data page",
                Status.PUBLISHED),
            () -> grams("dense soda ash", CUP)));
    return checks;
  }

  private static Check row(
      String quantity,
      String conditions,
      double value,
      double tolerance,
      String source,
      Status status,
      double is) {
    return new Check(
        new CheckRow(quantity, conditions, value, tolerance, source, status), () -> is);
  }

  private static double grams(String substance, double litres) {
    return Worked.POLICY.substance(substance).grams(new Volume(litres)).best();
  }

  @ParameterizedTest
  @MethodSource("checks")
  void powdersWeighWhatTheSourcesSay(Check check) {
    check.assertHolds();
  }

  @ParameterizedTest
  @CsvSource({
    "236.588, 1 cup",
    "354.88, 1½ cup",
    "14.787, 1 tbsp",
    "4.929, 1 tsp",
    "7.393, 1½ tsp",
    "24.645, 1 tbsp + 2 tsp",
    "61.6, ¼ cup + ½ tsp",
    "0.2, less than ¼ tsp",
    "0, none",
    "1e300, weigh it"
  })
  void volumesAreToldInCupsAndSpoons(double ml, String words) {
    assertThat(Kitchen.measure(ml)).isEqualTo(words);
  }
}
