package strikeoff.day.facts;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import strikeoff.day.DayRun;
import strikeoff.document.PlanPath;
import strikeoff.drying.Tried;
import strikeoff.evidence.Evidence;
import strikeoff.plan.Draught;
import strikeoff.plan.PrintPlan;
import strikeoff.policy.Policy;
import strikeoff.units.Quantity;
import strikeoff.units.Temperature;

/**
 * Air that films dry in, beside what the forms of evaporation were checked for.
 *
 * @param stated what the plan says: a temperature or a speed
 * @param nearest the nearest that they were checked for, which is reckoned with
 * @param films how many films dry by the estimate: those whose times the printer measured don't
 * @param path of the value
 */
public record DryingAir(Quantity stated, Quantity nearest, int films, PlanPath path)
    implements Evidence {

  /** True if it lies within what they were checked for. */
  public boolean tried() {
    return stated.base() == nearest.base();
  }

  static List<DryingAir> all(DayRun day, PrintPlan plan, Policy policy) {
    int films =
        (int)
            day.impressions().stream()
                .map(i -> i.footprint().paste())
                .filter(p -> p.frameSafe().isEmpty() || p.liftSafe().isEmpty())
                .count();
    List<DryingAir> all = new ArrayList<>();
    Tried tried = Tried.of(policy);
    Temperature room = plan.room().temperature();
    PlanPath warmth = plan.room().path().key("temperature");
    all.add(new DryingAir(room, tried.nearest(room), films, warmth));
    Map<PlanPath, Draught> draughts = new LinkedHashMap<>();
    draughts.put(plan.room().path().key("air"), plan.room().air());
    plan.run().forEach(step -> draughts.putAll(step.draughts()));
    draughts.forEach(
        (path, air) ->
            all.add(new DryingAir(air.speed(), tried.nearest(air.speed()), films, path)));
    return all;
  }
}
