package strikeoff.cli;

import java.util.Locale;
import strikeoff.report.json.JsonReport;
import strikeoff.report.junit.JunitReport;
import strikeoff.report.outcome.Results;
import strikeoff.report.sarif.SarifReport;

/** What results can be written as. */
enum Format {
  TEXT {
    @Override
    String of(Results results) {
      throw new IllegalStateException("text is told plan by plan");
    }
  },
  JSON {
    @Override
    String of(Results results) {
      return JsonReport.text(results);
    }
  },
  SARIF {
    @Override
    String of(Results results) {
      return SarifReport.text(results);
    }
  },
  JUNIT {
    @Override
    String of(Results results) {
      return JunitReport.text(results);
    }
  };

  abstract String of(Results results);

  String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
