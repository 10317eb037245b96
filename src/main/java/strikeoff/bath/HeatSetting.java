package strikeoff.bath;

import java.util.List;
import strikeoff.plan.Evidence;
import strikeoff.plan.PlanPath;
import strikeoff.plan.Step;
import strikeoff.units.Span;
import strikeoff.units.Temperature;

/**
 * Heat on paint: its temperature and time at the film.
 *
 * @param with what heats it
 * @param paints on the cloth
 * @param coolest temperature at which all of them set
 * @param asks the paint that asks for it
 * @param basis on what that rests, in words: a paint's label, or the policy
 * @param path of the temperature
 */
public record HeatSetting(
    int step,
    Step.Heat with,
    List<String> paints,
    Temperature temperature,
    Span lasts,
    Temperature coolest,
    String asks,
    String basis,
    PlanPath path)
    implements Evidence {

  public HeatSetting {
    paints = List.copyOf(paints);
  }
}
