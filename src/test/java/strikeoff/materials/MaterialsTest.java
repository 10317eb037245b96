package strikeoff.materials;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import strikeoff.checks.Draws;
import strikeoff.checks.Worked;
import strikeoff.paste.PasteUse;
import strikeoff.plan.Ingredient;
import strikeoff.policy.Policy;
import strikeoff.policy.UsualRecipe;
import strikeoff.speech.MaterialsSpeech;
import strikeoff.units.Measures;

/** What a run takes. */
class MaterialsTest {

  private static final String DYE = "medium: dye, group: DCT, colour: green";

  /**
   * The weak end of a single-phase recipe for reactive prints, in parts per 1000: dye 10, urea 50,
   * water 420, alginate stock of 5 % 500, resist salt 10, bicarbonate 10 (a lecture note on
   * reactive printing). The stock written out is 25 of alginate and 475 of water, and all adds up
   * to 1000.
   */
  private static final String PUBLISHED =
      "recipe: {dye: 10 g, urea: 50 g, alginate: 25 g, water: 895 g, resist salt: 10 g,"
          + " bicarbonate: 10 g}";

  private static final String PRINTED =
      """
      - mix: all
      - print: reeds
      - dry: until fix-safe
      """;

  private static final String SOAKED =
      """
      - fix: soak
        bath: {soda ash: 200 g, urea: 100 g, water: 5 L}
        for: 60 min
      """;

  private static Materials of(Worked worked) {
    return of(worked, Worked.POLICY);
  }

  private static Materials of(Worked worked, Policy policy) {
    return Materials.of(worked.plan(), worked.facts().timeline(), policy);
  }

  private static Purchase bought(Materials materials, String name) {
    return materials.purchases().stream()
        .filter(purchase -> MaterialsSpeech.name(purchase).equals(name))
        .findFirst()
        .orElseThrow();
  }

  /** A quarter of the published recipe is 250 g; by hand. */
  @Test
  void aBatchIsWeighedAsThePublishedRecipeSays() {
    Materials materials = of(Worked.reeds(DYE + ", amount: 250 g, " + PUBLISHED, PRINTED));
    assertThat(materials.weighings()).hasSize(1);
    Weighing batch = materials.weighings().get(0);
    assertThat(batch.amount().orElseThrow().grams()).isEqualTo(250);
    assertThat(batch.recipe()).isEqualTo(Weighing.Recipe.PLAN);
    assertThat(batch.parts())
        .extracting(WeighedPart::name, part -> part.grams().best())
        .containsExactly(
            tuple("dye", 2.5),
            tuple("urea", 12.5),
            tuple("alginate", 6.25),
            tuple("water", 223.75),
            tuple("resist salt", 2.5),
            tuple("bicarbonate", 2.5));
  }

  /** 12.5 g for the paste and 100 g for the bath are 112.5 g; with a twentieth 118.125 g. */
  @Test
  void whatPasteAndBathTakeIsBoughtTogether() {
    Materials materials = of(Worked.reeds(DYE + ", amount: 250 g, " + PUBLISHED, PRINTED + SOAKED));
    Purchase urea = bought(materials, "urea");
    assertThat(urea.grams().best()).isEqualTo(112.5);
    assertThat(urea.toBuy()).isCloseTo(118.125, within(1e-9));
    assertThat(MaterialsSpeech.toBuy(urea, Measures.METRIC)).isEqualTo("119 g");
    assertThat(MaterialsSpeech.shares(urea, Measures.METRIC))
        .isEqualTo("green 13 g; bath of the soak 100 g");
    assertThat(bought(materials, "soda ash").toBuy()).isCloseTo(210, within(1e-9));
    // 223.75 ml and 5 L from the tap
    assertThat(bought(materials, "water, from the tap").litresToBuy().orElseThrow())
        .isCloseTo(5.224, within(0.003));
    assertThat(materials.purchases().get(materials.purchases().size() - 1).isWater()).isTrue();
  }

  /** Two pastes have a dye each, and their urea from one bag. */
  @Test
  void dyesAreBoughtEachForItsPaste() {
    Materials materials =
        of(
            Worked.reeds(
                """
                pastes:
                  green: {medium: dye, group: DCT, colour: green, recipe: {dye: 6 g, urea: 20 g, water: 174 g}}
                  brown: {medium: dye, group: DCT, colour: brown, recipe: {dye: 3 g, urea: 20 g, water: 177 g}}
                designs:
                  reeds: {size: 30 x 22 cm, separations: [{screen: reeds, paste: green, covers: 20 %}]}
                  stems: {size: 30 x 22 cm, separations: [{screen: reeds, paste: brown, covers: 20 %}]}
                placements:
                  reeds: {design: reeds, series: 2, pitch: 60 cm, start: 10 cm, across: 10 cm}
                  stems: {design: stems, series: 2, pitch: 60 cm, start: 10 cm, across: 50 cm}
                run:
                  - mix: all
                  - print: all
                """));
    assertThat(bought(materials, "dye for green").grams().best()).isEqualTo(6);
    assertThat(bought(materials, "dye for brown").grams().best()).isEqualTo(3);
    assertThat(bought(materials, "urea").grams().best()).isEqualTo(40);
  }

  /** Spoons are uncertain: what is bought is enough for the densest powder. */
  @Test
  void aSpoonedPowderIsBoughtForItsDensest() {
    Materials materials =
        of(Worked.reeds(DYE + ", recipe: {dye: 3 g, urea: 1 cup, water: 320 g}", PRINTED));
    Purchase urea = bought(materials, "urea");
    // 1 US cup of 236.6 ml at 0.69 to 0.84 g/ml
    assertThat(urea.grams().low()).isCloseTo(163.2, within(0.1));
    assertThat(urea.grams().high()).isCloseTo(198.7, within(0.1));
    assertThat(urea.toBuy()).isCloseTo(198.7 * 1.05, within(0.1));
  }

  @Test
  void ofAPasteWithoutARecipeOnlyTheMassIsKnown() {
    Worked worked = Worked.reeds(DYE, PRINTED);
    Materials materials = of(worked);
    double enough = worked.the(PasteUse.class).toMix().grams();
    Weighing batch = materials.weighings().get(0);
    assertThat(batch.recipe()).isEqualTo(Weighing.Recipe.UNKNOWN);
    assertThat(batch.parts()).isEmpty();
    assertThat(batch.amount().orElseThrow().grams()).isEqualTo(enough);
    assertThat(materials.purchases()).hasSize(1);
    assertThat(materials.purchases().get(0).isPaste()).isTrue();
    assertThat(materials.purchases().get(0).toBuy()).isEqualTo(enough);
    assertThat(MaterialsSpeech.unknown(materials))
        .startsWith("Not known is what goes into green: ");
  }

  @Test
  void aPlanWithoutARunTakesNothing() {
    Materials materials = of(Worked.of("plan: bare\ncloth: {length: 1 m, width: 1 m}\n"));
    assertThat(materials.weighings()).isEmpty();
    assertThat(materials.purchases()).isEmpty();
  }

  private static Policy usual(UsualRecipe.For use) {
    // Any recipe of a plan serves: its parts are read as a studio's are.
    List<Ingredient> parts =
        Worked.reeds(DYE + ", " + PUBLISHED, PRINTED).plan().pastes().get("green").recipe();
    return Worked.POLICY.with(Map.of(use, new UsualRecipe(parts, "studio.yaml, line 3")));
  }

  /** 400 g are two fifths of the published recipe. */
  @Test
  void theStudiosUsualRecipeStandsInForThePlans() {
    Worked worked = Worked.reeds(DYE + ", alkali: in paste, amount: 400 g", PRINTED);
    Materials materials = of(worked, usual(UsualRecipe.For.DYE_WITH_ALKALI));
    Weighing batch = materials.weighings().get(0);
    assertThat(batch.recipe()).isEqualTo(Weighing.Recipe.STUDIO);
    assertThat(MaterialsSpeech.recipe(batch))
        .isEqualTo("by the studio's usual recipe (studio.yaml, line 3)");
    assertThat(batch.parts())
        .extracting(part -> Math.round(part.grams().best() * 100) / 100.0)
        .containsExactly(4.0, 20.0, 10.0, 358.0, 4.0, 4.0);
    // A recipe for another kind of paste says nothing of this one.
    assertThat(of(worked, usual(UsualRecipe.For.DYE)).weighings().get(0).parts()).isEmpty();
    assertThat(of(worked, usual(UsualRecipe.For.PAINT)).weighings().get(0).parts()).isEmpty();
  }

  private static final String TWICE =
      """
      - mix: green
      - print: reeds
        only: [1, 2]
      - end of day
      - mix: green
      - print: reeds
        only: [3]
      """;

  /** Each mixing is for what is printed until the next one, as if that were a plan of its own. */
  @Test
  void whereNoAmountIsStatedEachMixingIsForItsOwnPrints() {
    Materials materials = of(Worked.reeds(DYE + ", alkali: in paste", TWICE));
    assertThat(materials.weighings())
        .extracting(MaterialsSpeech::when)
        .containsExactly("step 1: day 1, 09:15", "step 4: day 2, 09:00");
    double[] alone =
        List.of("[1, 2]", "[3]").stream()
            .mapToDouble(
                only ->
                    Worked.reeds(
                            DYE + ", alkali: in paste",
                            "- mix: green\n- print: reeds\n  only: " + only + "\n")
                        .the(PasteUse.class)
                        .toMix()
                        .grams())
            .toArray();
    assertThat(materials.weighings())
        .extracting(weighing -> weighing.amount().orElseThrow().grams())
        .containsExactly(alone[0], alone[1]);
  }

  @Test
  void aStatedAmountIsMixedEachTime() {
    Materials materials = of(Worked.reeds(DYE + ", amount: 100 g, " + PUBLISHED, TWICE));
    assertThat(materials.weighings())
        .extracting(weighing -> weighing.amount().orElseThrow().grams())
        .containsExactly(100.0, 100.0);
    assertThat(bought(materials, "urea").grams().best()).isCloseTo(10, within(1e-9));
  }

  @Test
  void whatWasMixedBeforeIsWeighedBefore() {
    Materials materials =
        of(
            Worked.reeds(
                DYE + ", amount: 100 g, mixed before: 12 h, " + PUBLISHED, "- print: reeds\n"));
    assertThat(materials.weighings()).hasSize(1);
    assertThat(MaterialsSpeech.when(materials.weighings().get(0)))
        .isEqualTo("before the run: no step mixes it");
  }

  /** Parts add up to the batch, and what is bought is never less than what is weighed. */
  @Property(seed = Draws.ALIKE, tries = 30)
  void partsMakeTheirBatch(
      @ForAll @IntRange(min = 20, max = 2000) int amount,
      @ForAll @IntRange(min = 1, max = 90) int dye,
      @ForAll @IntRange(min = 1, max = 300) int urea) {
    Materials materials =
        of(
            Worked.reeds(
                DYE
                    + ", amount: "
                    + amount
                    + " g, recipe: {dye: "
                    + dye
                    + " g, urea: "
                    + urea
                    + " g, water: 500 g}",
                PRINTED));
    Weighing batch = materials.weighings().get(0);
    assertThat(batch.parts().stream().mapToDouble(part -> part.grams().best()).sum())
        .isCloseTo(amount, within(1e-6));
    for (Purchase purchase : materials.purchases()) {
      assertThat(purchase.toBuy()).isGreaterThanOrEqualTo(purchase.grams().high());
    }
  }
}
