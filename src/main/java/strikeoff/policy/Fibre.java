package strikeoff.policy;

import java.util.List;
import java.util.Optional;
import strikeoff.units.Ratio;
import strikeoff.units.Share;
import strikeoff.units.Span;
import strikeoff.units.Temperature;

/**
 * A fibre.
 *
 * @param takesDye share of reactive dye it takes with alkali: 1 for cellulose, 0 for polyester
 * @param cellulose true if alkali at soak strength does it no harm
 * @param warmestWash hottest water that does it no harm
 * @param usualWash how hot it is washed at the most where its look counts; empty where nothing asks
 *     for less than {@code warmestWash}
 * @param standsSoda how long it may lie in soda; empty where that is the same as for others
 * @param feltsFrom water of that heat felts it once it is moved; empty for fibres that don't felt
 * @param heatHarms dry heat of some minutes harms it above that
 * @param heatSpoils dry heat of some minutes spoils it above that
 * @param softens true if heat softens it, so that it sticks to what is too hot; others scorch
 * @param ureaFactor how many times the urea of cotton a paste for it holds
 * @param countsFrom share of a blend from which on it sets a limit; empty where that is the same as
 *     for others
 * @param uptake water that pores and fibres of a cloth of it take up under a print from one face,
 *     as a share of its dry mass
 */
public record Fibre(
    String name,
    List<String> aliases,
    Share takesDye,
    boolean cellulose,
    Share uptake,
    Temperature warmestWash,
    Optional<Temperature> usualWash,
    Optional<Span> standsSoda,
    Optional<Temperature> feltsFrom,
    Temperature heatHarms,
    Temperature heatSpoils,
    boolean softens,
    Ratio ureaFactor,
    Optional<Share> countsFrom,
    String source) {

  public Fibre {
    aliases = List.copyOf(aliases);
  }

  /** True if it takes dye and strong alkali harms it, as wool and silk. */
  public boolean protein() {
    return !cellulose && takesDye.fraction() > 0;
  }

  /** How hot a careful washer washes it. */
  public Temperature advisedWash() {
    return usualWash.orElse(warmestWash);
  }
}
