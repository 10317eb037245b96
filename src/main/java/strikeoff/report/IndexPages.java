package strikeoff.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import strikeoff.check.Verdict;
import strikeoff.findings.PointsGiven;
import strikeoff.findings.RuleInfo;
import strikeoff.findings.Severity;
import strikeoff.report.drawing.MarkShapes;
import strikeoff.report.drawing.Patches;
import strikeoff.report.page.Figure;
import strikeoff.report.page.IndexPage;
import strikeoff.report.page.Listed;
import strikeoff.units.Numbers;
import strikeoff.units.Phrase;

/** Puts the page of a batch together. */
final class IndexPages {

  private static final int WORST = 3;

  /** Names as people look for them. */
  private static final Comparator<String> AS_READ =
      String.CASE_INSENSITIVE_ORDER.thenComparing(Comparator.naturalOrder());

  private IndexPages() {}

  static IndexPage of(String title, List<IndexEntry> entries) {
    return of(title, entries, false, Map.of());
  }

  /**
   * @param byPupil whether plans are grouped by whose they are, rather than by folder
   * @param pages what each pupil gets back, by name, relative
   */
  static IndexPage of(
      String title, List<IndexEntry> listed, boolean byPupil, Map<String, String> pages) {
    List<IndexEntry> entries = new ArrayList<>(listed);
    if (byPupil) {
      entries.sort(Comparator.comparing(IndexEntry::pupil, AS_READ));
    }
    Function<IndexEntry, String> group = byPupil ? IndexEntry::pupil : IndexEntry::folder;
    List<IndexPage.RuleRow> rules = rules(entries);
    return new IndexPage(
        Assets.head(PageMark.CHECK, title + ": print plans checked", Assets.INDEX_SCRIPT),
        title,
        sentence(entries),
        entries.stream()
            .flatMap(entry -> entry.narrowed().stream())
            .findFirst()
            .map(n -> n.text() + ".")
            .orElse(""),
        figures(entries),
        new Listed<>(entries.stream().map(e -> row(e, group.apply(e))).toList(), 0),
        rules,
        choices(rules),
        new Listed<>(folders(entries, group), 0),
        byPupil ? "Pupil" : "Folder",
        byPupil ? pupils(entries, pages) : List.of(),
        entries.stream().anyMatch(e -> e.points().isPresent()));
  }

  /** A folder of one plan has nothing to compare. */
  private static List<IndexPage.Folder> folders(
      List<IndexEntry> entries, Function<IndexEntry, String> group) {
    Map<String, List<IndexEntry>> byFolder = new TreeMap<>();
    entries.forEach(e -> byFolder.computeIfAbsent(group.apply(e), key -> new ArrayList<>()).add(e));
    if (byFolder.size() < 2) {
      return List.of();
    }
    List<IndexPage.Folder> folders = new ArrayList<>();
    byFolder.forEach(
        (name, own) -> {
          if (own.size() > 1) {
            folders.add(new IndexPage.Folder(name.isEmpty() ? "." : name, own.size(), rules(own)));
          }
        });
    return folders;
  }

  /** Each pupil's plans taken together. */
  private static List<IndexPage.Pupil> pupils(List<IndexEntry> entries, Map<String, String> pages) {
    Map<String, List<IndexEntry>> byPupil = new TreeMap<>(AS_READ);
    entries.forEach(e -> byPupil.computeIfAbsent(e.pupil(), key -> new ArrayList<>()).add(e));
    List<IndexPage.Pupil> pupils = new ArrayList<>();
    byPupil.forEach(
        (name, own) ->
            pupils.add(
                new IndexPage.Pupil(
                    name.isEmpty() ? "." : name,
                    own.size(),
                    (int) count(own, Verdict.PRINTABLE),
                    own.stream().mapToInt(e -> e.count(Severity.STOP)).sum(),
                    own.stream().mapToInt(e -> e.count(Severity.RISK)).sum(),
                    PointsGiven.sum(own.stream().flatMap(e -> e.points().stream()).toList()),
                    pages.getOrDefault(name, ""))));
    return pupils;
  }

  private static String sentence(List<IndexEntry> entries) {
    long printable = count(entries, Verdict.PRINTABLE);
    return printable
        + " of "
        + entries.size()
        + (entries.size() == 1 ? " plan is printable." : " plans are printable.");
  }

  private static List<Figure> figures(List<IndexEntry> entries) {
    List<Figure> figures = new ArrayList<>();
    for (Verdict verdict : Verdict.values()) {
      long count = count(entries, verdict);
      if (count > 0) {
        figures.add(new Figure(Phrase.capital(verdict.text()), Long.toString(count)));
      }
    }
    return figures;
  }

  private static long count(List<IndexEntry> entries, Verdict verdict) {
    return entries.stream().filter(e -> e.verdict() == verdict).count();
  }

  private static IndexPage.Row row(IndexEntry entry, String group) {
    List<RuleInfo> rules = List.copyOf(entry.findings().keySet());
    List<RuleInfo> open = entry.open();
    return new IndexPage.Row(
        entry.file(),
        entry.title(),
        entry.link(),
        PlanPages.cssClass(entry.verdict()),
        verdict(entry),
        verdictNote(entry),
        order(entry.verdict()),
        count(entry, Severity.STOP),
        count(entry, Severity.RISK),
        count(entry, Severity.ADVICE),
        entry.finishes(),
        entry.finishSeconds(),
        rules.stream().map(RuleInfo::id).collect(Collectors.joining(" ")),
        rules.stream().map(r -> r.severity().text()).distinct().collect(Collectors.joining(" ")),
        open.stream().limit(WORST).map(IndexPages::worst).toList(),
        Math.max(0, open.size() - WORST),
        entry.accepted().stream().limit(WORST).map(IndexPages::accepted).toList(),
        Math.max(0, entry.accepted().size() - WORST),
        group.isEmpty() ? "." : group,
        entry.by(),
        entry.points().map(PointsGiven::text).orElse(""),
        entry.points().map(PointsGiven::points).orElse(-1.0),
        entry.points().map(PointsGiven::reasons).orElse(""),
        entry.trouble());
  }

  private static String verdict(IndexEntry entry) {
    String words = Phrase.capital(entry.verdict().text(entry.accepted(Severity.STOP)));
    return entry.passed() == 0
        ? words
        : words
            + "; a policy lets "
            + (entry.passed() == 1 ? "1 stop" : entry.passed() + " stops")
            + " pass";
  }

  /** By what the verdict is held. */
  private static String verdictNote(IndexEntry entry) {
    List<String> notes = new ArrayList<>();
    entry.since().ifPresent(since -> notes.add(since.counted()));
    entry.narrowed().ifPresent(n -> notes.add(n.counted()));
    return String.join("; ", notes);
  }

  private static IndexPage.Count count(IndexEntry entry, Severity severity) {
    return entry.judged()
        ? new IndexPage.Count(entry.count(severity), entry.accepted(severity))
        : IndexPage.Count.NONE;
  }

  private static IndexPage.Accepted accepted(IndexEntry.Accepted accepted) {
    return new IndexPage.Accepted(worst(accepted.rule()), accepted.findings(), accepted.because());
  }

  private static int order(Verdict verdict) {
    return switch (verdict) {
      case UNREADABLE -> 0;
      case NOT_CHECKED -> 1;
      case NOT_PRINTABLE -> 2;
      case PRINTABLE -> 3;
    };
  }

  private static IndexPage.Worst worst(RuleInfo rule) {
    return new IndexPage.Worst(
        rule.severity().text(), MarkShapes.icon(rule.severity()), rule.id(), rule.summary());
  }

  /** A rule that folders count differently has a row for each severity. */
  private static List<IndexPage.RuleRow> rules(List<IndexEntry> entries) {
    Map<RuleInfo, int[]> counts = new LinkedHashMap<>();
    for (IndexEntry entry : entries) {
      for (Map.Entry<RuleInfo, Integer> found : entry.findings().entrySet()) {
        int[] count = counts.computeIfAbsent(found.getKey(), key -> new int[2]);
        count[0]++;
        count[1] += found.getValue();
      }
    }
    List<IndexPage.RuleRow> rows = new ArrayList<>();
    counts.keySet().stream()
        .sorted(
            Comparator.comparingInt((RuleInfo info) -> -counts.get(info)[0])
                .thenComparing(RuleInfo::severity)
                .thenComparing(RuleInfo::id))
        .forEach(info -> rows.add(ruleRow(info, counts.get(info), entries.size())));
    return rows;
  }

  /** What plans can be filtered by: each rule once, in the order of the rows. */
  private static List<IndexPage.RuleChoice> choices(List<IndexPage.RuleRow> rows) {
    Map<String, Integer> plans = new LinkedHashMap<>();
    rows.forEach(row -> plans.merge(row.rule(), row.plans(), Integer::sum));
    return plans.entrySet().stream()
        .map(e -> new IndexPage.RuleChoice(e.getKey(), e.getValue()))
        .toList();
  }

  private static IndexPage.RuleRow ruleRow(RuleInfo info, int[] count, int plans) {
    double share = (double) count[0] / plans;
    return new IndexPage.RuleRow(
        info.id(),
        info.severity().text(),
        MarkShapes.icon(info.severity()),
        info.summary(),
        count[0],
        count[1],
        Numbers.plain(share * 100, 0) + " %",
        Patches.bar(share));
  }
}
