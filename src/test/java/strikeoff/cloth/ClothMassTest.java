package strikeoff.cloth;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import strikeoff.checks.Worked;
import strikeoff.speech.ClothSpeech;

class ClothMassTest {

  /** By hand: 18 · 33.906 = 610, 5 · 33.906 = 170, 5086 / 33.906 = 150; the rest by ten. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "18 g/m²     | 180 g/m²; 18 oz/yd², which is 610 g/m²",
        "5 g/m²      | 50 g/m²; 5 oz/yd², which is 170 g/m²",
        "150 oz/yd²  | 15 oz/yd²; 150 g/m², which is 4.4 oz/yd²",
        "0.1 g/m²    | ''",
      })
  void whatElseItMayMeanIsCloth(String mass, String meant) {
    Worked worked =
        Worked.of(
            """
                plan: test
                cloth: {fibre: cotton, mass: %s, length: 2 m, width: 1 m, washed: yes}
                screens:
                  one: {frame: 50 x 44 cm, image: 31 x 24 cm, mesh: 43/cm}
                pastes:
                  green: {medium: paint, colour: green, amount: 100 g}
                designs:
                  reeds: {size: 30 x 22 cm, separations: [{screen: one, paste: green, covers: 40 %%}]}
                placements:
                  reeds: {design: reeds, series: 3, pitch: 60 cm, start: 10 cm, across: 30 cm}
                """
                .formatted(mass));
    ClothMass fact = worked.the(ClothMass.class);
    assertThat(fact.meant()).hasSize(meant.isEmpty() ? 0 : meant.split("; ").length);
    if (!meant.isEmpty()) {
      assertThat(ClothSpeech.asking(fact, worked.plan().measures()))
          .startsWith("Is it " + meant.replace("; ", ", or ") + "? ");
    }
  }
}
