package strikeoff.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import strikeoff.check.Schemas;
import strikeoff.cli.Scenario.Outcome;

class SchemaCommandTest {

  @Test
  void theSchemaIsPrintedAndNothingElse() {
    Outcome outcome = Scenario.run(Path.of(""), Map.of(), List.of("schema"));
    assertThat(outcome).isEqualTo(new Outcome(Schemas.plan(), "", 0));
    assertThat(outcome.out()).startsWith("{\n  \"$schema\"").endsWith("}\n");
  }
}
