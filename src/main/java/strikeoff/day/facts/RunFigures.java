package strikeoff.day.facts;

import java.util.List;
import strikeoff.day.Breaks;
import strikeoff.day.DayRun;
import strikeoff.day.Use.WaitedFor;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.plan.PrintPlan;

/**
 * Where the time of a run goes, and what decides when it ends.
 *
 * @param days the days at the table
 * @param busy people, the cloth, stations, equipment, and screens in the order of use
 * @param waitedFor waiting inside opening hours while nobody works, by what is waited for
 * @param chain what decides the finish
 */
public record RunFigures(
    List<TableDay> days,
    List<Busy> busy,
    List<WaitedFor> waitedFor,
    CriticalChain chain,
    PlanPath path)
    implements Evidence {

  public RunFigures {
    days = List.copyOf(days);
    busy = List.copyOf(busy);
    waitedFor = List.copyOf(waitedFor);
  }

  public static RunFigures of(DayRun day, PrintPlan plan) {
    List<TableDay> days = TableDay.all(day.tasks(), plan.hours());
    return new RunFigures(
        days,
        Busy.all(day, days, plan),
        day.use().waitedFor(),
        CriticalChain.of(day.run().tasks(), day.run().heldUp(), new Breaks(plan.hours())),
        PlanPath.ROOT.key("run"));
  }
}
