package strikeoff.policy;

import java.util.List;
import strikeoff.units.Share;

/**
 * A fibre.
 *
 * @param takesDye share of reactive dye it takes with alkali: 1 for cellulose, 0 for polyester
 * @param cellulose true if alkali at soak strength does it no harm
 * @param waterPickUp water a cloth of it takes up at once, as a share of its dry mass
 */
public record Fibre(
    String name,
    List<String> aliases,
    Share takesDye,
    boolean cellulose,
    Share waterPickUp,
    String source) {

  public Fibre {
    aliases = List.copyOf(aliases);
  }
}
