package strikeoff.cli.commands;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParameterException;
import strikeoff.check.FileTrouble;
import strikeoff.cli.files.Outputs;
import strikeoff.cli.files.Overwriting;
import strikeoff.cli.files.PlanFiles;
import strikeoff.cli.files.PlanFiles.Found;
import strikeoff.cli.files.PlanFiles.PlanFile;
import strikeoff.cli.files.ResultFile;
import strikeoff.cli.text.CompareText;
import strikeoff.cli.text.Complaint;
import strikeoff.cli.text.Exit;
import strikeoff.cli.text.FileNames;
import strikeoff.cli.text.Ink;
import strikeoff.cli.text.Surroundings;
import strikeoff.cli.text.Tally;
import strikeoff.document.Bounds;
import strikeoff.report.compare.Comparison;
import strikeoff.report.outcome.Outcome;
import strikeoff.report.outcome.Results;

/** Compares two versions of a plan, or two batches. */
final class CompareCommand implements Command {

  private static final int MOST_PLANS = 10_000;

  private final Surroundings here;

  private final PositionalParamSpec before =
      Options.parameter("0", "OLD", "A plan, a folder, a pattern, or JSON that check wrote.");

  private final PositionalParamSpec after = Options.parameter("1", "NEW", "The same, later.");

  private final OptionSpec formats =
      Options.formats("text, html or json, to a file or to standard output, as in check.");

  private final OptionSpec verbose =
      Options.verbose("Tell also plans that are as they were, and how to mend what is left.");

  private final OptionSpec failOn = Options.failOn();

  private final OptionSpec maxSeconds = Options.maxSeconds();

  private final StudioOptions studioOptions = new StudioOptions();

  private final Usual usual = new Usual();

  private final CommandSpec spec =
      Options.command(
          this,
          "compare",
          "Compares two versions of a plan or of a folder of plans: which findings are mended,"
              + " left and new, and what changed in finish time, paste and lays.");

  CompareCommand(Surroundings here) {
    this.here = here;
    spec.addPositional(before)
        .addPositional(after)
        .addOption(formats)
        .addOption(verbose)
        .addOption(failOn)
        .addOption(maxSeconds);
    studioOptions.addWithUnitsTo(spec);
    usual.addTo(spec);
    Options.exits(
        spec,
        Exit.ALL_PRINTABLE,
        Exit.SOME_NOT_PRINTABLE,
        Exit.WRONG_POLICY,
        Exit.SOME_UNREADABLE,
        Exit.POLICY_FAILED);
    Options.note(
        spec,
        "Plans of two folders belong together if they are called alike. The exit code is"
            + " that of checking NEW.");
  }

  @Override
  public CommandSpec spec() {
    return spec;
  }

  @Override
  public Integer call() {
    Outputs.clash(Formats.COMPARISONS.keySet(), Options.outputs(formats)).ifPresent(this::misused);
    List<Exit> exits = new ArrayList<>();
    Optional<Results> old = results(before.getValue(), exits);
    Optional<Results> now = results(after.getValue(), exits);
    Stream.of(old, now).flatMap(Optional::stream).forEach(this::tellNarrowed);
    return old.isEmpty() || now.isEmpty()
        ? Exit.worst(exits).code()
        : write(Comparison.of(old.get(), now.get()), now.get(), exits);
  }

  /** What some rules left out is neither mended nor new. */
  private void tellNarrowed(Results results) {
    results
        .narrowed()
        .ifPresent(n -> Complaint.say(here, results.title() + ": " + n.text() + "; compare likes"));
  }

  /** Those of an earlier run, or of a run now; empty with the reason told. */
  private Optional<Results> results(String named, List<Exit> exits) {
    if (named.toLowerCase(Locale.ROOT).endsWith(".json")) {
      if (!FileNames.isLost(named)) {
        refuseOverwriting(List.of(here.resolve(named)));
      }
      try {
        return Optional.of(ResultFile.read(here, named));
      } catch (ResultFile.Unfit e) {
        Complaint.say(here, e.getMessage());
        exits.add(e.exit());
        return Optional.empty();
      }
    }
    Found found = PlanFiles.of(List.of(named), here, MOST_PLANS, "-");
    if (!found.wrong().isEmpty()) {
      found.wrong().forEach(wrong -> Complaint.say(here, wrong));
      exits.add(Exit.USAGE);
      return Optional.empty();
    }
    found.closed().forEach(closed -> trouble(closed, exits));
    List<PlanFile> plans = found.plans();
    Studios studios = Studios.of(here, studioOptions, Bounds.USUAL, plans);
    studios.wrong().forEach(wrong -> Complaint.say(here, wrong));
    if (!studios.wrongForAll().isEmpty()) {
      exits.add(studios.exit());
      return Optional.empty();
    }
    refuseOverwriting(new Governing(here, studioOptions).read(plans));
    studios.notes().forEach(note -> Complaint.say(here, note));
    Map<PlanFile, Integer> numbers = new HashMap<>();
    plans.forEach(plan -> numbers.put(plan, numbers.size() + 1));
    List<Outcome> outcomes = new ArrayList<>();
    new Batch(here.plansAtOnce(), maxSeconds.<Integer>getValue())
        .<Outcome>run(
            plans,
            plan -> Outcome.of(studios.check(plan), numbers.get(plan), Optional.empty()),
            (plan, failed) -> Outcome.of(failed, numbers.get(plan), Optional.empty()),
            outcomes::add);
    return Optional.of(
        new Results(
            Strikeoff.Version.number(),
            named,
            Optional.empty(),
            plans.size(),
            studios.rules(),
            outcomes));
  }

  private void refuseOverwriting(Collection<Path> read) {
    Overwriting.refusal(here, Options.outputs(formats), List.of(), read).ifPresent(this::misused);
  }

  private void misused(String what) {
    throw new ParameterException(spec.commandLine(), what);
  }

  private int write(Comparison comparison, Results now, List<Exit> exits) {
    Outputs<Comparison> all = new Outputs<>(here, Formats.COMPARISONS, Options.outputs(formats));
    Ink ink = all.textIsShown() ? usual.ink(here) : new Ink(false);
    for (String line : new CompareText(ink, here.width(), verbose.getValue()).of(comparison)) {
      all.text().print(line + "\n");
    }
    all.text().flush();
    all.write(
        () -> comparison,
        (file, e) -> trouble(file + ": this file can't be written: " + FileTrouble.of(e), exits));
    Tally tally = new Tally();
    now.plans().forEach(tally::add);
    exits.add(tally.exit());
    return failOn.<FailOn>getValue().exit(Exit.worst(exits), tally.open()).code();
  }

  private void trouble(String what, List<Exit> exits) {
    Complaint.say(here, what);
    exits.add(Exit.FAULT);
  }
}
