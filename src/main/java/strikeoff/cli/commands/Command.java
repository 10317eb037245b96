package strikeoff.cli.commands;

import java.util.concurrent.Callable;
import picocli.CommandLine.Model.CommandSpec;

/**
 * One of the program's commands: what may stand on its line, and what it does. Its options are
 * built, not annotated: to read annotations of ten classes takes longer than to check a plan.
 */
interface Command extends Callable<Integer> {

  /** What the line may hold and help tells; the same object each time. */
  CommandSpec spec();
}
