package strikeoff.cli;

import java.util.concurrent.Callable;
import picocli.AutoComplete;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Prints what a shell needs to complete commands and options. */
@Command(
    name = "completion",
    description = {
      "Prints a script by which bash or zsh completes commands and options of a program called"
          + " strikeoff.",
      "In bash: source <(strikeoff completion bash)"
    },
    exitCodeListHeading = Exit.HEADING,
    exitCodeList = {Exit.PRINTED, Exit.WRONG_USAGE})
final class CompletionCommand implements Callable<Integer> {

  private final Surroundings here;

  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "SHELL", description = "bash or zsh; both take the same script.")
  private String shell;

  @Mixin private Usual usual;

  CompletionCommand(Surroundings here) {
    this.here = here;
  }

  @Override
  public Integer call() {
    if (!shell.equals("bash") && !shell.equals("zsh")) {
      throw new ParameterException(
          spec.commandLine(), "there is a script for bash and zsh; “" + shell + "” is neither");
    }
    here.out().print(AutoComplete.bash("strikeoff", spec.root().commandLine()));
    return Exit.PRINTABLE.code();
  }
}
