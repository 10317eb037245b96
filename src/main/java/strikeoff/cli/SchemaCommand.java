package strikeoff.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import strikeoff.check.Schemas;

/** Prints the schema of the plan language. */
@Command(
    name = "schema",
    description = {
      "Prints the JSON Schema (2020-12) of a plan, for editors that complete and explain.",
      "In an editor with a YAML language server, the first line of a plan then says:",
      "# yaml-language-server: $schema=plan-schema.json"
    },
    exitCodeListHeading = Exit.HEADING,
    exitCodeList = {Exit.PRINTED, Exit.WRONG_USAGE})
final class SchemaCommand implements Callable<Integer> {

  private final Surroundings here;

  @Mixin private Usual usual;

  SchemaCommand(Surroundings here) {
    this.here = here;
  }

  @Override
  public Integer call() {
    here.out().print(Schemas.plan());
    return Exit.PRINTABLE.code();
  }
}
