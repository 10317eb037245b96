package strikeoff.drying;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import strikeoff.checks.Worked;
import strikeoff.sequence.PrintAfterBath;

/**
 * The least time that cloth stays wet is no longer than what was measured for cloth out of a bath:
 * the bound must never call wet what dried in somebody's room.
 */
class HungClothTest {

  /**
   * Hung cloth on scales, from the compilation of published drying runs: a spun cotton shirt took
   * 75 min on a line outdoors and 8 h on a hanger in 25 °C and 50 % (a TV company's product
   * laboratory, 2013; a blog with scales), a merino shirt more than 60 min.
   */
  @ParameterizedTest
  @CsvSource({"cotton, 140, 25 °C, 480", "cotton, 140, 20 °C, 75", "wool, 150, 20 °C, 60"})
  void measuredClothTakesLonger(String fibre, int mass, String room, double measuredMinutes) {
    assertThat(wetFor(fibre, mass, room, "50 %", "still", "wash: 60 °C"))
        .isBetween(measuredMinutes / 40, measuredMinutes);
  }

  @ParameterizedTest
  @CsvSource({"60 %, fan", "60 %, 2 m/s"})
  void movedAirDriesItSooner(String humidity, String air) {
    assertThat(wetFor("cotton", 180, "20 °C", humidity, air, "wash: 60 °C"))
        .isLessThan(wetFor("cotton", 180, "20 °C", humidity, "still", "wash: 60 °C") / 3);
  }

  @ParameterizedTest
  @CsvSource({"cotton"})
  void wrungClothHoldsMoreThanSpunCloth(String fibre) {
    String soak = "{fix: soak, for: 20 min, bath: {soda ash: 200 g, water: 5 L}}";
    assertThat(wetFor(fibre, 180, "20 °C", "65 %", "still", soak))
        .isGreaterThan(wetFor(fibre, 180, "20 °C", "65 %", "still", "wash: 60 °C"));
  }

  private static double wetFor(
      String fibre, int mass, String room, String humidity, String air, String bath) {
    return Worked.of(
            """
            plan: test
            cloth: {fibre: %s, mass: %d g/m², length: 2 m, width: 1 m, washed: yes}
            room: {temperature: %s, humidity: %s, air: %s}
            screens: {reeds: {frame: 50 x 44 cm, image: 31 x 24 cm, mesh: 43/cm}}
            pastes: {green: {medium: dye, group: DCT, colour: green}}
            designs:
              reeds: {size: 30 x 22 cm, separations: [{screen: reeds, paste: green, covers: 40 %%}]}
            placements: {reeds: {design: reeds, at: "20 cm, 30 cm"}}
            run:
              - mix: all
              - %s
              - print: reeds
            """
                .formatted(fibre, mass, room, humidity, air, bath))
        .the(PrintAfterBath.class)
        .wetFor()
        .minutes();
  }
}
