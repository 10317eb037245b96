package strikeoff.bath;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import strikeoff.checks.Check;
import strikeoff.checks.CheckRow;
import strikeoff.checks.CheckRow.Status;
import strikeoff.checks.Worked;
import strikeoff.speech.BathSpeech;
import strikeoff.units.Measures;

/** Baths as printers write them, by the cup and by the gram. */
public class SoakTest {

  private static final String PRODUCER =
      "soda producer's data page (bulk density), UCUM (cup, gallon)";
  private static final String SUPPLIER = "supplier guidance for dyes; UCUM (ounce, gallon)";

  public static List<Check> checks() {
    List<Check> checks = new ArrayList<>();
    ends(
        checks,
        "soda ash: 2 cups, water: 3 gal",
        "2 US cups of light soda ash, 3 US gal",
        23.8,
        27.1);
    ends(
        checks,
        "soda ash: 1 cup, water: 1 gal",
        "1 US cup of light soda ash, 1 US gal",
        35.6,
        40.6);
    ends(checks, "dense soda ash: 1 cup, water: 1 gal", "1 US cup of dense, 1 US gal", 62.5, 65.6);
    checks.add(
        row(
            "soda ash, g/L",
            "1 oz in 1 US gal",
            7.48915,
            1e-4,
            SUPPLIER,
            Status.COMPUTED,
            "soda ash: 1 oz, water: 1 gal",
            s -> s.sodaGramsPerLitre().best()));
    checks.add(
        row(
            "soda ash, g",
            "lightest US cup of light soda ash",
            134.9,
            0.5,
            PRODUCER,
            Status.COMPUTED,
            "soda ash: 1 cup, water: 5 L",
            s -> s.sodaGrams().low()));
    checks.add(
        row(
            "soda ash, g",
            "heaviest US cup of light soda ash",
            153.8,
            0.5,
            PRODUCER,
            Status.COMPUTED,
            "soda ash: 1 cup, water: 5 L",
            s -> s.sodaGrams().high()));
    checks.add(
        row(
            "soda ash for 269.97 g of washing soda, g",
            "same alkali",
            100,
            0.1,
            "IUPAC weights, mole ratio 2.6997",
            Status.COMPUTED,
            "washing soda: 269.97 g, water: 5 L",
            s -> s.sodaGrams().best()));
    checks.add(
        row(
            "soda ash for 117 g of monohydrate, g",
            "same alkali",
            100,
            0.1,
            "IUPAC weights, mole ratio 1.1700",
            Status.COMPUTED,
            "soda monohydrate: 117 g, water: 5 L",
            s -> s.sodaGrams().best()));
    checks.add(
        new Check(
            CheckRow.within(
                10,
                30,
                "liquor ratio",
                "5 L for 2 m² of 180 g/m², immersion by hand",
                "common practice, no source",
                Status.COMMON_PRACTICE),
            () -> soak("soda ash: 200 g, water: 5 L").liquorRatio().value()));
    return checks;
  }

  private static void ends(
      List<Check> checks, String bath, String conditions, double low, double high) {
    checks.add(
        row(
            "soda ash, lowest g/L",
            conditions,
            low,
            0.005 * low,
            PRODUCER,
            Status.COMPUTED,
            bath,
            s -> s.sodaGramsPerLitre().low()));
    checks.add(
        row(
            "soda ash, highest g/L",
            conditions,
            high,
            0.005 * high,
            PRODUCER,
            Status.COMPUTED,
            bath,
            s -> s.sodaGramsPerLitre().high()));
  }

  private static Check row(
      String quantity,
      String conditions,
      double value,
      double tolerance,
      String source,
      Status status,
      String bath,
      ToDoubleFunction<Soak> computed) {
    return new Check(
        new CheckRow(quantity, conditions, value, tolerance, source, status),
        () -> computed.applyAsDouble(soak(bath)));
  }

  @ParameterizedTest
  @MethodSource("checks")
  void strengthIsThePublishedOne(Check check) {
    check.assertHolds();
  }

  @Test
  void aWeakBathIsMendedByTheSodaItAsksFor() {
    Soak weak = soak("soda ash: 1 cup, water: 14 L");
    double added = weak.sodaToAdd().grams();
    assertThat(added).isPositive();
    Soak mended = soak("soda ash: " + (weak.sodaGrams().low() + added) + " g, water: 14 L");
    assertThat(mended.sodaGramsPerLitre().low()).isGreaterThanOrEqualTo(12);
    assertThat(mended.sodaToAdd().grams()).isZero();
  }

  @Test
  void aStrongBathIsMendedByTheWaterItAsksFor() {
    Soak strong = soak("soda ash: 3 cups, water: 5 L");
    Soak mended = soak("soda ash: 3 cups, water: " + strong.waterToWeaken().litres() + " L");
    assertThat(strong.sodaGramsPerLitre().low()).isGreaterThan(60);
    assertThat(mended.sodaGramsPerLitre().high()).isLessThanOrEqualTo(60);
  }

  @Test
  void aSmallBathIsMendedByWaterAndKeepsItsStrength() {
    Soak small = soak("soda ash: 60 g, water: 1.5 L");
    assertThat(small.liquorRatio().value()).isEqualTo(4.2);
    assertThat(small.waterToCover().litres()).isEqualTo(4);
    assertThat(small.sodaForThat().grams() / small.waterToCover().litres())
        .isCloseTo(small.sodaGramsPerLitre().best(), within(1.5));
  }

  @Test
  void aTonOfSodaStaysOnTheBottomAndHasNoPH() {
    Soak slurry = soak("soda ash: 1.6 kg, water: 5 L");
    assertThat(slurry.undissolved()).isTrue();
    assertThat(slurry.pH()).isEmpty();
    assertThat(BathSpeech.acidity(slurry, Measures.METRIC)).startsWith("not estimated outside");
    Soak mended = soak("soda ash: 1.6 kg, water: " + slurry.waterToWeaken().litres() + " L");
    assertThat(mended.undissolved()).isFalse();
  }

  @Test
  void bakingSodaIsNoSodaAsh() {
    Soak mild = soak("baking soda: 200 g, water: 5 L");
    assertThat(mild.sodaGrams().high()).isZero();
    assertThat(mild.highestPh()).isLessThan(9);
  }

  @Test
  void saltIsNoAlkali() {
    Soak salty = soak("soda ash: 200 g, salt: 300 g, water: 5 L");
    assertThat(salty.sodaGramsPerLitre().best()).isCloseTo(40, within(1e-9));
  }

  /** Twice the cup is twice the range, and a bath's pH holds the exact mass's pH in its range. */
  @ParameterizedTest
  @CsvSource({"1, 4", "2, 9", "3, 12"})
  void aCupsRangeHoldsItsGrams(int cups, int litres) {
    Soak byCup = soak("soda ash: " + cups + " cups, water: " + litres + " L");
    double grams = byCup.sodaGrams().best();
    Soak byGram = soak("soda ash: " + grams + " g, water: " + litres + " L");
    assertThat(byGram.sodaGramsPerLitre().best())
        .isBetween(byCup.sodaGramsPerLitre().low(), byCup.sodaGramsPerLitre().high());
    assertThat(byGram.pH().orElseThrow().best())
        .isBetween(byCup.pH().orElseThrow().low(), byCup.pH().orElseThrow().high());
    assertThat(byCup.pH().orElseThrow().high() - byCup.pH().orElseThrow().low())
        .isGreaterThan(byGram.pH().orElseThrow().high() - byGram.pH().orElseThrow().low());
  }

  private static Soak soak(String bath) {
    return Worked.reeds(
            "medium: dye, group: DCT, colour: green, amount: 100 g",
            """
            - mix: all
            - print: reeds
            - dry: until fix-safe
            - fix: soak
              bath: {%s}
              temperature: 25 °C
              for: 60 min
            """
                .formatted(bath))
        .the(Soak.class);
  }
}
