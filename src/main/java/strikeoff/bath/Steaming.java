package strikeoff.bath;

import java.util.List;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.units.Span;
import strikeoff.units.Temperature;

/**
 * Dye that is fixed in steam; how much of it gets fixed is told by {@link FixTime}.
 *
 * @param step number of the fix step
 * @param dyes the dye pastes on the cloth
 * @param longest time that the most delicate group stands
 * @param longestGroup that group
 * @param path of the time
 * @param warmthPath of the temperature
 */
public record Steaming(
    int step,
    List<String> dyes,
    Temperature temperature,
    Span lasts,
    Span longest,
    String longestGroup,
    PlanPath path,
    PlanPath warmthPath)
    implements Evidence {

  public Steaming {
    dyes = List.copyOf(dyes);
  }
}
