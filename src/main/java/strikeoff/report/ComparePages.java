package strikeoff.report;

import static strikeoff.report.page.TableBlock.Column.number;
import static strikeoff.report.page.TableBlock.Column.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import strikeoff.report.compare.Change;
import strikeoff.report.compare.Comparison;
import strikeoff.report.compare.PlanChange;
import strikeoff.report.drawing.MarkShapes;
import strikeoff.report.outcome.Found;
import strikeoff.report.outcome.Mistake;
import strikeoff.report.outcome.Outcome;
import strikeoff.report.page.Cell;
import strikeoff.report.page.ComparePage;
import strikeoff.report.page.ComparePage.Group;
import strikeoff.report.page.ComparePage.Item;
import strikeoff.report.page.Figure;
import strikeoff.report.page.TableBlock;

/** Puts the page of a comparison together. */
final class ComparePages {

  private ComparePages() {}

  static ComparePage of(Comparison comparison) {
    String title = Names.of(comparison.before(), comparison.after()).text();
    List<ComparePage.Plan> plans = new ArrayList<>();
    for (PlanChange change : comparison.plans()) {
      plans.add(plan("plan-" + (plans.size() + 1), change, comparison.rules()));
    }
    return new ComparePage(
        Assets.head(PageMark.COMPARE, title + ": what changed", Assets.PLAN_SCRIPT),
        title,
        comparison.sentence(),
        List.of(
            figure("Mended", comparison.mended()),
            figure("Left", comparison.left()),
            figure("New", comparison.fresh())),
        comparison.plans().size() > 1 ? overview(comparison.plans()) : null,
        plans);
  }

  private static Figure figure(String label, long count) {
    return new Figure(label, Long.toString(count));
  }

  private static ComparePage.Plan plan(String id, PlanChange change, Map<String, String> rules) {
    List<Group> groups = new ArrayList<>();
    add(groups, "Mended", change.mended().stream().map(f -> item(f, "mended", "", rules)).toList());
    add(
        groups,
        "New",
        change.fresh().stream().map(f -> item(f, f.severity().text(), f.remedy(), rules)).toList());
    add(
        groups,
        "Left",
        change.left().stream().map(f -> item(f, f.severity().text(), f.remedy(), rules)).toList());
    add(groups, "Not readable", change.mistakes().stream().map(ComparePages::item).toList());
    Outcome shown = shown(change);
    return new ComparePage.Plan(
        id,
        Names.last(change.name()),
        shown.title(),
        change.before().flatMap(Outcome::report).orElse(""),
        change.after().flatMap(Outcome::report).orElse(""),
        change.after().map(a -> PlanPages.cssClass(a.verdict())).orElse(""),
        change.verdict(),
        change.remark(),
        groups,
        change.figures().isEmpty() ? null : table(change.figures()));
  }

  private static Outcome shown(PlanChange change) {
    return change.after().or(change::before).orElseThrow();
  }

  private static TableBlock overview(List<PlanChange> plans) {
    List<List<Cell>> rows = new ArrayList<>();
    for (PlanChange plan : plans) {
      boolean gone = plan.after().isEmpty();
      rows.add(
          List.of(
              Cell.of(shown(plan).title(), Names.last(plan.name())),
              Cell.of(plan.verdict()),
              Cell.of(gone ? "–" : PlanChange.count(plan.mended())),
              Cell.of(gone ? "–" : PlanChange.count(plan.fresh())),
              Cell.of(gone ? "–" : PlanChange.count(plan.left()))));
    }
    return new TableBlock(
        "Each plan at a glance",
        List.of(words("Plan"), words("Verdict"), number("Mended"), number("New"), number("Left")),
        rows,
        "");
  }

  private static void add(List<Group> groups, String title, List<Item> items) {
    if (!items.isEmpty()) {
      groups.add(new Group(title, items));
    }
  }

  private static Item item(Found found, String look, String remedy, Map<String, String> rules) {
    return new Item(
        found.severity().text(),
        look,
        MarkShapes.icon(found.severity()),
        found.rule(),
        rules.getOrDefault(found.rule(), ""),
        "line " + found.place().region().start().line(),
        found.message(),
        remedy);
  }

  private static Item item(Mistake mistake) {
    return new Item(
        "",
        "",
        null,
        mistake.path(),
        "",
        "line " + mistake.region().start().line(),
        mistake.message(),
        "");
  }

  /**
   * Two versions by as little of their names as tells them apart: a page goes from hand to hand.
   */
  private record Names(String before, String after) {

    static Names of(String before, String after) {
      String[] was = before.split("/");
      String[] is = after.split("/");
      int same = 0;
      while (same < Math.min(was.length, is.length) - 1
          && was[was.length - 1 - same].equals(is[is.length - 1 - same])) {
        same++;
      }
      return new Names(last(was, same + 1), last(is, same + 1));
    }

    /** A name without folders that lead to it from the root of a disk. */
    static String last(String name) {
      return name.startsWith("/") ? last(name.split("/"), 1) : name;
    }

    private static String last(String[] parts, int most) {
      return String.join(
          "/", List.of(parts).subList(Math.max(0, parts.length - most), parts.length));
    }

    String text() {
      return before + " → " + after;
    }
  }

  private static TableBlock table(List<Change> changes) {
    List<List<Cell>> rows = new ArrayList<>();
    for (Change change : changes) {
      rows.add(
          List.of(
              Cell.of(change.name()),
              Cell.of(change.before()),
              Cell.of(change.after()),
              Cell.of(change.difference())));
    }
    return new TableBlock(
        "Figures that changed",
        List.of(words("Figure"), number("Before"), number("After"), number("Difference")),
        rows,
        "");
  }
}
