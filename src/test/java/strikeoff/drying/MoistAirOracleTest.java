package strikeoff.drying;

import com.synerset.hvacengine.property.fluids.humidair.HumidAirEquations;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import strikeoff.checks.Oracle;

/**
 * Moist air against a library for heating and ventilation, which takes other formulas: saturation
 * after Hyland and Wexler, densities of its own, wet bulb by another solver.
 */
public class MoistAirOracleTest {

  private static final String LIBRARY = "hvac-engine 2.0.0 (psychrometrics)";
  private static final String ROOMS = "10 to 45 °C by 5, 10 to 90 % by 10";

  public static List<Oracle> oracles() {
    Oracle saturation =
        Oracle.withinShare(3e-4, LIBRARY, "pressure of saturated vapour", "1 to 60 °C by 1");
    for (int t = 1; t <= 60; t++) {
      saturation.point(t + " °C", MoistAir.saturation(t), HumidAirEquations.saturationPressure(t));
    }
    Oracle ratio = Oracle.withinShare(1e-3, LIBRARY, "humidity ratio", ROOMS);
    Oracle wetBulb = Oracle.within(0.05, LIBRARY, "wet bulb, °C", ROOMS);
    // The library's density is that of the dry air alone, the inverse of ASHRAE's specific volume.
    Oracle density = Oracle.withinShare(5e-4, LIBRARY, "dry air in moist air, kg/m³", ROOMS);
    for (int t = 10; t <= 45; t += 5) {
      for (int humidity = 10; humidity <= 90; humidity += 10) {
        String at = t + " °C, " + humidity + " %";
        double vapour = MoistAir.saturation(t) * humidity / 100;
        double theirs =
            HumidAirEquations.humidityRatio(
                humidity, HumidAirEquations.saturationPressure(t), MoistAir.PRESSURE);
        ratio.point(at, MoistAir.humidityRatio(vapour), theirs);
        wetBulb.point(
            at,
            MoistAir.wetBulb(t, humidity / 100.0),
            HumidAirEquations.wetBulbTemperature(t, humidity, MoistAir.PRESSURE));
        density.point(
            at,
            MoistAir.dryDensity(t, vapour),
            HumidAirEquations.density(t, theirs, MoistAir.PRESSURE));
      }
    }
    return List.of(saturation, ratio, wetBulb, density);
  }

  @ParameterizedTest
  @MethodSource("oracles")
  void theLibraryGetsTheSame(Oracle oracle) {
    oracle.assertHolds();
  }
}
