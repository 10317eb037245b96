package strikeoff.drying;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import strikeoff.checks.Check;
import strikeoff.checks.Rows;

/** Water vapour and moist air against psychrometric tables. */
public class MoistAirCheckTest {

  private static final double KELVIN = 273.15;
  private static final String ROOM = " % RH, sea level";

  public static List<Check> checks() {
    Rows rows = new Rows();
    saturation(rows);
    handbook(rows);
    rooms(rows);
    String fao = "FAO Irrigation and Drainage Paper 56";
    rows.published(fao)
        .row("latent heat, MJ/kg", "20 °C, as rounded", 2.45, 0.005, () -> latent(20) / 1000);
    rows.computed(fao + ", λ = 2501 − 2.361 t");
    double[] heats = {2501.0, 2453.8, 2442.0, 2430.2};
    double[] at = {0, 20, 25, 30};
    for (int i = 0; i < at.length; i++) {
      double t = at[i];
      rows.row("latent heat, kJ/kg", celsius(t), heats[i], 0.1, () -> latent(t));
    }
    return rows.checks();
  }

  private static void saturation(Rows rows) {
    rows.published("IAPWS-IF97, table 35")
        .row("saturation, Pa", "300 K", 3536.58941, 5e-6, () -> MoistAir.saturation(300 - KELVIN))
        .row("saturation, MPa", "500 K", 2.63889776, 5e-9, () -> megapascal(500 - KELVIN));
    rows.computed("IAPWS-IF97, region 4");
    double[] temperatures = {0.01, 5, 10, 15, 20, 25, 30, 35, 40, 50};
    double[] pressures = {
      611.66, 872.57, 1228.18, 1705.74, 2339.21, 3169.75, 4246.69, 5628.62, 7384.43, 12351.27
    };
    for (int i = 0; i < temperatures.length; i++) {
      double t = temperatures[i];
      rows.row("saturation, Pa", celsius(t), pressures[i], 0.05, () -> MoistAir.saturation(t));
    }
  }

  private static double megapascal(double celsius) {
    return MoistAir.saturation(celsius) / 1e6;
  }

  private static void handbook(Rows rows) {
    rows.published("ASHRAE Handbook of Fundamentals 2017, ch. 1, table 3");
    double[][] pressures = {{5, 872.6}, {25, 3169.7}, {50, 12351.3}, {100, 101418.0}};
    for (double[] is : pressures) {
      // The handbook claims 300 parts in a million for its own formula.
      rows.row(
          "saturation, Pa", celsius(is[0]), is[1], 3e-4 * is[1], () -> MoistAir.saturation(is[0]));
    }
    rows.published("ASHRAE Handbook of Fundamentals 2017, ch. 1, table 2");
    double[][] ratios = {{5, 0.005425, 0.005}, {25, 0.020173, 0.005}, {50, 0.086863, 0.01}};
    for (double[] is : ratios) {
      rows.row(
          "humidity ratio at saturation",
          celsius(is[0]) + ", 101 325 Pa",
          is[1],
          is[2] * is[1],
          () -> MoistAir.humidityRatio(MoistAir.saturation(is[0])));
    }
    rows.row(
        "dry air, m³/kg",
        "25 °C, 101 325 Pa",
        0.8443,
        0.001 * 0.8443,
        () -> 1 / MoistAir.dryDensity(25, 0));
    rows.published("ASHRAE Handbook of Fundamentals 2017, ch. 1, table 1")
        .row("pressure, Pa", "standard atmosphere, sea level", 101325, 1, () -> MoistAir.PRESSURE);
    rows.published("ASHRAE Handbook of Fundamentals 2017, ch. 1, example 1")
        // 14 % stands for 13.5 to 14.5: a third of a degree of wet bulb.
        .row("wet bulb, °C", "40 °C, 14 % RH", 20, 0.35, () -> MoistAir.wetBulb(40, 0.14))
        .row("humidity ratio", "40 °C, wet bulb 20 °C", 0.0065, 0.0001, () -> example("ratio"))
        .row("relative humidity", "40 °C, wet bulb 20 °C", 0.14, 0.01, () -> example("humidity"))
        .row("volume, m³/kg dry air", "40 °C, wet bulb 20 °C", 0.896, 0.00896, () -> example("v"));
  }

  /** From the wet bulb back to the humidity, by halving over our own wet bulb. */
  private static double example(String what) {
    double dry = 0;
    double damp = 1;
    for (int i = 0; i < 60; i++) {
      double middle = (dry + damp) / 2;
      if (MoistAir.wetBulb(40, middle) < 20) {
        dry = middle;
      } else {
        damp = middle;
      }
    }
    double vapour = dry * MoistAir.saturation(40);
    return switch (what) {
      case "ratio" -> MoistAir.humidityRatio(vapour);
      case "v" -> 1 / MoistAir.dryDensity(40, vapour);
      default -> dry;
    };
  }

  /** Four rooms: vapour pressure, humidity ratio, wet bulb and vapour in the air. */
  private static void rooms(Rows rows) {
    rows.computed("ASHRAE's equations on IAPWS-IF97, worked out apart");
    double[][] rooms = {
      {20, 50, 1169.4, 0.007262, 13.78, 8.64},
      {25, 50, 1584.6, 0.009881, 17.89, 11.52},
      {20, 65, 1520.2, 0.009473, 15.80, 11.24},
      {30, 40, 1698.4, 0.010603, 20.06, 12.14}
    };
    for (double[] is : rooms) {
      double t = is[0];
      Air air = new Air(t, is[1] / 100, 0);
      String where = celsius(t) + ", " + Math.round(is[1]) + ROOM;
      rows.row("vapour pressure, Pa", where, is[2], 0.5, air::vapourPressure)
          .row(
              "humidity ratio",
              where,
              is[3],
              1e-5,
              () -> MoistAir.humidityRatio(air.vapourPressure()))
          .row("wet bulb, °C", where, is[4], 0.05, () -> MoistAir.wetBulb(t, air.humidity()))
          .row(
              "vapour, g/m³",
              where,
              is[5],
              0.05,
              () -> 1000 * MoistAir.vapourDensity(t, air.vapourPressure()));
    }
  }

  private static double latent(double celsius) {
    return MoistAir.latentHeat(celsius);
  }

  private static String celsius(double t) {
    return (t == Math.rint(t) ? Long.toString(Math.round(t)) : Double.toString(t)) + " °C";
  }

  @ParameterizedTest
  @MethodSource("checks")
  void moistAirIsAsTheTablesSay(Check check) {
    check.assertHolds();
  }
}
