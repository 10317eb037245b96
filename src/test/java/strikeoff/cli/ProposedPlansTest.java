package strikeoff.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import strikeoff.cli.Scenario.Outcome;

/**
 * What is found for the plans of the village hall, the class and the workshop. Ends and bounds are
 * to the minute; where the finish is the bound, it is proved that no run ends sooner.
 */
class ProposedPlansTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "first-border            |  600 | day 1, 11:52 | day 1, 11:52",
        "class/otis | 300 | day 1, 12:2 | day 1, 12:15",
        "class/ivo | 300 | day 1, 12:2 | day 1, 12:15",
        "class/tobias | 300 | day 1, 12:2 | day 1, 12:15",
        "class/mina              | 1500 | day 1, 13:0  | day 1, 13:00",
        "workshop/saturday/agnes |  600 | day 1, 13:01 | day 1, 13:01",
        "workshop/saturday/cleo  |  300 | day 1, 14:05 | day 1, 14:05",
        "workshop/saturday/dario |  300 | day 1,       | day 1, ",
        "estuary-curtains        |  200 | day 2, 1     | day 1, 13:35",
      })
  void itEndsSoonAndNotBeforeTheBound(String plan, int effort, String ends, String bound) {
    Outcome outcome =
        Scenario.run(
            Path.of("").toAbsolutePath(),
            Map.of("COLUMNS", "1000"),
            List.of(
                "propose",
                "plans/" + plan + ".yaml",
                "--effort",
                Integer.toString(effort),
                "--shortest"));
    assertThat(outcome.exit()).as(outcome.err()).isZero();
    assertThat(outcome.err())
        .contains("this one ends on " + ends)
        .contains("No run of these prints can end before " + bound);
  }
}
