package strikeoff.findings;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import strikeoff.document.PlanPath;
import strikeoff.document.SourceMap;
import strikeoff.evidence.Evidence;
import strikeoff.plan.Acceptance;

/**
 * Cuts what one rule found down to what somebody can work through. What nobody accepted comes
 * before what is accepted, so that no cut makes a plan printable.
 */
final class MostFindings {

  private MostFindings() {}

  /**
   * @param reported all of one rule, no two alike
   * @param most how many to tell
   */
  static List<Reported> of(
      List<Reported> reported, List<Acceptance> acceptances, SourceMap source, int most) {
    if (reported.size() <= most) {
      return reported;
    }
    List<Reported> sorted = new ArrayList<>(reported);
    // Asked once for each place: comparing would ask again and again.
    Map<PlanPath, Boolean> accepted = new HashMap<>();
    List<Acceptance> ofThisRule =
        acceptances.stream().filter(a -> a.rule().equals(reported.get(0).rule().id())).toList();
    for (Reported one : reported) {
      accepted.computeIfAbsent(one.judged().path(), path -> accepted(one, ofThisRule));
    }
    sorted.sort(
        Comparator.comparing((Reported one) -> accepted.get(one.judged().path()))
            .thenComparing(one -> source.position(one.judged().path()))
            .thenComparing(Reported::message)
            .thenComparing(Reported::remedy)
            .thenComparing(one -> one.judged().path()));
    List<Reported> told = new ArrayList<>(sorted.subList(0, most));
    Reported next = sorted.get(most);
    Further further = new Further(next.judged().path());
    told.add(
        new Reported(
            next.rule(),
            "This is found "
                + (sorted.size() - most)
                + (sorted.size() - most == 1 ? " time more." : " times more, here for the first."),
            "Mend the "
                + most
                + " before and check again: so many of one kind mostly have one cause. The option"
                + " --bound findings=N tells more at once.",
            further,
            List.of(further)));
    return told;
  }

  private static boolean accepted(Reported one, List<Acceptance> acceptances) {
    return acceptances.stream()
        .anyMatch(a -> Findings.covers(a, one.rule().id(), one.judged().path()));
  }

  /** Where the first finding stands that is counted only. */
  record Further(PlanPath path) implements Evidence {}
}
