package strikeoff.units;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.measure.Unit;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import strikeoff.checks.Oracle;
import systems.uom.ucum.format.UCUMFormat;

/** Every unit of ours that UCUM has too, against a library that reads UCUM's codes. */
public class UnitsOracleTest {

  private static final String LIBRARY = "systems-ucum 2.1 on indriya 2.1 (units of measurement)";

  private static final double[] AMOUNTS = {0.25, 0.5, 1, 1.5, 2, 3, 7, 12.5, 30, 48};

  public static List<Oracle> oracles() {
    return List.of(
        asked(
            "length, mm",
            Length.class,
            "mm",
            codes(
                "mm", "mm", "cm", "cm", "m", "m", "µm", "um", "in", "[in_i]", "ft", "[ft_i]", "yd",
                "[yd_i]")),
        asked(
            "area, cm²",
            Area.class,
            "cm2",
            codes("mm²", "mm2", "cm²", "cm2", "m²", "m2", "in²", "[in_i]2", "sq yd", "[yd_i]2")),
        asked(
            "mass, g",
            Mass.class,
            "g",
            codes("mg", "mg", "g", "g", "kg", "kg", "oz", "[oz_av]", "lb", "[lb_av]")),
        asked(
            "volume, L",
            Volume.class,
            "L",
            codes(
                "ml",
                "mL",
                "cl",
                "cL",
                "dl",
                "dL",
                "L",
                "L",
                "US gal",
                "[gal_us]",
                "US quart",
                "[qt_us]",
                "US pint",
                "[pt_us]",
                "US cup",
                "[cup_us]",
                "US fl oz",
                "[foz_us]",
                "US tbsp",
                "[tbs_us]",
                "US tsp",
                "[tsp_us]",
                "imp gal",
                "[gal_br]",
                "imp quart",
                "[qt_br]",
                "imp pint",
                "[pt_br]",
                "imp fl oz",
                "[foz_br]")),
        asked(
            "time, min",
            Span.class,
            "min",
            codes("s", "s", "min", "min", "h", "h", "days", "d", "weeks", "wk")),
        asked(
            "mass of cloth, g/m²",
            ArealMass.class,
            "g/m2",
            codes("g/m²", "g/m2", "oz/yd²", "[oz_av]/[yd_i]2", "oz/sq yd", "[oz_av]/[syd_i]")),
        asked(
            "concentration, g/L",
            Concentration.class,
            "g/L",
            codes(
                "g/L",
                "g/L",
                "g/ml",
                "g/mL",
                "oz/US gal",
                "[oz_av]/[gal_us]",
                "oz/imp gal",
                "[oz_av]/[gal_br]")),
        asked(
            "mesh count, 1/cm",
            MeshCount.class,
            "/cm",
            codes("/cm", "/cm", "/in", "/[in_i]", "threads/in", "/[in_i]")),
        asked(
            "air speed, m/s",
            AirSpeed.class,
            "m/s",
            codes("m/s", "m/s", "km/h", "km/h", "ft/min", "[ft_i]/min")),
        fahrenheit());
  }

  @ParameterizedTest
  @MethodSource("oracles")
  void theLibraryGetsTheSame(Oracle oracle) {
    oracle.assertHolds();
  }

  private static <Q extends Quantity> Oracle asked(
      String quantity, Class<Q> type, String base, Map<String, String> codes) {
    Oracle oracle =
        Oracle.withinShare(
            1e-12, LIBRARY, quantity, codes.size() + " units × " + AMOUNTS.length + " amounts");
    codes.forEach(
        (ours, code) -> {
          for (double amount : AMOUNTS) {
            String written = Numbers.plain(amount, 2) + " " + ours;
            oracle.point(written, base(written, type), theirs(amount, code, base));
          }
        });
    return oracle;
  }

  private static Oracle fahrenheit() {
    Oracle oracle = Oracle.within(1e-9, LIBRARY, "temperature, °C", "−40 to 400 °F by 5 °F");
    for (int degrees = -40; degrees <= 400; degrees += 5) {
      String written = degrees + " °F";
      oracle.point(written, base(written, Temperature.class), theirs(degrees, "[degF]", "Cel"));
    }
    return oracle;
  }

  private static <Q extends Quantity> double base(String written, Class<Q> type) {
    return Quantities.parse(written, type)
        .toOptional()
        .orElseThrow(() -> new AssertionError(written + " was refused"))
        .base();
  }

  private static double theirs(double amount, String code, String base) {
    UCUMFormat format = UCUMFormat.getInstance(UCUMFormat.Variant.CASE_SENSITIVE);
    Unit<?> unit = format.parse(code);
    try {
      return unit.getConverterToAny(format.parse(base)).convert(amount);
    } catch (javax.measure.IncommensurableException e) {
      throw new AssertionError(code, e);
    }
  }

  /** Our spelling and UCUM's code in turn. */
  private static Map<String, String> codes(String... pairs) {
    Map<String, String> codes = new LinkedHashMap<>();
    for (int i = 0; i < pairs.length; i += 2) {
      codes.put(pairs[i], pairs[i + 1]);
    }
    return codes;
  }
}
