package strikeoff.cli;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import strikeoff.check.Checked;
import strikeoff.check.FileTrouble;
import strikeoff.cli.PlanFiles.PlanFile;
import strikeoff.report.HtmlReport;
import strikeoff.report.IndexEntry;
import strikeoff.report.outcome.Outcome;
import strikeoff.report.outcome.Results;
import strikeoff.report.outcome.Shard;

/** One run over plans that are found already: checks, tells, and writes what is wanted. */
final class CheckRun {

  private static final int LONG_BATCH = 20;

  private final Surroundings here;
  private final Studios studios;
  private final Settings settings;
  private final Outputs<Results> outputs;
  private final List<Exit> exits = new ArrayList<>();

  CheckRun(Surroundings here, Studios studios, Settings settings) {
    this.here = here;
    this.studios = studios;
    this.settings = settings;
    this.outputs = new Outputs<>(here, Formats.RESULTS, settings.outputs());
  }

  /**
   * What is wanted of a run.
   *
   * @param title what the batch is
   * @param reports the folder for HTML pages, as the user named it
   * @param shard the part of the batch to check; empty for all
   */
  record Settings(
      String title,
      Optional<String> reports,
      Optional<Shard> shard,
      List<Output> outputs,
      Detail detail,
      Colour colour,
      int maxFindings,
      long maxSeconds) {}

  /** What is kept of a checked plan. */
  private record Done(
      Checked checked,
      Optional<IndexEntry> entry,
      Optional<Outcome> outcome,
      Optional<String> trouble) {}

  /** A plan with its number in the batch and the name of its page. */
  private record Place(int number, String page) {}

  /**
   * Checks the plans of the run's part.
   *
   * @param all plans of the whole batch
   */
  Exit of(List<PlanFile> all) {
    Optional<ReportFolder> folder = settings.reports().map(r -> new ReportFolder(here.resolve(r)));
    try {
      if (folder.isPresent()) {
        folder.get().make();
      }
    } catch (IOException e) {
      trouble(settings.reports().get() + ": no reports can be written here: " + FileTrouble.of(e));
      return Exit.FAULT;
    }
    Map<PlanFile, Place> places = places(all);
    PlanText text = new PlanText(ink(), here.width(), settings.detail(), settings.maxFindings());
    Progress progress =
        new Progress(here, places.size(), here.terminal() && places.size() >= LONG_BATCH);
    Tally tally = new Tally();
    List<IndexEntry> entries = new ArrayList<>();
    List<Outcome> outcomes = new ArrayList<>();
    new Batch(here.plansAtOnce(), settings.maxSeconds())
        .run(
            List.copyOf(places.keySet()),
            plan -> reported(studios.check(plan), folder, places.get(plan)),
            (plan, failed) -> done(failed, folder, places.get(plan), "", Optional.empty()),
            done -> {
              progress.clear();
              tally.add(done.checked());
              done.entry().ifPresent(entries::add);
              done.outcome().ifPresent(outcomes::add);
              tell(text.of(done.checked()));
              done.trouble().ifPresent(this::trouble);
              progress.one();
            });
    progress.clear();
    folder.ifPresent(f -> index(f, entries));
    if (settings.detail() != Detail.QUIET) {
      tally.lines().forEach(line -> Plain.wrap("", "  ", line, here.width()).forEach(this::print));
      settings.reports().ifPresent(r -> print("reports: " + Plain.line(r) + "/index.html"));
    }
    outputs.text().flush();
    if (outputs.needResults()) {
      outputs.write(
          new Results(
              Strikeoff.Version.number(),
              settings.title(),
              settings.shard(),
              all.size(),
              studios.rules(),
              outcomes),
          (file, e) -> trouble(file + ": this file can't be written: " + FileTrouble.of(e)));
    }
    exits.add(tally.exit());
    return Exit.worst(exits);
  }

  private Ink ink() {
    return outputs.textIsShown() || settings.colour() != Colour.AUTO
        ? settings.colour().ink(here)
        : new Ink(false);
  }

  /** Names and numbers are those of the whole batch, whatever part of it is checked here. */
  private Map<PlanFile, Place> places(List<PlanFile> all) {
    Map<PlanFile, String> pages = ReportFolder.names(all);
    Map<PlanFile, Place> places = new LinkedHashMap<>();
    int number = 0;
    for (PlanFile plan : all) {
      int next = ++number;
      if (settings.shard().map(s -> s.holds(next)).orElse(true)) {
        places.put(plan, new Place(next, pages.get(plan)));
      }
    }
    return places;
  }

  /** Runs beside other plans: nothing is told here. */
  private Done reported(Checked checked, Optional<ReportFolder> folder, Place place) {
    String page = place.page();
    if (folder.isEmpty()) {
      return done(checked, folder, place, "", Optional.empty());
    }
    try {
      folder.get().write(page, HtmlReport.utf8(checked));
      return done(checked, folder, place, page, Optional.empty());
    } catch (IOException e) {
      String trouble = page + ": this report can't be written: " + FileTrouble.of(e);
      return done(checked, folder, place, "", Optional.of(trouble));
    }
  }

  private Done done(
      Checked checked,
      Optional<ReportFolder> folder,
      Place place,
      String link,
      Optional<String> trouble) {
    Optional<String> report = link.isEmpty() ? Optional.empty() : Optional.of(link);
    return new Done(
        checked,
        folder.map(f -> IndexEntry.of(checked, link)),
        outputs.needResults()
            ? Optional.of(Outcome.of(checked, place.number(), report))
            : Optional.empty(),
        trouble);
  }

  private void index(ReportFolder folder, List<IndexEntry> entries) {
    try {
      folder.write(ReportFolder.INDEX, HtmlReport.index(settings.title(), entries));
    } catch (IOException e) {
      trouble(ReportFolder.INDEX + ": the index can't be written: " + FileTrouble.of(e));
    }
  }

  private void tell(List<String> lines) {
    lines.forEach(this::print);
    if (settings.detail() != Detail.QUIET) {
      print("");
    }
    outputs.text().flush();
  }

  private void print(String line) {
    outputs.text().print(line + "\n");
  }

  /** Says what went wrong besides the plans; the run then ends as a fault. */
  void trouble(String what) {
    outputs.text().flush();
    Complaint.say(here, what);
    here.err().flush();
    exits.add(Exit.FAULT);
  }
}
