package strikeoff.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import strikeoff.artwork.DemoFilms;
import strikeoff.cli.Scenario.Outcome;

/** Plans with dates: 6 March 2027 is a Saturday (any calendar). */
class DatesTest {

  @TempDir private Path folder;

  private Outcome check(String dates, String... more) throws IOException {
    String curtains = Files.readString(Path.of("plans/estuary-curtains.yaml"));
    Files.writeString(folder.resolve("curtains.yaml"), curtains + dates);
    if (!Files.exists(folder.resolve("films"))) {
      DemoFilms.layInto(folder);
    }
    List<String> command = new ArrayList<>(List.of("check", "curtains.yaml"));
    command.addAll(List.of(more));
    return Scenario.run(folder, Map.of("COLUMNS", "200"), command);
  }

  @Test
  void daysHaveDatesOnPageAndSheets() throws IOException {
    Outcome outcome = check("start on: 2027-03-06\n", "--reports", "reports", "--sheets", "wall");
    assertThat(outcome.exit()).as(outcome.err()).isZero();
    assertThat(folder.resolve("wall/curtains.html"))
        .content()
        .contains("Day 1, Saturday 6 March 2027, from 09:00")
        .contains("Day 4, Tuesday 9 March 2027, from 09:00");
    assertThat(folder.resolve("reports/curtains.html"))
        .content()
        .contains("Day 2, Sunday 7 March 2027, 09:00 to 17:00")
        .contains("Tuesday 9 March 2027");
  }

  @Test
  void theLatestStartIsTold() throws IOException {
    // Four days, the last of which is the tenth.
    assertThat(check("finish by: 2027-03-10\n").out())
        .contains(
            "Begin on Sunday 7 March 2027 at the latest, to be done by Wednesday 10 March 2027.");
  }

  @Test
  void aRunThatEndsTooLateIsARisk() throws IOException {
    Outcome outcome = check("start on: 2027-03-06\nfinish by: 2027-03-08\n");
    assertThat(outcome.out())
        .contains("time/ends-after-date")
        .contains(
            "Begun on Saturday 6 March 2027, the run ends on Tuesday 9 March 2027, 1 day after")
        .contains("start on: 2027-03-05");
    assertThat(check("start on: 2027-03-06\nfinish by: 2027-03-09\n").out())
        .doesNotContain("time/ends-after-date");
  }

  @Test
  void whatIsToBeDoneBeforeItBeginsIsAMistake() throws IOException {
    Outcome outcome = check("start on: 2027-03-06\nfinish by: 2027-03-05\n");
    assertThat(outcome.exit()).isEqualTo(3);
    assertThat(outcome.out())
        .contains("finish by")
        .contains("this is before `start on`, 2027-03-06: nothing is done by then");
  }

  @Test
  void aQuickLookHelpsWhereARunEndsTooLate() throws IOException {
    assertThat(check("start on: 2027-03-06\nfinish by: 2027-03-07\n").out())
        .contains("time/ends-after-date")
        .contains("A quick look finds a run of the same prints that ends on day 2, 10:35");
  }

  @ParameterizedTest
  @ValueSource(strings = {"6.3.2027", "2027-02-30", "tomorrow", "0027-03-06", "20270306", "[]"})
  void whatIsNoDateIsAMistakeWithItsPlace(String wrong) throws IOException {
    Outcome outcome = check("start on: " + wrong + "\n");
    assertThat(outcome.exit()).isEqualTo(3);
    assertThat(outcome.out())
        .containsPattern("curtains\\.yaml:\\d+:11  start on\n")
        .containsAnyOf("a date such as 2027-03-06", "a year from 1900 to 2999");
  }
}
