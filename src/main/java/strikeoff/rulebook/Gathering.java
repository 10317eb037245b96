package strikeoff.rulebook;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import strikeoff.evidence.Evidence;
import strikeoff.rulebook.Reporter.Report;

/** Makes one report of what a rule found one by one and that is told together. */
final class Gathering {

  private Gathering() {}

  /**
   * @param facts all that were judged, in the order of derivation: what is told together keeps it,
   *     in whatever order the rule fired
   */
  static List<Report> of(List<Report> reports, List<?> facts) {
    Map<Object, List<Report>> together = new LinkedHashMap<>();
    List<Report> told = new ArrayList<>();
    for (Report report : reports) {
      if (report.judged() instanceof Evidence.Gathered one) {
        together
            .computeIfAbsent(
                List.of(report.rule().getName(), one.gathering()), key -> new ArrayList<>())
            .add(report);
      } else {
        told.add(report);
      }
    }
    if (!together.isEmpty()) {
      Map<Object, Integer> places = new IdentityHashMap<>();
      facts.forEach(fact -> places.putIfAbsent(fact, places.size()));
      together.values().forEach(some -> told.add(one(some, places)));
    }
    return told;
  }

  private static Report one(List<Report> reports, Map<Object, Integer> places) {
    List<Evidence> found =
        new ArrayList<>(
            reports.stream()
                .map(Report::judged)
                .distinct()
                .sorted(Comparator.comparing(places::get))
                .toList());
    Set<Object> further = new LinkedHashSet<>();
    reports.forEach(report -> further.addAll(report.further()));
    Evidence.Gathered first = (Evidence.Gathered) found.remove(0);
    return new Report(
        reports.get(0).rule(), found.isEmpty() ? first : first.and(found), List.copyOf(further));
  }
}
