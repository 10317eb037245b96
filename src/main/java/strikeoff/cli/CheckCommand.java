package strikeoff.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import strikeoff.cli.PlanFiles.Found;
import strikeoff.plan.Bounds;
import strikeoff.report.outcome.Shard;

/** Checks plans. */
@Command(
    name = "check",
    description = "Checks plans and says of each whether it is printable and why not.",
    sortOptions = false,
    exitCodeListHeading = Exit.HEADING,
    exitCodeList = {
      Exit.ALL_PRINTABLE,
      Exit.SOME_NOT_PRINTABLE,
      Exit.WRONG_USAGE,
      Exit.SOME_UNREADABLE,
      Exit.TOOL_FAILED
    },
    footerHeading = Exit.NOTE,
    footer = {"Of several exit codes the worst counts: 4, then 3, then 1."})
final class CheckCommand implements Callable<Integer> {

  private final Surroundings here;

  @Spec private CommandSpec spec;

  @Parameters(
      arity = "0..*",
      paramLabel = "PLAN|FOLDER|GLOB",
      description =
          "Files, folders to search for .yaml and .yml, patterns such as 'plans/**/*.yaml', or -"
              + " for a plan from standard input. Without any, the folder plans.")
  private List<String> arguments = new ArrayList<>();

  @Option(
      names = "--reports",
      paramLabel = "DIR",
      description = "Write an HTML report of each plan and an index into this folder.")
  private Optional<String> reports = Optional.empty();

  @Option(
      names = {"-f", "--format"},
      paramLabel = "FORMAT[=FILE]",
      converter = Output.Converter.class,
      description =
          "text, json, sarif or junit, to a file or to standard output. May be given several"
              + " times. Text goes to standard output unless another format does.")
  private List<Output> outputs = new ArrayList<>();

  @Option(
      names = "--shard",
      paramLabel = "I/N",
      converter = ShardConverter.class,
      description =
          "Check part I of N of the plans, every N-th one. The parts' JSON is put together by"
              + " strikeoff join.")
  private Optional<Shard> shard = Optional.empty();

  @Option(
      names = "--stdin-name",
      paramLabel = "FILE",
      description = "What the plan from standard input is called in findings.")
  private Optional<String> stdinName = Optional.empty();

  @Option(
      names = "--exit-zero",
      description =
          "Exit with 0 although a plan is not printable or can't be read: to look, not to gate."
              + " Codes 2 and 4 stay as they are.")
  private boolean exitZero;

  @Option(
      names = {"-q", "--quiet"},
      description = "Tell the verdicts only, a line each.")
  private boolean quiet;

  @Option(
      names = {"-v", "--verbose"},
      description = "Tell also reasons, sources, the plan's figures and what was assumed.")
  private boolean verbose;

  @Mixin private StudioOptions studioOptions;

  @Mixin private Usual usual;

  @Option(
      names = "--max-findings",
      paramLabel = "N",
      defaultValue = "50",
      description = "Tell at most so many findings or mistakes a plan (${DEFAULT-VALUE}).")
  private int maxFindings;

  @Option(
      names = "--max-plans",
      paramLabel = "N",
      defaultValue = "10000",
      description = "Check at most so many plans at once (${DEFAULT-VALUE}).")
  private int maxPlans;

  @Option(
      names = "--max-seconds",
      paramLabel = "N",
      defaultValue = "120",
      description = "Give a plan up that takes longer than this (${DEFAULT-VALUE}).")
  private long maxSeconds;

  @Option(
      names = "--bound",
      paramLabel = "WHAT=N",
      description =
          "Take in more of a plan than usual, or less: kib, depth, values, placements, steps,"
              + " impressions, or findings of one rule. May be given several times.")
  private Map<String, Integer> bounds = new LinkedHashMap<>();

  CheckCommand(Surroundings here) {
    this.here = here;
  }

  @Override
  public Integer call() {
    usable();
    Found found = PlanFiles.of(wanted(), here, maxPlans, stdinName.orElse("-"));
    if (!found.wrong().isEmpty()) {
      found.wrong().forEach(wrong -> Complaint.say(here, wrong));
      return Exit.USAGE.code();
    }
    Studios studios = Studios.of(here, studioOptions, bounds(), found.plans());
    if (!studios.wrong().isEmpty()) {
      studios.wrong().forEach(wrong -> Complaint.say(here, wrong));
      return Exit.USAGE.code();
    }
    studios.notes().forEach(note -> Complaint.say(here, note));
    CheckRun run = new CheckRun(here, studios, settings());
    found.closed().forEach(run::trouble);
    Exit worst = run.of(found.plans());
    return exitZero && worst != Exit.FAULT ? Exit.PRINTABLE.code() : worst.code();
  }

  private CheckRun.Settings settings() {
    return new CheckRun.Settings(
        String.join(", ", wanted()),
        reports,
        shard,
        outputs,
        quiet ? Detail.QUIET : verbose ? Detail.FULL : Detail.USUAL,
        usual.colour(),
        maxFindings,
        maxSeconds);
  }

  private Bounds bounds() {
    try {
      return Bounds.USUAL.with(bounds);
    } catch (IllegalArgumentException e) {
      throw new ParameterException(spec.commandLine(), e.getMessage());
    }
  }

  private void usable() {
    bounds();
    if (quiet && verbose) {
      throw new ParameterException(spec.commandLine(), "either --quiet or --verbose, not both");
    }
    if (reports.filter(String::isBlank).isPresent()) {
      throw new ParameterException(spec.commandLine(), "--reports takes the name of a folder");
    }
    if (maxFindings < 1 || maxPlans < 1 || maxSeconds < 1) {
      throw new ParameterException(spec.commandLine(), "a --max- option takes a number from 1");
    }
    Outputs.clash(here, Formats.RESULTS.keySet(), outputs)
        .ifPresent(
            clash -> {
              throw new ParameterException(spec.commandLine(), clash);
            });
  }

  private List<String> wanted() {
    return arguments.isEmpty() ? List.of("plans") : arguments;
  }
}
