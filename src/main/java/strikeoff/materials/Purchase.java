package strikeoff.materials;

import java.util.List;
import java.util.Optional;
import strikeoff.policy.Substance;
import strikeoff.units.Range;

/**
 * What a run takes of one thing in all.
 *
 * @param name in the words of the recipe that names it first; of a paste that nobody has a recipe
 *     for, the paste's
 * @param substance empty for such a paste
 * @param paste of a dye or pigment, which is another one in each paste
 * @param grams in all, weighed out
 * @param toBuy grams that are enough by the most careful estimate, with the share that is spilt
 * @param litresToBuy the same, where each recipe measures it by volume, and for water; else empty
 * @param shares for which paste or bath how much, in the order of the run
 */
public record Purchase(
    String name,
    Optional<Substance> substance,
    Optional<String> paste,
    Range grams,
    double toBuy,
    Optional<Double> litresToBuy,
    List<Share> shares) {

  public Purchase {
    shares = List.copyOf(shares);
  }

  /** A paste as a whole, since nobody says what it is mixed from. */
  public boolean isPaste() {
    return substance.isEmpty();
  }

  /** From the tap. */
  public boolean isWater() {
    return substance.filter(s -> s.role() == Substance.Role.WATER).isPresent();
  }

  /** What one paste, or one bath, takes of it. */
  public record Share(Weighing.Kind kind, String name, Range grams) {}
}
