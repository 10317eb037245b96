package strikeoff.care;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import strikeoff.checks.Worked;
import strikeoff.plan.Protection;

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
        .containsExactly("1 DYE_POWDER", "1 VESSELS", "4 ALKALI", "4 DRAIN");
    assertThat(cautions.get(2).figures()).isEqualTo("200 g of soda ash");
    assertThat(cautions.get(3).figures()).startsWith("pH 11.");
    assertThat(cautions).allSatisfy(c -> assertThat(c.body()).isNotBlank());
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
    assertThat(cautions).extracting(Caution::hazard).containsExactly(Hazard.HOT_IRON);
    assertThat(cautions.get(0).missing()).containsExactly(Protection.HEAT_GLOVES);
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
        .containsExactly(Hazard.DYE_POWDER, Hazard.ALKALI, Hazard.VESSELS);
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
        .isEmpty();
    assertThat(Worked.reeds(DYE + ", recipe: {dye: 2 g, water: 98 g}", print).all(Exposure.class))
        .extracting(Exposure::hazard)
        .containsExactly(Hazard.DYE_POWDER, Hazard.VESSELS);
  }

  private static Exposure exposure(List<Exposure> all, Hazard hazard) {
    return all.stream().filter(e -> e.hazard() == hazard).findFirst().orElseThrow();
  }
}
