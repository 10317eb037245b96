package strikeoff.bath;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import strikeoff.checks.Worked;
import strikeoff.chemistry.SodaSolution;
import strikeoff.speech.BathSpeech;
import strikeoff.units.Measures;

/** What a soda bath is told as, worked out by hand: 2 m² of 180 g/m² are 360 g of cloth. */
class SoakFactsTest {

  private static final String DYE = "medium: dye, group: DCT, colour: green, amount: 100 g";

  @Test
  void aBathIsSetAgainstItsClothByHand() {
    Soak soak = soak("cotton", DYE, "soda ash: 200 g, water: 5 L");
    assertThat(soak.cloth().grams()).isCloseTo(360, within(1e-9));
    assertThat(soak.liquorRatio().value()).isEqualTo(13.9);
    assertThat(soak.sodaToCloth().fraction()).isCloseTo(0.5556, within(1e-4));
    assertThat(soak.forDye()).isTrue();
    assertThat(soak.hasAlkali()).isTrue();
    assertThat(soak.bakingSoda()).isFalse();
    assertThat(soak.alkaliInPaste()).isFalse();
    assertThat(soak.proteinFibre()).isFalse();
    // 40 g / 105.99 g/mol in 0.99705 kg: 0.3785 mol/kg, at an ionic strength of about three times
    assertThat(soak.ionicStrength().orElseThrow().value()).isBetween(1.11, 1.136);
    assertThat(soak.waterToCover().litres()).isEqualTo(5);
    assertThat(soak.sodaForThat().grams()).isEqualTo(200);
    assertThat(soak.sodaToAdd().grams()).isZero();
  }

  /** Weighed grams leave only what the model itself does not know. */
  @Test
  void thePHOfAWeighedBathIsAsSureAsTheModel() {
    Soak soak = soak("cotton", DYE, "soda ash: 200 g, water: 5 L");
    double best = soak.pH().orElseThrow().best();
    assertThat(soak.lowestPh()).isCloseTo(best - SodaSolution.UNCERTAINTY, within(1e-9));
    assertThat(soak.highestPh()).isCloseTo(best + SodaSolution.UNCERTAINTY, within(1e-9));
    // between 11.44 at 0.2 and 11.58 at 0.5 mol/kg: USGS PHREEQC 3.8.9, pitzer.dat
    assertThat(best).isBetween(11.44, 11.60);
    assertThat(BathSpeech.acidity(soak, Measures.METRIC)).isEqualTo("11.3 to 11.7");
  }

  @Test
  void moreBakingSodaMeansALowerPHAtTheLowEnd() {
    Soak mixed = soak("cotton", DYE, "soda ash: 1 cup, baking soda: 1 cup, water: 8 L");
    assertThat(mixed.bakingSoda()).isTrue();
    double best = mixed.pH().orElseThrow().best();
    assertThat(best - mixed.lowestPh()).isGreaterThan(SodaSolution.UNCERTAINTY + 0.005);
    assertThat(mixed.highestPh() - best).isGreaterThan(SodaSolution.UNCERTAINTY + 0.005);
  }

  @Test
  void alkaliInThePasteAndSilkInTheClothAreSeen() {
    Soak soak =
        soak(
            "{silk: 60 %, cotton: 40 %}",
            DYE + ", alkali: in paste", "soda ash: 200 g, water: 5 L");
    assertThat(soak.alkaliInPaste()).isTrue();
    assertThat(soak.alkaliPastes()).containsExactly("green");
    assertThat(soak.proteinFibre()).isTrue();
    assertThat(soak.proteinFibres()).isEqualTo(List.of("silk"));
    // no protein, and takes no reactive dye
    assertThat(
            soak("{cotton: 50 %, polyester: 50 %}", DYE, "soda ash: 200 g, water: 5 L")
                .proteinFibre())
        .isFalse();
  }

  @Test
  void saltWaterHoldsNoAlkaliAndHasNoPH() {
    Soak salt = soak("cotton", DYE, "salt: 300 g, water: 5 L");
    assertThat(salt.hasAlkali()).isFalse();
    assertThat(salt.lowestPh()).isNaN();
    assertThat(salt.highestPh()).isNaN();
    assertThat(soak("cotton", DYE, "baking soda: 100 g, water: 5 L").hasAlkali()).isTrue();
  }

  @Test
  void aBathForPaintIsForNoDye() {
    Soak soak =
        soak("cotton", "medium: paint, colour: green, amount: 100 g", "soda ash: 9 g, water: 5 L");
    assertThat(soak.forDye()).isFalse();
  }

  private static Soak soak(String fibre, String paste, String bath) {
    return worked(fibre, paste, bath).the(Soak.class);
  }

  private static Worked worked(String fibre, String paste, String bath) {
    return Worked.of(
        """
        plan: test
        cloth: {fibre: %s, mass: 180 g/m², length: 2 m, width: 1 m, washed: yes}
        table: {length: 2.4 m, width: 1.4 m}
        screens:
          reeds: {frame: 50 x 44 cm, image: 31 x 24 cm, mesh: 43/cm, thread: 80 µm}
        pastes:
          green: {%s}
        designs:
          reeds: {size: 30 x 22 cm, separations: [{screen: reeds, paste: green, covers: 40 %%}]}
        placements:
          reeds: {design: reeds, at: "10 cm, 30 cm"}
        run:
          - mix: all
          - print: reeds
          - dry: until fix-safe
          - fix: soak
            bath: {%s}
            temperature: 25 °C
            for: 60 min
        """
            .formatted(fibre, paste, bath));
  }
}
