package strikeoff.drying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import strikeoff.checks.Draws;

class HeatBalanceTest {

  private static final double DYE = 0.97;

  private static HeatBalance balance(double celsius, double humidity, double speed) {
    return new Evaporation(Printed.POLICY).expected(new Air(celsius, humidity, speed), DYE);
  }

  /** Energy is conserved: what evaporation takes is what air, room and table bring. */
  @Property(seed = Draws.ALIKE)
  void heatBroughtIsHeatUsed(
      @ForAll @DoubleRange(min = 1, max = 45) double celsius,
      @ForAll @DoubleRange(min = 0, max = 0.95) double humidity,
      @ForAll @DoubleRange(min = 0, max = 10) double speed) {
    HeatBalance film = balance(celsius, humidity, speed);
    double used = film.rate() / 3600 * MoistAir.latentHeat(film.celsius());
    assertThat(film.heat()).isCloseTo(used, offset(1e-6 * Math.max(1, used)));
  }

  /** Slower than a film as warm as the air, quicker than one that only the air warms. */
  @Property(seed = Draws.ALIKE)
  void theFilmLiesBetweenTheAirAndAFilmThatOnlyTheAirWarms(
      @ForAll @DoubleRange(min = 1, max = 45) double celsius,
      @ForAll @DoubleRange(min = 0, max = 0.95) double humidity,
      @ForAll @DoubleRange(min = 0, max = 10) double speed) {
    double vapour = humidity * MoistAir.saturation(celsius);
    double inAir = MoistAir.vapourDensity(celsius, vapour);
    double convection = new Evaporation(Printed.POLICY).transfer(speed);
    double onlyAir = HeatBalance.of(celsius, inAir, convection, 0, 0, 0, DYE).rate();
    double asWarm =
        convection
            / HeatBalance.LEWIS
            * (DYE * MoistAir.vapourDensity(celsius, MoistAir.saturation(celsius)) - inAir)
            * 3.6e6;
    double rate = balance(celsius, humidity, speed).rate();
    assertThat(rate).isBetween(onlyAir - 1e-6, Math.max(0, asWarm) + 1e-6);
  }

  @Property(seed = Draws.ALIKE)
  void drierAirAndMoreOfItNeverDryMoreSlowly(
      @ForAll @DoubleRange(min = 1, max = 45) double celsius,
      @ForAll @DoubleRange(min = 0.05, max = 1) double humidity,
      @ForAll @DoubleRange(min = 0, max = 9) double speed) {
    double rate = balance(celsius, humidity, speed).rate();
    assertThat(balance(celsius, humidity - 0.05, speed).rate()).isGreaterThanOrEqualTo(rate);
    assertThat(balance(celsius, humidity, speed + 1).rate()).isGreaterThanOrEqualTo(rate - 1e-9);
  }

  /**
   * At the same relative humidity, and with the same vapour as a heater in a closed room has it.
   */
  @Property(seed = Draws.ALIKE)
  void warmerAirNeverDriesMoreSlowly(
      @ForAll @DoubleRange(min = 1, max = 44) double celsius,
      @ForAll @DoubleRange(min = 0, max = 1) double humidity,
      @ForAll @DoubleRange(min = 0, max = 10) double speed) {
    double rate = balance(celsius, humidity, speed).rate();
    double less = humidity * MoistAir.saturation(celsius) / MoistAir.saturation(celsius + 1);
    assertThat(balance(celsius + 1, humidity, speed).rate()).isGreaterThanOrEqualTo(rate - 1e-9);
    assertThat(balance(celsius + 1, less, speed).rate()).isGreaterThanOrEqualTo(rate - 1e-9);
  }
}
