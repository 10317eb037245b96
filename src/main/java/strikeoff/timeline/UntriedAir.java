package strikeoff.timeline;

import java.util.ArrayList;
import java.util.List;
import strikeoff.drying.Air;
import strikeoff.plan.Evidence;
import strikeoff.plan.PlanPath;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Step;
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

  static List<UntriedAir> all(Timeline.Day day, PrintPlan plan) {
    long films =
        day.impressions().stream()
            .map(i -> i.footprint().paste())
            .filter(p -> p.frameSafe().isEmpty() || p.liftSafe().isEmpty())
            .count();
    List<UntriedAir> all = new ArrayList<>();
    if (films == 0) {
      return all;
    }
    Temperature room = plan.room().temperature();
    double held = Math.max(Air.COLDEST_ROOM, Math.min(Air.HOTTEST_ROOM, room.celsius()));
    if (held != room.celsius()) {
      PlanPath path = plan.room().path().key("temperature");
      all.add(new UntriedAir(room, new Temperature(held), films, path));
    }
    AirSpeed fastest = new AirSpeed(Air.FASTEST);
    if (plan.room().air().speed().metresPerSecond() > Air.FASTEST) {
      PlanPath path = plan.room().path().key("air");
      all.add(new UntriedAir(plan.room().air().speed(), fastest, films, path));
    }
    for (Step step : plan.run()) {
      step.draughts()
          .forEach(
              (path, air) -> {
                if (air.speed().metresPerSecond() > Air.FASTEST) {
                  all.add(new UntriedAir(air.speed(), fastest, films, path));
                }
              });
    }
    return all;
  }
}
