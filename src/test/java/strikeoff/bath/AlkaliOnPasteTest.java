package strikeoff.bath;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import strikeoff.checks.Worked;
import strikeoff.speech.BathSpeech;
import strikeoff.units.Measures;

/** What alkali does in a paste: to silk, and to the paste's own life. Worked out by hand. */
class AlkaliOnPasteTest {

  @Test
  void sodaIsToldForALitreOfPasteOnSilkAlone() {
    // 4 g in 6 + 20 + 6 + 4 + 164 = 200 g: 20 g/kg, at 1050 g/L 21 g/L
    SodaInPaste soda = run("silk", "soda ash: 4 g", "1 min").the(SodaInPaste.class);
    assertThat(soda.proteinFibres()).containsExactly("silk");
    assertThat(soda.sodaGramsPerLitre().best()).isBetween(20.9, 21.2);
    assertThat(run("cotton", "soda ash: 4 g", "1 min").all(SodaInPaste.class)).isEmpty();
    assertThat(run("silk", "baking soda: 4 g", "1 min").all(SodaInPaste.class)).isEmpty();
  }

  @Test
  void aSoakIsNamedFirstWhereSodaWouldKillThePaste() {
    // dichlorotriazine lives 60 min with alkali, stated for the table's 20 °C
    // a wait of 90 min, which runs from before the paste is ready
    AlkaliForDye slow = run("cotton", "", "90 min").the(AlkaliForDye.class, AsRulesAsk::noAlkali);
    assertThat(slow.shortLived()).hasSize(1);
    assertThat(slow.shortLived().get(0).needed().minutes()).isBetween(60.0, 100.0);
    assertThat(slow.shortLived().get(0).lifeMinutes().best()).isCloseTo(60, within(1e-6));
    assertThat(BathSpeech.mending(slow, Measures.METRIC))
        .startsWith("Soak the cloth in soda before");
    AlkaliForDye quick = run("cotton", "", "1 min").the(AlkaliForDye.class, AsRulesAsk::noAlkali);
    assertThat(quick.shortLived()).isEmpty();
    assertThat(BathSpeech.mending(quick, Measures.METRIC))
        .startsWith("Put the alkali into the paste");
  }

  private static Worked run(String fibre, String part, String wait) {
    return Worked.of(
        """
        plan: test
        cloth: {fibre: FIBRE, mass: 180 g/m², length: 2 m, width: 1 m, washed: yes}
        room: {temperature: 20 °C, humidity: 60 %}
        screens:
          reeds: {frame: 50 x 44 cm, image: 31 x 24 cm, mesh: 43/cm}
        pastes:
          green:
            medium: dye
            group: DCT
            colour: green
            recipe: {dye: 6 g, urea: 20 g, alginate: 6 g, water: 164 ml PART}
        designs:
          reeds: {size: 30 x 22 cm, separations: [{screen: reeds, paste: green, covers: 40 %}]}
        placements:
          reeds: {design: reeds, at: "20 cm, 30 cm"}
        run:
          - mix: all
          - dry: WAIT
          - print: reeds
          - dry: until fix-safe
          - fix: steam
            for: 20 min
        """
            .replace("FIBRE", fibre)
            .replace("PART", part.isEmpty() ? "" : ", " + part)
            .replace("WAIT", wait));
  }
}
