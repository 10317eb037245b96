package strikeoff.cli.commands;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import strikeoff.check.Checker;
import strikeoff.check.Schemas;
import strikeoff.cli.Scenario;
import strikeoff.cli.Scenario.Outcome;

class SchemaCommandTest {

  private static Outcome run(String folder, String... args) {
    return Scenario.run(Path.of(folder), Map.of(), List.of(args));
  }

  @Test
  void theSchemaIsPrintedAndNothingElse() {
    Outcome outcome = run("", "schema");
    assertThat(outcome).isEqualTo(new Outcome(Schemas.plan(), "", 0));
    assertThat(outcome.out()).startsWith("{\n  \"$schema\"").endsWith("}\n");
    assertThat(run("", "schema", "plan")).isEqualTo(outcome);
    assertThat(run("", "schema", "policy"))
        .isEqualTo(new Outcome(Schemas.policy(Checker.builtIn(), true), "", 0));
  }

  @Test
  void aStudiosPlansMayNameWhatItHas() {
    Outcome outcome = run("", "schema", "plan", "--policy", "plans/workshop/studio.yaml");
    assertThat(outcome.err()).isEmpty();
    assertThat(outcome.out())
        .contains(
            "\"rust\": {",
            "\"description\": \"The studio has it: plans/workshop/studio.yaml, line");
    assertThat(run("plans/workshop", "schema").out()).contains("\"rust\": {");
  }

  @Test
  void aStudiosPolicyMayNameItsOwnRules() {
    Outcome outcome = run("", "schema", "policy", "--policy", "plans/workshop/studio.yaml");
    assertThat(outcome.err()).isEmpty();
    assertThat(outcome.out()).contains("\"house/late-finish\": {");
  }

  @Test
  void whatHasNoSchemaIsWrongUsage() {
    assertThat(run("", "schema", "recipe").exit()).isEqualTo(2);
    assertThat(run("", "schema", "policy", "--policy", "plans/first-border.yaml").exit())
        .isEqualTo(2);
  }
}
