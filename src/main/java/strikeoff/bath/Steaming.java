package strikeoff.bath;

import java.util.List;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.units.MeasureKind;
import strikeoff.units.Measures;
import strikeoff.units.Span;
import strikeoff.units.Temperature;
import strikeoff.units.UnitSystem;

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

  /** What a pot reaches where water boils at 100 °C, in words. */
  public String pot(Measures units) {
    return new Temperature(100).text(units);
  }

  /** What else may have been meant, beginning with a blank; empty where °F is written already. */
  public String meant(Measures units) {
    return units.of(MeasureKind.TEMPERATURE) == UnitSystem.METRIC
        ? " Were degrees Fahrenheit meant? Then write °F."
        : "";
  }

  /** What works' steamers have, likewise. */
  public String works(Measures units) {
    String most = new Temperature(103).text(units);
    String least = new Temperature(102).text(units);
    return least.substring(0, least.lastIndexOf(' '))
        + " to "
        + most.substring(0, most.lastIndexOf(' '));
  }
}
