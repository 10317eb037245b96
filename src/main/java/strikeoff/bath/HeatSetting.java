package strikeoff.bath;

import java.util.List;
import strikeoff.plan.Evidence;
import strikeoff.plan.PlanPath;
import strikeoff.units.Span;
import strikeoff.units.Temperature;

/**
 * Heat on paint: its temperature and time at the film.
 *
 * @param with what: iron, press, oven
 * @param paints on the cloth
 * @param path of the temperature
 */
public record HeatSetting(
    int step, String with, List<String> paints, Temperature temperature, Span lasts, PlanPath path)
    implements Evidence {

  public HeatSetting {
    paints = List.copyOf(paints);
  }
}
