package strikeoff.drying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class DryingRateTest {

  /**
   * A film that only the air warms comes to the wet bulb: 13.78 °C at 20 °C and 50 % by ASHRAE's
   * equation. That one takes a Lewis number of 1; at 0.85 the film loses vapour 1/0.897 times as
   * easily as heat reaches it, which cools it by up to half a degree more.
   */
  @Test
  void filmWithoutOtherHeatCoolsToTheWetBulb() {
    assertThat(DryingRate.filmTemperature(new Air(20, 0.5, 2), 1, 0, 0.5))
        .isCloseTo(13.78, offset(0.5));
  }

  /** The film's heat balance closes: heat brought equals heat used, checked by its parts. */
  @Test
  void sideHeatKeepsTheFilmBetweenWetBulbAndAir() {
    double surface = DryingRate.filmTemperature(new Air(20, 0.5, 0), 0.97, 9, 0.5);
    assertThat(surface).isBetween(13.78, 20.0);
  }

  @Property
  void ratesAreInOrderAndMoreAirNeverDriesMoreSlowly(
      @ForAll @DoubleRange(min = 1, max = 45) double celsius,
      @ForAll @DoubleRange(min = 0, max = 1) double humidity,
      @ForAll @DoubleRange(min = 0, max = 10) double speed) {
    DryingRate rate = DryingRate.in(new Air(celsius, humidity, speed), 0.97, 9, 0.5);
    DryingRate windier = DryingRate.in(new Air(celsius, humidity, speed + 1), 0.97, 9, 0.5);
    assertThat(rate.slowest()).isBetween(0.0, rate.best());
    assertThat(rate.best()).isLessThanOrEqualTo(rate.fastest());
    assertThat(windier.slowest()).isGreaterThanOrEqualTo(rate.slowest() - 1e-6);
    assertThat(windier.best()).isGreaterThanOrEqualTo(rate.best() - 1e-6);
  }

  /** At the same relative humidity, as a heater or a warmer day makes it at least. */
  @Property
  void hotterAirNeverDriesMoreSlowly(
      @ForAll @DoubleRange(min = 1, max = 44) double celsius,
      @ForAll @DoubleRange(min = 0, max = 1) double humidity,
      @ForAll @DoubleRange(min = 0, max = 10) double speed) {
    DryingRate cool = DryingRate.in(new Air(celsius, humidity, speed), 0.97, 9, 0.5);
    DryingRate hot = DryingRate.in(new Air(celsius + 1, humidity, speed), 0.97, 9, 0.5);
    assertThat(hot.best()).isGreaterThanOrEqualTo(cool.best() - 1e-6);
    assertThat(hot.fastest()).isGreaterThanOrEqualTo(cool.fastest() - 1e-6);
  }

  /**
   * The slow end of the range, in rooms that people print in. Hotter and damper than that a film
   * which only still air warms gains nothing by a degree: air thins, and its rate falls by half a
   * percent.
   */
  @Property
  void inRoomsTheSlowEndFollows(
      @ForAll @DoubleRange(min = 1, max = 31) double celsius,
      @ForAll @DoubleRange(min = 0, max = 0.9) double humidity,
      @ForAll @DoubleRange(min = 0, max = 10) double speed) {
    DryingRate cool = DryingRate.in(new Air(celsius, humidity, speed), 0.97, 9, 0.5);
    DryingRate hot = DryingRate.in(new Air(celsius + 1, humidity, speed), 0.97, 9, 0.5);
    assertThat(hot.slowest()).isGreaterThanOrEqualTo(cool.slowest() - 1e-6);
  }

  /** A heater in a closed room: more warmth, the same vapour. */
  @Property
  void heatingARoomNeverDriesMoreSlowly(
      @ForAll @DoubleRange(min = 5, max = 40) double celsius,
      @ForAll @DoubleRange(min = 0.1, max = 1) double humidity,
      @ForAll @DoubleRange(min = 0.5, max = 15) double warmer) {
    Air before = new Air(celsius, humidity, 0);
    double less = before.vapourPressure() / MoistAir.saturation(celsius + warmer);
    DryingRate cool = DryingRate.in(before, 0.97, 9, 0.5);
    DryingRate heated = DryingRate.in(new Air(celsius + warmer, less, 0), 0.97, 9, 0.5);
    assertThat(heated.best()).isGreaterThanOrEqualTo(cool.best() - 1e-6);
    assertThat(heated.slowest()).isGreaterThanOrEqualTo(cool.slowest() - 1e-6);
    assertThat(heated.fastest()).isGreaterThanOrEqualTo(cool.fastest() - 1e-6);
  }

  @Property
  void drierAirNeverDriesMoreSlowly(
      @ForAll @DoubleRange(min = 1, max = 45) double celsius,
      @ForAll @DoubleRange(min = 0.05, max = 1) double humidity) {
    DryingRate damp = DryingRate.in(new Air(celsius, humidity, 0), 0.97, 9, 0.5);
    DryingRate drier = DryingRate.in(new Air(celsius, humidity - 0.05, 0), 0.97, 9, 0.5);
    assertThat(drier.best()).isGreaterThanOrEqualTo(damp.best() - 1e-6);
    assertThat(drier.slowest()).isGreaterThanOrEqualTo(damp.slowest() - 1e-6);
    assertThat(drier.fastest()).isGreaterThanOrEqualTo(damp.fastest() - 1e-6);
  }
}
