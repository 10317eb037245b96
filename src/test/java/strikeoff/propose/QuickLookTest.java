package strikeoff.propose;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import strikeoff.artwork.DemoFilms;
import strikeoff.check.Checked;
import strikeoff.check.Checker;
import strikeoff.day.Moment;

/** Whether a plan's check tells of another run. */
class QuickLookTest {

  private static final Checker CHECKER = Checker.builtIn().with(DemoFilms.beside());

  private static Optional<Moment> sooner(String text) {
    return QuickLook.sooner(CHECKER, (Checked.Judged) CHECKER.check("plan.yaml", text));
  }

  private static String curtains() throws IOException {
    return Files.readString(Path.of("plans/estuary-curtains.yaml"));
  }

  @Test
  void theCurtainsAreDoneTwoDaysSooner() throws IOException {
    // The whole search proves that no run ends before: see ProposedPlansTest.
    assertThat(sooner(curtains()).orElseThrow().text()).isEqualTo("day 2, 10:35");
  }

  @Test
  void ofARunThatIsNotMuchLongerNothingIsTold() throws IOException {
    // It ends on day 1, 13:37, and no run of its prints ends before 13:1x.
    assertThat(sooner(Files.readString(Path.of("plans/first-border.yaml")))).isEmpty();
  }

  @Test
  void aNightThatIsNotNeededIsHalfADay() {
    assertThat(sooner(new SmallPlan(1, 1, 52, 180, 1, true).text()).orElseThrow().day())
        .isEqualTo(1);
  }

  @Test
  void aPlanThatIsNotPrintableHasOtherCares() throws IOException {
    String weak = curtains().replace("soda ash: 800 g", "soda ash: 8 g");
    assertThat(weak).isNotEqualTo(curtains());
    assertThat(sooner(weak)).isEmpty();
  }

  @Test
  void withoutPrintsThereIsNoRunToBeat() throws IOException {
    String text = curtains();
    assertThat(sooner(text.substring(0, text.indexOf("run:")) + "run:\n  - mix: all\n")).isEmpty();
  }
}
