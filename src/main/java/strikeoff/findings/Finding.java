package strikeoff.findings;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import strikeoff.document.Edit;
import strikeoff.evidence.Evidence;
import strikeoff.plan.Acceptance;

/**
 * One fault of a plan, with everything a printer needs to mend it.
 *
 * @param message what was found, with the figures
 * @param remedy what to do, with the computed value
 * @param edits changes of the plan that may mend it, untried: one of them, each made of several
 * @param mends those of them that were tried and mend it, least change first
 * @param place where to edit
 * @param related further places
 * @param marks names of the placements concerned
 * @param evidence the facts it rests on, the first one being the one judged
 * @param accepted the plan's acceptance of it, if any; an accepted stop still shows
 * @param acceptLine what to write into the plan's {@code accept} to accept it; empty if nothing
 *     does
 * @param since how it stands to an earlier run, if one is the baseline
 */
public record Finding(
    RuleInfo rule,
    String message,
    String remedy,
    List<List<Edit>> edits,
    List<Mend> mends,
    Place place,
    List<Place> related,
    List<String> marks,
    List<Evidence> evidence,
    Optional<Acceptance> accepted,
    Optional<String> acceptLine,
    Optional<Since> since) {

  /** The same with what was found to mend it. */
  public Finding with(List<Mend> mends) {
    return but(remedy, mends, since);
  }

  /** The same with something to be done before its remedy, an instruction without a full stop. */
  Finding after(String first) {
    return but(first + ". " + remedy, mends, since);
  }

  /** The same, held against an earlier run. */
  public Finding since(Since state) {
    return but(remedy, mends, Optional.of(state));
  }

  private Finding but(String remedy, List<Mend> mends, Optional<Since> since) {
    return new Finding(
        rule,
        message,
        remedy,
        edits,
        mends,
        place,
        related,
        marks,
        evidence,
        accepted,
        acceptLine,
        since);
  }

  /** True if the baseline had it. */
  public boolean isOld() {
    return since.filter(Since::isOld).isPresent();
  }

  /** True if it is what an entry of {@code accept} looks for. */
  public boolean answers(AcceptEntry entry) {
    return Findings.covers(entry.acceptance(), rule.id(), place.path());
  }

  /** True if a figure that it rests on is doubted by another one. */
  public boolean restsOn(Finding doubt) {
    return rule.restsOn(doubt.rule);
  }

  /** Worst first, then down the file, then by rule and words: one documented order. */
  public static final Comparator<Finding> ORDER =
      Comparator.comparing((Finding f) -> f.rule().severity())
          .thenComparing(f -> f.place().position())
          .thenComparing(f -> f.rule().id())
          .thenComparing(Finding::message);

  public Finding {
    edits = List.copyOf(edits);
    mends = List.copyOf(mends);
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
