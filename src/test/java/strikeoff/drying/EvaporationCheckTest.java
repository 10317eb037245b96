package strikeoff.drying;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import strikeoff.checks.Check;
import strikeoff.checks.CheckRow.Status;
import strikeoff.checks.Rows;
import strikeoff.checks.Worked;
import strikeoff.timeline.Impression;

/** Rates of evaporation by published forms, and how long films take in a room. */
public class EvaporationCheckTest {

  public static List<Check> checks() {
    Rows rows = new Rows();
    rows.computed("Carrier's form (ASHRAE): (0.089 + 0.0782 v)(pw − pa)/hv");
    double[][] carrier = {{25, 0, 207.9}, {25, 0.5, 299.2}, {20, 0, 152.7}, {20, 0.2, 179.5}};
    for (double[] is : carrier) {
      rows.row(
          "evaporation, g/(m² h)",
          Math.round(is[0]) + " °C, 50 % RH, " + is[1] + " m/s",
          is[2],
          0.005 * is[2],
          () -> rate(EvaporationForm.CARRIER, is[0], 0.5, is[1]));
    }
    rows.from("Shah 2014, ASHRAE Trans. 120(2), natural convection", Status.FROM_MEMORY);
    double[][] still = {{25, 0.50, 89.5}, {20, 0.50, 60.8}};
    for (double[] is : still) {
      rows.row(
          "evaporation, g/(m² h)",
          Math.round(is[0]) + " °C, " + Math.round(100 * is[1]) + " % RH, still air",
          is[2],
          0.02 * is[2],
          () -> rate(EvaporationForm.STILL, is[0], is[1], 0));
    }
    rows.computed("flat plate, Nu = 0.664 Re^½ Pr^⅓ (Incropera, ch. 7), by hand")
        .row(
            "evaporation, g/(m² h)",
            "20 °C, 50 % RH, 2 m/s over 0.5 m",
            225,
            3.4,
            () -> rate(EvaporationForm.PLATE, 20, 0.5, 2));
    practice(rows);
    return rows.checks();
  }

  /** What the trade says of still air at 20 °C and 50 %, two pulls through 43/cm-80. */
  private static void practice(Rows rows) {
    rows.from("common practice, no source", Status.COMMON_PRACTICE)
        .within(
            "paint, frame-safe after, min",
            "20 °C, 50 % RH, still; two pulls, 43/cm-80, cotton of 180 g/m²",
            45,
            75,
            () -> frameSafe("medium: paint, colour: green, amount: 100 g"))
        .within(
            "dye paste, frame-safe after, min",
            "20 °C, 50 % RH, still; two pulls, 43/cm-80, cotton of 180 g/m²",
            1,
            3,
            () -> frameSafe("medium: dye, group: DCT, colour: green, amount: 100 g"));
  }

  private static double frameSafe(String paste) {
    Impression first =
        Worked.reeds(paste, "- mix: all\n- print: reeds\n").facts().timeline().impressions().get(0);
    return first.film().frameSafe().best().since(first.lifted()).minutes();
  }

  private static double rate(EvaporationForm form, double celsius, double humidity, double speed) {
    return form.rate(celsius, MoistAir.saturation(celsius), new Air(celsius, humidity, speed), 0.5);
  }

  @ParameterizedTest
  @MethodSource("checks")
  void evaporationIsAsPublished(Check check) {
    check.assertHolds();
  }
}
