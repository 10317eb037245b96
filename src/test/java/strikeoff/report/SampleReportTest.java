package strikeoff.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import strikeoff.check.Checked;
import strikeoff.check.Checker;
import strikeoff.day.facts.Surety;
import strikeoff.propose.Proposal;
import strikeoff.propose.Proposer;
import strikeoff.propose.RunWanted;

/**
 * The committed sample is what the code writes today, byte for byte. After a change that is meant,
 * write it anew with {@code mvn test -Dtest=SampleReportTest -Dsample.refresh=true} and read its
 * difference before committing it.
 */
class SampleReportTest {

  private static final Path SAMPLE = Path.of("reports/sample/estuary-curtains.html");
  private static final Path PROPOSED = Path.of("reports/sample/estuary-curtains-proposed.html");

  /** Runs that are tried: counted, so that every machine finds the same. */
  private static final int EFFORT = 200;

  @Test
  void theCommittedSampleIsWhatTheCodeWrites() throws IOException {
    Path plan = Path.of("plans/estuary-curtains.yaml");
    Checked checked = Checker.builtIn().check(plan, "plans/estuary-curtains.yaml");
    holds(SAMPLE, HtmlReport.plan(checked));
  }

  /** Also of what {@code propose} finds. */
  @Test
  void theCommittedProposalIsWhatTheCodeWrites() throws IOException {
    String plan = "plans/estuary-curtains.yaml";
    RunWanted asked =
        new RunWanted(Surety.SURE, false, false, false, OptionalLong.of(EFFORT), () -> 0);
    Proposal proposal =
        Proposer.proposed(
            Checker.builtIn().beside(Path.of(plan)),
            plan,
            Files.readString(Path.of(plan)),
            asked,
            2);
    assertThat(proposal).isInstanceOf(Proposal.Found.class);
    holds(PROPOSED, HtmlReport.proposal((Proposal.Found) proposal));
  }

  private static void holds(Path sample, String page) throws IOException {
    if (Boolean.getBoolean("sample.refresh")) {
      Files.createDirectories(sample.getParent());
      Files.writeString(sample, page);
    }
    assertThat(Files.readString(sample).equals(page))
        .as("%s differs from what the code writes; see this test's comment", sample)
        .isTrue();
  }
}
