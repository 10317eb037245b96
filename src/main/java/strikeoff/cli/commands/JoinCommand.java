package strikeoff.cli.commands;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParameterException;
import strikeoff.check.FileTrouble;
import strikeoff.cli.files.Outputs;
import strikeoff.cli.files.Overwriting;
import strikeoff.cli.files.ReportFolder;
import strikeoff.cli.files.ResultFile;
import strikeoff.cli.text.Complaint;
import strikeoff.cli.text.Exit;
import strikeoff.cli.text.FileNames;
import strikeoff.cli.text.Plain;
import strikeoff.cli.text.Surroundings;
import strikeoff.cli.text.Tally;
import strikeoff.findings.RuleInfo;
import strikeoff.report.IndexEntry;
import strikeoff.report.PageMark;
import strikeoff.report.outcome.Outcome;
import strikeoff.report.outcome.Parts;
import strikeoff.report.outcome.Results;

/** Puts the parts of a batch together that several machines checked. */
final class JoinCommand implements Command {

  private final Surroundings here;

  private final PositionalParamSpec files =
      Options.parameters(true, "PART", "JSON of a part, in any order.");

  private final OptionSpec reports =
      Options.word(
          "--reports",
          "DIR",
          "Write the index into this folder. The pages of the plans are those that the parts"
              + " wrote: copy them there.");

  private final OptionSpec sheets =
      Options.word(
          "--sheets",
          "DIR",
          "Write the index of the sheets for the wall into this folder. The sheets are those that"
              + " the parts wrote: copy them there before. A plan whose sheets are not there has"
              + " no link.");

  private final OptionSpec formats =
      Options.formats(
          "text, json, sarif, junit or csv, to a file or to standard output, as in check.");

  private final OptionSpec failOn = Options.failOn();

  private final OptionSpec by = Options.groups();

  private final Usual usual = new Usual();

  private final CommandSpec spec =
      Options.command(
          this,
          "join",
          "Joins the JSON of a batch's parts (check --part) into one, with the index of all: the"
              + " same bytes as one run over the whole batch.");

  private final OptionSpec handBack = Options.handBack();

  JoinCommand(Surroundings here) {
    this.here = here;
    spec.addPositional(files)
        .addOption(reports)
        .addOption(sheets)
        .addOption(formats)
        .addOption(failOn)
        .addOption(by)
        .addOption(handBack);
    usual.addTo(spec);
    Options.exits(
        spec,
        Exit.ALL_PRINTABLE,
        Exit.SOME_NOT_PRINTABLE,
        "2:wrong usage: parts that don't make one batch",
        "3:at least one plan, or a part, can't be read",
        Exit.TOOL_FAILED);
    Options.note(spec, "The exit code is that of one run over the whole batch.");
  }

  @Override
  public CommandSpec spec() {
    return spec;
  }

  @Override
  public Integer call() {
    Outputs.clash(Formats.RESULTS.keySet(), Options.outputs(formats)).ifPresent(this::misused);
    if (reports().filter(String::isBlank).isPresent()) {
      misused("--reports takes the name of a folder");
    }
    if (sheets().filter(String::isBlank).isPresent()) {
      misused("--sheets takes the name of a folder");
    }
    if (sheets().isPresent()
        && sheets()
            .map(name -> here.resolve(name).normalize())
            .equals(reports().map(name -> here.resolve(name).normalize()))) {
      misused("--sheets and --reports need a folder each, as their pages have the same names");
    }
    if (handBack.<Boolean>getValue() && reports().isEmpty()) {
      misused(Options.NOWHERE_TO_HAND_BACK);
    }
    Overwriting.refusal(
            here,
            Options.outputs(formats),
            indexes(),
            () ->
                Options.listed(files).stream()
                    .filter(file -> !FileNames.isLost(file))
                    .map(here::resolve)
                    .toList())
        .ifPresent(this::misused);
    List<Results> parts = new ArrayList<>();
    for (String file : Options.listed(files)) {
      try {
        parts.add(ResultFile.read(here, file));
      } catch (ResultFile.Unfit e) {
        Complaint.say(here, e.getMessage());
        return e.exit().code();
      }
    }
    Parts.Joined joined = Parts.join(parts);
    if (joined instanceof Parts.Joined.Unfit unfit) {
      misused(unfit.why());
    }
    return write(((Parts.Joined.Whole) joined).results());
  }

  private Optional<String> reports() {
    return Optional.ofNullable(reports.getValue());
  }

  private Optional<String> sheets() {
    return Optional.ofNullable(sheets.getValue());
  }

  /** What it writes into folders. */
  private List<Path> indexes() {
    List<Path> files = new ArrayList<>();
    reports().ifPresent(r -> files.addAll(new ReportFolder(here.resolve(r)).files(List.of())));
    sheets().ifPresent(s -> files.addAll(wall(s).files(List.of())));
    return files;
  }

  private ReportFolder wall(String name) {
    return new ReportFolder(here.resolve(name), PageMark.SHEETS);
  }

  private void misused(String what) {
    throw new ParameterException(spec.commandLine(), what);
  }

  private int write(Results results) {
    List<Exit> exits = new ArrayList<>();
    Outputs<Results> all =
        new Outputs<>(here, Formats.results(here, reports()), Options.outputs(formats));
    Tally tally = new Tally();
    results.plans().forEach(tally::add);
    boolean indexed = reports().filter(r -> index(r, results, exits)).isPresent();
    boolean hung = sheets().filter(s -> hang(s, results, exits)).isPresent();
    for (String line : tally.lines()) {
      Plain.wrap("", "  ", line, here.width()).forEach(l -> all.text().print(l + "\n"));
    }
    results
        .narrowed()
        .map(n -> n.text() + ".")
        .ifPresent(
            line ->
                Plain.wrap("", "  ", line, here.width()).forEach(l -> all.text().print(l + "\n")));
    if (indexed) {
      all.text().print("reports: " + Plain.line(reports().get()) + "/index.html\n");
    }
    if (hung) {
      all.text().print("sheets: " + Plain.line(sheets().get()) + "/index.html\n");
    }
    all.text().flush();
    all.write(
        () -> results,
        (file, e) -> trouble(file + ": this file can't be written: " + FileTrouble.of(e), exits));
    exits.add(tally.exit());
    return failOn.<FailOn>getValue().exit(Exit.worst(exits), tally.open()).code();
  }

  /**
   * Writes the index of the sheets: a part's JSON doesn't tell of them, but what each plan's are
   * called follows from all of the batch.
   *
   * @return whether it was written
   */
  private boolean hang(String name, Results results, List<Exit> exits) {
    Map<String, RuleInfo> rules = results.rulesById();
    List<String> pages = ReportFolder.pages(results.plans().stream().map(Outcome::file).toList());
    ReportFolder folder = wall(name);
    try {
      folder.openBut(Set.copyOf(pages));
    } catch (IOException e) {
      trouble(name + ": no index can be written here: " + FileTrouble.of(e), exits);
      return false;
    }
    List<IndexEntry> entries = new ArrayList<>();
    for (int i = 0; i < pages.size(); i++) {
      Outcome plan = results.plans().get(i);
      Optional<String> page =
          Optional.of(pages.get(i)).filter(p -> plan.figures().isPresent() && folder.holds(p));
      entries.add(
          IndexEntry.of(
              plan.at(plan.number(), page),
              rules,
              results.narrowed(),
              results.baseline().isPresent()));
    }
    return folder.sheetsIndex(results.title(), entries, trouble -> trouble(trouble, exits));
  }

  /** Whether it was written. */
  private boolean index(String name, Results results, List<Exit> exits) {
    Map<String, RuleInfo> rules = results.rulesById();
    List<IndexEntry> entries = new ArrayList<>();
    for (Outcome plan : results.plans()) {
      entries.add(IndexEntry.of(plan, rules, results.narrowed(), results.baseline().isPresent()));
    }
    ReportFolder folder = new ReportFolder(here.resolve(name));
    Set<String> pages =
        results.plans().stream()
            .flatMap(plan -> plan.report().stream())
            .collect(Collectors.toSet());
    try {
      folder.openBut(pages);
    } catch (IOException e) {
      trouble(name + ": no index can be written here: " + FileTrouble.of(e), exits);
      return false;
    }
    boolean handsBack = handBack.getValue();
    return folder.index(
        results.title(),
        entries,
        results.rules(),
        by.getValue() == Groups.PUPIL || handsBack,
        handsBack
            ? folder.handBack(
                results.plans(),
                results.rules(),
                results.narrowed(),
                pages,
                trouble -> trouble(trouble, exits))
            : Map.of(),
        trouble -> trouble(trouble, exits));
  }

  private void trouble(String what, List<Exit> exits) {
    Complaint.say(here, what);
    exits.add(Exit.FAULT);
  }
}
