package strikeoff.bath;

import java.util.List;
import java.util.Optional;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.policy.Limit;
import strikeoff.units.Span;
import strikeoff.units.Temperature;

/**
 * What follows the last fixing of dye.
 *
 * @param step number of the last fix step
 * @param dyes the pastes that were fixed
 * @param rinsed true if a rinse follows before any wash
 * @param washed true if a wash follows
 * @param rinsedFor all rinses before the first wash together
 * @param firstRinse the first rinse's temperature
 * @param hottestWash the hottest wash's temperature
 * @param careful the hottest wash that careful washers give the cloth
 * @param hot how hot a wash takes loose dye out
 * @param stands the warmest water that the cloth stands
 * @param machine the hottest that machines wash
 * @param path of the last fix step
 */
public record WashOff(
    int step,
    List<String> dyes,
    boolean rinsed,
    boolean washed,
    Span rinsedFor,
    Optional<Temperature> firstRinse,
    Optional<Temperature> hottestWash,
    Temperature careful,
    Limit hot,
    Temperature stands,
    Temperature machine,
    PlanPath path)
    implements Evidence {

  public WashOff {
    dyes = List.copyOf(dyes);
  }

  /** The first rinse in °C; not a number if there is none. */
  public double firstCelsius() {
    return firstRinse.map(Temperature::celsius).orElse(Double.NaN);
  }

  /** The hottest wash in °C; not a number if there is none. */
  public double hottestCelsius() {
    return hottestWash.map(Temperature::celsius).orElse(Double.NaN);
  }
}
