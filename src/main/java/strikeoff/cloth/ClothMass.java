package strikeoff.cloth;

import java.util.List;
import java.util.stream.Stream;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.plan.PrintPlan;
import strikeoff.policy.Policy;
import strikeoff.units.ArealMass;
import strikeoff.units.Mass;
import strikeoff.units.MeasureKind;
import strikeoff.units.Measures;
import strikeoff.units.Numbers;
import strikeoff.units.UnitSystem;

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
    List<String> meant,
    double square,
    PlanPath path)
    implements Evidence {

  /** One ounce for a square yard, from the exact yard and ounce. */
  private static final double GRAMS_PER_SQUARE_METRE_IN_OUNCE = 33.90574747488;

  private static final double SQUARE_INCH_IN_SQUARE_DM = 0.064516;

  public ClothMass {
    meant = List.copyOf(meant);
  }

  public static ClothMass of(PrintPlan plan, Policy policy) {
    ArealMass mass = plan.cloth().mass();
    Measures units = plan.measures();
    double number = mass.gramsPerSquareMetre();
    double ounces = number / GRAMS_PER_SQUARE_METRE_IN_OUNCE;
    double asOunces = number * GRAMS_PER_SQUARE_METRE_IN_OUNCE;
    ArealMass lightest = policy.cloth().lightest();
    ArealMass heaviest = policy.cloth().heaviest();
    return new ClothMass(
        mass.told(),
        lightest,
        heaviest,
        Stream.of(
                new Reading(number * 10, new ArealMass(number * 10).text(units)),
                new Reading(number / 10, new ArealMass(number / 10).text(units)),
                new Reading(ounces, otherwise(ounces, " g/m²", ounces, units)),
                new Reading(asOunces, otherwise(number, " oz/yd²", asOunces, units)))
            .filter(reading -> reading.isBetween(lightest, heaviest))
            .map(Reading::text)
            .toList(),
        number / 100,
        plan.cloth().path().key("mass"));
  }

  /** A figure in the unit that may be meant, and in the plan's where that is another one. */
  private static String otherwise(double figure, String unit, double grams, Measures units) {
    String meant = Numbers.plain(figure, 1) + unit;
    String told = new ArealMass(grams).text(units);
    return told.endsWith(unit) ? told : meant + ", which is " + told;
  }

  private record Reading(double grams, String text) {

    boolean isBetween(ArealMass lightest, ArealMass heaviest) {
      return grams >= lightest.gramsPerSquareMetre() && grams <= heaviest.gramsPerSquareMetre();
    }
  }

  /** What to ask oneself, as an instruction without a full stop. */
  public String asking(Measures units) {
    boolean inches = units.of(MeasureKind.LENGTH) != UnitSystem.METRIC;
    return (meant.isEmpty() ? "" : "Is it " + String.join(", or ", meant) + "? ")
        + "Weigh a square of "
        + (inches ? "4 by 4 in" : "10 by 10 cm")
        + ", which at "
        + mass.text(units)
        + " would weigh "
        + square(units, inches)
        + ", and write `mass` by what it does weigh";
  }

  /** A hundredth of a gram counts. */
  private String square(Measures units, boolean inches) {
    Mass weighs = new Mass(inches ? square * 4 * 4 * SQUARE_INCH_IN_SQUARE_DM : square);
    return units.of(MeasureKind.MASS) == UnitSystem.METRIC
        ? Numbers.plain(weighs.grams(), 2) + " g"
        : weighs.text(units);
  }
}
