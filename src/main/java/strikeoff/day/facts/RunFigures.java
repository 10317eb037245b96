package strikeoff.day.facts;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import strikeoff.day.Breaks;
import strikeoff.day.DayRun;
import strikeoff.day.Doing;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.plan.PrintPlan;
import strikeoff.units.Measures;
import strikeoff.units.Span;

/**
 * Where the time of a run goes, and what decides when it ends.
 *
 * @param days the days at the table
 * @param busy people, the cloth, stations, equipment, and screens in the order of use
 * @param waitingByCause waiting inside opening hours while nobody works, by what is waited for
 * @param chain what decides the finish
 */
public record RunFigures(
    List<TableDay> days,
    List<Busy> busy,
    Map<Doing, Span> waitingByCause,
    CriticalChain chain,
    PlanPath path)
    implements Evidence {

  public RunFigures {
    days = List.copyOf(days);
    busy = List.copyOf(busy);
    waitingByCause = Collections.unmodifiableMap(new LinkedHashMap<>(waitingByCause));
  }

  public static RunFigures of(DayRun day, PrintPlan plan) {
    List<TableDay> days = TableDay.all(day.tasks(), plan.hours());
    return new RunFigures(
        days,
        Busy.all(day, days, plan),
        day.use().waitingByCause(),
        CriticalChain.of(day.run().tasks(), day.run().heldUp(), new Breaks(plan.hours())),
        PlanPath.ROOT.key("run"));
  }

  /** What to shorten first, with its time; empty if nothing is done. */
  public String shortenFirst(Measures units) {
    return chain.longest().map(link -> link.text(units)).orElse("");
  }
}
