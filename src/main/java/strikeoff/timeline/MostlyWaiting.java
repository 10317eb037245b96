package strikeoff.timeline;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import strikeoff.plan.Evidence;
import strikeoff.plan.PlanPath;
import strikeoff.units.Share;
import strikeoff.units.Span;

/**
 * How much of the time inside opening hours is waiting.
 *
 * @param share of waiting in waiting and working together
 * @param causes what is waited for, longest first, with its time
 * @param forDrying true if most of it is waiting for films to dry, and not for a batch
 * @param shortenFirst the longest part of the chain that decides when the run ends
 */
public record MostlyWaiting(
    Span waiting,
    Span work,
    Share share,
    List<String> causes,
    String shortenFirst,
    boolean forDrying,
    PlanPath path)
    implements Evidence {

  public MostlyWaiting {
    causes = List.copyOf(causes);
  }

  /**
   * What shortens it, as an instruction without a full stop: no fan dries what has to stay damp.
   */
  public String shortening() {
    return "Print other pieces meanwhile, "
        + (forDrying ? "move the air with a fan in the wait, " : "")
        + "or let the longest wait fall overnight";
  }

  static List<MostlyWaiting> of(Use use, RunFigures figures) {
    double waiting = use.waiting().minutes();
    if (waiting <= 0) {
      return List.of();
    }
    List<Map.Entry<String, Span>> causes = new ArrayList<>(use.waitingByCause().entrySet());
    causes.sort(Map.Entry.<String, Span>comparingByValue().reversed());
    return List.of(
        new MostlyWaiting(
            use.waiting(),
            use.handsOn(),
            new Share(waiting / (waiting + use.handsOn().minutes())),
            causes.stream().map(c -> c.getKey() + " (" + c.getValue().text() + ")").toList(),
            figures.shortenFirst(),
            causes.get(0).getKey().startsWith("dry "),
            PlanPath.ROOT.key("run")));
  }
}
