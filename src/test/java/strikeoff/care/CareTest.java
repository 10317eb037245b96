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
}
