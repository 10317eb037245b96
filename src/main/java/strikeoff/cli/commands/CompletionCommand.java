package strikeoff.cli.commands;

import picocli.AutoComplete;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParameterException;
import strikeoff.cli.text.Exit;
import strikeoff.cli.text.Surroundings;

/** Prints what a shell needs to complete commands and options. */
final class CompletionCommand implements Command {

  private final Surroundings here;

  private final PositionalParamSpec shell =
      Options.parameter("0", "SHELL", "bash or zsh; both take the same script.");

  private final CommandSpec spec =
      Options.command(
          this,
          "completion",
          "Prints a script by which bash or zsh completes commands and options of a program called"
              + " strikeoff.",
          "In bash: source <(strikeoff completion bash)");

  CompletionCommand(Surroundings here) {
    this.here = here;
    spec.addPositional(shell).usageMessage().sortOptions(true);
    new Usual().addTo(spec);
    Options.exits(spec, Exit.PRINTED, Exit.WRONG_USAGE);
  }

  @Override
  public CommandSpec spec() {
    return spec;
  }

  @Override
  public Integer call() {
    String shell = this.shell.getValue();
    if (!shell.equals("bash") && !shell.equals("zsh")) {
      throw new ParameterException(
          spec.commandLine(), "there is a script for bash and zsh; “" + shell + "” is neither");
    }
    here.out().print(AutoComplete.bash("strikeoff", spec.root().commandLine()));
    return Exit.PRINTABLE.code();
  }
}
