package strikeoff.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import strikeoff.checks.Draws;
import strikeoff.units.Scale.To;

/** How figures are told in the units that a plan is written in. */
class MeasuresTest {

  private static final List<Measures> CUSTOMARY = List.of(Measures.US, Measures.IMPERIAL);

  /**
   * Exact factors of NIST SP 811 (2008), appendix B.8: the inch 25.4 mm, the yard 0.9144 m, the
   * avoirdupois ounce 28.349 523 125 g and pound 453.592 37 g; °F as °C · 1.8 + 32.
   */
  @ParameterizedTest
  @CsvSource({
    "2.54 cm, 1 in",
    "17.78 cm, 7 in",
    "18.5 cm, 7 5/16 in",
    "0.8 mm, 1/32 in",
    "2.286 m, 90 in",
    "2.29 m, 90 1/8 in",
    "28.349523125 g, 1 oz",
    "100 g, 3.5 oz",
    "453.59237 g, 1 lb",
    "1 kg, 2 lb 3.3 oz",
    "5 g, 0.18 oz",
    "20 °C, 68 °F",
    "60 °C, 140 °F",
    "37 °C, 99 °F",
    "43/cm, 109/in",
    "180 g/m², 5.3 oz/yd²",
    "380 cm², 58.9 in²",
    "1 m², 1.2 yd²",
    "40 g/L, 5.3 oz/US gal",
    "0.3 m/s, 60 ft/min"
  })
  void aMetricQuantityIsToldInUsUnits(String metric, String us) {
    assertThat(any(metric).text(Measures.US)).isEqualTo(us);
  }

  /** NIST SP 811, appendix B.8: the US cup 236.588 2 mL, the fluid ounce 29.573 53 mL. */
  @ParameterizedTest
  @CsvSource({
    "236.588 ml, 1 cup",
    "350 ml, 1 1/2 cups",
    "120 ml, 1/2 cup",
    "15 ml, 1 tbsp",
    "5 ml, 1 tsp",
    "1 ml, 0.2 tsp",
    "1 L, 1 qt",
    "5 L, 5 1/4 qt",
    "20 L, 5 1/4 gal"
  })
  void aVolumeIsToldInCupsAndSpoons(String metric, String us) {
    assertThat(any(metric).text(Measures.US)).isEqualTo(us);
  }

  /**
   * The imperial gallon is 4.546 09 L, the pint an eighth of it and the fluid ounce a twentieth of
   * a pint: Weights and Measures Act 1985, schedule 1.
   */
  @ParameterizedTest
  @CsvSource({
    "568.26125 ml, 1 imp pt",
    "250 ml, 8 3/4 imp fl oz",
    "1 L, 1 3/4 imp pt",
    "4.54609 L, 1 imp gal",
    "20 L, 4 1/2 imp gal",
    "40 g/L, 6.4 oz/imp gal"
  })
  void imperialVolumesAreTheirOwn(String metric, String imperial) {
    assertThat(any(metric).text(Measures.IMPERIAL)).isEqualTo(imperial);
  }

  @ParameterizedTest
  @CsvSource({
    "7 3/16 in",
    "1/32 in",
    "7.35 in",
    "0.02 in",
    "133 in",
    "2 1/3 cups",
    "2.25 oz",
    "1 1/2 lb",
    "2 lb 5.5 oz",
    "2 1/2 tbsp",
    "1 gal",
    "212 °F",
    "110/in",
    "4.4 oz/yd²"
  })
  void whatIsWrittenComesBackAsItWas(String written) {
    assertThat(any(written).text(Measures.US)).isEqualTo(written);
  }

  /** What is measured along the cloth is measured in inches; cloth is bought by the yard. */
  @Test
  void yardsAreForTheLengthOfClothThatIsWrittenSo() {
    Length cloth = (Length) any("4 yd");
    Measures byTheYard =
        Measures.of(
            List.of(
                new WrittenIn(MeasureKind.LENGTH, UnitSystem.US),
                new WrittenIn(MeasureKind.CLOTH_LENGTH, UnitSystem.US)));
    Measures byTheInch = Measures.of(List.of(new WrittenIn(MeasureKind.LENGTH, UnitSystem.US)));
    assertThat(cloth.clothText(byTheYard)).isEqualTo("4 yd");
    assertThat(cloth.text(byTheYard)).isEqualTo("144 in");
    assertThat(cloth.clothText(byTheInch)).isEqualTo("144 in");
    assertThat(cloth.clothText(Measures.METRIC)).isEqualTo(cloth.text());
  }

  /** A printer draws a trap by a rule with thirty-seconds, never narrower than it must be. */
  @Test
  void smallLengthsAreToldByTheRuleOnTheSafeSide() {
    assertThat(new Length(2).roundedUp(Measures.US)).isEqualTo("3/32 in");
    assertThat(new Length(1).roundedUp(Measures.US)).isEqualTo("1/16 in");
    assertThat(new Length(2).roundedDown(Measures.US)).isEqualTo("1/16 in");
    assertThat(new Length(0.4125).roundedUp(Measures.US)).isEqualTo("1/32 in");
    assertThat(new Length(2).text(Measures.US)).isEqualTo("5/64 in");
  }

  @Test
  void nothingIsNothingInTheUnitOfLengths() {
    assertThat(new Length(-1e-9).text(Measures.US)).isEqualTo("0 in");
    assertThat(new Length(0).text(Measures.US)).isEqualTo("0 in");
  }

  @Test
  void metricTextsStayAsTheyAre() {
    for (String text :
        List.of("37.5 cm", "1.2 m", "0.3 mm", "90 g", "1.25 kg", "500 ml", "20 °C")) {
      assertThat(any(text).text(Measures.METRIC)).isEqualTo(text).isEqualTo(any(text).text());
    }
  }

  @Test
  void timesAndSharesKnowNoSystem() {
    for (String text : List.of("35 min", "50 %", "90°", "20")) {
      assertThat(any(text).text(Measures.US)).isEqualTo(any(text).text());
    }
  }

  @Property(seed = Draws.ALIKE)
  void aTextIsWithinHalfAStepOfItsQuantity(
      @ForAll MeasureKind kind, @ForAll @IntRange(min = 30_000, max = 1_000_000) int millionths) {
    double part = millionths / 1e6;
    double base = part * part * part * LARGEST.get(kind);
    for (Measures units : CUSTOMARY) {
      Scale scale = Scale.of(kind, units.of(kind)).orElse(null);
      if (scale != null) {
        double told = any(scale.text(base)).base();
        double step = Math.max(scale.step(base), scale.step(told));
        assertThat(told).as(scale.text(base)).isCloseTo(base, within(step / 2 * (1 + 1e-6)));
      }
    }
  }

  @Property(seed = Draws.ALIKE)
  void whatMustBeEnoughIsNeverTooLittle(
      @ForAll MeasureKind kind, @ForAll @IntRange(min = 30_000, max = 1_000_000) int millionths) {
    double part = millionths / 1e6;
    double base = part * part * part * LARGEST.get(kind);
    for (Measures units : CUSTOMARY) {
      Scale.of(kind, units.of(kind))
          .ifPresent(
              scale -> {
                double up = any(scale.text(scale.rounded(base, To.UP))).base();
                double down = any(scale.text(scale.rounded(base, To.DOWN))).base();
                double tolerance = 1e-3 * scale.step(base);
                assertThat(up)
                    .as("%s up", scale.text(base))
                    .isGreaterThanOrEqualTo(base - tolerance);
                assertThat(down)
                    .as("%s down", scale.text(base))
                    .isLessThanOrEqualTo(base + tolerance);
              });
    }
  }

  @Test
  void bathsAreToldInStepsOfFiveDegreesOnTheSafeSide() {
    assertThat(new Temperature(41.3).enough(Measures.US)).isEqualTo("110 °F");
    assertThat(new Temperature(41.3).most(Measures.US)).isEqualTo("105 °F");
    assertThat(new Temperature(41.3).enough(Measures.METRIC)).isEqualTo("41.3 °C");
  }

  @Test
  void aDifferenceOfTemperaturesHasNoZeroAtThirtyTwo() {
    assertThat(Temperature.difference(5, Measures.US)).isEqualTo("9 °F");
    assertThat(Temperature.difference(5, Measures.METRIC)).isEqualTo("5 °C");
  }

  @Test
  void aPitchIsNeverLongerThanItIs() {
    assertThat(new Length(187.3).fineText(Measures.US)).isEqualTo("7.374 in");
    assertThat(new Length(187.325).fineText(Measures.US)).isEqualTo("7 3/8 in");
    assertThat(new Length(187.3).fineText(Measures.METRIC)).isEqualTo("18.73 cm");
  }

  @Test
  void ouncesInAPoundAreThousandthsOfSixteen() {
    assertThat(PerKilogram.text(62.5, Measures.US)).isEqualTo("1 oz");
    assertThat(PerKilogram.number(10, Measures.US)).isEqualTo("0.16");
    assertThat(PerKilogram.text(62.5, Measures.METRIC)).isEqualTo("63 g");
    assertThat(PerKilogram.whole(Measures.US)).isEqualTo("a pound");
  }

  @Test
  void mostOfAKindDecideAndTheFirstOfEqualOnes() {
    MeasuresTally tally = new MeasuresTally();
    tally.add(new WrittenIn(MeasureKind.LENGTH, UnitSystem.METRIC), 1);
    tally.add(new WrittenIn(MeasureKind.LENGTH, UnitSystem.US), 3);
    tally.add(new WrittenIn(MeasureKind.LENGTH, UnitSystem.US), 2);
    tally.add(new WrittenIn(MeasureKind.VOLUME, UnitSystem.US), 9);
    tally.add(new WrittenIn(MeasureKind.VOLUME, UnitSystem.IMPERIAL), 5);
    tally.add(new WrittenIn(MeasureKind.MASS, UnitSystem.METRIC), 4);
    Measures told = tally.measures();
    assertThat(told.of(MeasureKind.LENGTH)).isEqualTo(UnitSystem.US);
    assertThat(told.of(MeasureKind.VOLUME)).isEqualTo(UnitSystem.IMPERIAL);
    assertThat(told.of(MeasureKind.MASS)).isEqualTo(UnitSystem.METRIC);
    assertThat(told.of(MeasureKind.CONCENTRATION)).as("like masses").isEqualTo(UnitSystem.METRIC);
    assertThat(told.of(MeasureKind.AREA)).as("like lengths").isEqualTo(UnitSystem.US);
    assertThat(told.of(MeasureKind.THICKNESS)).as("as sold").isEqualTo(UnitSystem.METRIC);
  }

  @Test
  void whatNobodyWroteIsMetric() {
    assertThat(new MeasuresTally().measures()).isEqualTo(Measures.METRIC);
  }

  @Test
  void aUserCanChooseOthers() {
    assertThat(UnitChoice.PLAN.over(Measures.US)).isEqualTo(Measures.US);
    assertThat(UnitChoice.METRIC.over(Measures.US)).isEqualTo(Measures.METRIC);
    assertThat(UnitChoice.US.over(Measures.METRIC)).isEqualTo(Measures.US);
    assertThat(UnitChoice.IMPERIAL.over(Measures.METRIC)).isEqualTo(Measures.IMPERIAL);
  }

  private static final Map<MeasureKind, Double> LARGEST =
      Map.ofEntries(
          Map.entry(MeasureKind.LENGTH, 2e4),
          Map.entry(MeasureKind.CLOTH_LENGTH, 2e4),
          Map.entry(MeasureKind.SMALL_LENGTH, 3.0),
          Map.entry(MeasureKind.THICKNESS, 0.25),
          Map.entry(MeasureKind.AREA, 1e5),
          Map.entry(MeasureKind.MASS, 1e4),
          Map.entry(MeasureKind.VOLUME, 100.0),
          Map.entry(MeasureKind.TEMPERATURE, 250.0),
          Map.entry(MeasureKind.AREAL_MASS, 1e3),
          Map.entry(MeasureKind.CONCENTRATION, 200.0),
          Map.entry(MeasureKind.MESH_COUNT, 200.0),
          Map.entry(MeasureKind.AIR_SPEED, 10.0));

  private static Quantity any(String text) {
    return Quantities.parseAny(text).toOptional().orElseThrow(() -> new AssertionError(text));
  }
}
