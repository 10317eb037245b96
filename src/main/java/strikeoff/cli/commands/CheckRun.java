package strikeoff.cli.commands;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import strikeoff.check.Checked;
import strikeoff.check.FileTrouble;
import strikeoff.check.SilentRules;
import strikeoff.cli.files.Output;
import strikeoff.cli.files.Outputs;
import strikeoff.cli.files.PlanFiles.PlanFile;
import strikeoff.cli.files.ReportFolder;
import strikeoff.cli.text.Colouring;
import strikeoff.cli.text.Complaint;
import strikeoff.cli.text.Detail;
import strikeoff.cli.text.Exit;
import strikeoff.cli.text.Ink;
import strikeoff.cli.text.Plain;
import strikeoff.cli.text.PlanText;
import strikeoff.cli.text.Progress;
import strikeoff.cli.text.Surroundings;
import strikeoff.cli.text.Tally;
import strikeoff.report.HtmlReport;
import strikeoff.report.IndexEntry;
import strikeoff.report.outcome.Baseline;
import strikeoff.report.outcome.Outcome;
import strikeoff.report.outcome.Part;
import strikeoff.report.outcome.Results;

/** One run over plans that are found already: checks, tells, and writes what is wanted. */
final class CheckRun {

  private static final int LONG_BATCH = 20;

  /** So many plans are looked at by somebody; more of them are a batch. */
  private static final int FEW = 3;

  private final Surroundings here;
  private final Studios studios;
  private final Settings settings;
  private final Outputs<Results> outputs;
  private final List<Exit> exits = new ArrayList<>();
  private boolean looksFurther;

  CheckRun(Surroundings here, Studios studios, Settings settings) {
    this.here = here;
    this.studios = studios;
    this.settings = settings;
    this.outputs =
        new Outputs<>(here, Formats.results(here, settings.reports()), settings.outputs());
  }

  /**
   * What is wanted of a run.
   *
   * @param title what the batch is
   * @param reports the folder for HTML pages, as the user named it
   * @param part the part of the batch to check; empty for all
   * @param baseline an earlier run that findings are held against
   */
  record Settings(
      String title,
      Optional<String> reports,
      Optional<Part> part,
      Optional<Baseline> baseline,
      List<Output> outputs,
      Detail detail,
      Colouring colour,
      FailOn failOn,
      int maxFindings,
      long maxSeconds) {}

  /** What is kept of a checked plan: its facts are not, for many plans may wait to be told. */
  private record Done(
      Tally.Counted counted,
      boolean passedByPolicy,
      Optional<Set<String>> heard,
      List<String> lines,
      Optional<IndexEntry> entry,
      Optional<Outcome> outcome,
      Optional<String> trouble) {

    /** The same with more to tell. */
    Done and(List<String> more) {
      List<String> all = new ArrayList<>(lines);
      all.addAll(more);
      return new Done(counted, passedByPolicy, heard, all, entry, outcome, trouble);
    }
  }

  /** A plan's number in the batch, and its page. */
  private static final class Place {
    private final int number;
    private final String page;
    private boolean closed;

    Place(int number, String page) {
      this.number = number;
      this.page = page;
    }

    /**
     * Writes the page. What comes after the last one comes too late: the plan was given up.
     *
     * @throws IOException if it can't be written; then there is no page
     */
    synchronized void write(ReportFolder folder, byte[] utf8, boolean last) throws IOException {
      if (!closed) {
        closed = last;
        folder.write(page, utf8);
      }
    }
  }

  /**
   * Checks the plans of the run's part.
   *
   * @param all plans of the whole batch
   */
  Exit of(List<PlanFile> all) {
    Optional<ReportFolder> folder = settings.reports().map(r -> new ReportFolder(here.resolve(r)));
    Map<PlanFile, Place> places = places(all);
    looksFurther = all.size() <= FEW && !settings.detail().verdictsAlone();
    try {
      if (folder.isPresent()) {
        open(folder.get(), places.values());
      }
    } catch (IOException e) {
      trouble(settings.reports().get() + ": no reports can be written here: " + FileTrouble.of(e));
      return Exit.FAULT;
    }
    PlanText text = new PlanText(ink(), here.width(), settings.detail(), settings.maxFindings());
    Progress progress =
        new Progress(here, places.size(), here.watched() && places.size() >= LONG_BATCH);
    Tally tally = new Tally();
    SilentRules silent = new SilentRules();
    List<IndexEntry> entries = new ArrayList<>();
    List<Outcome> outcomes = new ArrayList<>();
    new Batch(here.plansAtOnce(), settings.maxSeconds())
        .run(
            List.copyOf(places.keySet()),
            plan -> checked(plan, text, folder, places.get(plan)),
            (plan, failed) -> reported(failed, text, folder, places.get(plan), true),
            done -> {
              progress.clear();
              tally.add(done.counted());
              done.heard().ifPresent(silent::add);
              done.entry().ifPresent(entries::add);
              done.outcome().ifPresent(outcomes::add);
              if (isTold(done)) {
                tell(done.lines());
              }
              done.trouble().ifPresent(this::trouble);
              progress.one();
            });
    progress.clear();
    boolean indexed =
        folder.isPresent()
            && folder.get().index(settings.title(), entries, studios.rules(), this::trouble);
    if (!settings.detail().verdictsAlone()) {
      tally.lines().forEach(line -> Plain.wrap("", "  ", line, here.width()).forEach(this::print));
      studios
          .narrowed()
          .map(n -> n.text() + ".")
          .ifPresent(line -> Plain.wrap("", "  ", line, here.width()).forEach(this::print));
      silent
          .sentence(studios::rules)
          .ifPresent(line -> Plain.wrap("", "  ", line, here.width()).forEach(this::print));
      if (indexed) {
        print("reports: " + Plain.line(settings.reports().get()) + "/index.html");
      }
    }
    outputs.text().flush();
    outputs.write(
        () ->
            new Results(
                Strikeoff.Version.number(),
                settings.title(),
                settings.part(),
                all.size(),
                studios.narrowed(),
                settings.baseline().map(Baseline::name),
                studios.rules(),
                outcomes),
        (file, e) -> trouble(file + ": this file can't be written: " + FileTrouble.of(e)));
    exits.add(tally.exit());
    return settings.failOn().exit(Exit.worst(exits), tally.open());
  }

  /** To try what mends findings costs a check for each; a verdict alone says nothing of it. */
  private boolean mendsAreShown() {
    return !settings.detail().verdictsAlone()
        || settings.reports().isPresent()
        || outputs.needResults();
  }

  /** Parts of a batch may write into one folder, side by side. */
  private void open(ReportFolder folder, Collection<Place> places) throws IOException {
    if (settings.part().isEmpty()) {
      folder.open();
      return;
    }
    List<String> pages = new ArrayList<>(ReportFolder.OF_ALL);
    places.forEach(place -> pages.add(place.page));
    folder.open(pages);
  }

  private Ink ink() {
    return outputs.textIsShown() || settings.colour() != Colouring.AUTO
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
      if (settings.part().map(s -> s.holds(next)).orElse(true)) {
        places.put(plan, new Place(next, pages.get(plan)));
      }
    }
    return places;
  }

  private Done checked(PlanFile plan, PlanText text, Optional<ReportFolder> folder, Place place) {
    if (!mendsAreShown()) {
      return reported(studios.check(plan), text, folder, place, false);
    }
    if (!looksFurther) {
      return reported(studios.checkAndMend(plan), text, folder, place, false);
    }
    FurtherLook look = new FurtherLook(studios.judge(plan).checker());
    Checked checked = studios.checkAndMend(plan, look::begin);
    Done done = reported(checked, text, folder, place, false);
    return look.found()
        .map(end -> done.and(text.sooner((Checked.Judged) checked, end)))
        .orElse(done);
  }

  /**
   * Runs beside other plans: nothing is told here.
   *
   * @param last true if the plan was given up, whatever may still come of it
   */
  private Done reported(
      Checked result, PlanText text, Optional<ReportFolder> folder, Place place, boolean last) {
    Checked checked = settings.baseline().map(b -> b.marked(result)).orElse(result);
    String link = "";
    Optional<String> trouble = Optional.empty();
    if (folder.isPresent()) {
      try {
        place.write(folder.get(), HtmlReport.utf8(checked), last);
        link = place.page;
      } catch (IOException e) {
        trouble = Optional.of(place.page + ": this report can't be written: " + FileTrouble.of(e));
      }
    }
    String page = link;
    return new Done(
        Tally.Counted.of(checked),
        checked instanceof Checked.Judged judged && judged.passed() > 0,
        SilentRules.heard(checked),
        text.of(checked),
        folder.map(f -> IndexEntry.of(checked, page)),
        outputs.needResults()
            ? Optional.of(
                Outcome.of(checked, place.number, Optional.of(page).filter(p -> !p.isEmpty()))
                    .with(settings.baseline().map(b -> b.gone(checked)).orElse(List.of())))
            : Optional.empty(),
        trouble);
  }

  /** Whoever asks for what fails has to see as well what passes only because a policy lets it. */
  private boolean isTold(Done done) {
    return settings.detail() != Detail.QUIET
        || done.passedByPolicy()
        || settings.failOn().fails(done.counted());
  }

  private void tell(List<String> lines) {
    lines.forEach(this::print);
    if (!settings.detail().verdictsAlone()) {
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
