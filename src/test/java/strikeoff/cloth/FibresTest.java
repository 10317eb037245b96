package strikeoff.cloth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import strikeoff.checks.Worked;

class FibresTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "cotton | 1",
        "polyester | 0",
        "{cotton: 65 %, polyester: 35 %} | 0.65",
        "{linen: 55 %, viscose: 45 %} | 1",
        "{cotton: 97 %, elastane: 3 %} | 0.97"
      })
  void aBlendTakesDyeByItsShares(String fibre, double takes) {
    FibreTake take = cloth(fibre, "yes", "medium: dye, group: DCT").the(FibreTake.class);
    assertThat(take.takes().fraction()).isCloseTo(takes, within(1e-9));
    assertThat(take.paler().fraction()).isCloseTo(1 - takes, within(1e-9));
    assertThat(take.path().text()).isEqualTo("cloth.fibre");
  }

  @Test
  void paintAsksNothingOfTheFibre() {
    Worked worked = cloth("polyester", "yes", "medium: paint");
    assertThat(worked.facts().fibres().evidence()).isEmpty();
  }

  @Test
  void unwashedClothIsSaidToBe() {
    assertThat(cloth("cotton", "no", "medium: dye, group: DCT").the(UnwashedCloth.class).dyes())
        .containsExactly("green");
    assertThat(cloth("cotton", "yes", "medium: dye, group: DCT").all(UnwashedCloth.class))
        .isEmpty();
  }

  private static Worked cloth(String fibre, String washed, String paste) {
    return Worked.of(
        """
        plan: test
        cloth: {fibre: %s, mass: 180 g/m², length: 2 m, width: 1 m, washed: %s}
        table: {length: 2.4 m, width: 1.4 m}
        screens:
          reeds: {frame: 50 x 44 cm, image: 31 x 24 cm, mesh: 43/cm, thread: 80 µm}
        pastes:
          green: {%s, colour: green, amount: 100 g}
        designs:
          reeds: {size: 30 x 22 cm, separations: [{screen: reeds, paste: green, covers: 40 %%}]}
        placements:
          reeds: {design: reeds, series: 3, pitch: 60 cm, start: 10 cm, across: 30 cm}
        run:
          - mix: all
          - print: reeds
        """
            .formatted(fibre, washed, paste));
  }
}
