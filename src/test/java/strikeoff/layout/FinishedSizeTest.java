package strikeoff.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import strikeoff.checks.Worked;
import strikeoff.speech.ClothSpeech;
import strikeoff.units.Measures;

class FinishedSizeTest {

  @Test
  void allowancesAndTheFirstWashTakeTheirPart() {
    FinishedSize size =
        of(
            "washed: no, shrinkage: {length: 5 %, width: 4 %}, finished: 90 x 90 cm, "
                + "allowances: {start: 1 cm, end: 2 cm, near: 1 cm, far: 1 cm}, length: 95 cm, width: 1 m");
    // By hand: (95 - 3) · 0.95 = 87.4, (100 - 2) · 0.96 = 94.08; 90 / 0.95 + 3 = 97.74, up to 97.8.
    assertThat(size.leftLength().cm()).isCloseTo(87.4, within(1e-9));
    assertThat(size.leftWidth().cm()).isCloseTo(94.08, within(1e-9));
    assertThat(size.lacks().cm()).isCloseTo(2.6, within(1e-9));
    assertThat(size.lengthToCut().cm()).isCloseTo(97.8, within(1e-9));
    assertThat(size.widthToCut().cm()).as("what suffices stays").isEqualTo(100);
  }

  @Test
  void washedClothLosesItsAllowancesAlone() {
    FinishedSize size = of("washed: yes, finished: 90 x 90 cm, length: 95 cm, width: 1 m");
    assertThat(size.lacks().mm()).isZero();
    assertThat(ClothSpeech.taken(size, Measures.METRIC)).isEmpty();
  }

  private static FinishedSize of(String cloth) {
    return Worked.of(
            """
            plan: test
            cloth: {fibre: cotton, mass: 180 g/m², %s}
            screens:
              one: {frame: 50 x 44 cm, image: 31 x 24 cm, mesh: 43/cm}
            pastes:
              green: {medium: paint, colour: green, amount: 100 g}
            designs:
              reeds: {size: 30 x 22 cm, separations: [{screen: one, paste: green, covers: 40 %%}]}
            placements:
              reeds: {design: reeds, series: 2, pitch: 40 cm, start: 10 cm, across: 30 cm}
            """
                .formatted(cloth))
        .the(FinishedSize.class);
  }
}
