package strikeoff.cli.commands;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParameterException;
import strikeoff.check.Checked;
import strikeoff.check.Checker;
import strikeoff.check.FileTrouble;
import strikeoff.check.Verdict;
import strikeoff.cli.files.Output;
import strikeoff.cli.files.Overwriting;
import strikeoff.cli.files.PlanBytes;
import strikeoff.cli.files.PlanFiles;
import strikeoff.cli.files.PlanFiles.PlanFile;
import strikeoff.cli.files.WholeFile;
import strikeoff.cli.text.Complaint;
import strikeoff.cli.text.Detail;
import strikeoff.cli.text.Exit;
import strikeoff.cli.text.Ink;
import strikeoff.cli.text.Plain;
import strikeoff.cli.text.PlanText;
import strikeoff.cli.text.ProposalText;
import strikeoff.cli.text.SearchProgress;
import strikeoff.cli.text.Surroundings;
import strikeoff.day.facts.Surety;
import strikeoff.document.Bounds;
import strikeoff.mend.Diff;
import strikeoff.propose.Proposal;
import strikeoff.propose.Proposer;
import strikeoff.propose.RunWanted;
import strikeoff.report.HtmlReport;

/** Proposes another run of a plan. */
final class ProposeCommand implements Command {

  private static final int MOST_SECONDS = 3_600;

  private final Surroundings here;

  private final PositionalParamSpec plan =
      Options.parameter("0", "PLAN", "A plan; - for one from standard input.");

  private final OptionSpec write =
      Options.flag("Change the file in place, whole or not at all.", "--write");

  private final OptionSpec output =
      Options.words(
              "Write the plan with its new run into this file, or under its name into this folder,"
                  + " where none may be yet.",
              "PATH",
              "-o",
              "--output")
          .build();

  private final OptionSpec html =
      Options.words(
              "Write a page too that shows your run beside the proposed one by the clock, and"
                  + " what moved.",
              "FILE",
              "--html")
          .build();

  private final OptionSpec shortest =
      Options.flag(
          "Propose the run that ends soonest, instead of the fewest steps that take at most a"
              + " twentieth longer.",
          "--shortest");

  private final OptionSpec likely =
      Options.flag(
          "Let waits and hours do for an ordinary day only, not for slow drying too.", "--likely");

  private final OptionSpec anyOrder =
      Options.flag("Propose an order too that rules advise against.", "--any-order");

  private final OptionSpec hairDryer =
      Options.flag("Let somebody stand and hold a hair-dryer.", "--hair-dryer");

  private final OptionSpec seconds =
      Options.number(
          new WholeNumber(1, MOST_SECONDS),
          "--seconds",
          "10",
          "Search for so long (${DEFAULT-VALUE}).");

  private final OptionSpec effort =
      Options.words(
              "Try so many runs instead, however long that takes: the same plan then gets the same"
                  + " run on every machine.",
              "N",
              "--effort")
          .type(Integer.class)
          .converters(WholeNumber.FROM_ONE)
          .build();

  private final StudioOptions studioOptions = new StudioOptions();

  private final Usual usual = new Usual();

  private final CommandSpec spec =
      Options.command(
          this,
          "propose",
          "Proposes the run of a plan: looks for one that the check accepts without a stop or a"
              + " risk and that ends sooner, prints what changes as a unified diff, and says before"
              + " when no run can end.");

  ProposeCommand(Surroundings here) {
    this.here = here;
    spec.addPositional(plan)
        .addOption(write)
        .addOption(output)
        .addOption(html)
        .addOption(shortest)
        .addOption(likely)
        .addOption(anyOrder)
        .addOption(hairDryer)
        .addOption(seconds)
        .addOption(effort);
    studioOptions.addWithUnitsTo(spec);
    usual.addTo(spec);
    Options.exits(
        spec,
        "0:a run is proposed, or the plan's own stays",
        "1:no run was found that the check accepts, or none can be",
        Exit.WRONG_POLICY,
        "3:the plan can't be read",
        Exit.POLICY_FAILED,
        "130:it was interrupted twice, or not while it searched");
    Options.note(
        spec,
        "Only the run changes; the steps that fix and wash the cloth stay as they are in it. What"
            + " was found is told on standard error. Ctrl-C ends the search, and the best run that"
            + " was found is proposed; pressed again it ends the program at once.");
  }

  @Override
  public CommandSpec spec() {
    return spec;
  }

  @Override
  public Integer call() {
    PlanFiles.Found found =
        PlanFiles.of(
            List.of(plan.<String>getValue()), here, 1, "name the one that wants a run", "-");
    usable(found);
    if (!found.wrong().isEmpty() || found.plans().isEmpty()) {
      found.wrong().forEach(wrong -> Complaint.say(here, wrong));
      found.closed().forEach(closed -> Complaint.say(here, closed));
      return found.wrong().isEmpty() ? Exit.FAULT.code() : Exit.USAGE.code();
    }
    PlanFile file = found.plans().get(0);
    Studios studios = Studios.of(here, studioOptions, Bounds.USUAL, found.plans());
    studios.leavePictures();
    studios.wrong().forEach(wrong -> Complaint.say(here, wrong));
    if (!studios.wrongForAll().isEmpty()) {
      return studios.exit().code();
    }
    studios.notes().forEach(note -> Complaint.say(here, note));
    Exit exit = proposed(file, studios);
    here.out().flush();
    here.err().flush();
    return exit.code();
  }

  private void usable(PlanFiles.Found found) {
    boolean input = found.plans().stream().anyMatch(PlanFile::isStandardInput);
    if (write.<Boolean>getValue() && output.getValue() != null) {
      throw new ParameterException(spec.commandLine(), "--write or --output, not both");
    }
    if (write.<Boolean>getValue() && input) {
      throw new ParameterException(
          spec.commandLine(), "what comes from standard input has no file for --write");
    }
  }

  private Exit proposed(PlanFile file, Studios studios) {
    PlanBytes before;
    try {
      before = PlanBytes.read(file, here);
    } catch (IOException e) {
      return unread(studios.check(file));
    }
    Studios.Judge judge = studios.judge(file);
    if (judge.checker().isEmpty()) {
      return unread(judge.failed().orElseThrow());
    }
    if (before.text().isEmpty()) {
      return unread(
          judge.checker().get().check(file.name(), new ByteArrayInputStream(before.bytes())));
    }
    Optional<String> page = Optional.ofNullable(html.getValue());
    if (page.isPresent()) {
      Optional<String> refusal =
          Overwriting.refusal(
              here,
              List.of(new Output(Output.RUN_PAGE, page)),
              List.of(),
              () -> file.isStandardInput() ? List.of() : List.of(file.path()));
      if (refusal.isPresent()) {
        Complaint.say(here, refusal.get());
        return Exit.USAGE;
      }
    }
    if (write.<Boolean>getValue()) {
      try {
        before.mayBeReplaced();
      } catch (IOException e) {
        return unwritten(Plain.line(file.name()), e);
      }
    }
    if (output.getValue() != null && !file.isStandardInput()) {
      try {
        Path target = before.placed(here.resolve(output.<String>getValue()), false);
        Elsewhere.mayBeRead(before, target, studios);
      } catch (IOException e) {
        return unwritten(Plain.line(file.name()), e);
      }
    }
    try (Interrupts interrupts = new Interrupts()) {
      return told(file, before, searched(file, before, judge.checker().get(), interrupts));
    }
  }

  private Proposal searched(
      PlanFile file, PlanBytes before, Checker checker, Interrupts interrupts) {
    Integer counted = effort.getValue();
    int most = seconds.<Integer>getValue();
    long begun = System.nanoTime();
    SearchProgress progress =
        new SearchProgress(
            here,
            counted == null ? most + " s" : counted + " runs",
            System::nanoTime,
            interrupts::came);
    RunWanted asked =
        new RunWanted(
            likely.<Boolean>getValue() ? Surety.LIKELY : Surety.SURE,
            shortest.getValue(),
            anyOrder.getValue(),
            hairDryer.getValue(),
            counted == null ? OptionalLong.empty() : OptionalLong.of(counted),
            () -> (System.nanoTime() - begun) / (1e9 * most),
            progress);
    try {
      return Proposer.proposed(
          checker, file.name(), before.text().orElseThrow(), asked, here.plansAtOnce());
    } finally {
      progress.end();
    }
  }

  private Exit told(PlanFile file, PlanBytes before, Proposal proposal) {
    if (proposal instanceof Proposal.Unread unread) {
      return unread(unread.before());
    }
    String name = Plain.line(file.name());
    if (proposal instanceof Proposal.Refused refused) {
      ProposalText.of(name, refused, here.width()).forEach(this::say);
      return Exit.NOT_PRINTABLE;
    }
    return found(name, before, (Proposal.Found) proposal);
  }

  private Exit found(String name, PlanBytes before, Proposal.Found found) {
    try {
      if (found.isAsItWas()) {
        if (output.getValue() != null) {
          Complaint.say(here, name + ": its run stays, so nothing is written");
        }
      } else if (write.<Boolean>getValue()) {
        before.replace(found.text());
      } else if (output.getValue() != null) {
        before.writeNew(found.text(), here.resolve(output.<String>getValue()), false);
      } else {
        Diff.of(name, before.text().orElseThrow(), found.text())
            .forEach(line -> here.out().print(line + "\n"));
      }
    } catch (IOException e) {
      return unwritten(name, e);
    }
    ProposalText.of(name, found, here.width()).forEach(this::say);
    boolean patch = !found.isAsItWas() && !write.<Boolean>getValue() && output.getValue() == null;
    if (patch && effort.getValue() == null) {
      ProposalText.ofNow(here.width()).forEach(this::say);
    }
    return page(found);
  }

  private Exit unwritten(String name, IOException e) {
    Complaint.say(here, name + ": the proposed run can't be written: " + FileTrouble.of(e));
    return Exit.FAULT;
  }

  private Exit page(Proposal.Found found) {
    if (html.getValue() != null) {
      try {
        WholeFile.write(
            here.resolve(html.<String>getValue()),
            HtmlReport.proposal(found).getBytes(StandardCharsets.UTF_8));
      } catch (IOException e) {
        Complaint.say(here, html.getValue() + ": this page can't be written: " + FileTrouble.of(e));
        return Exit.FAULT;
      }
    }
    return Exit.PRINTABLE;
  }

  private Exit unread(Checked checked) {
    List<String> lines = new ArrayList<>();
    lines.addAll(new PlanText(new Ink(false), here.width(), Detail.USUAL, 50).of(checked));
    lines.forEach(this::say);
    return checked.verdict() == Verdict.UNREADABLE ? Exit.UNREADABLE : Exit.FAULT;
  }

  private void say(String line) {
    here.err().print(line + "\n");
  }
}
