package strikeoff.cli.commands;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import strikeoff.cli.files.ReportFolder;
import strikeoff.cli.text.Surroundings;
import strikeoff.report.HtmlReport;
import strikeoff.report.compare.CompareJson;
import strikeoff.report.compare.Comparison;
import strikeoff.report.json.JsonReport;
import strikeoff.report.junit.JunitReport;
import strikeoff.report.outcome.PlanTable;
import strikeoff.report.outcome.Results;
import strikeoff.report.sarif.RunFolder;
import strikeoff.report.sarif.SarifReport;

/** What can be written besides text, by the name of the format. */
final class Formats {

  static final String JSON = "json";

  static final Map<String, Function<Results, String>> RESULTS = new LinkedHashMap<>();
  static final Map<String, Function<Comparison, String>> COMPARISONS = new LinkedHashMap<>();

  static {
    RESULTS.put(JSON, JsonReport::text);
    RESULTS.put("sarif", SarifReport::text);
    RESULTS.put("junit", JunitReport::text);
    RESULTS.put("csv", PlanTable::text);
    COMPARISONS.put("html", HtmlReport::comparison);
    COMPARISONS.put(JSON, CompareJson::text);
  }

  private Formats() {}

  /**
   * The same for results of a run here.
   *
   * @param reports the folder that pages are written into, if any are
   */
  static Map<String, Function<Results, String>> results(
      Surroundings here, Optional<String> reports) {
    Path folder = here.resolve("").toAbsolutePath().normalize();
    Optional<Path> rules =
        reports
            .map(here::resolve)
            .map(pages -> pages.toAbsolutePath().normalize().resolve(ReportFolder.RULES));
    Map<String, Function<Results, String>> all = new LinkedHashMap<>(RESULTS);
    all.put(
        "sarif", results -> SarifReport.text(results, new RunFolder(Optional.of(folder), rules)));
    return all;
  }
}
