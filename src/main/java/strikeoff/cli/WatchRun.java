package strikeoff.cli;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import strikeoff.check.Checked;
import strikeoff.check.FileTrouble;
import strikeoff.cli.PlanFiles.PlanFile;
import strikeoff.report.HtmlReport;
import strikeoff.report.IndexEntry;

/** Checks what was saved, and keeps the reports of all plans. */
final class WatchRun {

  private static final int MOST_FINDINGS = 50;

  private final Surroundings here;
  private final String title;
  private final Optional<ReportFolder> reports;
  private final PlanText text;
  private final long maxSeconds;
  private final Map<PlanFile, IndexEntry> entries = new HashMap<>();

  WatchRun(Surroundings here, String title, Optional<String> reports, Ink ink, long maxSeconds) {
    this.here = here;
    this.title = title;
    this.reports = reports.map(r -> new ReportFolder(here.resolve(r)));
    this.text = new PlanText(ink, here.width(), Detail.USUAL, MOST_FINDINGS);
    this.maxSeconds = maxSeconds;
  }

  /**
   * @param all every plan, for the index
   * @param due those to check
   * @return false if reports are wanted and there is no folder for them
   */
  boolean round(List<PlanFile> all, List<PlanFile> due, Studios studios) {
    boolean written = true;
    if (reports.isPresent()) {
      try {
        reports.get().make();
      } catch (IOException e) {
        trouble("no reports can be written: ", e);
        written = false;
      }
    }
    Map<PlanFile, String> pages = ReportFolder.names(all);
    new Batch(here.plansAtOnce(), maxSeconds)
        .run(due, studios::check, (plan, failed) -> (Checked) failed, new Telling(due, pages)::one);
    entries.keySet().retainAll(all);
    index(all);
    here.out().flush();
    return written;
  }

  /** Tells results in the order of the plans they belong to. */
  private final class Telling {

    private final List<PlanFile> plans;
    private final Map<PlanFile, String> pages;
    private int next;

    Telling(List<PlanFile> plans, Map<PlanFile, String> pages) {
      this.plans = plans;
      this.pages = pages;
    }

    void one(Checked checked) {
      PlanFile plan = plans.get(next++);
      String link = "";
      if (reports.isPresent()) {
        try {
          reports.get().write(pages.get(plan), HtmlReport.utf8(checked));
          link = pages.get(plan);
        } catch (IOException e) {
          trouble(pages.get(plan) + ": this report can't be written: ", e);
        }
      }
      entries.put(plan, IndexEntry.of(checked, link));
      text.of(checked).forEach(line -> here.out().print(line + "\n"));
      here.out().print("\n");
      here.out().flush();
    }
  }

  private void index(List<PlanFile> all) {
    if (reports.isEmpty()) {
      return;
    }
    List<IndexEntry> rows = new ArrayList<>();
    all.forEach(plan -> rows.add(entries.get(plan)));
    try {
      reports.get().write(ReportFolder.INDEX, HtmlReport.index(title, rows));
    } catch (IOException e) {
      trouble(ReportFolder.INDEX + ": the index can't be written: ", e);
    }
  }

  /** Says it and goes on: the next save may find the disk in order again. */
  private void trouble(String what, IOException e) {
    here.out().flush();
    Complaint.say(here, what + FileTrouble.of(e));
    here.err().flush();
  }
}
