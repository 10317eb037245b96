package strikeoff.policy;

import java.util.List;
import java.util.Optional;
import strikeoff.units.Range;

/**
 * Something that is weighed or spooned into a paste or a bath.
 *
 * @param role what it does there
 * @param gramsPerMl bulk density of a powder or density of a liquid, with its range; empty if only
 *     masses make sense
 * @param alkaliFactor mass of anhydrous soda ash that gives the same alkali as one gram of it;
 *     empty if it is no soda
 */
public record Substance(
    String name,
    List<String> aliases,
    Role role,
    Optional<Range> gramsPerMl,
    Optional<Double> alkaliFactor,
    String source) {

  public Substance {
    aliases = List.copyOf(aliases);
  }

  /** What a substance does. */
  public enum Role {
    WATER,
    ALKALI,
    THICKENER,
    DYE,
    PIGMENT,
    BINDER,
    UREA,
    SALT,
    DETERGENT,
    OTHER
  }
}
