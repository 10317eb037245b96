package strikeoff.cli.commands;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import strikeoff.check.FileTrouble;
import strikeoff.check.SilentRules;
import strikeoff.cli.files.Outputs;
import strikeoff.cli.files.PlanFiles.PlanFile;
import strikeoff.cli.files.ReportFolder;
import strikeoff.cli.text.Complaint;
import strikeoff.cli.text.Detail;
import strikeoff.cli.text.Exit;
import strikeoff.cli.text.Plain;
import strikeoff.cli.text.Progress;
import strikeoff.cli.text.Surroundings;
import strikeoff.cli.text.Tally;
import strikeoff.findings.PolicyChange;
import strikeoff.findings.RuleInfo;
import strikeoff.report.IndexEntry;
import strikeoff.report.PageMark;
import strikeoff.report.outcome.Baseline;
import strikeoff.report.outcome.Outcome;
import strikeoff.report.outcome.Results;

/** One run over plans that are found already: checks, tells, and writes what is wanted. */
final class CheckRun {

  private static final int LONG_BATCH = 20;

  /** So many plans are looked at by somebody; more of them are a batch. */
  private static final int FEW = 3;

  private final Surroundings here;
  private final Studios studios;
  private final CheckSettings settings;
  private final Outputs<Results> outputs;
  private final List<Exit> exits = new ArrayList<>();
  private final Map<String, RuleInfo> rules = new HashMap<>();

  /** Where sheets for the wall go. */
  private final Optional<ReportFolder> wall;

  CheckRun(Surroundings here, Studios studios, CheckSettings settings) {
    this.here = here;
    this.studios = studios;
    this.settings = settings;
    this.wall =
        settings.sheets().map(name -> new ReportFolder(here.resolve(name), PageMark.SHEETS));
    this.outputs =
        new Outputs<>(here, Formats.results(here, settings.reports()), settings.outputs());
  }

  /** What is kept of a checked plan: its facts are not, for many plans may wait to be told. */
  private record Done(
      Tally.Counted counted,
      boolean passedByPolicy,
      Optional<Set<String>> heard,
      List<String> lines,
      Optional<IndexEntry> entry,
      Optional<IndexEntry> hung,
      Optional<Outcome> outcome,
      List<String> troubles) {}

  /**
   * Checks the plans of the run's part.
   *
   * @param all plans of the whole batch
   */
  Exit of(List<PlanFile> all) {
    Optional<ReportFolder> folder = settings.reports().map(r -> new ReportFolder(here.resolve(r)));
    Map<PlanFile, PlanPlace> places = places(all);
    try {
      if (folder.isPresent()) {
        open(folder.get(), places.values());
      }
    } catch (IOException e) {
      trouble(settings.reports().get() + ": no reports can be written here: " + FileTrouble.of(e));
      return Exit.FAULT;
    }
    try {
      if (wall.isPresent()) {
        open(wall.get(), places.values());
      }
    } catch (IOException e) {
      trouble(settings.sheets().get() + ": no sheets can be written here: " + FileTrouble.of(e));
      return Exit.FAULT;
    }
    boolean further =
        all.size() <= FEW && !settings.detail().verdictsAlone() && outputs.textIsTold();
    PlanTelling telling = new PlanTelling(here, studios, settings, outputs, further);
    Progress progress =
        new Progress(here, places.size(), here.watched() && places.size() >= LONG_BATCH);
    Tally tally = new Tally();
    SilentRules silent = new SilentRules();
    List<IndexEntry> entries = new ArrayList<>();
    List<IndexEntry> hung = new ArrayList<>();
    List<Outcome> outcomes = new ArrayList<>();
    List<Outcome> handedBack = new ArrayList<>();
    new Batch(here.plansAtOnce(), settings.maxSeconds())
        .run(
            List.copyOf(places.keySet()),
            plan -> done(telling.of(plan), folder, places.get(plan), false),
            (plan, failed) -> done(telling.of(failed), folder, places.get(plan), true),
            done -> {
              progress.clear();
              tally.add(done.counted());
              done.heard().ifPresent(silent::add);
              done.entry().ifPresent(entries::add);
              done.hung().ifPresent(hung::add);
              done.outcome().filter(o -> outputs.needResults()).ifPresent(outcomes::add);
              done.outcome().filter(o -> settings.handBack()).ifPresent(handedBack::add);
              if (isTold(done)) {
                tell(done.lines());
              }
              done.troubles().forEach(this::trouble);
              progress.one();
            });
    progress.clear();
    telling
        .close()
        .ifPresent(why -> Complaint.say(here, "results can't be kept in the cache: " + why));
    Map<String, String> pupils =
        folder
            .filter(f -> settings.handBack())
            .map(
                f ->
                    f.handBack(
                        handedBack,
                        studios.rules(),
                        studios.narrowed(),
                        places.values().stream().map(place -> place.page()).toList(),
                        this::trouble))
            .orElse(Map.of());
    boolean indexed =
        folder.isPresent()
            && folder
                .get()
                .index(
                    settings.title(),
                    entries,
                    studios.rules(),
                    settings.by() == Groups.PUPIL || settings.handBack(),
                    pupils,
                    this::trouble);
    boolean isHung =
        wall.isPresent() && wall.get().sheetsIndex(settings.title(), hung, this::trouble);
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
      if (isHung) {
        print("sheets: " + Plain.line(settings.sheets().get()) + "/index.html");
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

  /** Parts of a batch may write into one folder, side by side. */
  private void open(ReportFolder folder, Collection<PlanPlace> places) throws IOException {
    if (settings.part().isEmpty()) {
      folder.open();
      return;
    }
    List<String> pages = new ArrayList<>(folder.ofAll());
    places.forEach(place -> pages.add(place.page()));
    folder.open(pages);
  }

  /** Names and numbers are those of the whole batch, whatever part of it is checked here. */
  private Map<PlanFile, PlanPlace> places(List<PlanFile> all) {
    Map<PlanFile, String> pages = ReportFolder.names(all);
    Map<PlanFile, PlanPlace> places = new LinkedHashMap<>();
    int number = 0;
    for (PlanFile plan : all) {
      int next = ++number;
      if (settings.part().map(s -> s.holds(next)).orElse(true)) {
        places.put(plan, new PlanPlace(next, pages.get(plan)));
      }
    }
    return places;
  }

  /**
   * @param last true if the plan was given up, whatever may still come of it
   */
  private Done done(PlanTold told, Optional<ReportFolder> folder, PlanPlace place, boolean last) {
    String link = "";
    String hung = "";
    List<String> troubles = new ArrayList<>();
    String plan = told.outcome().file();
    if (told.sheets().isPresent()) {
      try {
        place.write(wall.orElseThrow(), told.sheets().get(), false);
        hung = place.page();
      } catch (IOException e) {
        String sheets = settings.sheets().get() + "/" + place.page();
        troubles.add(FileTrouble.unwritten(plan, "sheets", sheets, e));
      }
    }
    if (folder.isPresent()) {
      try {
        place.write(folder.get(), told.page().orElseThrow(), last);
        link = place.page();
      } catch (IOException e) {
        String page = settings.reports().get() + "/" + place.page();
        troubles.add(FileTrouble.unwritten(plan, "report", page, e));
      }
    }
    Outcome outcome = at(told.outcome(), place, link);
    Outcome onTheWall = at(told.outcome(), place, hung);
    return new Done(
        Tally.Counted.of(told.outcome()),
        PolicyChange.passed(outcome.changes()) > 0,
        outcome.heard(),
        told.lines(),
        folder.map(f -> entry(outcome)),
        wall.map(w -> entry(onTheWall)),
        Optional.of(outcome).filter(o -> outputs.needResults() || settings.handBack()),
        troubles);
  }

  private static Outcome at(Outcome outcome, PlanPlace place, String page) {
    return outcome.at(place.number(), Optional.of(page).filter(p -> !p.isEmpty()));
  }

  private IndexEntry entry(Outcome outcome) {
    return IndexEntry.of(outcome, rules(), studios.narrowed(), settings.baseline().isPresent());
  }

  /** By id, also those that were left out. */
  private Map<String, RuleInfo> rules() {
    synchronized (rules) {
      if (rules.isEmpty()) {
        studios.allRules().forEach(rule -> rules.put(rule.id(), rule));
      }
      return rules;
    }
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
