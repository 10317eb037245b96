package strikeoff.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import strikeoff.check.Schemas;

/** Prints the schema of what people write: plans, or a studio's policy. */
@Command(
    name = "schema",
    description = {
      "Prints the JSON Schema (2020-12) of a plan or of a policy file, for editors that complete"
          + " and explain.",
      "In an editor with a YAML language server, the first line of a plan then says:",
      "# yaml-language-server: $schema=plan-schema.json"
    },
    exitCodeListHeading = Exit.HEADING,
    exitCodeList = {Exit.PRINTED, Exit.WRONG_USAGE, Exit.TOOL_FAILED},
    footerHeading = Exit.NOTE,
    footer = {
      "With a studio's policy, given or in this folder, plans may name its screens and pastes, and"
          + " policies its own rules."
    })
final class SchemaCommand implements Callable<Integer> {

  private final Surroundings here;

  @Spec private CommandSpec spec;

  @Parameters(
      paramLabel = "OF",
      arity = "0..1",
      defaultValue = "plan",
      description = "plan or policy; without it, plan.")
  private String of;

  @Mixin private StudioOptions studioOptions;

  @Mixin private Usual usual;

  SchemaCommand(Surroundings here) {
    this.here = here;
  }

  @Override
  public Integer call() {
    if (!of.equals("plan") && !of.equals("policy")) {
      throw new ParameterException(
          spec.commandLine(),
          "there is a schema of a plan and of a policy; “" + of + "” is neither");
    }
    Studios studios = Studios.of(here, studioOptions);
    if (!studios.wrong().isEmpty()) {
      studios.wrong().forEach(wrong -> Complaint.say(here, wrong));
      return Exit.USAGE.code();
    }
    here.out()
        .print(
            of.equals("plan")
                ? Schemas.plan(studios.checker())
                : Schemas.policy(studios.checker(), studios.checker().studio().files().isEmpty()));
    return Exit.PRINTABLE.code();
  }
}
