package strikeoff.findings;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import strikeoff.document.Bounds;
import strikeoff.document.GivenUp;
import strikeoff.document.PlanPath;
import strikeoff.document.Position;
import strikeoff.document.SourceMap;
import strikeoff.evidence.Evidence;
import strikeoff.plan.Acceptance;
import strikeoff.speech.PlaceSpeech;

/** Gives what rules found its place in the plan's file, and the plan's acceptances of it. */
public final class Findings {

  private Findings() {}

  /**
   * Places, accepts, sorts by {@link Finding#ORDER}, and drops what is the same in rule, words and
   * place. Of a rule that finds more than is told, the last finding says how many more there are.
   */
  public static List<Finding> of(
      List<Reported> reported, List<Acceptance> acceptances, SourceMap source, Bounds bounds) {
    return of(reported, acceptances, source, bounds, rule -> true);
  }

  /**
   * @param acceptable tells of a rule's id whether a plan may accept what it finds
   */
  public static List<Finding> of(
      List<Reported> reported,
      List<Acceptance> acceptances,
      SourceMap source,
      Bounds bounds,
      Predicate<String> acceptable) {
    Map<String, List<Reported>> byRule = new LinkedHashMap<>();
    Set<Object> seen = new HashSet<>();
    for (Reported one : reported) {
      String rule = one.rule().id();
      if (seen.add(List.of(rule, one.message(), one.remedy(), one.judged().path()))) {
        byRule.computeIfAbsent(rule, r -> new ArrayList<>()).add(one);
      }
    }
    List<Finding> findings = new ArrayList<>();
    for (List<Reported> ofOneRule : byRule.values()) {
      for (Reported one : MostFindings.of(ofOneRule, acceptances, source, bounds.findings())) {
        GivenUp.ifAsked();
        findings.add(placed(one, acceptances, source, acceptable));
      }
    }
    List<Finding> doubts = doubts(findings);
    findings.replaceAll(finding -> inDoubt(finding, doubts));
    // The last word decides between findings of one place and message, never the order of firing.
    findings.sort(Finding.ORDER.thenComparing(Finding::remedy).thenComparing(Findings::path));
    return List.copyOf(findings);
  }

  /** Those that doubt figures which others rest on and that nobody accepted, worst first. */
  public static List<Finding> doubts(List<Finding> findings) {
    return findings.stream()
        .filter(f -> f.accepted().isEmpty() && !f.rule().doubts().isEmpty())
        .sorted(Finding.ORDER)
        .toList();
  }

  /** Says of a remedy with figures that rest on one which is doubted that this comes first. */
  private static Finding inDoubt(Finding finding, List<Finding> doubts) {
    return doubts.stream()
        .filter(finding::restsOn)
        .findFirst()
        .map(doubt -> finding.after("Settle " + doubt.rule().id() + " first: this rests on it"))
        .orElse(finding);
  }

  private static PlanPath path(Finding finding) {
    return finding.place().path();
  }

  private static Finding placed(
      Reported one, List<Acceptance> acceptances, SourceMap source, Predicate<String> acceptable) {
    PlanPath path = one.judged().path();
    Set<Place> related = new LinkedHashSet<>();
    Set<String> marks = new LinkedHashSet<>();
    for (Evidence fact : one.evidence()) {
      if (fact != one.judged() && !fact.path().equals(path)) {
        related.add(place("see also", fact.path(), source));
      }
      for (Evidence.Related further : fact.related()) {
        related.add(place(PlaceSpeech.label(further), further.path(), source));
      }
      marks.addAll(fact.marks());
    }
    Optional<Acceptance> accepted =
        acceptances.stream().filter(a -> covers(a, one.rule().id(), path)).findFirst();
    return new Finding(
        one.rule(),
        one.message(),
        one.remedy(),
        one.edits(),
        List.of(),
        place("", path, source),
        List.copyOf(related),
        List.copyOf(marks),
        one.evidence(),
        accepted,
        accepted.isEmpty() && isAcceptable(one) && acceptable.test(one.rule().id())
            ? Optional.of(AcceptLine.of(one.rule().id(), source.written(path)))
            : Optional.empty(),
        Optional.empty());
  }

  /** What counts further findings stands for many places; an idle acceptance is just taken out. */
  private static boolean isAcceptable(Reported one) {
    return !(one.judged() instanceof MostFindings.Further)
        && !one.rule().family().equals("acceptance");
  }

  private static Place place(String label, PlanPath path, SourceMap source) {
    Position position = source.position(path);
    return new Place(label, path, position, source.line(position.line()));
  }

  static boolean covers(Acceptance acceptance, String rule, PlanPath path) {
    return acceptance.rule().equals(rule)
        && acceptance.at().map(at -> within(path.text(), at)).orElse(true);
  }

  /** True at the place itself and at everything under it: {@code run[1]} doesn't hold run[12]. */
  private static boolean within(String path, String place) {
    return path.equals(place) || path.startsWith(place + ".") || path.startsWith(place + "[");
  }
}
