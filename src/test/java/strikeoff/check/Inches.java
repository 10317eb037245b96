package strikeoff.check;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Map;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A plan written in inches and yards, ounces and pounds, quarts and °F, as closely as anybody
 * writes them, and what is found in it. 1 in = 25.4 mm and 1 lb = 453.59237 g (international yard
 * and pound agreement, 1959); 1 US gallon = 231 in³, and 1 oz = 1/16 lb (NIST Handbook 44, appendix
 * C).
 */
final class Inches {

  private static final BigDecimal OUNCE = new BigDecimal("28.349523125");

  /** A metric unit in another: how many of that are one of it, and with how many decimals. */
  private record Other(BigDecimal factor, String unit, int decimals) {

    static Other of(String one, BigDecimal other, String unit, int decimals) {
      return new Other(new BigDecimal(one).divide(other, 20, RoundingMode.HALF_UP), unit, decimals);
    }

    String write(String number) {
      return new BigDecimal(number)
          .multiply(factor)
          .setScale(decimals, RoundingMode.HALF_UP)
          .toPlainString();
    }
  }

  private static final Map<String, Other> LENGTHS =
      Map.of(
          "mm", Other.of("1", new BigDecimal("25.4"), "in", 3),
          "cm", Other.of("10", new BigDecimal("25.4"), "in", 3),
          "m", Other.of("1000", new BigDecimal("25.4"), "in", 3));

  private static final Map<String, Other> OTHERS =
      Map.of(
          "g/m²", Other.of("0.83612736", OUNCE, "oz/yd²", 5),
          "cm²", Other.of("1", new BigDecimal("6.4516"), "in²", 4),
          "kg", Other.of("1", new BigDecimal("0.45359237"), "lb", 5),
          "g", Other.of("1", OUNCE, "oz", 4),
          "ml", Other.of("1", new BigDecimal("29.5735295625"), "US fl oz", 4),
          "L", Other.of("1", new BigDecimal("0.946352946"), "US quarts", 5));

  /** A length, or a size of two, in metric units; not a part of a speed, an area or a count. */
  private static final Pattern METRIC =
      Pattern.compile(
          "(?<![\\w/.])(\\d+(?:\\.\\d+)?)(?: x (\\d+(?:\\.\\d+)?))? (mm|cm|m)(?![\\w/²³])");

  private static final Pattern OTHER =
      Pattern.compile("(?<![\\w/.])(\\d+(?:\\.\\d+)?) (g/m²|cm²|kg|g|ml|L)(?![\\w/²³])");

  private static final Pattern MESH = Pattern.compile("(?<![\\w/.])(\\d+(?:\\.\\d+)?)/cm(?!\\w)");

  private static final Pattern CELSIUS = Pattern.compile("(?<![\\w/.])(\\d+(?:\\.\\d+)?) °C");

  private Inches() {}

  static TreeSet<String> told(Checker checker, String plan) {
    Checked checked = checker.check("plan.yaml", plan);
    TreeSet<String> told = new TreeSet<>();
    if (checked instanceof Checked.Judged judged) {
      judged.findings().forEach(f -> told.add(f.rule().id() + " at " + f.place().path()));
    } else {
      told.add(checked.sentence());
    }
    return told;
  }

  /** In inches alone, to three decimals. */
  static String of(String plan) {
    Matcher metric = METRIC.matcher(plan);
    StringBuilder inches = new StringBuilder();
    while (metric.find()) {
      Other unit = LENGTHS.get(metric.group(3));
      String along = unit.write(metric.group(1));
      String size = metric.group(2) == null ? "" : " x " + unit.write(metric.group(2));
      metric.appendReplacement(inches, along + size + " " + unit.unit());
    }
    return metric.appendTail(inches).toString();
  }

  /** In no metric unit but those of times and shares. */
  static String ofAll(String plan) {
    String written =
        MESH.matcher(plan)
            .replaceAll(m -> Other.of("2.54", BigDecimal.ONE, "", 3).write(m.group(1)) + "/in");
    written =
        CELSIUS
            .matcher(written)
            .replaceAll(
                m ->
                    new BigDecimal(m.group(1))
                            .multiply(new BigDecimal("1.8"))
                            .add(new BigDecimal(32))
                            .stripTrailingZeros()
                            .toPlainString()
                        + " °F");
    written =
        OTHER
            .matcher(written)
            .replaceAll(
                m -> {
                  Other unit = OTHERS.get(m.group(2));
                  return unit.write(m.group(1)) + " " + unit.unit();
                });
    return of(written);
  }
}
