package strikeoff.start;

import java.util.ArrayList;
import java.util.List;
import strikeoff.document.Scalars;
import strikeoff.units.Span;
import strikeoff.units.Temperature;

/** What a first plan wears, mixes in and does to fix its colours. */
final class FixingText {

  private static final double LITRES_IN_QUART = 0.946352946;
  private static final double LITRES_PER_GRAM = 0.04;

  private final FixingMethod fixing;
  private final boolean dye;
  private final PlanNumbers numbers;
  private final List<String> lines = new ArrayList<>();

  FixingText(FixingMethod fixing, boolean dye, PlanNumbers numbers) {
    this.fixing = fixing;
    this.dye = dye;
    this.numbers = numbers;
  }

  String protection() {
    return dye
        ? fixing == FixingMethod.STEAM
            ? "protection: [dust mask, gloves, goggles, heat gloves]"
            : "protection: [dust mask, gloves, goggles]"
        : "protection: [gloves, heat gloves]";
  }

  /** A paste of that colour, in braces. */
  String paste(String colour) {
    String medium = dye ? "medium: dye, group: dichlorotriazine" : "medium: paint";
    String alkali = fixing == FixingMethod.STEAM ? ", recipe: " + recipe() : "";
    return "{" + medium + ", colour: " + Scalars.quoted(colour) + alkali + "}";
  }

  /** The steps from the dry print on. */
  List<String> steps(double clothGrams) {
    lines.clear();
    add("  - dry: until fix-safe");
    switch (fixing) {
      case SOAK -> soak(UsualFixing.SODA_GRAMS_PER_LITRE, clothGrams);
      case GENTLE_SOAK, GENTLE_SOAK_AND_WASH ->
          soak(UsualFixing.GENTLE_SODA_GRAMS_PER_LITRE, clothGrams);
      case STEAM -> {
        add("  - fix: steam            # baking soda in the paste makes the dye join the fibre");
        add("    for: " + UsualFixing.STEAMED.text());
      }
      case HOT_IRON -> iron(UsualFixing.HOT_IRON, UsualFixing.HOT_IRONED);
      case COOL_IRON -> iron(UsualFixing.COOL_IRON, UsualFixing.COOL_IRONED);
    }
    if (dye) {
      add("  - rinse: " + numbers.warmth(20, 70));
      Temperature wash =
          fixing == FixingMethod.GENTLE_SOAK_AND_WASH ? new Temperature(40) : UsualFixing.HOT_WASH;
      add("  - wash: " + wash.text(numbers.units()));
    }
    return List.copyOf(lines);
  }

  private void iron(Temperature warm, Span lasts) {
    add("  - heat-set: iron        # as the paint's label says");
    add("    temperature: " + warm.enough(numbers.units()));
    add("    for: " + lasts.text());
  }

  private void soak(double gramsPerLitre, double clothGrams) {
    double wanted = Math.max(UsualFixing.LEAST_LITRES, clothGrams * LITRES_PER_GRAM);
    double unit = numbers.isMetric() ? 1 : LITRES_IN_QUART;
    long water = (long) Math.ceil(wanted / unit);
    add("  - fix: soak             # soda makes the dye join the fibre");
    add(
        "    bath: {soda ash: "
            + numbers.weighed(water * unit * gramsPerLitre)
            + ", salt: "
            + numbers.weighed(water * unit * UsualFixing.SALT_GRAMS_PER_LITRE)
            + ", water: "
            + water
            + (numbers.isMetric() ? " L" : " US quarts")
            + "}");
    add("    temperature: " + numbers.warmth(30, 90));
    add("    for: 60 min");
  }

  private String recipe() {
    return "{dye: "
        + numbers.weighed(15)
        + ", urea: "
        + numbers.weighed(50)
        + ", alginate: "
        + numbers.weighed(12)
        + ", baking soda: "
        + numbers.weighed(10)
        + ", water: "
        + numbers.weighed(420)
        + "}";
  }

  private void add(String line) {
    lines.add(line);
  }
}
