package strikeoff.cloth;

import java.util.List;
import java.util.stream.Stream;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.plan.PrintPlan;
import strikeoff.policy.Policy;
import strikeoff.units.ArealMass;

/**
 * The cloth's mass as it was read, and what else may have been meant by it.
 *
 * @param lightest cloth that is printed, by the policy
 * @param heaviest likewise
 * @param meant other readings that are cloth: a figure more or less, ounces for grams or grams for
 *     ounces
 * @param square grams that a square of 10 by 10 cm of it would weigh
 */
public record ClothMass(
    ArealMass mass,
    ArealMass lightest,
    ArealMass heaviest,
    List<Reading> meant,
    double square,
    PlanPath path)
    implements Evidence {

  /** One ounce for a square yard, from the exact yard and ounce. */
  private static final double GRAMS_PER_SQUARE_METRE_IN_OUNCE = 33.90574747488;

  public ClothMass {
    meant = List.copyOf(meant);
  }

  public static ClothMass of(PrintPlan plan, Policy policy) {
    ArealMass mass = plan.cloth().mass();
    double number = mass.gramsPerSquareMetre();
    double ounces = number / GRAMS_PER_SQUARE_METRE_IN_OUNCE;
    ArealMass lightest = policy.cloth().lightest();
    ArealMass heaviest = policy.cloth().heaviest();
    return new ClothMass(
        mass.told(),
        lightest,
        heaviest,
        Stream.of(
                new Reading(Meant.TENFOLD, new ArealMass(number * 10)),
                new Reading(Meant.A_TENTH, new ArealMass(number / 10)),
                new Reading(Meant.GRAMS, new ArealMass(ounces)),
                new Reading(Meant.OUNCES, new ArealMass(number * GRAMS_PER_SQUARE_METRE_IN_OUNCE)))
            .filter(reading -> reading.isBetween(lightest, heaviest))
            .toList(),
        number / 100,
        plan.cloth().path().key("mass"));
  }

  /** What may have been meant by a figure. */
  public enum Meant {
    TENFOLD,
    A_TENTH,
    /** What is written as ounces for a square yard is grams for a square metre. */
    GRAMS,
    /** The other way round. */
    OUNCES
  }

  /** What may have been meant, and what the cloth weighs then. */
  public record Reading(Meant meant, ArealMass mass) {

    boolean isBetween(ArealMass lightest, ArealMass heaviest) {
      return mass.gramsPerSquareMetre() >= lightest.gramsPerSquareMetre()
          && mass.gramsPerSquareMetre() <= heaviest.gramsPerSquareMetre();
    }
  }
}
