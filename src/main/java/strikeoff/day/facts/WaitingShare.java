package strikeoff.day.facts;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import strikeoff.day.Doing;
import strikeoff.day.Use;
import strikeoff.day.Use.WaitedFor;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.plan.Step;
import strikeoff.units.Share;
import strikeoff.units.Span;

/**
 * How much of the time inside opening hours is waiting that another run could do without: for films
 * and people, not for a batch to react.
 *
 * @param share of waiting in waiting and working together
 * @param waitedFor what is waited for, longest first
 * @param toShorten the longest part of the chain that decides when the run ends, but for a batch
 */
public record WaitingShare(
    Span waiting,
    Span work,
    Share share,
    List<WaitedFor> waitedFor,
    Optional<CriticalChain.Link> toShorten,
    PlanPath path)
    implements Evidence {

  public WaitingShare {
    waitedFor = List.copyOf(waitedFor);
  }

  /** True if most of it is waiting for films to dry. */
  public boolean forDrying() {
    Doing first = waitedFor.get(0).doing();
    return first instanceof Doing.OfStep of && of.step() instanceof Step.Dry
        || first == Doing.Wait.BETWEEN_COLOURS
        || first == Doing.Wait.BETWEEN_PASSES;
  }

  static List<WaitingShare> of(Use use, RunFigures figures) {
    List<WaitedFor> waited = new ArrayList<>();
    double batches = 0;
    for (WaitedFor cause : use.waitedFor()) {
      if (cause.doing() instanceof Doing.OfStep of && of.step() instanceof Step.Fix) {
        batches += cause.span().minutes();
      } else {
        waited.add(cause);
      }
    }
    double waiting = use.waiting().minutes() - batches;
    if (waited.isEmpty() || waiting <= 0) {
      return List.of();
    }
    waited.sort((a, b) -> b.span().compareTo(a.span()));
    return List.of(
        new WaitingShare(
            new Span(waiting),
            use.handsOn(),
            new Share(waiting / (waiting + use.handsOn().minutes())),
            waited,
            figures.chain().toShorten(),
            PlanPath.ROOT.key("run")));
  }
}
