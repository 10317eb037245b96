package strikeoff.bath;

import java.util.List;
import strikeoff.plan.Evidence;
import strikeoff.plan.PlanPath;
import strikeoff.units.Span;
import strikeoff.units.Temperature;

/**
 * Dye that is fixed in steam.
 *
 * @param step number of the fix step
 * @param dyes the dye pastes on the cloth
 * @param shortest time that the slowest group needs
 * @param shortestGroup that group
 * @param longest time that the most delicate group stands
 * @param longestGroup that group
 * @param minutesMore what is missing to the shortest, in whole minutes
 * @param path of the time
 */
public record Steaming(
    int step,
    List<String> dyes,
    Temperature temperature,
    Span lasts,
    Span shortest,
    String shortestGroup,
    Span longest,
    String longestGroup,
    Span minutesMore,
    PlanPath path)
    implements Evidence {

  public Steaming {
    dyes = List.copyOf(dyes);
  }
}
