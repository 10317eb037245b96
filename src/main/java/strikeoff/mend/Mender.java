package strikeoff.mend;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import strikeoff.check.Checked;
import strikeoff.check.Checker;
import strikeoff.check.Verdict;
import strikeoff.document.Edit;
import strikeoff.document.GivenUp;
import strikeoff.document.PlanPath;
import strikeoff.document.Underway;
import strikeoff.document.yaml.Manuscript;
import strikeoff.findings.Finding;
import strikeoff.findings.Findings;
import strikeoff.findings.Mend;
import strikeoff.findings.Severity;

/**
 * Mends a plan step by step: of all edits that were tried and mend something, the least one is made
 * that brings no new risk, the plan is checked anew, and so on. Each step leaves fewer stops than
 * before, or as few and fewer risks, so it comes to an end.
 *
 * <p>Where nothing else mends a stop, an edit may bring a risk, which is mended in its turn if an
 * edit does. None is brought to a plan that keeps a stop anyway.
 */
public final class Mender {

  /** Parts of a plan that say what there is, and not what is done with it. */
  private static final Set<String> NEVER =
      Set.of("cloth", "designs", "seams", "screens", "accept", "room", "crew");

  private static final Set<String> LAYOUT = Set.of("placements", "table");

  /** What more may be let be changed, the least first. */
  private static final List<Set<Leave>> MORE =
      List.of(Set.of(Leave.ORDER), Set.of(Leave.LAYOUT), Set.of(Leave.ORDER, Leave.LAYOUT));

  /** Keys, and what stands in a bath or a recipe, that say how much, how long or how warm. */
  private static final Pattern MEASURE =
      Pattern.compile(
          "\\.(amount|alkali|for|temperature|pause|dry between (colours|passes)|before moving|dry|sides"
              + "|wash between colours|stood|age)$"
              + "|\\.(bath|recipe)\\b");

  private final Checker checker;
  private final Checker trier;
  private final Asked asked;

  private final boolean risky;

  /** How many risks each rule saw before anything was mended. */
  private Map<String, Long> risksAtFirst = Map.of();

  /**
   * @param risky true if an edit may bring a risk where nothing else mends a stop
   */
  private Mender(Checker checker, Asked asked, boolean risky) {
    this.checker = checker;
    this.trier = checker.withoutTrials();
    this.asked = asked;
    this.risky = risky;
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
   * @param unasked for findings that are left what else would have to be let be changed to mend
   *     them
   */
  public record Mended(
      String text, List<Made> made, Checked checked, Map<Finding, Set<Leave>> unasked) {

    public Mended {
      made = List.copyOf(made);
      unasked = Map.copyOf(unasked);
    }
  }

  /** What is changed only where a printer lets it. */
  public enum Leave {
    ORDER,
    LAYOUT
  }

  /**
   * Mends a plan.
   *
   * @param text its text, without a byte-order mark
   */
  public static Mended mended(Checker checker, String name, String text, Asked asked) {
    Mended mended = new Mender(checker, asked, true).mended(name, text);
    boolean risked = mended.made().stream().anyMatch(made -> !isFree(made));
    return risked && mended.checked().verdict() != Verdict.PRINTABLE
        ? new Mender(checker, asked, false).mended(name, text)
        : mended;
  }

  private Mended mended(String name, String text) {
    List<Made> made = new ArrayList<>();
    Set<String> seen = new HashSet<>();
    String now = text;
    Checked checked = checker.check(name, now);
    Underway.at(Underway.Stage.MENDING);
    if (checked instanceof Checked.Judged judged) {
      risksAtFirst = EditTrials.byRule(judged, Severity.RISK);
    }
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

  /** A plan between two edits, with what it takes to try one. */
  private record Round(
      List<Finding> findings,
      List<Finding> doubts,
      Checked.Judged before,
      Optional<Manuscript> manuscript) {}

  private Round round(Checked.Judged judged, String text) {
    return new Round(
        judged.findings(),
        Findings.doubts(judged.findings()),
        EditTrials.counted(judged, checker, trier),
        Manuscript.of(text));
  }

  /** Stops, and the risks that are asked for or that mending brought. */
  private boolean isWanted(Finding finding, Map<String, Long> risks) {
    String rule = finding.rule().id();
    return switch (finding.severity()) {
      case STOP -> true;
      case RISK ->
          asked.risks() || risks.getOrDefault(rule, 0L) > risksAtFirst.getOrDefault(rule, 0L);
      case ADVICE -> false;
    };
  }

  /** The least edit that mends a stop; one that mends a risk only where no stop is left. */
  private Optional<Made> best(Checked.Judged judged, String text) {
    Round round = round(judged, text);
    Map<String, Long> risks = EditTrials.byRule(judged, Severity.RISK);
    for (Severity severity : List.of(Severity.STOP, Severity.RISK)) {
      List<Made> all = new ArrayList<>();
      for (Finding finding : round.findings()) {
        if (finding.severity() == severity && isWanted(finding, risks)) {
          List<Made> mends = mends(round, finding, lacks -> lacks.isEmpty());
          boolean costs = !mends.isEmpty() && mends.stream().noneMatch(Mender::isFree);
          if (!costs
              || mends(round, finding, lacks -> !lacks.isEmpty()).stream()
                  .noneMatch(Mender::isFree)) {
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

  private static boolean isFree(Made made) {
    return made.mend().risks().isEmpty();
  }

  /** For each finding that is left the least that else would have to be let be changed. */
  private Map<Finding, Set<Leave>> unasked(Checked.Judged left, String text) {
    Map<Finding, Set<Leave>> unasked = new HashMap<>();
    Round round = round(left, text);
    Map<String, Long> risks = EditTrials.byRule(left, Severity.RISK);
    for (Finding finding : round.findings()) {
      if (isWanted(finding, risks)) {
        MORE.stream()
            .filter(more -> !mends(round, finding, more::equals).isEmpty())
            .findFirst()
            .ifPresent(more -> unasked.put(finding, more));
      }
    }
    return unasked;
  }

  /**
   * Each edit that mends a finding.
   *
   * @param which of them are tried, by what is not let be changed though they change it
   */
  private List<Made> mends(Round round, Finding finding, Predicate<Set<Leave>> which) {
    List<Made> mends = new ArrayList<>();
    if (finding.accepted().isEmpty() && round.doubts().stream().noneMatch(finding::restsOn)) {
      for (List<Edit> edits : finding.edits()) {
        GivenUp.ifAsked();
        if (edits.stream().noneMatch(Mender::isForbidden) && which.test(lacks(edits))) {
          round
              .manuscript()
              .flatMap(m -> EditTrials.mend(trier, round.before(), finding, m, edits))
              .filter(
                  mend -> mend.risks().isEmpty() || risky && finding.severity() == Severity.STOP)
              .ifPresent(mend -> mends.add(new Made(finding, mend)));
        }
      }
    }
    return mends;
  }

  private static boolean isForbidden(Edit edit) {
    return NEVER.contains(section(edit.at()));
  }

  /** What edits change that nobody let be changed. */
  private Set<Leave> lacks(List<Edit> edits) {
    Set<Leave> lacks = EnumSet.noneOf(Leave.class);
    for (Edit edit : edits) {
      if (LAYOUT.contains(section(edit.at()))) {
        lacks.add(Leave.LAYOUT);
      } else if (!isMeasure(edit)) {
        lacks.add(Leave.ORDER);
      }
    }
    lacks.removeIf(leave -> leave == Leave.ORDER ? asked.order() : asked.layout());
    return lacks;
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
