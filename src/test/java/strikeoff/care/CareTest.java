package strikeoff.care;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import strikeoff.checks.Worked;
import strikeoff.plan.Protection;
import strikeoff.speech.CareSpeech;
import strikeoff.speech.HazardSpeech;
import strikeoff.units.Measures;

/** Cautions stand exactly where the plan calls for them. */
class CareTest {

  private static final String DYE = "medium: dye, group: DCT, colour: green, amount: 100 g";

  @Test
  void eachHazardStandsAtItsStep() {
    List<Caution> cautions =
        Worked.reeds(
                DYE,
                """
                - mix: all
                - print: reeds
                - dry: until fix-safe
                - fix: soak
                  bath: {soda ash: 200 g, water: 5 L}
                  for: 60 min
                - rinse: 20 °C
                - wash: 60 °C
                """)
            .facts()
            .care()
            .cautions();
    assertThat(cautions)
        .extracting(c -> c.step() + " " + c.hazard())
        .containsExactly("1 DYE_POWDER", "1 VESSELS", "2 SCREEN_WASHING", "4 ALKALI", "4 DRAIN");
    assertThat(CareSpeech.figures(cautions.get(3), Measures.METRIC)).isEqualTo("200 g of soda ash");
    assertThat(CareSpeech.figures(cautions.get(4), Measures.METRIC)).startsWith("pH 11.");
  }

  @Test
  void paintCallsForHeatGlovesOnly() {
    List<Caution> cautions =
        Worked.reeds(
                "medium: paint, colour: green, amount: 100 g",
                """
                - mix: all
                - print: reeds
                - dry: until fix-safe
                - heat-set: iron
                """)
            .facts()
            .care()
            .cautions();
    assertThat(cautions)
        .extracting(Caution::hazard)
        .containsExactly(Hazard.SCREEN_WASHING, Hazard.HOT_IRON);
    assertThat(cautions.get(1).missing()).containsExactly(Protection.HEAT_GLOVES);
  }

  @Test
  void pasteThatHoldsAlkaliCallsForGoggles() {
    List<Exposure> exposures =
        Worked.reeds(
                DYE + ", alkali: in paste",
                """
                - mix: all
                - print: reeds
                """)
            .all(Exposure.class);
    assertThat(exposures)
        .extracting(Exposure::hazard)
        .containsExactly(Hazard.DYE_POWDER, Hazard.ALKALI, Hazard.VESSELS, Hazard.SCREEN_WASHING);
    assertThat(exposures.get(1).withoutGoggles()).isTrue();
  }

  @Test
  void oneMissingMaskIsOneExposureHoweverManyStepsNeedIt() {
    Exposure dye =
        Worked.reeds(
                DYE,
                """
                - mix: green
                - print: reeds
                - mix: green
                """)
            .all(Exposure.class)
            .get(0);
    assertThat(dye.withoutMask()).isTrue();
    assertThat(dye.related()).hasSize(1);
  }

  @Test
  void anExposureTellsWhatItIsAndWhatItLacks() {
    List<Exposure> bare =
        Worked.reeds(
                DYE + ", alkali: in paste",
                "- mix: all\n- print: reeds\n- fix: steam\n  for: 8 min\n")
            .all(Exposure.class);
    Exposure dye = exposure(bare, Hazard.DYE_POWDER);
    assertThat(dye.dyePowder() && dye.withoutMask() && dye.withoutGloves()).isTrue();
    assertThat(dye.alkali() || dye.heat() || dye.withoutGoggles() || dye.withoutHeatGloves())
        .isFalse();
    Exposure alkali = exposure(bare, Hazard.ALKALI);
    assertThat(alkali.alkali() && alkali.withoutGoggles() && alkali.withoutGloves()).isTrue();
    assertThat(alkali.dyePowder() || alkali.heat() || alkali.withoutMask()).isFalse();
    Exposure steam = exposure(bare, Hazard.STEAM);
    assertThat(steam.heat() && steam.withoutHeatGloves()).isTrue();
    assertThat(steam.dyePowder() || steam.alkali() || steam.withoutGloves()).isFalse();
  }

  /** A paste of alginate and water holds no dye to be weighed. */
  @Test
  void whereNoPowderIsWeighedNoMaskIsAskedFor() {
    String print = "- mix: all\n- print: reeds\n";
    assertThat(
            Worked.reeds(DYE + ", recipe: {alginate: 2 g, water: 98 g}", print).all(Exposure.class))
        .extracting(Exposure::hazard)
        .containsExactly(Hazard.SCREEN_WASHING);
    assertThat(Worked.reeds(DYE + ", recipe: {dye: 2 g, water: 98 g}", print).all(Exposure.class))
        .extracting(Exposure::hazard)
        .containsExactly(Hazard.DYE_POWDER, Hazard.VESSELS, Hazard.SCREEN_WASHING);
  }

  /** Baking soda is no soda ash; in the steam it becomes soda, which the rinse takes off. */
  @Test
  void bakingSodaAsksForNoGogglesAndStillGoesDownTheDrain() {
    String run =
        "- mix: all\n- print: reeds\n- fix: steam\n  for: 8 min\n- rinse: 20 °C\n- wash: 60 °C\n";
    String recipe = DYE + ", recipe: {dye: 2 g, bicarbonate: 2 g, water: 96 g}";
    assertThat(hazards(recipe, run))
        .containsExactly(
            "1 DYE_POWDER",
            "1 VESSELS",
            "2 SCREEN_WASHING",
            "3 STEAM steam at 101 °C",
            "4 DRAIN alkali from green");
    assertThat(hazards(recipe.replace("bicarbonate", "soda ash"), run))
        .contains("1 ALKALI", "4 DRAIN alkali from green");
    assertThat(hazards(recipe, run.replace("- fix: steam\n  for: 8 min\n", "")))
        .noneMatch(h -> h.contains("DRAIN"));
  }

  @Test
  void sodasAreCalledByTheirNames() {
    String recipe = DYE + ", recipe: {dye: 2 g, washing soda: 2 g, water: 96 g}";
    assertThat(exposure(Worked.reeds(recipe, "- mix: all\n- print: reeds\n"), Hazard.ALKALI))
        .extracting(Exposure::substances)
        .isEqualTo(List.of("washing soda"));
  }

  /** 60 °C itself is what most wash; 82 °C is not. */
  @Test
  void waterAboveSixtyDegreesScalds() {
    String run =
        "- mix: all\n- print: reeds\n- fix: soak\n  bath: {water: 5 L}\n  for: 30 min\n"
            + "  temperature: %s\n- wash: %s\n";
    assertThat(hazards(DYE, run.formatted("60 °C", "60 °C")))
        .noneMatch(h -> h.contains("HOT_WATER"));
    assertThat(hazards(DYE, run.formatted("61 °C", "82 °C")))
        .contains("3 HOT_WATER water at 61 °C", "4 HOT_WATER water at 82 °C");
  }

  @Test
  void ureaGivesOffAmmoniaInTheSteam() {
    String run = "- mix: all\n- print: reeds\n- fix: steam\n  for: 8 min\n";
    assertThat(hazards(DYE, run)).contains("3 AMMONIA urea in green");
    assertThat(hazards(DYE + ", recipe: {dye: 2 g, urea: 10 g, water: 88 g}", run))
        .contains("3 AMMONIA urea in green");
    assertThat(hazards(DYE + ", recipe: {dye: 2 g, water: 98 g}", run))
        .noneMatch(h -> h.contains("AMMONIA"));
  }

  @Test
  void movedAirOvensAndLongFramesHaveTheirCautions() {
    String paint = "medium: paint, colour: green, amount: 100 g";
    String run =
        "- mix: all\n- print: reeds\n- dry: 40 min\n  air: fan\n- heat-set: oven\n- print: reeds\n"
            + "  dry between colours: {for: 5 min, air: hair-dryer}\n";
    assertThat(hazards(paint, run))
        .contains("3 ELECTRICITY fan", "4 OVEN oven at 150 °C", "5 ELECTRICITY hair-dryer")
        .noneMatch(h -> h.contains("HOT_IRON") || h.contains("LIFTING"));
    assertThat(said(Worked.of(plan("110 x 44 cm", "[mix: all, print: reeds, wash screen: reeds]"))))
        .contains("2 LIFTING reeds, 1.1 m", "3 LIFTING reeds, 1.1 m");
    assertThat(said(Worked.of(plan("90 x 44 cm", "[mix: all, print: reeds]"))))
        .noneMatch(h -> h.contains("LIFTING"));
  }

  @Test
  void childrenAreNamedByThePlan() {
    String plan = plan("50 x 44 cm", "[mix: all, print: reeds]");
    assertThat(said(Worked.of(plan + "class: children\n"))).contains("0 CHILDREN");
    assertThat(said(Worked.of(plan + "class: adults\n"))).noneMatch(h -> h.contains("CHILDREN"));
  }

  private static String plan(String frame, String run) {
    return """
        plan: test
        cloth: {fibre: cotton, length: 2 m, width: 1 m, washed: yes}
        screens:
          reeds: {frame: %s, image: 31 x 24 cm, mesh: 43/cm}
        pastes:
          green: {%s}
        designs:
          reeds: {size: 30 x 22 cm, separations: [{screen: reeds, paste: green, covers: 40 %%}]}
        placements:
          reeds: {design: reeds, series: 3, pitch: 60 cm, start: 10 cm, across: 30 cm}
        run: %s
        """
        .formatted(frame, DYE, run);
  }

  private static List<String> hazards(String paste, String run) {
    return said(Worked.reeds(paste, run));
  }

  private static List<String> said(Worked worked) {
    return worked.facts().care().cautions().stream()
        .map(
            c ->
                (c.step() + " " + c.hazard() + " " + CareSpeech.figures(c, Measures.METRIC))
                    .strip())
        .toList();
  }

  private static Exposure exposure(Worked worked, Hazard hazard) {
    return exposure(worked.all(Exposure.class), hazard);
  }

  private static Exposure exposure(List<Exposure> all, Hazard hazard) {
    return all.stream().filter(e -> e.hazard() == hazard).findFirst().orElseThrow();
  }

  /** A sheet has a line for it, a page a paragraph. */
  @Test
  void everyHazardIsNamedInShortAndAtLength() {
    for (Hazard hazard : Hazard.values()) {
      assertThat(HazardSpeech.brief(hazard))
          .hasSizeBetween(20, 70)
          .doesNotContain(";")
          .contains(":");
      assertThat(HazardSpeech.text(hazard)).endsWith(".");
      assertThat(HazardSpeech.body(hazard)).isNotBlank();
    }
  }
}
