package strikeoff.cli.commands;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParameterException;
import strikeoff.cli.files.ListedPaths;
import strikeoff.cli.files.Outputs;
import strikeoff.cli.files.Overwriting;
import strikeoff.cli.files.PlanFiles;
import strikeoff.cli.files.PlanFiles.Found;
import strikeoff.cli.files.PlanFiles.PlanFile;
import strikeoff.cli.files.ResultFile;
import strikeoff.cli.text.Complaint;
import strikeoff.cli.text.Detail;
import strikeoff.cli.text.Exit;
import strikeoff.cli.text.FileNames;
import strikeoff.cli.text.Surroundings;
import strikeoff.document.Bounds;
import strikeoff.report.outcome.Baseline;
import strikeoff.report.outcome.Part;

/** Checks plans. */
final class CheckCommand implements Command {

  private final Surroundings here;

  private final PositionalParamSpec arguments =
      Options.parameters(
          false,
          "PLAN|FOLDER|GLOB",
          "Files, folders to search for .yaml and .yml, patterns such as 'plans/**/*.yaml', or -"
              + " for a plan from standard input. Without any, the folder plans.");

  private final OptionSpec filesFrom =
      Options.word(
          "--files-from",
          "FILE",
          "Check the plans among the paths in this file, or in standard input for -: one a line, or"
              + " with a zero behind each. Paths that are no plans, or not there, are passed over and"
              + " told.");

  private final PageOptions pages = new PageOptions();

  private final OptionSpec formats =
      Options.formats(
          "text, json, sarif, junit or csv, to a file or to standard output. May be given several"
              + " times. Text goes to standard output unless another format does.");

  private final OptionSpec part =
      Options.words(
              "Check part I of N of the plans, every N-th one. The parts' JSON is put together by"
                  + " strikeoff join.",
              "I/N",
              "--part")
          .type(Part.class)
          .converters(new PartConverter())
          .build();

  private final OptionSpec stdinName =
      Options.word(
          "--stdin-name", "FILE", "What the plan from standard input is called in findings.");

  private final OptionSpec failOn = Options.failOn();

  private final OptionSpec baselineFile =
      Options.word(
          "--baseline",
          "FILE",
          "JSON of an earlier check: what it found already is told as old and fails nothing.");

  private final OptionSpec by = Options.groups();

  private final OptionSpec handBack = Options.handBack();

  private final OptionSpec noArtwork = Options.noArtwork();

  private final CacheOptions cache = new CacheOptions();

  private final Narrowing narrowing = new Narrowing();

  private final DetailOptions detail = new DetailOptions();

  private final StudioOptions studioOptions = new StudioOptions();

  private final Usual usual = new Usual();

  private final OptionSpec maxFindings =
      Options.number(
          WholeNumber.FROM_ONE,
          "--max-findings",
          "50",
          "Tell at most so many findings or mistakes a plan (${DEFAULT-VALUE}).");

  private final OptionSpec maxPlans =
      Options.number(
          WholeNumber.FROM_ONE,
          "--max-plans",
          "10000",
          "Check at most so many plans at once (${DEFAULT-VALUE}).");

  private final OptionSpec maxSeconds = Options.maxSeconds();

  private final OptionSpec bounds =
      Options.words(
              "Take in more of a plan than usual, or less: kib, depth, values, placements, steps,"
                  + " impressions, findings of one rule, megapixels of a film, artwork-megapixels of"
                  + " all films, or artwork-mib of a film's file. May be given several times.",
              "WHAT=N",
              "--bound")
          .type(List.class)
          .auxiliaryTypes(BoundGiven.class)
          .converters(new BoundGiven.Converter())
          .build();

  private final CommandSpec spec =
      Options.command(
          this, "check", "Checks plans and says of each whether it is printable and why not.");

  CheckCommand(Surroundings here) {
    this.here = here;
    spec.addPositional(arguments).addOption(filesFrom);
    pages.addTo(spec);
    spec.addOption(formats)
        .addOption(part)
        .addOption(stdinName)
        .addOption(failOn)
        .addOption(baselineFile)
        .addOption(by)
        .addOption(handBack)
        .addOption(noArtwork);
    cache.addTo(spec);
    narrowing.addTo(spec);
    detail.addTo(spec);
    studioOptions.addWithUnitsTo(spec);
    usual.addTo(spec);
    spec.addOption(maxFindings).addOption(maxPlans).addOption(maxSeconds).addOption(bounds);
    Options.exits(
        spec,
        Exit.ALL_PRINTABLE,
        Exit.SOME_NOT_PRINTABLE,
        Exit.WRONG_POLICY,
        Exit.SOME_UNREADABLE,
        Exit.POLICY_FAILED);
    Options.note(spec, Exit.WORST_COUNTS);
  }

  @Override
  public CommandSpec spec() {
    return spec;
  }

  @Override
  public Integer call() {
    usable();
    ListedPaths listed;
    try {
      listed = listed();
    } catch (ListedPaths.Unfit e) {
      Complaint.say(here, e.getMessage());
      return e.exit().code();
    }
    listed.missed().forEach(note -> Complaint.say(here, note));
    if (detail.chosen() != Detail.QUIET) {
      listed.skipped().forEach(note -> Complaint.say(here, note));
    }
    List<String> wanted = new ArrayList<>(wanted());
    wanted.addAll(listed.plans());
    Found found =
        PlanFiles.of(
            wanted,
            here,
            maxPlans.getValue(),
            PlanFiles.MAX_PLANS,
            Optional.ofNullable(stdinName.<String>getValue()).orElse("-"));
    if (!found.wrong().isEmpty()) {
      found.wrong().forEach(wrong -> Complaint.say(here, wrong));
      return Exit.USAGE.code();
    }
    Studios studios = Studios.of(here, studioOptions, bounds(), found.plans());
    if (pages.reports().isEmpty() || noArtwork.<Boolean>getValue()) {
      studios.leavePictures();
    }
    studios.wrong().forEach(wrong -> Complaint.say(here, wrong));
    if (!studios.wrongForAll().isEmpty()) {
      return studios.exit().code();
    }
    if (narrowing.isAsked()) {
      List<String> wrong = narrowing.wrong(studios.allRules());
      wrong.forEach(what -> Complaint.say(here, what));
      if (!wrong.isEmpty()) {
        return Exit.USAGE.code();
      }
      studios.narrow(narrowing);
    }
    refuseOverwriting(found.plans());
    Optional<Baseline> baseline;
    try {
      baseline = baseline(found.plans());
    } catch (ResultFile.Unfit e) {
      Complaint.say(here, e.getMessage());
      return (e.exit() == Exit.FAULT ? Exit.FAULT : Exit.USAGE).code();
    }
    studios.notes().forEach(note -> Complaint.say(here, note));
    CheckRun run = new CheckRun(here, studios, settings(baseline));
    listed.closed().forEach(run::trouble);
    found.closed().forEach(run::trouble);
    return run.of(found.plans()).code();
  }

  /** An earlier run; what of it is hardly meant is told. */
  private Optional<Baseline> baseline(List<PlanFile> plans) throws ResultFile.Unfit {
    String file = baselineFile.getValue();
    if (file == null) {
      return Optional.empty();
    }
    Baseline baseline = Baseline.of(file, ResultFile.read(here, file));
    if (!plans.isEmpty() && plans.stream().noneMatch(plan -> baseline.knows(plan.name()))) {
      Complaint.say(
          here,
          file + ": none of these plans stands in it, so all is new; are they called as then?");
    }
    baseline
        .results()
        .narrowed()
        .ifPresent(
            n -> Complaint.say(here, file + ": " + n.text() + "; what they find counts as new"));
    return Optional.of(baseline);
  }

  private CheckSettings settings(Optional<Baseline> baseline) {
    return new CheckSettings(
        title(),
        pages.reports(),
        pages.sheets(),
        Optional.ofNullable(part.getValue()),
        baseline,
        cache.chosen(here),
        bounds(),
        studioOptions.units(),
        by.getValue(),
        handBack.getValue(),
        !noArtwork.<Boolean>getValue(),
        Options.outputs(formats),
        detail.chosen(),
        detail.materials(),
        usual.colour(),
        failOn.getValue(),
        maxFindings.getValue(),
        maxSeconds.<Integer>getValue());
  }

  private Bounds bounds() {
    List<BoundGiven> given = bounds.getValue();
    Map<String, Integer> byName = new LinkedHashMap<>();
    if (given != null) {
      given.forEach(bound -> byName.put(bound.name(), bound.most()));
    }
    return Bounds.USUAL.with(byName);
  }

  private void usable() {
    detail.misuse().ifPresent(this::misused);
    pages.misuse(here).ifPresent(this::misused);
    if (handBack.<Boolean>getValue()) {
      if (pages.reports().isEmpty()) {
        misused(Options.NOWHERE_TO_HAND_BACK);
      }
      if (part.getValue() != null) {
        misused("--hand-back needs all of a pupil's plans: give it to join, not to a --part");
      }
    }
    cache.misuse().ifPresent(this::misused);
    String list = filesFrom.getValue();
    if (list != null && list.isBlank()) {
      misused("--files-from takes the name of a file, or -");
    }
    if (ListedPaths.STANDARD_INPUT.equals(list)
        && Options.listed(arguments).contains(ListedPaths.STANDARD_INPUT)) {
      misused("standard input holds a plan or a list of paths, not both");
    }
    Outputs.clash(Formats.RESULTS.keySet(), Options.outputs(formats)).ifPresent(this::misused);
  }

  private void refuseOverwriting(List<PlanFile> plans) {
    Overwriting.refusal(here, Options.outputs(formats), pages.files(here, plans), () -> read(plans))
        .ifPresent(this::misused);
  }

  /** All that this run reads. */
  private List<Path> read(List<PlanFile> plans) {
    List<Path> read = new ArrayList<>(new Governing(here, studioOptions).read(plans));
    Stream.of(baselineFile, filesFrom)
        .map(OptionSpec::<String>getValue)
        .filter(file -> file != null && !FileNames.isLost(file))
        .forEach(file -> read.add(here.resolve(file)));
    return read;
  }

  private void misused(String what) {
    throw new ParameterException(spec.commandLine(), what);
  }

  private ListedPaths listed() throws ListedPaths.Unfit {
    String list = filesFrom.getValue();
    return list == null ? ListedPaths.none() : ListedPaths.read(here, list);
  }

  /** What the batch is. */
  private String title() {
    List<String> named = new ArrayList<>(wanted());
    Optional.ofNullable(filesFrom.<String>getValue())
        .map(list -> list.equals(ListedPaths.STANDARD_INPUT) ? "standard input" : list)
        .ifPresent(list -> named.add("what " + list + " lists"));
    return String.join(", ", named);
  }

  private List<String> wanted() {
    List<String> given = Options.listed(arguments);
    return given.isEmpty() && filesFrom.getValue() == null ? List.of("plans") : given;
  }
}
