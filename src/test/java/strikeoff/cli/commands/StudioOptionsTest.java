package strikeoff.cli.commands;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;

class StudioOptionsTest {

  private final StudioOptions options = new StudioOptions();

  private void given(String seconds) {
    CommandSpec spec = CommandSpec.create();
    options.addTo(spec);
    new CommandLine(spec).parseArgs("--rules-seconds=" + seconds);
  }

  @ParameterizedTest
  @CsvSource({"0.1", "2.5", "10", "86400"})
  void ownRulesHaveATimeToBeDoneIn(String seconds) {
    given(seconds);
    assertThat(options.seconds()).isEqualTo(Double.parseDouble(seconds));
  }

  /** A thread that is waited for 0 ms is waited for until it ends. */
  @ParameterizedTest
  @CsvSource({"NaN", "0", "-3", "0x1p3", "1e999", "5d", "Infinity", "''", "0.05"})
  void whatIsNoTimeIsRefused(String seconds) {
    assertThatThrownBy(() -> given(seconds))
        .isInstanceOf(ParameterException.class)
        .hasMessageContaining("a number of seconds from 0.1 to 1000000 was expected")
        .hasMessageContaining("“" + seconds + "”");
  }
}
