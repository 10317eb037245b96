package strikeoff.cli;

import java.io.IOException;
import java.util.ArrayList;
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
import strikeoff.check.Checked;
import strikeoff.check.Checker;
import strikeoff.check.FileTrouble;
import strikeoff.cli.PlanFiles.Found;
import strikeoff.cli.PlanFiles.PlanFile;
import strikeoff.report.HtmlReport;
import strikeoff.report.IndexEntry;

/** Checks plans. */
@Command(
    name = "check",
    description = "Checks plans and says of each whether it is printable and why not.",
    sortOptions = false,
    footer = {
      "",
      "Exit codes: 0 every plan is printable, 1 at least one is not, 2 wrong usage,",
      "3 at least one plan can't be read, 4 the tool failed or a file could not be",
      "read or written. Of several the worst counts: 4, then 3, then 1.",
    })
final class CheckCommand implements Callable<Integer> {

  private static final int LONG_BATCH = 20;

  private final Surroundings here;

  @Spec private CommandSpec spec;

  @Parameters(
      arity = "0..*",
      paramLabel = "PLAN|FOLDER|GLOB",
      description =
          "Files, folders to search for .yaml and .yml, or patterns such as 'plans/**/*.yaml'."
              + " Without any, the folder plans.")
  private List<String> arguments = new ArrayList<>();

  @Option(
      names = "--reports",
      paramLabel = "DIR",
      description = "Write an HTML report of each plan and an index into this folder.")
  private Optional<String> reports = Optional.empty();

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

  CheckCommand(Surroundings here) {
    this.here = here;
  }

  /** What is kept of a checked plan: its lines, its line in the index, what went wrong with it. */
  private record Done(Checked checked, Optional<IndexEntry> entry, Optional<String> trouble) {}

  @Override
  public Integer call() {
    usable();
    Found found = PlanFiles.of(wanted(), here, maxPlans);
    if (!found.wrong().isEmpty()) {
      found.wrong().forEach(wrong -> Complaint.say(here, wrong));
      return Exit.USAGE.code();
    }
    List<Exit> exits = new ArrayList<>();
    found.closed().forEach(closed -> trouble(closed, exits));
    Optional<ReportFolder> folder = reports.map(r -> new ReportFolder(here.resolve(r)));
    try {
      if (folder.isPresent()) {
        folder.get().make();
      }
    } catch (IOException e) {
      trouble(reports.get() + ": no reports can be written here: " + FileTrouble.of(e), exits);
      return Exit.FAULT.code();
    }
    exits.add(check(found.plans(), folder, exits));
    Exit worst = Exit.worst(exits);
    return exitZero && worst != Exit.FAULT ? Exit.PRINTABLE.code() : worst.code();
  }

  private void usable() {
    if (quiet && verbose) {
      throw new ParameterException(spec.commandLine(), "either --quiet or --verbose, not both");
    }
    if (reports.filter(String::isBlank).isPresent()) {
      throw new ParameterException(spec.commandLine(), "--reports takes the name of a folder");
    }
    if (maxFindings < 1 || maxPlans < 1 || maxSeconds < 1) {
      throw new ParameterException(spec.commandLine(), "a --max- option takes a number from 1");
    }
  }

  private List<String> wanted() {
    return arguments.isEmpty() ? List.of("plans") : arguments;
  }

  private Exit check(List<PlanFile> plans, Optional<ReportFolder> folder, List<Exit> exits) {
    Checker checker = Checker.builtIn();
    Map<PlanFile, String> names = ReportFolder.names(plans);
    Detail detail = quiet ? Detail.QUIET : verbose ? Detail.FULL : Detail.USUAL;
    PlanText text = new PlanText(usual.ink(here), here.width(), detail, maxFindings);
    Progress progress =
        new Progress(here, plans.size(), here.terminal() && plans.size() >= LONG_BATCH);
    Tally tally = new Tally();
    List<IndexEntry> entries = new ArrayList<>();
    new Batch(here.cores(), maxSeconds)
        .run(
            plans,
            plan -> reported(checker.check(plan.path(), plan.name()), folder, names.get(plan)),
            failed -> new Done(failed, entry(failed, folder, ""), Optional.empty()),
            done -> {
              progress.clear();
              tally.add(done.checked());
              done.entry().ifPresent(entries::add);
              tell(text.of(done.checked()), detail);
              done.trouble().ifPresent(what -> trouble(what, exits));
              progress.one();
            });
    progress.clear();
    folder.ifPresent(f -> index(f, entries, exits));
    if (detail != Detail.QUIET) {
      tally.lines().forEach(line -> Plain.wrap("", "  ", line, here.width()).forEach(this::print));
      folder.ifPresent(f -> print("reports: " + Plain.line(reports.get()) + "/index.html"));
    }
    return tally.exit();
  }

  /** Runs beside other plans: nothing is told here. */
  private static Done reported(Checked checked, Optional<ReportFolder> folder, String name) {
    if (folder.isEmpty()) {
      return new Done(checked, Optional.empty(), Optional.empty());
    }
    try {
      folder.get().write(name, HtmlReport.plan(checked));
      return new Done(checked, entry(checked, folder, name), Optional.empty());
    } catch (IOException e) {
      String trouble = name + ": this report can't be written: " + FileTrouble.of(e);
      return new Done(checked, entry(checked, folder, ""), Optional.of(trouble));
    }
  }

  private static Optional<IndexEntry> entry(
      Checked checked, Optional<ReportFolder> folder, String link) {
    return folder.map(f -> IndexEntry.of(checked, link));
  }

  private void index(ReportFolder folder, List<IndexEntry> entries, List<Exit> exits) {
    try {
      folder.write(ReportFolder.INDEX, HtmlReport.index(String.join(", ", wanted()), entries));
    } catch (IOException e) {
      trouble(ReportFolder.INDEX + ": the index can't be written: " + FileTrouble.of(e), exits);
    }
  }

  private void tell(List<String> lines, Detail detail) {
    lines.forEach(this::print);
    if (detail != Detail.QUIET) {
      print("");
    }
    here.out().flush();
  }

  private void print(String line) {
    here.out().print(line + "\n");
  }

  private void trouble(String what, List<Exit> exits) {
    here.out().flush();
    Complaint.say(here, what);
    here.err().flush();
    exits.add(Exit.FAULT);
  }
}
