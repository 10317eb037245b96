package strikeoff.cli.commands;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import strikeoff.check.Checked;
import strikeoff.check.FileTrouble;
import strikeoff.cli.files.PlanFiles.PlanFile;
import strikeoff.cli.files.ReportFolder;
import strikeoff.cli.serve.ShownPages;
import strikeoff.cli.text.Complaint;
import strikeoff.cli.text.Detail;
import strikeoff.cli.text.Ink;
import strikeoff.cli.text.Plain;
import strikeoff.cli.text.PlanText;
import strikeoff.cli.text.SinceSave;
import strikeoff.cli.text.Surroundings;
import strikeoff.policy.yaml.PolicyReader;
import strikeoff.report.HtmlReport;
import strikeoff.report.IndexEntry;
import strikeoff.report.outcome.Outcome;

/** Checks what was saved, and keeps the reports of all plans. */
final class WatchRun {

  private static final int MOST_FINDINGS = 50;

  private final Surroundings here;
  private final String title;
  private final Optional<ReportFolder> reports;
  private final Optional<ShownPages> shown;
  private final boolean artwork;
  private final PlanText text;
  private final long maxSeconds;
  private final Ink ink;
  private final Map<PlanFile, IndexEntry> entries = new HashMap<>();
  private final Map<PlanFile, SinceSave> last = new HashMap<>();

  /** The pages of the round before; of none before the first. */
  private Map<PlanFile, String> pages = Map.of();

  WatchRun(
      Surroundings here,
      String title,
      Optional<String> reports,
      Optional<ShownPages> shown,
      boolean artwork,
      Ink ink,
      long maxSeconds) {
    this.here = here;
    this.title = title;
    this.reports = reports.map(r -> new ReportFolder(here.resolve(r)));
    this.shown = shown;
    this.artwork = artwork;
    this.ink = ink;
    this.text = new PlanText(ink, here.width(), Detail.USUAL, MOST_FINDINGS);
    this.maxSeconds = maxSeconds;
  }

  /**
   * @param all every plan, for the index
   * @param due those to check
   * @param what was saved, line by line
   * @return false if reports are wanted and there is no folder for them
   */
  boolean round(List<PlanFile> all, List<PlanFile> due, List<String> what, Studios studios) {
    LocalTime now = SinceSave.now();
    String time = SinceSave.text(now) + "  ";
    for (String line : what) {
      Plain.wrap(time, " ".repeat(time.length()), line, here.width()).forEach(this::print);
    }
    Map<PlanFile, String> before = pages;
    pages = ReportFolder.names(all);
    shown.ifPresent(
        s -> {
          List<String> kept = new ArrayList<>(ReportFolder.OF_ALL);
          kept.addAll(pages.values());
          s.retain(kept);
          s.front(all.size() == 1 ? pages.get(all.get(0)) : ReportFolder.INDEX);
        });
    boolean written = true;
    if (reports.isPresent()) {
      try {
        ready(reports.get(), before);
      } catch (IOException e) {
        trouble("no reports can be written: " + FileTrouble.of(e));
        written = false;
      }
    }
    // A plan whose page is called otherwise now, since others came or went, needs it anew.
    List<PlanFile> checked =
        all.stream()
            .filter(p -> due.contains(p) || !pages.get(p).equals(before.getOrDefault(p, "")))
            .toList();
    new Batch(here.plansAtOnce(), maxSeconds)
        .run(
            checked,
            studios::checkAndMend,
            (plan, failed) -> (Checked) failed,
            new Telling(checked, due, now)::one);
    entries.keySet().retainAll(all);
    last.keySet().retainAll(all);
    index(all, studios);
    here.out().flush();
    return written;
  }

  /** Pages of earlier runs go at the beginning, those of plans that are gone when they go. */
  private void ready(ReportFolder folder, Map<PlanFile, String> before) throws IOException {
    if (before.isEmpty()) {
      folder.open();
      return;
    }
    folder.make();
    for (String page : before.values()) {
      if (!pages.containsValue(page)) {
        folder.gone(page);
      }
    }
  }

  /** Tells results in the order of the plans they belong to. */
  private final class Telling {

    private final List<PlanFile> plans;
    private final Set<PlanFile> due;
    private final LocalTime now;
    private int next;

    /**
     * @param due those whose result is told; of others the page is called otherwise
     */
    Telling(List<PlanFile> plans, List<PlanFile> due, LocalTime now) {
      this.plans = plans;
      this.due = Set.copyOf(due);
      this.now = now;
    }

    void one(Checked checked) {
      PlanFile plan = plans.get(next++);
      String page = pages.get(plan);
      String link = "";
      if (reports.isPresent() || shown.isPresent()) {
        byte[] utf8 = HtmlReport.utf8(checked, artwork);
        shown.ifPresent(s -> s.put(page, utf8));
        if (reports.isEmpty() || written(plan, page, utf8)) {
          link = page;
        }
      }
      entries.put(plan, IndexEntry.of(checked, link));
      if (due.contains(plan)) {
        tell(plan, checked);
      }
    }

    private boolean written(PlanFile plan, String page, byte[] utf8) {
      try {
        reports.orElseThrow().write(page, utf8);
        return true;
      } catch (IOException e) {
        trouble(FileTrouble.unwritten(plan.name(), "report", page, e));
        return false;
      }
    }

    private void tell(PlanFile plan, Checked checked) {
      Outcome outcome = Outcome.of(checked, 1, Optional.empty());
      text.of(checked).forEach(WatchRun.this::print);
      SinceSave before = last.put(plan, new SinceSave(outcome, now));
      if (before != null) {
        before.of(outcome, ink, here.width()).forEach(WatchRun.this::print);
      }
      print("");
      here.out().flush();
    }
  }

  private void print(String line) {
    here.out().print(line + "\n");
  }

  private void index(List<PlanFile> all, Studios studios) {
    if (reports.isEmpty() && shown.isEmpty()) {
      return;
    }
    List<IndexEntry> rows = new ArrayList<>();
    all.forEach(plan -> rows.add(entries.get(plan)));
    reports.ifPresent(r -> r.index(title, rows, studios.rules(), this::trouble));
    shown.ifPresent(
        s -> {
          s.put(ReportFolder.INDEX, HtmlReport.index(title, rows).getBytes(StandardCharsets.UTF_8));
          s.put(ReportFolder.RULES, HtmlReport.rules(studios.rules(), PolicyReader.builtIn()));
        });
  }

  /** Says it and goes on: the next save may find the disk in order again. */
  private void trouble(String what) {
    here.out().flush();
    Complaint.say(here, what);
    here.err().flush();
  }
}
