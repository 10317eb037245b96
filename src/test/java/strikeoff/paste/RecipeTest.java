package strikeoff.paste;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import strikeoff.checks.Check;
import strikeoff.checks.CheckRow;
import strikeoff.checks.CheckRow.Status;
import strikeoff.checks.Worked;
import strikeoff.speech.PasteSpeech;
import strikeoff.units.Measures;

/** Recipes: their sums and their thickener. */
public class RecipeTest {

  private static final String PAGE = "textile-education page on printing with reactive dyes";
  private static final String NOTE = "lecture note on reactive printing";

  /** Published recipes in parts of 1000; their thickening stands for itself by its mass. */
  public static List<Check> checks() {
    List<Check> checks = new ArrayList<>();
    sum(checks, "single-phase, pale", NOTE, 10, 50, 420, 500, 10, 10, 1000);
    sum(checks, "single-phase, deep", NOTE, 80, 150, 245, 500, 10, 15, 1000);
    sum(checks, "DCT steaming, deep", PAGE, 80, 75, 410, 400, 10, 25, 1000);
    sum(checks, "DCT steaming, pale as printed", PAGE, 10, 50, 520, 400, 10, 25, 1015);
    sum(checks, "dry heat, deep", PAGE, 50, 200, 325, 400, 10, 15, 1000);
    sum(checks, "dry heat, pale as printed", PAGE, 5, 150, 405, 400, 10, 15, 985);
    checks.add(
        new Check(
            new CheckRow(
                "alginate in paste, % by mass",
                "500 g of a 5 % stock in 1000 g", 2.5, 1e-9, NOTE, Status.COMPUTED),
            () -> {
              ThickenerStrength is =
                  recipe("dye: 30 g, urea: 100 g, alginate: 25 g, water: 845 g")
                      .the(ThickenerStrength.class);
              return 100 * is.thickenerGrams().best() / is.batchGrams().best();
            }));
    checks.add(
        new Check(
            new CheckRow(
                "thinnest paste, % w/v",
                "high-viscosity alginate, 2.5 % ± 0.5, or 2 % ± 0.5 in whole paste",
                2,
                0.5,
                "journal abstract, 2022-23",
                Status.PUBLISHED),
            () -> 100 * Worked.POLICY.limit("paste/thinnest").amount()));
    checks.add(
        new Check(
            new CheckRow(
                "thickest paste, % w/v",
                "low-viscosity alginate",
                8,
                1.000001,
                "Adv. Polym. Technol. 20(1):58, 2001",
                Status.PUBLISHED),
            () -> 100 * Worked.POLICY.limit("paste/thickest").amount()));
    return checks;
  }

  private static void sum(
      List<Check> checks,
      String recipe,
      String source,
      int dye,
      int urea,
      int water,
      int thickening,
      int oxidant,
      int bicarbonate,
      double total) {
    String parts =
        "dye: %d g, urea: %d g, water: %d g, alginate: %d g, resist salt: %d g, bicarbonate: %d g"
            .formatted(dye, urea, water, thickening, oxidant, bicarbonate);
    checks.add(
        new Check(
            new CheckRow("recipe's parts, g", recipe, total, 1e-9, source, Status.PUBLISHED),
            () -> summed("amount: 1 kg, recipe: {" + parts + "}").sumGrams().best()));
  }

  @ParameterizedTest
  @MethodSource("checks")
  void recipesAddUpAsPublished(Check check) {
    check.assertHolds();
  }

  @Test
  void aRecipeThatIsShortSaysByHowMuch() {
    RecipeSum sum = summed("amount: 200 g, recipe: {dye: 3 g, urea: 10 g, water: 87 g}");
    assertThat(sum.missing().grams()).isCloseTo(100, within(1e-9));
    assertThat(sum.offShare().fraction()).isCloseTo(0.5, within(1e-9));
    assertThat(PasteSpeech.difference(sum, Measures.METRIC)).isEqualTo("100 g too little");
  }

  /** A cup of urea is 163 to 199 g: the amount lies inside what the recipe may weigh. */
  @Test
  void aRecipeInCupsIsNotOffWithinItsRange() {
    RecipeSum sum = summed("amount: 500 g, recipe: {urea: 1 cup, water: 320 g}");
    assertThat(sum.offShare().fraction()).isZero();
  }

  @Test
  void withoutAnAmountTheRecipesSumIsTheBatch() {
    Worked worked = recipe("dye: 3 g, urea: 10 g, alginate: 2 g, water: 85 g");
    assertThat(worked.the(PasteUse.class).mixedGrams().orElseThrow().best())
        .isCloseTo(100, within(1e-9));
  }

  @Test
  void moreAlginateIsThickerByEveryEstimate() {
    ThickenerStrength two = strength("2 g");
    ThickenerStrength three = strength("3 g");
    assertThat(three.share().low()).isGreaterThan(two.share().high());
    assertThat(two.share().best()).isCloseTo(0.021, within(0.001));
  }

  @Test
  void aSpoonOfAlginateIsARange() {
    ThickenerStrength spoon = strength("1 tsp");
    assertThat(spoon.share().low()).isLessThan(spoon.share().best());
    assertThat(spoon.share().high()).isGreaterThan(spoon.share().best());
  }

  private static ThickenerStrength strength(String alginate) {
    return recipe("dye: 3 g, urea: 10 g, alginate: " + alginate + ", water: 85 g")
        .the(ThickenerStrength.class);
  }

  private static RecipeSum summed(String rest) {
    return Worked.reeds("medium: dye, group: DCT, colour: green, " + rest, PRINT)
        .the(RecipeSum.class);
  }

  private static Worked recipe(String parts) {
    return Worked.reeds("medium: dye, group: DCT, colour: green, recipe: {" + parts + "}", PRINT);
  }

  private static final String PRINT =
      """
      - mix: all
      - print: reeds
      """;
}
