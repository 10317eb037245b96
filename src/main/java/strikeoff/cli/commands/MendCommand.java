package strikeoff.cli.commands;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParameterException;
import strikeoff.check.Checked;
import strikeoff.check.Checker;
import strikeoff.check.FileTrouble;
import strikeoff.check.Verdict;
import strikeoff.cli.files.PlanBytes;
import strikeoff.cli.files.PlanFiles;
import strikeoff.cli.files.PlanFiles.Found;
import strikeoff.cli.files.PlanFiles.PlanFile;
import strikeoff.cli.text.Complaint;
import strikeoff.cli.text.Detail;
import strikeoff.cli.text.Exit;
import strikeoff.cli.text.Ink;
import strikeoff.cli.text.Plain;
import strikeoff.cli.text.PlanText;
import strikeoff.cli.text.Surroundings;
import strikeoff.document.Bounds;
import strikeoff.document.Edit;
import strikeoff.findings.Finding;
import strikeoff.findings.Severity;
import strikeoff.mend.Diff;
import strikeoff.mend.Mender;

/** Mends plans by edits that were tried. */
final class MendCommand implements Command {

  private static final int MOST_PLANS = 10_000;

  private final Surroundings here;

  private final PositionalParamSpec arguments =
      Options.parameters(
          true, "PLAN", "Plans, folders and patterns as in check; - for standard input.");

  private final OptionSpec write =
      Options.flag("Change the files in place, each whole or not at all.", "--write");

  private final OptionSpec output =
      Options.words(
              "Write the mended plan into this file, or the mended plans into this folder, where"
                  + " none may be yet.",
              "PATH",
              "-o",
              "--output")
          .build();

  private final OptionSpec risks =
      Options.flag("Go on until no risk is left that an edit mends.", "--risks");

  private final OptionSpec order =
      Options.flag("Let steps come, go and move, and colours change their order.", "--order");

  private final OptionSpec layout = Options.flag("Let placements and boards move.", "--layout");

  private final OptionSpec maxSeconds = Options.maxSeconds();

  private final StudioOptions studioOptions = new StudioOptions();

  private final Usual usual = new Usual();

  private final CommandSpec spec =
      Options.command(
          this,
          "mend",
          "Mends plans: makes the edits that were tried, the least first, until no stop is left that"
              + " an edit mends, and prints what changes as a unified diff.");

  /** Rules that judge films alone. */
  private static final String FILMS = "artwork/";

  MendCommand(Surroundings here) {
    this.here = here;
    spec.addPositional(arguments)
        .addOption(write)
        .addOption(output)
        .addOption(risks)
        .addOption(order)
        .addOption(layout)
        .addOption(maxSeconds);
    studioOptions.addWithUnitsTo(spec);
    usual.addTo(spec);
    Options.exits(
        spec,
        "0:every plan is printable once it is mended",
        "1:at least one plan is not",
        Exit.WRONG_POLICY,
        Exit.SOME_UNREADABLE,
        Exit.POLICY_FAILED);
    Options.note(
        spec,
        "Waits, amounts, times and temperatures are changed by themselves. Cloth, seams, designs,"
            + " screens, the room, people and what is accepted never are. What is done is told on"
            + " standard error.");
  }

  @Override
  public CommandSpec spec() {
    return spec;
  }

  @Override
  public Integer call() {
    Found found = PlanFiles.of(Options.listed(arguments), here, MOST_PLANS, PlanFiles.FEWER, "-");
    List<PlanFile> plans = found.plans();
    usable(plans);
    if (!found.wrong().isEmpty()) {
      found.wrong().forEach(wrong -> Complaint.say(here, wrong));
      return Exit.USAGE.code();
    }
    List<Exit> exits = new ArrayList<>();
    found.closed().forEach(closed -> trouble(closed, exits));
    Studios studios = Studios.of(here, studioOptions, Bounds.USUAL, plans);
    studios.leavePictures();
    studios.wrong().forEach(wrong -> Complaint.say(here, wrong));
    if (!studios.wrongForAll().isEmpty()) {
      return studios.exit().code();
    }
    studios.notes().forEach(note -> Complaint.say(here, note));
    Mender.Asked asked = new Mender.Asked(risks.getValue(), order.getValue(), layout.getValue());
    new Batch(here.plansAtOnce(), maxSeconds.<Integer>getValue())
        .<Result>run(
            plans,
            plan -> mended(plan, studios, asked),
            (plan, failed) -> Result.unmended(plan, failed),
            result -> told(result, plans.size() > 1, studios, exits));
    here.out().flush();
    here.err().flush();
    return Exit.worst(exits).code();
  }

  private void usable(List<PlanFile> plans) {
    boolean input = plans.stream().anyMatch(PlanFile::isStandardInput);
    if (write.<Boolean>getValue() && output.getValue() != null) {
      throw new ParameterException(spec.commandLine(), "--write or --output, not both");
    }
    if (write.<Boolean>getValue() && input) {
      throw new ParameterException(
          spec.commandLine(), "what comes from standard input has no file for --write");
    }
  }

  /**
   * @param before the file as it was read
   * @param mended nothing if it could not be begun
   */
  private record Result(
      PlanFile plan, Optional<PlanBytes> before, Optional<Mender.Mended> mended, Checked checked) {

    static Result unmended(PlanFile plan, Checked checked) {
      return new Result(plan, Optional.empty(), Optional.empty(), checked);
    }
  }

  private Result mended(PlanFile plan, Studios studios, Mender.Asked asked) {
    PlanBytes before;
    try {
      before = PlanBytes.read(plan, here);
    } catch (IOException e) {
      return Result.unmended(plan, studios.check(plan));
    }
    Studios.Judge judge = studios.judge(plan);
    if (judge.checker().isEmpty()) {
      return Result.unmended(plan, judge.failed().orElseThrow());
    }
    Checker checker = judge.checker().get();
    if (before.text().isEmpty()) {
      return Result.unmended(
          plan, checker.check(plan.name(), new ByteArrayInputStream(before.bytes())));
    }
    Mender.Mended mended = Mender.mended(checker, plan.name(), before.text().get(), asked);
    return new Result(plan, Optional.of(before), Optional.of(mended), mended.checked());
  }

  private void told(Result result, boolean several, Studios studios, List<Exit> exits) {
    exits.add(Exit.of(result.checked().verdict()));
    boolean changed = result.mended().filter(m -> !m.made().isEmpty()).isPresent();
    if (changed) {
      try {
        written(result, several, studios);
      } catch (IOException e) {
        trouble(
            result.plan().name() + ": the mended plan can't be written: " + FileTrouble.of(e),
            exits);
        return;
      }
    } else if (output.getValue() != null && result.mended().isPresent() && !several) {
      Complaint.say(here, result.plan().name() + ": nothing to mend, so nothing is written");
    }
    say(result);
  }

  private void written(Result result, boolean several, Studios studios) throws IOException {
    Mender.Mended mended = result.mended().orElseThrow();
    PlanBytes before = result.before().orElseThrow();
    if (write.<Boolean>getValue()) {
      before.replace(mended.text());
    } else if (output.getValue() != null) {
      Path place = here.resolve(output.<String>getValue());
      if (!result.plan().isStandardInput()) {
        Elsewhere.mayBeRead(before, before.placed(place, several), studios);
      }
      before.writeNew(mended.text(), place, several);
    } else {
      Diff.of(Plain.line(result.plan().name()), before.text().orElseThrow(), mended)
          .forEach(line -> here.out().print(line + "\n"));
    }
  }

  private void say(Result result) {
    List<String> lines = new ArrayList<>();
    String name = Plain.line(result.plan().name());
    List<Mender.Made> made = result.mended().map(Mender.Mended::made).orElse(List.of());
    String sentence = result.checked().sentence();
    lines.addAll(
        Plain.wrap(
            "",
            "  ",
            name + ": " + (made.size() == 1 ? "1 edit" : made.size() + " edits") + ". " + sentence,
            here.width()));
    for (Mender.Made one : made) {
      lines.addAll(
          Plain.wrap(
              "  ",
              "    ",
              "mended "
                  + one.finding().rule().id()
                  + ": "
                  + one.finding().message()
                  + (one.mend().costs().isEmpty() ? "" : " (" + one.mend().costs() + ")")
                  + (dropsAcceptance(one) ? " What was accepted at its step goes with it." : ""),
              here.width()));
    }
    if (result.checked() instanceof Checked.Judged judged) {
      judged.findings().stream()
          .filter(f -> f.accepted().isEmpty())
          .filter(f -> f.severity() == Severity.STOP || left(f))
          .forEach(
              f ->
                  lines.addAll(
                      Plain.wrap(
                          "  ",
                          "    ",
                          "left "
                              + f.rule().id()
                              + ", line "
                              + f.place().position().line()
                              + ": "
                              + f.remedy()
                              + unasked(result, f),
                          here.width())));
      risksLeft(judged).ifPresent(lines::add);
      lines.addAll(filmsLeft(judged));
    } else if (result.checked().verdict() != Verdict.PRINTABLE) {
      PlanText told = new PlanText(new Ink(false), here.width(), Detail.USUAL, 50);
      lines.clear();
      lines.addAll(told.of(result.checked()));
    }
    lines.forEach(line -> here.err().print(line + "\n"));
  }

  private static boolean dropsAcceptance(Mender.Made made) {
    return made.mend().edits().stream()
        .anyMatch(e -> e instanceof Edit.Remove && e.at().text().startsWith("accept"));
  }

  private Optional<String> risksLeft(Checked.Judged judged) {
    long mendable =
        judged
            .of(Severity.RISK)
            .filter(f -> f.accepted().isEmpty() && !f.edits().isEmpty())
            .count();
    return risks.<Boolean>getValue() || mendable == 0
        ? Optional.empty()
        : Optional.of(
            mendable == 1
                ? "  a risk is left that --risks may mend"
                : "  " + mendable + " risks are left that --risks may mend");
  }

  /** Risks of films, which no edit of a plan mends; with {@code --risks} they are told already. */
  private List<String> filmsLeft(Checked.Judged judged) {
    List<String> films =
        judged
            .of(Severity.RISK)
            .filter(f -> f.accepted().isEmpty() && f.edits().isEmpty())
            .filter(f -> f.rule().id().startsWith(FILMS))
            .map(f -> f.rule().id() + " (line " + f.place().position().line() + ")")
            .toList();
    return risks.<Boolean>getValue() || films.isEmpty()
        ? List.of()
        : Plain.wrap(
            "  ",
            "    ",
            "left at the light table, since no edit of a plan mends a film: "
                + String.join(", ", films),
            here.width());
  }

  private static String unasked(Result result, Finding finding) {
    Set<Mender.Leave> unasked = result.mended().orElseThrow().unasked().get(finding);
    return unasked == null
        ? ""
        : unasked.stream()
            .sorted()
            .map(leave -> leave == Mender.Leave.ORDER ? "--order" : "--layout")
            .collect(Collectors.joining(" ", " Mended with ", "."));
  }

  private boolean left(Finding finding) {
    return risks.<Boolean>getValue() && finding.severity() == Severity.RISK;
  }

  private void trouble(String what, List<Exit> exits) {
    Complaint.say(here, what);
    exits.add(Exit.FAULT);
  }
}
