package strikeoff.timeline;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import strikeoff.drying.Tried;
import strikeoff.plan.Draught;
import strikeoff.plan.Evidence;
import strikeoff.plan.PlanPath;
import strikeoff.plan.PrintPlan;
import strikeoff.policy.Policy;
import strikeoff.units.AirSpeed;
import strikeoff.units.Quantity;
import strikeoff.units.Temperature;

/**
 * Air beyond what the forms of evaporation were checked for. Films whose times the printer measured
 * don't ask for it.
 *
 * @param stated what the plan says: a temperature or a speed
 * @param nearest what is reckoned with instead
 * @param films how many films dry by the estimate
 * @param path of the value
 */
public record UntriedAir(Quantity stated, Quantity nearest, long films, PlanPath path)
    implements Evidence {

  /** {@code 8 films}, or {@code 1 film}. */
  public String counted() {
    return films == 1 ? "1 film" : films + " films";
  }

  static List<UntriedAir> all(Timeline.Day day, PrintPlan plan, Policy policy) {
    long films =
        day.impressions().stream()
            .map(i -> i.footprint().paste())
            .filter(p -> p.frameSafe().isEmpty() || p.liftSafe().isEmpty())
            .count();
    List<UntriedAir> all = new ArrayList<>();
    if (films == 0) {
      return all;
    }
    Tried tried = Tried.of(policy);
    Temperature room = plan.room().temperature();
    if (tried.nearest(room).compareTo(room) != 0) {
      PlanPath path = plan.room().path().key("temperature");
      all.add(new UntriedAir(room, tried.nearest(room), films, path));
    }
    Map<PlanPath, Draught> draughts = new LinkedHashMap<>();
    draughts.put(plan.room().path().key("air"), plan.room().air());
    plan.run().forEach(step -> draughts.putAll(step.draughts()));
    draughts.forEach(
        (path, air) -> {
          AirSpeed nearest = tried.nearest(air.speed());
          if (nearest.compareTo(air.speed()) != 0) {
            all.add(new UntriedAir(air.speed(), nearest, films, path));
          }
        });
    return all;
  }
}
