package strikeoff.studio;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import strikeoff.findings.Finding;
import strikeoff.findings.PointsGiven;
import strikeoff.findings.Severity;

/**
 * How a studio marks plans: each fault takes points from a full mark. All points are counted in
 * hundredths, so that sums come out even.
 *
 * @param full what a plan without faults gets
 * @param severities what a finding of each severity takes, unless its rule or family says otherwise
 * @param rules what findings of a rule or a family take; the rule has the last word
 * @param eachFinding whether each finding takes them, or a rule once, however often it finds
 *     something
 */
public record Marks(
    int full, Map<Severity, Integer> severities, Map<String, Integer> rules, boolean eachFinding) {

  private static final double HUNDREDTHS = 100;

  public Marks {
    severities = Map.copyOf(severities);
    rules = Collections.unmodifiableMap(new LinkedHashMap<>(rules));
  }

  /**
   * What a plan gets. What it accepts takes nothing: there is a reason for it.
   *
   * @param where the policy's file and line
   */
  public PointsGiven of(List<Finding> findings, String where) {
    Map<String, Integer> counts = new LinkedHashMap<>();
    Map<String, Integer> taken = new LinkedHashMap<>();
    for (Finding finding : findings) {
      if (finding.accepted().isEmpty()) {
        String rule = finding.rule().id();
        counts.merge(rule, 1, Integer::sum);
        taken.merge(rule, worth(finding), eachFinding ? Integer::sum : Integer::max);
      }
    }
    int left = full;
    List<PointsGiven.Taken> reasons = new ArrayList<>();
    for (Map.Entry<String, Integer> each : taken.entrySet()) {
      left -= each.getValue();
      if (each.getValue() > 0) {
        reasons.add(
            new PointsGiven.Taken(
                each.getKey(), counts.get(each.getKey()), each.getValue() / HUNDREDTHS));
      }
    }
    reasons.sort(
        Comparator.comparingDouble((PointsGiven.Taken one) -> -one.points())
            .thenComparing(PointsGiven.Taken::rule));
    return new PointsGiven(Math.max(0, left) / HUNDREDTHS, full / HUNDREDTHS, where, reasons);
  }

  private int worth(Finding finding) {
    Integer own = rules.get(finding.rule().id());
    Integer family = rules.get(finding.rule().family());
    return own != null
        ? own
        : family != null ? family : severities.getOrDefault(finding.severity(), 0);
  }
}
