package strikeoff.policy;

import java.util.List;
import java.util.Optional;
import strikeoff.units.Mass;
import strikeoff.units.Quantity;
import strikeoff.units.Range;
import strikeoff.units.Volume;

/**
 * Something that is weighed or spooned into a paste or a bath.
 *
 * @param role what it does there
 * @param gramsPerMl bulk density of a powder or density of a liquid, with its range; empty if only
 *     masses make sense
 * @param alkaliFactor mass of anhydrous soda ash that gives the same alkali as one gram of it, or
 *     of an acid the mass that one gram uses up; empty if it is neither soda nor acid
 * @param sulphate true for a salt that is a sulphate
 */
public record Substance(
    String name,
    List<String> aliases,
    Role role,
    Optional<Range> gramsPerMl,
    Optional<Double> alkaliFactor,
    boolean sulphate,
    String source) {

  /** Kitchen powders, from loose starch to fine salt, g/ml. Common practice, no source. */
  private static final Range ANY_POWDER = new Range(0.3, 0.7, 1.3);

  public Substance {
    aliases = List.copyOf(aliases);
  }

  /** Baking soda is an alkali of its own: cold, no amount of it makes soda ash. */
  public boolean bicarbonate() {
    return role == Role.ALKALI && name.contains("bicarbonate");
  }

  /** Silicate liquid, a stronger alkali than any soda. */
  public boolean silicate() {
    return role == Role.ALKALI && name.contains("silicate");
  }

  /**
   * The mass of an amount, in grams: as weighed, or from its volume through the bulk density. A
   * powder whose density isn't known lies between a fluffy and a dense one.
   */
  public Range grams(Quantity amount) {
    if (amount instanceof Volume volume) {
      return gramsPerMl.orElse(ANY_POWDER).times(volume.ml());
    }
    return Range.exactly(((Mass) amount).grams());
  }

  /**
   * The volume of an amount, in millilitres: as measured, or from its mass; empty for a mass of
   * something without a density.
   */
  public Optional<Range> millilitres(Quantity amount) {
    if (amount instanceof Volume volume) {
      return Optional.of(Range.exactly(volume.ml()));
    }
    double grams = ((Mass) amount).grams();
    return gramsPerMl.map(d -> new Range(grams / d.high(), grams / d.best(), grams / d.low()));
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
    ACID,
    DETERGENT,
    OTHER
  }
}
