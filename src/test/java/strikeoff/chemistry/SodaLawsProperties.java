package strikeoff.chemistry;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import strikeoff.checks.Draws;
import strikeoff.units.Range;

/** Laws that hold whatever the figures. */
class SodaLawsProperties {

  @Property(tries = 300, seed = Draws.ALIKE)
  void moreSodaNeverLowersThePH(
      @ForAll @DoubleRange(min = 0, max = 60) double celsius,
      @ForAll @Scale(3) @DoubleRange(min = 0.001, max = 1.2) double one,
      @ForAll @Scale(3) @DoubleRange(min = 0.001, max = 1.2) double other) {
    double less = Math.min(one, other);
    double more = Math.max(one, other);
    assertThat(pH(celsius, more, 0)).isGreaterThanOrEqualTo(pH(celsius, less, 0) - 1e-9);
  }

  @Property(tries = 200, seed = Draws.ALIKE)
  void bakingSodaInsteadOfSodaAshLowersThePH(
      @ForAll @DoubleRange(min = 0, max = 60) double celsius,
      @ForAll @DoubleRange(min = 0.01, max = 0.5) double carbonate,
      @ForAll @DoubleRange(min = 0.01, max = 0.5) double bicarbonate) {
    assertThat(pH(celsius, carbonate, bicarbonate))
        .isLessThan(pH(celsius, carbonate + bicarbonate, 0));
  }

  @Property(tries = 200, seed = Draws.ALIKE)
  void aWarmerBathOfTheSameStrengthHasALowerPH(
      @ForAll @DoubleRange(min = 0, max = 59) double celsius,
      @ForAll @Scale(3) @DoubleRange(min = 0.001, max = 1.2) double carbonate) {
    assertThat(pH(celsius + 1, carbonate, 0)).isLessThan(pH(celsius, carbonate, 0));
  }

  @Property(tries = 200, seed = Draws.ALIKE)
  void coolerTakesLonger(
      @ForAll @DoubleRange(min = 0, max = 40) double celsius,
      @ForAll @DoubleRange(min = 0.5, max = 20) double cooler) {
    Range energies = new Range(60, 80, 100);
    Range minutes = Arrhenius.minutes(60, energies, celsius, celsius - cooler);
    assertThat(minutes.low()).isGreaterThan(60);
    Range back = Arrhenius.factor(Range.exactly(80), celsius, celsius - cooler);
    Range forth = Arrhenius.factor(Range.exactly(80), celsius - cooler, celsius);
    assertThat(back.best() * forth.best()).isBetween(1 - 1e-9, 1 + 1e-9);
  }

  private static double pH(double celsius, double carbonate, double bicarbonate) {
    return SodaSolution.of(celsius, carbonate, bicarbonate).orElseThrow().pH();
  }
}
