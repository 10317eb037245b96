package strikeoff.cli.commands;

import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParameterException;
import strikeoff.cli.text.Exit;
import strikeoff.units.Spelling;

/** Shows what {@code --help} shows, for those who write it as a command. */
final class HelpCommand implements Command {

  private final PositionalParamSpec command =
      Options.optional("COMMAND", "", "The command to explain; without it, all are listed.");

  private final CommandSpec spec =
      Options.command(this, "help", "Shows the help of a command, or of the program.");

  HelpCommand() {
    spec.addPositional(command).addOption(Usual.help());
    Options.exits(spec, Exit.PRINTED, Exit.WRONG_USAGE);
  }

  @Override
  public CommandSpec spec() {
    return spec;
  }

  @Override
  public Integer call() {
    CommandLine all = spec.root().commandLine();
    String name = command.getValue();
    CommandLine told = name.isEmpty() ? all : all.getSubcommands().get(name);
    if (told == null) {
      List<String> known = List.copyOf(all.getSubcommands().keySet());
      throw new ParameterException(
          spec.commandLine(), "no command “" + name + "”" + Spelling.didYouMean(name, known));
    }
    told.usage(told.getOut());
    return Exit.PRINTABLE.code();
  }
}
