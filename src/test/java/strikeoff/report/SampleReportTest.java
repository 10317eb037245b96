package strikeoff.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import strikeoff.check.Checked;
import strikeoff.check.Checker;

/**
 * The committed sample is what the code writes today, byte for byte. After a change that is meant,
 * write it anew with {@code mvn test -Dtest=SampleReportTest -Dsample.refresh=true} and read its
 * difference before committing it.
 */
class SampleReportTest {

  private static final Path SAMPLE = Path.of("reports/sample/estuary-curtains.html");

  @Test
  void theCommittedSampleIsWhatTheCodeWrites() throws IOException {
    Path plan = Path.of("plans/estuary-curtains.yaml");
    Checked checked = Checker.builtIn().check(plan, "plans/estuary-curtains.yaml");
    String report = HtmlReport.plan(checked);

    if (Boolean.getBoolean("sample.refresh")) {
      Files.createDirectories(SAMPLE.getParent());
      Files.writeString(SAMPLE, report);
    }

    assertThat(Files.readString(SAMPLE).equals(report))
        .as("%s differs from what the code writes; see this test's comment", SAMPLE)
        .isTrue();
  }
}
