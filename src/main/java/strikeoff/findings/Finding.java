package strikeoff.findings;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import strikeoff.plan.Acceptance;
import strikeoff.plan.Evidence;

/**
 * One fault of a plan, with everything a printer needs to mend it.
 *
 * @param message what was found, with the figures
 * @param remedy what to do, with the computed value
 * @param place where to edit
 * @param related further places
 * @param marks names of the placements concerned
 * @param evidence the facts it rests on, the first one being the one judged
 * @param accepted the plan's acceptance of it, if any; an accepted stop still shows
 */
public record Finding(
    RuleInfo rule,
    String message,
    String remedy,
    Place place,
    List<Place> related,
    List<String> marks,
    List<Evidence> evidence,
    Optional<Acceptance> accepted) {

  /** Worst first, then down the file, then by rule and words: one documented order. */
  public static final Comparator<Finding> ORDER =
      Comparator.comparing((Finding f) -> f.rule().severity())
          .thenComparing(f -> f.place().position())
          .thenComparing(f -> f.rule().id())
          .thenComparing(Finding::message);

  public Finding {
    related = List.copyOf(related);
    marks = List.copyOf(marks);
    evidence = List.copyOf(evidence);
  }

  public Severity severity() {
    return rule.severity();
  }

  /** True if it keeps the plan from being printable: a stop that nobody accepted. */
  public boolean blocks() {
    return severity() == Severity.STOP && accepted.isEmpty();
  }
}
