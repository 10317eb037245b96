package strikeoff.cli.commands;

import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParameterException;
import strikeoff.check.Schemas;
import strikeoff.cli.text.Complaint;
import strikeoff.cli.text.Exit;
import strikeoff.cli.text.Surroundings;

/** Prints the schema of what people write: plans, or a studio's policy. */
final class SchemaCommand implements Command {

  private final Surroundings here;

  private final PositionalParamSpec of =
      Options.optional("OF", "plan", "plan or policy; without it, plan.");

  private final StudioOptions studioOptions = new StudioOptions();

  private final Usual usual = new Usual();

  private final CommandSpec spec =
      Options.command(
          this,
          "schema",
          "Prints the JSON Schema (2020-12) of a plan or of a policy file, for editors that complete"
              + " and explain.",
          "In an editor with a YAML language server, the first line of a plan then says:",
          "# yaml-language-server: $schema=plan-schema.json");

  SchemaCommand(Surroundings here) {
    this.here = here;
    spec.addPositional(of).usageMessage().sortOptions(true);
    studioOptions.addTo(spec);
    usual.addTo(spec);
    Options.exits(spec, Exit.PRINTED, Exit.WRONG_POLICY, Exit.POLICY_FAILED);
    Options.note(
        spec,
        "With a studio's policy, given or in this folder, plans may name its screens and pastes, and"
            + " policies its own rules.");
  }

  @Override
  public CommandSpec spec() {
    return spec;
  }

  @Override
  public Integer call() {
    String of = this.of.getValue();
    if (!of.equals("plan") && !of.equals("policy")) {
      throw new ParameterException(
          spec.commandLine(),
          "there is a schema of a plan and of a policy; “" + of + "” is neither");
    }
    Studios studios = Studios.of(here, studioOptions);
    if (!studios.wrong().isEmpty()) {
      studios.wrong().forEach(wrong -> Complaint.say(here, wrong));
      return studios.exit().code();
    }
    here.out()
        .print(
            of.equals("plan")
                ? Schemas.plan(studios.checker())
                : Schemas.policy(studios.checker(), studios.checker().studio().files().isEmpty()));
    return Exit.PRINTABLE.code();
  }
}
