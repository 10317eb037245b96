package strikeoff.units;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import strikeoff.checks.Check;
import strikeoff.checks.Rows;

/** Sizes of units against the tables that define them. */
public class UnitsCheckTest {

  private static final double EXACT = 1e-12;

  public static List<Check> checks() {
    Rows rows = new Rows();
    ucum(rows);
    handbook(rows);
    household(rows);
    labelling(rows);
    rows.published("hydrocolloid conversion page, 2025");
    row(rows, "1 Australian tbsp, ml", "1 Australian tbsp", Volume.class, 1000, 20, EXACT);
    rows.computed("the exact inch, yard, ounce and gallon of UCUM");
    row(rows, "1 oz/yd², g/m²", "1 oz/yd²", ArealMass.class, 1, 33.90574747488, 1e-9);
    row(rows, "1 oz/US gal, g/L", "1 oz/US gal", Concentration.class, 1, 7.48915170731, 1e-9);
    row(rows, "1 square yard, m²", "1 sq yd", Area.class, 1e-4, 0.83612736, EXACT);
    row(rows, "110/in, 1/cm", "110/in", MeshCount.class, 1, 43.307, 1e-3);
    row(rows, "156/in, 1/cm", "156/in", MeshCount.class, 1, 61.417, 1e-3);
    row(rows, "230/in, 1/cm", "230/in", MeshCount.class, 1, 90.551, 1e-3);
    row(rows, "305/in, 1/cm", "305/in", MeshCount.class, 1, 120.079, 1e-3);
    rows.published("a page of textile terms");
    row(rows, "muslin of 2 oz/yd², g/m²", "2 oz/yd²", ArealMass.class, 1, 68, 0.5);
    return rows.checks();
  }

  /** Rounded for labels and kitchens: half of the last figure that is rounded to. */
  private static void labelling(Rows rows) {
    rows.published("US Code of Federal Regulations, 21 CFR 101.9(b)(5)(viii), as UCUM quotes it");
    row(rows, "1 US tsp, ml, rounded", "1 US tsp", Volume.class, 1000, 5, 0.5);
    row(rows, "1 US tbsp, ml, rounded", "1 US tbsp", Volume.class, 1000, 15, 0.5);
    row(rows, "1 US cup, ml, rounded", "1 US cup", Volume.class, 1000, 240, 5);
    row(rows, "1 US fl oz, ml, rounded", "1 US fl oz", Volume.class, 1000, 30, 0.5);
    row(rows, "1 oz, g, rounded", "1 oz", Mass.class, 1, 28, 0.5);
    rows.published("NIST, cooking measurement equivalencies");
    row(rows, "1 lb, g, rounded", "1 lb", Mass.class, 1, 454, 0.5);
    row(rows, "1 US gallon, L, rounded", "1 US gal", Volume.class, 1, 3.84, 0.06);
    row(rows, "half a US gallon, L, rounded", "2 US quart", Volume.class, 1, 1.95, 0.06);
  }

  private static void ucum(Rows rows) {
    rows.published("UCUM, table of units");
    row(rows, "1 in, mm", "1 in", Length.class, 1, 25.4, EXACT);
    row(rows, "1 ft, mm", "1 ft", Length.class, 1, 304.8, EXACT);
    row(rows, "1 yd, mm", "1 yd", Length.class, 1, 914.4, EXACT);
    row(rows, "1 US cup, ml", "1 US cup", Volume.class, 1000, 236.5882365, EXACT);
    row(rows, "1 US fl oz, ml", "1 US fl oz", Volume.class, 1000, 29.5735295625, EXACT);
    row(rows, "1 US tbsp, ml", "1 US tbsp", Volume.class, 1000, 14.78676478125, EXACT);
    row(rows, "1 US tsp, ml", "1 US tsp", Volume.class, 1000, 4.92892159375, EXACT);
    row(rows, "1 US quart, ml", "1 US quart", Volume.class, 1000, 946.352946, EXACT);
    row(rows, "1 US pint, ml", "1 US pint", Volume.class, 1000, 473.176473, EXACT);
    row(rows, "1 metric tbsp, ml", "1 metric tbsp", Volume.class, 1000, 15, EXACT);
    row(rows, "1 metric tsp, ml", "1 metric tsp", Volume.class, 1000, 5, EXACT);
    row(rows, "1 imperial gallon, L", "1 imp gal", Volume.class, 1, 4.54609, EXACT);
    row(rows, "1 imperial fl oz, ml", "1 imp fl oz", Volume.class, 1000, 28.4130625, EXACT);
    row(rows, "1 lb, g", "1 lb", Mass.class, 1, 453.59237, EXACT);
    row(rows, "1 oz, g", "1 oz", Mass.class, 1, 28.349523125, EXACT);
    row(rows, "32 °F, °C", "32 °F", Temperature.class, 1, 0, 1e-9);
    row(rows, "70 °F, °C", "70 °F", Temperature.class, 1, 21.1111111111, 1e-9);
    row(rows, "212 °F, °C", "212 °F", Temperature.class, 1, 100, 1e-9);
    row(rows, "350 °F, °C", "350 °F", Temperature.class, 1, 176.666666667, 1e-9);
  }

  private static void handbook(Rows rows) {
    rows.published("NIST Handbook 44, appendix C");
    row(rows, "1 US gallon of 231 in³, L", "1 US gal", Volume.class, 1, 3.785411784, EXACT);
    rows.published("NIST SP 811, appendix B");
    row(rows, "1 in, cm", "1 in", Length.class, 0.1, 2.54, EXACT);
  }

  /** Kitchen roundings: the tolerance is half of the last digit that the card prints. */
  private static void household(Rows rows) {
    rows.published("NIST SP 430 (2004), household card");
    row(rows, "1 US tsp, ml, rounded", "1 US tsp", Volume.class, 1000, 5, 0.5);
    row(rows, "1 US tbsp, ml, rounded", "1 US tbsp", Volume.class, 1000, 15, 0.5);
    row(rows, "1 US fl oz, ml, rounded", "1 US fl oz", Volume.class, 1000, 30, 0.5);
    row(rows, "1 US cup, ml, rounded", "1 US cup", Volume.class, 1000, 240, 5);
    row(rows, "1 US pint, ml, rounded", "1 US pint", Volume.class, 1000, 470, 5);
    row(rows, "1 US quart, ml, rounded", "1 US quart", Volume.class, 1000, 950, 5);
  }

  @ParameterizedTest
  @MethodSource("checks")
  void unitsAreAsLargeAsTheirTablesSay(Check check) {
    check.assertHolds();
  }

  private static <Q extends Quantity> void row(
      Rows rows,
      String quantity,
      String written,
      Class<Q> type,
      double factor,
      double value,
      double tolerance) {
    rows.row(
        quantity,
        "written “" + written + "”",
        value,
        tolerance,
        () -> Quantities.parse(written, type).toOptional().orElseThrow().base() * factor);
  }
}
