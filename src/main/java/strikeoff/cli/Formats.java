package strikeoff.cli;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;
import strikeoff.report.HtmlReport;
import strikeoff.report.compare.CompareJson;
import strikeoff.report.compare.Comparison;
import strikeoff.report.json.JsonReport;
import strikeoff.report.junit.JunitReport;
import strikeoff.report.outcome.Results;
import strikeoff.report.sarif.SarifReport;

/** What can be written besides text, by the name of the format. */
final class Formats {

  static final Map<String, Function<Results, String>> RESULTS = new LinkedHashMap<>();
  static final Map<String, Function<Comparison, String>> COMPARISONS = new LinkedHashMap<>();

  static {
    RESULTS.put("json", JsonReport::text);
    RESULTS.put("sarif", SarifReport::text);
    RESULTS.put("junit", JunitReport::text);
    COMPARISONS.put("html", HtmlReport::comparison);
    COMPARISONS.put("json", CompareJson::text);
  }

  private Formats() {}
}
