package strikeoff.report.page;

import gg.jte.Content;
import java.util.Collections;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A batch at a glance.
 *
 * @param narrowed that only some rules judged; empty if all did
 * @param rules how many plans each rule trips
 * @param choices rules that can be filtered by
 * @param groups what plans are grouped by: Folder or Pupil
 * @param pupils whose plans they are, if they are grouped so
 * @param marked whether any plan gets points
 * @param folders the folders with several plans, if there is more than one, each with its own rules
 */
public record IndexPage(
    Head head,
    String title,
    String sentence,
    String narrowed,
    List<Figure> figures,
    Listed<Row> rows,
    List<RuleRow> rules,
    List<RuleChoice> choices,
    Listed<Folder> folders,
    String groups,
    List<Pupil> pupils,
    boolean marked) {

  public IndexPage {
    figures = List.copyOf(figures);
    rules = List.copyOf(rules);
    choices = List.copyOf(choices);
    pupils = List.copyOf(pupils);
  }

  /** The same with so many times fewer plans, those that fare worst, and fewer folders. */
  public IndexPage cut(int times) {
    Set<Row> worst =
        rows.shown().stream()
            .sorted(
                Comparator.comparingInt(Row::verdictOrder)
                    .thenComparing(row -> -row.stops().open())
                    .thenComparing(row -> -row.risks().open()))
            .limit(Math.max(1, rows.shown().size() / times))
            .collect(
                Collectors.toCollection(() -> Collections.newSetFromMap(new IdentityHashMap<>())));
    List<Row> left = rows.shown().stream().filter(worst::contains).toList();
    return new IndexPage(
        head,
        title,
        sentence,
        narrowed,
        figures,
        new Listed<>(left, rows.more() + rows.shown().size() - left.size()),
        rules,
        choices,
        folders.cut(times),
        groups,
        pupils,
        marked);
  }

  /**
   * A pupil's plans taken together.
   *
   * @param points what they get, of the full marks together; empty without marks
   * @param link what the pupil gets back, relative; empty if it wasn't made
   */
  public record Pupil(
      String name, int plans, int printable, int stops, int risks, String points, String link) {}

  /** A rule to filter by, and how many plans it trips. */
  public record RuleChoice(String rule, int plans) {}

  /**
   * Findings of one severity.
   *
   * @param open those that the plan doesn't accept; below 0 if nobody could judge
   */
  public record Count(int open, int accepted) {

    public static final Count NONE = new Count(-1, 0);

    /** Empty if nobody could judge: a nought would say that nothing was found. */
    public String words() {
      return open < 0 ? "" : Integer.toString(open);
    }
  }

  /** Findings that the plan accepts, with its reason. */
  public record Accepted(Worst finding, int findings, String because) {}

  /**
   * One plan.
   *
   * @param link address of its report, relative; empty if it has none
   * @param verdict a class for the style sheet
   * @param verdictNote by what it is held; may be empty
   * @param verdictOrder worst first, for sorting
   * @param finish for sorting, in minutes; -1 if it doesn't run
   * @param tripped ids of all its rules with findings, separated by blanks
   * @param severities severities it has findings of, separated by blanks
   * @param worst rules with findings that the plan doesn't accept
   * @param moreFindings how many are not among the worst
   * @param accepted what the plan accepts, worst first
   * @param moreAccepted how many of it are not among these
   * @param folder it lies in; may be empty
   * @param by who made it; may be empty
   * @param points what it gets; empty without marks
   * @param pointsSort the same, for sorting; -1 without marks
   * @param pointsReasons why not all of them
   * @param trouble why it couldn't be judged; empty if it was
   */
  public record Row(
      String file,
      String title,
      String link,
      String verdict,
      String verdictWords,
      String verdictNote,
      int verdictOrder,
      Count stops,
      Count risks,
      Count advice,
      String finishes,
      long finish,
      String tripped,
      String severities,
      List<Worst> worst,
      int moreFindings,
      List<Accepted> accepted,
      int moreAccepted,
      String folder,
      String by,
      String points,
      double pointsSort,
      String pointsReasons,
      String trouble) {

    public Row {
      worst = List.copyOf(worst);
      accepted = List.copyOf(accepted);
    }
  }

  /** A finding named in a row. */
  public record Worst(String severity, Content shape, String rule, String summary) {}

  /** A folder's plans taken together: a class, a studio's season. */
  public record Folder(String name, int plans, List<RuleRow> rules) {

    public Folder {
      rules = List.copyOf(rules);
    }
  }

  /** How many plans a rule trips; the bar is a drawing of the share. */
  public record RuleRow(
      String rule,
      String severity,
      Content shape,
      String summary,
      int plans,
      int findings,
      String share,
      Content bar) {}
}
