package strikeoff.cli.commands;

import java.io.IOException;
import java.net.SocketException;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParameterException;
import strikeoff.check.FileTrouble;
import strikeoff.cli.files.Overwriting;
import strikeoff.cli.files.PlanFiles.Found;
import strikeoff.cli.files.PlanFiles.PlanFile;
import strikeoff.cli.files.ReportFolder;
import strikeoff.cli.files.SavedFiles;
import strikeoff.cli.serve.PageServer;
import strikeoff.cli.serve.ShownPages;
import strikeoff.cli.text.Complaint;
import strikeoff.cli.text.Exit;
import strikeoff.cli.text.Plain;
import strikeoff.cli.text.Surroundings;
import strikeoff.document.Bounds;

/** Checks a plan, or those of a folder, again whenever one is saved, or what they are judged by. */
final class WatchCommand implements Command {

  /**
   * Between two looks at a plan: it is written at once, and whoever saved it waits for its page.
   */
  private static final long PLAN_MILLIS = 40;

  /** The same for films, which another program may write with pauses. */
  private static final long FILM_MILLIS = 200;

  /** Five seconds of a film that doesn't settle. */
  private static final int MOST_LOOKS = 25;

  private final Surroundings here;

  /** How a watch ends that can't begin, since what judges can't be read. */
  private Exit unjudged = Exit.FAULT;

  /** The pages that a browser is shown, if any. */
  private Optional<ShownPages> shown = Optional.empty();

  /** Notes are told once, not with every save. */
  private final Set<String> told = new HashSet<>();

  private final PositionalParamSpec folder =
      Options.optional(
          "FOLDER|PLAN", "plans", "The folder, or a single plan; without it, the folder plans.");

  private final OptionSpec reports =
      Options.word(
          "--reports",
          "DIR",
          "Keep an HTML report of each plan and an index in this folder up to date. Pages that earlier"
              + " runs wrote there go.");

  private final OptionSpec noArtwork = Options.noArtwork();

  private final OptionSpec serve =
      Options.flag(
          "Show the pages to a browser on this machine, each again by itself when it is there anew.",
          "--serve");

  private final OptionSpec port =
      Options.number(
          new WholeNumber(0, 65_535),
          "--port",
          "0",
          "With --serve, use this port; 0 for one that is free (${DEFAULT-VALUE}).");

  private final OptionSpec rounds =
      Options.words("End after so many rounds of checks, the first one included.", "N", "--rounds")
          .type(Integer.class)
          .converters(WholeNumber.FROM_ONE)
          .build();

  private final OptionSpec maxPlans =
      Options.number(
          WholeNumber.FROM_ONE,
          "--max-plans",
          "1000",
          "Watch at most so many plans (${DEFAULT-VALUE}).");

  private final OptionSpec maxSeconds = Options.maxSeconds();

  private final StudioOptions studioOptions = new StudioOptions();

  private final Usual usual = new Usual();

  private final CommandSpec spec =
      Options.command(
          this,
          "watch",
          "Checks a plan or a folder's plans, and each again whenever it, its policy or an own rule"
              + " is saved: tells when, and what changed since the last time. Ctrl-C ends it.");

  WatchCommand(Surroundings here) {
    this.here = here;
    spec.addPositional(folder)
        .addOption(reports)
        .addOption(noArtwork)
        .addOption(serve)
        .addOption(port)
        .addOption(rounds)
        .addOption(maxPlans)
        .addOption(maxSeconds);
    studioOptions.addWithUnitsTo(spec);
    usual.addTo(spec);
    Options.exits(
        spec,
        "0:the rounds are done",
        Exit.WRONG_POLICY,
        "4:the tool failed, the folder can't be watched, the port can't be used, or a file could not be"
            + " read or written",
        "130:it was interrupted (Ctrl-C)");
  }

  @Override
  public CommandSpec spec() {
    return spec;
  }

  @Override
  public Integer call() {
    String folder = this.folder.getValue();
    Optional<String> reports = Optional.ofNullable(this.reports.getValue());
    int maxPlans = this.maxPlans.getValue();
    if (reports.filter(String::isBlank).isPresent()) {
      throw new ParameterException(spec.commandLine(), "--reports takes the name of a folder");
    }
    if (this.port.<Integer>getValue() > 0 && !serve.<Boolean>getValue()) {
      throw new ParameterException(spec.commandLine(), "--port goes with --serve");
    }
    Watched watched = new Watched(here, studioOptions, folder, maxPlans);
    Found found = watched.look();
    if (!found.wrong().isEmpty()) {
      found.wrong().forEach(w -> Complaint.say(here, w));
      return Exit.USAGE.code();
    }
    Overwriting.refusal(
            here,
            List.of(),
            reports
                .map(r -> new ReportFolder(here.resolve(r)))
                .map(r -> r.files(ReportFolder.names(found.plans()).values()))
                .orElse(List.of()),
            () -> found.plans().stream().map(PlanFile::path).toList())
        .ifPresent(
            why -> {
              throw new ParameterException(spec.commandLine(), why);
            });
    if (serve.<Boolean>getValue()) {
      shown = Optional.of(new ShownPages());
    }
    try (SavedFiles saved = new SavedFiles(here.resolve(folder));
        PageServer server = served()) {
      saved.watch(watched.besides());
      if (server != null) {
        here.out().print("pages: " + server.address() + "\n");
        here.out().flush();
      }
      return watch(
          new WatchRun(
              here,
              folder,
              reports,
              shown,
              !noArtwork.<Boolean>getValue(),
              usual.ink(here),
              maxSeconds.<Integer>getValue()),
          watched,
          saved);
    } catch (SocketException e) {
      Complaint.say(
          here, "--port " + port.getValue() + ": this port can't be used: " + FileTrouble.of(e));
      return Exit.FAULT.code();
    } catch (IOException e) {
      Complaint.say(here, folder + ": this can't be watched: " + FileTrouble.of(e));
      return Exit.FAULT.code();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return Exit.PRINTABLE.code();
    }
  }

  /** Null if nothing is to be served. */
  private PageServer served() throws IOException {
    return shown.isEmpty() ? null : new PageServer(port.<Integer>getValue(), shown.get());
  }

  private Optional<Integer> rounds() {
    return Optional.ofNullable(rounds.getValue());
  }

  private int watch(WatchRun run, Watched watched, SavedFiles saved) throws InterruptedException {
    Optional<Integer> rounds = rounds();
    Optional<Studios> studios = Optional.empty();
    Set<PlanFile> owed = new LinkedHashSet<>();
    boolean greeted = false;
    for (int round = 1; ; ) {
      Watched.Changed changed = watched.changed();
      owed.addAll(changed.due());
      watched.look().closed().stream().filter(told::add).forEach(c -> Complaint.say(here, c));
      if (changed.judging() || studios.isEmpty()) {
        studios = studios(changed.all());
      }
      if (studios.isPresent()) {
        // What was saved while rules were broken is still to be checked.
        owed.retainAll(changed.all());
        List<PlanFile> due = changed.all().stream().filter(owed::contains).toList();
        boolean written = run.round(changed.all(), due, changed.what(), studios.get());
        owed.clear();
        if (round == 1 && !written) {
          return Exit.FAULT.code();
        }
        if (rounds.isPresent() && round >= rounds.get()) {
          return Exit.PRINTABLE.code();
        }
        round++;
      } else if (round == 1) {
        return unjudged.code();
      }
      if (!greeted) {
        greeted = true;
        here.out().print("watching " + Plain.line(folder.getValue()) + "\n");
        here.out().flush();
      }
      do {
        saved.await();
      } while (!watched.moved());
      settle(watched);
      saved.watch(watched.besides());
    }
  }

  /**
   * Waits until what was saved is whole, as far as two looks can tell, but not for ever: who writes
   * on and on gets what stands there, and again when it is otherwise.
   */
  private static void settle(Watched watched) throws InterruptedException {
    for (int looks = 0; looks < MOST_LOOKS; looks++) {
      Thread.sleep(watched.filmsMoved() ? FILM_MILLIS : PLAN_MILLIS);
      if (watched.isSettled()) {
        return;
      }
    }
  }

  /** What judges the plans, unless something is wrong with it for all of them; either is told. */
  private Optional<Studios> studios(List<PlanFile> plans) {
    Studios studios;
    try {
      studios = Studios.of(here, studioOptions, Bounds.USUAL, plans);
    } catch (RuntimeException e) {
      // Half a rule may be anything; the next save may be whole.
      Complaint.say(here, "the tool failed: " + e);
      here.err().flush();
      shown.ifPresent(s -> s.note(List.of("the tool failed: " + e)));
      return Optional.empty();
    }
    studios.wrong().forEach(w -> Complaint.say(here, w));
    studios.notes().stream().filter(told::add).forEach(note -> Complaint.say(here, note));
    here.err().flush();
    unjudged = studios.exit();
    shown.ifPresent(s -> s.note(studios.wrongForAll()));
    return studios.wrongForAll().isEmpty() ? Optional.of(studios) : Optional.empty();
  }
}
