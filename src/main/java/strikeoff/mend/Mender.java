package strikeoff.mend;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import strikeoff.check.Checked;
import strikeoff.check.Checker;
import strikeoff.document.Edit;
import strikeoff.document.yaml.Manuscript;
import strikeoff.findings.Finding;
import strikeoff.findings.Findings;
import strikeoff.findings.Mend;
import strikeoff.findings.Severity;
import strikeoff.plan.GivenUp;
import strikeoff.plan.PlanPath;

/**
 * Mends a plan step by step: of all edits that were tried and mend something, the least one is made
 * that brings no new risk, the plan is checked anew, and so on. Each step leaves fewer stops than
 * before, or as few and fewer risks, so it comes to an end.
 */
public final class Mender {

  /** Parts of a plan that say what there is, and not what is done with it. */
  private static final Set<String> NEVER =
      Set.of("cloth", "designs", "seams", "screens", "accept", "room", "crew");

  /** Keys, and what stands in a bath or a recipe, that say how much, how long or how warm. */
  private static final Pattern MEASURE =
      Pattern.compile(
          "\\.(amount|for|temperature|pause|dry between (colours|passes)|before moving|dry|sides"
              + "|wash between colours|stood|age)$"
              + "|\\.(bath|recipe)\\b");

  private final Checker checker;
  private final Checker trier;
  private final Asked asked;

  private Mender(Checker checker, Asked asked) {
    this.checker = checker;
    this.trier = checker.withoutTrials();
    this.asked = asked;
  }

  /**
   * What a printer lets be changed besides waits, amounts, times and temperatures.
   *
   * @param risks true to go on until no risk is left that an edit mends
   * @param order true to let steps come, go and move, and colours change their order
   * @param layout true to let placements and boards move
   */
  public record Asked(boolean risks, boolean order, boolean layout) {}

  /** One edit that was made, and the finding that it mends. */
  public record Made(Finding finding, Mend mend) {}

  /**
   * A plan, as far as it could be mended.
   *
   * @param text the plan's text with all edits
   * @param made edits in the order in which they were made
   * @param checked what is left of it
   * @param unasked for findings that are left what would have to be let be changed to mend them
   */
  public record Mended(
      String text, List<Made> made, Checked checked, Map<Finding, Unasked> unasked) {

    public Mended {
      made = List.copyOf(made);
      unasked = Map.copyOf(unasked);
    }
  }

  /** What nobody let be changed, though it mends a finding. */
  public enum Unasked {
    ORDER,
    LAYOUT,
    BOTH
  }

  /**
   * Mends a plan.
   *
   * @param text its text, without a byte-order mark
   */
  public static Mended mended(Checker checker, String name, String text, Asked asked) {
    return new Mender(checker, asked).mended(name, text);
  }

  private Mended mended(String name, String text) {
    List<Made> made = new ArrayList<>();
    Set<String> seen = new HashSet<>();
    String now = text;
    Checked checked = checker.check(name, now);
    while (checked instanceof Checked.Judged judged && seen.add(now)) {
      GivenUp.ifAsked();
      Optional<Made> best = best(judged, now);
      if (best.isEmpty()) {
        break;
      }
      made.add(best.get());
      now = Manuscript.of(now).flatMap(m -> m.with(best.get().mend().edits())).orElseThrow();
      checked = checker.check(name, now);
    }
    return new Mended(
        now, made, checked, checked instanceof Checked.Judged j ? unasked(j, now) : Map.of());
  }

  private Map<Finding, Unasked> unasked(Checked.Judged left, String text) {
    Map<Finding, Unasked> unasked = new HashMap<>();
    Checked.Judged before = null;
    for (Unasked more : Unasked.values()) {
      Mender letMore =
          new Mender(
              checker,
              new Asked(
                  asked.risks(),
                  asked.order() || more != Unasked.LAYOUT,
                  asked.layout() || more != Unasked.ORDER));
      for (Finding finding : left.findings()) {
        boolean mendable =
            !unasked.containsKey(finding)
                && severities().contains(finding.severity())
                && finding.edits().stream().anyMatch(e -> letMore.lets(e) && !lets(e));
        if (mendable) {
          before = before == null ? EditTrials.counted(left, checker, trier) : before;
          if (!letMore.mends(left, before, finding, Manuscript.of(text)).isEmpty()) {
            unasked.put(finding, more);
          }
        }
      }
    }
    return unasked;
  }

  private List<Severity> severities() {
    return asked.risks() ? List.of(Severity.STOP, Severity.RISK) : List.of(Severity.STOP);
  }

  /** The least edit that mends a stop; one that mends a risk only where no stop is left. */
  private Optional<Made> best(Checked.Judged judged, String text) {
    Optional<Manuscript> manuscript = Manuscript.of(text);
    Checked.Judged before = EditTrials.counted(judged, checker, trier);
    for (Severity severity : severities()) {
      List<Made> all = new ArrayList<>();
      for (Finding finding : judged.findings()) {
        if (finding.severity() == severity) {
          List<Made> mends = mends(judged, before, finding, manuscript);
          if (mends.stream().anyMatch(Mender::isFree)
              || !freely(judged, before, finding, manuscript)) {
            all.addAll(mends);
          }
        }
      }
      Optional<Made> least =
          all.stream().min(Comparator.comparing(Made::mend, EditTrials.BEST_FIRST));
      if (least.isPresent()) {
        return least;
      }
    }
    return Optional.empty();
  }

  /** Each edit that is let and mends a finding. */
  private List<Made> mends(
      Checked.Judged judged,
      Checked.Judged before,
      Finding finding,
      Optional<Manuscript> manuscript) {
    List<Made> mends = new ArrayList<>();
    boolean sure = Findings.doubts(judged.findings()).stream().noneMatch(finding::restsOn);
    if (finding.accepted().isEmpty() && sure) {
      for (List<Edit> edits : finding.edits()) {
        GivenUp.ifAsked();
        if (lets(edits)) {
          manuscript
              .flatMap(m -> EditTrials.mend(trier, before, finding, m, edits))
              .filter(mend -> finding.severity() == Severity.STOP || mend.risks().isEmpty())
              .ifPresent(mend -> mends.add(new Made(finding, mend)));
        }
      }
    }
    return mends;
  }

  private static boolean isFree(Made made) {
    return made.mend().risks().isEmpty();
  }

  /** Whether it is mended without a new risk by what nobody let be changed. */
  private boolean freely(
      Checked.Judged judged,
      Checked.Judged before,
      Finding finding,
      Optional<Manuscript> manuscript) {
    Mender bold = new Mender(checker, new Asked(asked.risks(), true, true));
    return finding.edits().stream().anyMatch(edits -> bold.lets(edits) && !lets(edits))
        && bold.mends(judged, before, finding, manuscript).stream().anyMatch(Mender::isFree);
  }

  private boolean lets(List<Edit> edits) {
    return edits.stream().allMatch(this::isLet);
  }

  private boolean isLet(Edit edit) {
    String section = section(edit.at());
    if (NEVER.contains(section)) {
      return false;
    }
    if (section.equals("placements") || section.equals("table")) {
      return asked.layout();
    }
    return isMeasure(edit) || asked.order();
  }

  /** Whether it changes how much, how long or how warm, and not what is done. */
  private static boolean isMeasure(Edit edit) {
    String path = edit.at().text();
    if (edit instanceof Edit.Write) {
      return MEASURE.matcher(path).find();
    }
    return edit instanceof Edit.Append && path.equals("protection")
        || edit instanceof Edit.Insert insert && insert.item().startsWith("dry: ");
  }

  private static String section(PlanPath path) {
    return path.text().split("[.\\[]", 2)[0];
  }
}
