package strikeoff.check;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Map;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A plan written in inches to three decimals, and what is found in it. */
final class Inches {

  private static final Map<String, BigDecimal> MM =
      Map.of("mm", new BigDecimal(1), "cm", new BigDecimal(10), "m", new BigDecimal(1000));

  /** A length, or a size of two, in metric units; not a part of a speed, an area or a count. */
  private static final Pattern METRIC =
      Pattern.compile(
          "(?<![\\w/.])(\\d+(?:\\.\\d+)?)(?: x (\\d+(?:\\.\\d+)?))? (mm|cm|m)(?![\\w/²³])");

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

  static String of(String plan) {
    Matcher metric = METRIC.matcher(plan);
    StringBuilder inches = new StringBuilder();
    while (metric.find()) {
      BigDecimal mm = MM.get(metric.group(3));
      String along = inches(metric.group(1), mm);
      String size = metric.group(2) == null ? "" : " x " + inches(metric.group(2), mm);
      metric.appendReplacement(inches, along + size + " in");
    }
    return metric.appendTail(inches).toString();
  }

  private static String inches(String number, BigDecimal mm) {
    return new BigDecimal(number)
        .multiply(mm)
        .divide(new BigDecimal("25.4"), 3, RoundingMode.HALF_UP)
        .toPlainString();
  }
}
