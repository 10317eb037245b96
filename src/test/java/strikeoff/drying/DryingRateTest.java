package strikeoff.drying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;
import static org.assertj.core.data.Percentage.withPercentage;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DryingRateTest {

  /** The ASHRAE form that goes back to Carrier, in SI: computed from its published constants. */
  @ParameterizedTest
  @CsvSource({"25, 0, 207.9", "25, 0.5, 299.2", "20, 0, 152.7", "20, 0.2, 179.5"})
  void carrierForm(double celsius, double speed, double rate) {
    Air air = new Air(celsius, 0.5, speed);
    assertThat(EvaporationForm.CARRIER.rate(celsius, MoistAir.saturation(celsius), air))
        .isCloseTo(rate, withPercentage(0.5));
  }

  /** Shah 2014, ASHRAE Transactions 120(2), natural convection (from memory), computed. */
  @ParameterizedTest
  @CsvSource({"25, 0.50, 89.5", "20, 0.50, 60.8"})
  void stillAirForm(double celsius, double humidity, double rate) {
    Air air = new Air(celsius, humidity, 0);
    assertThat(EvaporationForm.STILL.rate(celsius, MoistAir.saturation(celsius), air))
        .isCloseTo(rate, withPercentage(2));
  }

  /**
   * Incropera's plate form at 2 m/s over 0.5 m: Re 65 800, Nu 0.664·256.5·0.892 = 152, h = 7.8
   * W/m²K; over ρ·cp·Le^⅔ = 1.199·1006·0.897 = 1082 that is 7.2 mm/s; times 17.3 − 8.64 g/m³ and
   * 3600 s comes to 225 g/(m² h).
   */
  @Test
  void plateForm() {
    assertThat(EvaporationForm.PLATE.rate(20, MoistAir.saturation(20), new Air(20, 0.5, 2)))
        .isCloseTo(225, withPercentage(1.5));
  }

  /**
   * A film that only the air warms comes to the wet bulb: 13.78 °C at 20 °C and 50 % by ASHRAE's
   * equation. That one takes a Lewis number of 1; at 0.85 the film loses vapour 1/0.897 times as
   * easily as heat reaches it, which cools it by up to half a degree more.
   */
  @Test
  void filmWithoutOtherHeatCoolsToTheWetBulb() {
    assertThat(DryingRate.filmTemperature(new Air(20, 0.5, 2), 1, 0)).isCloseTo(13.78, offset(0.5));
  }

  /** The film's heat balance closes: heat brought equals heat used, checked by its parts. */
  @Test
  void sideHeatKeepsTheFilmBetweenWetBulbAndAir() {
    double surface = DryingRate.filmTemperature(new Air(20, 0.5, 0), 0.97, 9);
    assertThat(surface).isBetween(13.78, 20.0);
  }

  @Property
  void ratesAreInOrderAndMoreAirNeverDriesMoreSlowly(
      @ForAll @DoubleRange(min = 1, max = 45) double celsius,
      @ForAll @DoubleRange(min = 0, max = 1) double humidity,
      @ForAll @DoubleRange(min = 0, max = 10) double speed) {
    DryingRate rate = DryingRate.in(new Air(celsius, humidity, speed), 0.97, 9);
    DryingRate windier = DryingRate.in(new Air(celsius, humidity, speed + 1), 0.97, 9);
    assertThat(rate.slowest()).isBetween(0.0, rate.best());
    assertThat(rate.best()).isLessThanOrEqualTo(rate.fastest());
    assertThat(windier.slowest()).isGreaterThanOrEqualTo(rate.slowest() - 1e-6);
    assertThat(windier.best()).isGreaterThanOrEqualTo(rate.best() - 1e-6);
  }

  @Property
  void drierAirNeverDriesMoreSlowly(
      @ForAll @DoubleRange(min = 1, max = 45) double celsius,
      @ForAll @DoubleRange(min = 0.05, max = 1) double humidity) {
    DryingRate damp = DryingRate.in(new Air(celsius, humidity, 0), 0.97, 9);
    DryingRate drier = DryingRate.in(new Air(celsius, humidity - 0.05, 0), 0.97, 9);
    assertThat(drier.best()).isGreaterThanOrEqualTo(damp.best() - 1e-6);
    assertThat(drier.slowest()).isGreaterThanOrEqualTo(damp.slowest() - 1e-6);
  }
}
