package strikeoff.propose;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import strikeoff.document.Edit;
import strikeoff.document.yaml.Manuscript;
import strikeoff.findings.AcceptedSteps;
import strikeoff.plan.Acceptance;
import strikeoff.plan.Step;

/** Writes a run into a plan's text. Steps that stay are written as they were. */
final class RunText {

  private final Manuscript manuscript;
  private final Leeway leeway;
  private final StepLines steps;
  private final List<Optional<List<String>>> kept = new ArrayList<>();

  /**
   * Its waits are told without minutes.
   *
   * @param text of the plan, without a byte-order mark
   */
  RunText(String text, Leeway leeway) {
    this(Manuscript.of(text).orElseThrow(), leeway);
  }

  /** The same. */
  RunText(Manuscript manuscript, Leeway leeway) {
    this(manuscript, leeway, DryingTold.NOTHING);
  }

  /** The same for one run, and whoever reads it. */
  RunText telling(DryingTold waits) {
    return new RunText(manuscript, leeway, waits);
  }

  private RunText(Manuscript manuscript, Leeway leeway, DryingTold waits) {
    this.manuscript = manuscript;
    this.leeway = leeway;
    this.steps = new StepLines(leeway, waits);
    for (Step step : leeway.last()) {
      kept.add(manuscript.item(step.path()));
    }
  }

  /**
   * The plan's text with that run, and what comes after the part that is arranged.
   *
   * @param run in the order that it must keep
   * @return nothing if the text has no place for it
   */
  Optional<String> with(List<Step> run) {
    List<String> lines = new ArrayList<>();
    int last = 0;
    for (int i = 0; i < run.size(); i++) {
      Optional<List<String>> asItWas = Optional.empty();
      if (i < leeway.first().size()) {
        asItWas = manuscript.item(leeway.first().get(i).path());
      } else if (Leeway.isWet(run.get(i))) {
        asItWas = kept.get(last++);
      }
      if (asItWas.isPresent()) {
        lines.addAll(asItWas.get());
      } else {
        lines.addAll(steps.of(run, i));
      }
    }
    for (Step later : leeway.later()) {
      manuscript.item(later.path()).ifPresent(lines::addAll);
    }
    Optional<String> written = manuscript.withList("run", lines);
    return leeway.plan().acceptances().isEmpty()
        ? written
        : written.flatMap(Manuscript::of).flatMap(now -> now.with(accepted(run, now)));
  }

  private List<Edit> accepted(List<Step> run, Manuscript now) {
    return AcceptedSteps.following(leeway.plan(), renumbered(run), now::has);
  }

  private Map<Integer, Integer> renumbered(List<Step> run) {
    List<Step> whole = new ArrayList<>(run);
    whole.addAll(leeway.later());
    return SameSteps.numbers(leeway.plan(), Order.numbered(whole));
  }

  /** What is accepted at a step that the run doesn't have any more, so that its line goes. */
  List<Acceptance> dropped(List<Step> run) {
    List<Acceptance> all = leeway.plan().acceptances();
    return all.isEmpty()
        ? all
        : with(run)
            .flatMap(Manuscript::of)
            .map(now -> AcceptedSteps.gone(leeway.plan(), renumbered(run), now::has))
            .orElse(List.of());
  }

  /** How many steps of the plan come after the part that is arranged. */
  int later() {
    return leeway.later().size();
  }
}
