package strikeoff.cli.commands;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import strikeoff.cli.Scenario;
import strikeoff.cli.Scenario.Outcome;

/** What is wrong with a bound is told by its first fault: the name before the number. */
class BoundGivenTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          steps         | a bound such as kib=2048 was expected; “steps” is none
          =5            | a bound such as kib=2048 was expected; “=5” is none
          foo=0         | by the name “foo”; there are kib, depth, values, placements
          stps=20       | by the name “stps”; did you mean “steps”?
          steps=0       | behind “steps=”, a whole number from 1 to 1000000 was expected; “0” is none
          depth=201     | behind “depth=”, a whole number from 1 to 200 was expected; “201” is none
          """)
  void refused(String given, String told) {
    Outcome outcome =
        Scenario.run(
            Path.of("").toAbsolutePath(),
            Map.of("COLUMNS", "400"),
            List.of("check", "plans/first-border.yaml", "--bound", given));
    assertThat(outcome.exit()).isEqualTo(2);
    assertThat(outcome.err().replaceAll("\\s+", " ")).contains(told);
  }
}
