package strikeoff.cli.commands;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.function.Supplier;
import java.util.stream.Stream;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParameterException;
import strikeoff.check.Checked;
import strikeoff.check.FileTrouble;
import strikeoff.cli.files.Outputs;
import strikeoff.cli.files.Overwriting;
import strikeoff.cli.files.PlanFiles;
import strikeoff.cli.files.PlanFiles.Found;
import strikeoff.cli.files.PlanFiles.PlanFile;
import strikeoff.cli.files.ReportFolder;
import strikeoff.cli.files.ResultFile;
import strikeoff.cli.text.CompareText;
import strikeoff.cli.text.Complaint;
import strikeoff.cli.text.Exit;
import strikeoff.cli.text.FileNames;
import strikeoff.cli.text.Ink;
import strikeoff.cli.text.Surroundings;
import strikeoff.cli.text.Tally;
import strikeoff.document.Bounds;
import strikeoff.report.HtmlReport;
import strikeoff.report.PageMark;
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

  private final OptionSpec reports =
      Options.word(
          "--reports",
          "DIR",
          "Write the comparison into this folder as a page, index.html, and beside it the pages of both"
              + " versions that it links to; JSON of earlier runs has none. What else lies there is"
              + " treated as in check.");

  private final OptionSpec noArtwork = Options.noArtwork();

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
        .addOption(reports)
        .addOption(noArtwork)
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
    String folder = reports.getValue();
    if (folder != null && (folder.isBlank() || folder.equals("-"))) {
      misused("--reports takes the name of a folder");
    }
    List<Exit> exits = new ArrayList<>();
    Optional<Results> old = results(before.getValue(), "before", exits);
    Optional<Results> now = results(after.getValue(), "now", exits);
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

  /**
   * Those of an earlier run, or of a run now; empty with the reason told.
   *
   * @param version the folder for its pages, below that of reports
   */
  private Optional<Results> results(String named, String version, List<Exit> exits) {
    if (named.toLowerCase(Locale.ROOT).endsWith(".json")) {
      if (!FileNames.isLost(named)) {
        refuseOverwriting(() -> List.of(here.resolve(named)));
      }
      try {
        return Optional.of(unlinked(ResultFile.read(here, named)));
      } catch (ResultFile.Unfit e) {
        Complaint.say(here, e.getMessage());
        exits.add(e.exit());
        return Optional.empty();
      }
    }
    Found found = PlanFiles.of(List.of(named), here, MOST_PLANS, PlanFiles.FEWER, "-");
    if (!found.wrong().isEmpty()) {
      found.wrong().forEach(wrong -> Complaint.say(here, wrong));
      exits.add(Exit.USAGE);
      return Optional.empty();
    }
    found.closed().forEach(closed -> trouble(closed, exits));
    List<PlanFile> plans = found.plans();
    Studios studios = Studios.of(here, studioOptions, Bounds.USUAL, plans);
    if (reports.getValue() == null || noArtwork.<Boolean>getValue()) {
      studios.leavePictures();
    }
    studios.wrong().forEach(wrong -> Complaint.say(here, wrong));
    if (!studios.wrongForAll().isEmpty()) {
      exits.add(studios.exit());
      return Optional.empty();
    }
    refuseOverwriting(() -> new Governing(here, studioOptions).read(plans));
    Optional<Pages> pages;
    try {
      pages = pages(version, plans);
    } catch (IOException e) {
      trouble(reports.getValue() + ": no reports can be written here: " + FileTrouble.of(e), exits);
      return Optional.empty();
    }
    studios.notes().forEach(note -> Complaint.say(here, note));
    Map<PlanFile, Integer> numbers = new HashMap<>();
    plans.forEach(plan -> numbers.put(plan, numbers.size() + 1));
    List<Outcome> outcomes = new ArrayList<>();
    boolean supplies =
        Options.outputs(formats).stream().anyMatch(o -> o.format().equals(Formats.JSON));
    new Batch(here.plansAtOnce(), maxSeconds.<Integer>getValue())
        .<Outcome>run(
            plans,
            plan -> {
              Checked checked =
                  pages.isPresent() ? studios.checkAndMend(plan) : studios.check(plan);
              Optional<String> page = pages.flatMap(p -> p.write(plan, checked));
              Outcome outcome = Outcome.of(checked, numbers.get(plan), page);
              return supplies ? outcome.supplied(checked) : outcome;
            },
            (plan, failed) -> Outcome.of(failed, numbers.get(plan), Optional.empty()),
            outcomes::add);
    pages.ifPresent(p -> p.troubles().forEach(t -> trouble(t, exits)));
    return Optional.of(
        new Results(
            Strikeoff.Version.number(),
            named,
            Optional.empty(),
            plans.size(),
            studios.rules(),
            outcomes));
  }

  /** The same without addresses of pages, which lie nobody knows where. */
  private static Results unlinked(Results results) {
    return results.with(
        results.part(),
        results.plans().stream().map(p -> p.at(p.number(), Optional.empty())).toList());
  }

  /** The pages of one version, if pages are wanted. */
  private Optional<Pages> pages(String version, List<PlanFile> plans) throws IOException {
    String folder = reports.getValue();
    if (folder == null) {
      return Optional.empty();
    }
    ReportFolder own = new ReportFolder(here.resolve(folder).resolve(version));
    own.open();
    return Optional.of(
        new Pages(
            version,
            own,
            ReportFolder.names(plans),
            !noArtwork.<Boolean>getValue(),
            new ConcurrentLinkedQueue<>()));
  }

  /**
   * The pages of one version.
   *
   * @param names of each plan's page
   * @param artwork whether pages draw films
   * @param troubles which of them can't be written, and why
   */
  private record Pages(
      String version,
      ReportFolder folder,
      Map<PlanFile, String> names,
      boolean artwork,
      Queue<String> troubles) {

    /** The page's address from the comparison; empty if it can't be written. */
    Optional<String> write(PlanFile plan, Checked checked) {
      String page = version + "/" + names.get(plan);
      try {
        folder.write(names.get(plan), HtmlReport.utf8(checked, artwork));
        return Optional.of(page);
      } catch (IOException e) {
        troubles.add(FileTrouble.unwritten(plan.name(), "report", page, e));
        return Optional.empty();
      }
    }
  }

  private void refuseOverwriting(Supplier<? extends Collection<Path>> read) {
    List<Path> pages = new ArrayList<>();
    if (reports.getValue() != null) {
      pages.add(here.resolve(reports.<String>getValue()).resolve(ReportFolder.INDEX));
    }
    Overwriting.refusal(here, Options.outputs(formats), pages, read).ifPresent(this::misused);
  }

  /** Whether the page of the comparison was written, if it is wanted. */
  private void writePage(Comparison comparison, List<Exit> exits) {
    String folder = reports.getValue();
    if (folder == null) {
      return;
    }
    ReportFolder own = new ReportFolder(here.resolve(folder), PageMark.COMPARE);
    try {
      own.make();
      own.write(ReportFolder.INDEX, HtmlReport.comparison(comparison));
    } catch (IOException e) {
      trouble(
          folder + "/" + ReportFolder.INDEX + ": this page can't be written: " + FileTrouble.of(e),
          exits);
    }
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
    writePage(comparison, exits);
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
