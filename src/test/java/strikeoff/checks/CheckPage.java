package strikeoff.checks;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.Map;

/** The page on which a chemist can audit every check: value, conditions, tolerance and source. */
final class CheckPage {

  private final StringBuilder page = new StringBuilder();

  private CheckPage() {}

  static String of(Map<String, List<Check>> topics, List<Oracle> oracles) {
    CheckPage made = new CheckPage();
    made.head(topics);
    topics.forEach(made::topic);
    made.oracles(oracles);
    return made.page.toString();
  }

  private void head(Map<String, List<Check>> topics) {
    List<CheckRow> rows = topics.values().stream().flatMap(List::stream).map(Check::row).toList();
    page.append("# What the figures are checked against\n\n");
    page.append("Made from the rows of the tests by `mvn test -Dtest=CheckTableTest");
    page.append(" -Dcheck-table=write`; a test holds it to them.\n");
    page.append("*Computed* is what the tool gives; a row passes if it lies within the tolerance");
    page.append(" of the value.\n\n");
    page.append("Only independent rows count. A row that holds one of our constants against the");
    page.append(" source that it came from finds slips of the pen, and one that works our own");
    page.append(" formula out again finds slips of code: neither says that we are right.\n");
    page.append(
        "[standings.yaml](../test/resources/strikeoff/checks/standings.yaml) says which is");
    page.append(" which. Where ours lies outside a tolerance, the row says so and why.\n\n");
    page.append("| what a row proves | rows | sources | missed |\n|---|---:|---:|---:|\n");
    for (Standing standing : Standing.values()) {
      List<CheckRow> those = rows.stream().filter(r -> Standing.of(r) == standing).toList();
      line(
          standing.text(),
          Integer.toString(those.size()),
          Long.toString(those.stream().map(CheckRow::source).distinct().count()),
          Long.toString(those.stream().filter(CheckRow::isMissed).count()));
    }
  }

  private void topic(String topic, List<Check> checks) {
    page.append("\n## ").append(topic).append("\n\n");
    page.append(
        "| quantity | conditions | value | tolerance | computed | source | status | proves |\n");
    page.append("|---|---|---:|---:|---:|---|---|---|\n");
    for (Check check : checks) {
      CheckRow row = check.row();
      line(
          row.quantity(),
          row.conditions(),
          row.range()
              ? significant(row.value() - row.tolerance(), 6)
                  + " to "
                  + significant(row.value() + row.tolerance(), 6)
              : number(row.value()),
          tolerance(row),
          computed(check),
          row.source(),
          row.status().text(),
          row.isMissed()
              ? Standing.of(row).text() + "; missed: " + row.off()
              : Standing.of(row).text());
    }
  }

  private void oracles(List<Oracle> oracles) {
    page.append("\n## Other programs, asked over grids\n\n");
    page.append("| quantity | library | grid | points | largest difference | allowed |\n");
    page.append("|---|---|---|---:|---:|---:|\n");
    for (Oracle oracle : oracles) {
      String share = oracle.relative() ? " of the value" : "";
      line(
          oracle.quantity(),
          oracle.library(),
          oracle.grid(),
          Integer.toString(oracle.size()),
          largest(oracle) + share,
          significant(oracle.tolerance(), 1) + share);
    }
  }

  private static String tolerance(CheckRow row) {
    if (row.range()) {
      return "in the range";
    }
    return row.tolerance() <= 1e-8 * Math.max(1, Math.abs(row.value()))
        ? "exact"
        : "± " + significant(row.tolerance(), 3);
  }

  /** Below a billionth the last bits of the machine decide, which a page must not hang on. */
  private static String largest(Oracle oracle) {
    double largest = oracle.largest();
    BigDecimal up = new BigDecimal(largest).round(new MathContext(1, RoundingMode.UP));
    return largest < 1e-9 ? "under 0.000000001" : up.stripTrailingZeros().toPlainString();
  }

  /** To a tenth of the tolerance and no finer than six digits, so that noise never shows. */
  private static String computed(Check check) {
    double value = check.value();
    double tolerance = Math.max(check.row().tolerance(), 1e-7 * Math.max(1e-3, Math.abs(value)));
    int places = (int) Math.ceil(-Math.log10(tolerance)) + 1;
    BigDecimal rounded =
        new BigDecimal(value).setScale(Math.max(0, places), RoundingMode.HALF_EVEN);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }

  private static String number(double value) {
    return value == 0
        ? "0"
        : new BigDecimal(Double.toString(value)).stripTrailingZeros().toPlainString();
  }

  private static String significant(double value, int digits) {
    return new BigDecimal(value)
        .round(new MathContext(digits))
        .stripTrailingZeros()
        .toPlainString();
  }

  private void line(String... cells) {
    for (String cell : cells) {
      page.append("| ").append(cell.replace("|", "\\|")).append(' ');
    }
    page.append("|\n");
  }
}
