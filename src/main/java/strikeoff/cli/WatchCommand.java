package strikeoff.cli;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import strikeoff.check.FileTrouble;
import strikeoff.plan.Bounds;

/** Checks the plans of a folder again whenever one is saved. */
@Command(
    name = "watch",
    description = "Checks a folder's plans, and each of them again whenever it is saved.",
    sortOptions = false,
    exitCodeListHeading = Exit.HEADING,
    exitCodeList = {
      "0:it was interrupted, or the rounds are done",
      Exit.WRONG_USAGE,
      "4:the folder can't be watched"
    })
final class WatchCommand implements Callable<Integer> {

  private final Surroundings here;

  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "FOLDER", arity = "0..1", defaultValue = "plans")
  private String folder;

  @Option(
      names = "--reports",
      paramLabel = "DIR",
      description = "Keep an HTML report of each plan and an index in this folder up to date.")
  private Optional<String> reports = Optional.empty();

  @Option(
      names = "--rounds",
      paramLabel = "N",
      description = "End after so many rounds of checks, the first one included.")
  private Optional<Integer> rounds = Optional.empty();

  @Option(
      names = "--max-plans",
      paramLabel = "N",
      defaultValue = "1000",
      description = "Watch at most so many plans (${DEFAULT-VALUE}).")
  private int maxPlans;

  @Option(
      names = "--max-seconds",
      paramLabel = "N",
      defaultValue = "120",
      description = "Give a plan up that takes longer than this (${DEFAULT-VALUE}).")
  private long maxSeconds;

  @Mixin private StudioOptions studioOptions;

  @Mixin private Usual usual;

  WatchCommand(Surroundings here) {
    this.here = here;
  }

  @Override
  public Integer call() {
    if (rounds.orElse(1) < 1 || maxPlans < 1 || maxSeconds < 1) {
      throw new ParameterException(spec.commandLine(), "these options take numbers from 1");
    }
    if (reports.filter(String::isBlank).isPresent()) {
      throw new ParameterException(spec.commandLine(), "--reports takes the name of a folder");
    }
    Watched watched = new Watched(here, folder, maxPlans);
    List<String> wrong = watched.look().wrong();
    if (!wrong.isEmpty()) {
      wrong.forEach(w -> Complaint.say(here, w));
      return Exit.USAGE.code();
    }
    Studios studios = Studios.of(here, studioOptions, Bounds.USUAL, watched.look().plans());
    if (!studios.wrong().isEmpty()) {
      studios.wrong().forEach(w -> Complaint.say(here, w));
      return Exit.USAGE.code();
    }
    studios.notes().forEach(note -> Complaint.say(here, note));
    WatchRun run = new WatchRun(here, studios, folder, reports, usual.ink(here), maxSeconds);
    try (SavedFiles saved = new SavedFiles(here.resolve(folder))) {
      for (int round = 1; ; round++) {
        run.round(watched.changed());
        if (rounds.isPresent() && round >= rounds.get()) {
          return Exit.PRINTABLE.code();
        }
        if (round == 1) {
          here.out().print("watching " + Plain.line(folder) + "\n");
          here.out().flush();
        }
        do {
          saved.await();
        } while (!watched.moved());
      }
    } catch (IOException e) {
      Complaint.say(here, folder + ": this folder can't be watched: " + FileTrouble.of(e));
      return Exit.FAULT.code();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return Exit.PRINTABLE.code();
    }
  }
}
