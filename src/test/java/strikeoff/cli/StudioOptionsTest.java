package strikeoff.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;

class StudioOptionsTest {

  /** A thread that is waited for 0 ms is waited for until it ends. */
  @ParameterizedTest
  @CsvSource({"NaN, 0.1", "0, 0.1", "-3, 0.1", "2.5, 2.5"})
  void ownRulesAlwaysHaveATimeToBeDoneIn(String given, double seconds) {
    StudioOptions options = new StudioOptions();
    CommandSpec spec = CommandSpec.create();
    options.addTo(spec);
    new CommandLine(spec).parseArgs("--rules-seconds=" + given);
    assertThat(options.seconds()).isEqualTo(seconds);
  }
}
