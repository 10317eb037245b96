package strikeoff.facts;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import strikeoff.bath.FixTemperature;
import strikeoff.bath.Soak;
import strikeoff.checks.Worked;
import strikeoff.day.Film;
import strikeoff.day.Impression;
import strikeoff.day.facts.DryingAir;
import strikeoff.paste.KeptInRoom;
import strikeoff.paste.PasteAge;
import strikeoff.speech.BathSpeech;
import strikeoff.speech.ModelText;
import strikeoff.units.Measures;

/** Outside its range a model says so and extrapolates nothing; inside, a report names it. */
class LimitsOfModelsTest {

  private static final String PAINT = "medium: paint, colour: green, amount: 100 g";
  private static final String DYE = "medium: dye, group: DCT, colour: green, amount: 100 g";
  private static final String ROOM = "temperature: 20 °C, humidity: 50 %";

  @Test
  void inABarnFilmsDryAsInTheColdestRoomThatWasTried() {
    Worked barn = printed("temperature: 1 °C, humidity: 50 %", PAINT, "");
    Worked coldest = printed("temperature: 5 °C, humidity: 50 %", PAINT, "");
    DryingAir told = barn.the(DryingAir.class, LimitsOfModelsTest::untried);
    assertThat(told.stated().text()).isEqualTo("1 °C");
    assertThat(told.nearest().text()).isEqualTo("5 °C");
    assertThat(told.films()).isEqualTo(3);
    assertThat(films(barn)).isEqualTo(films(coldest));
    assertThat(coldest.all(DryingAir.class, LimitsOfModelsTest::untried)).isEmpty();
  }

  @Test
  void aGaleOverTheClothDriesAsTheFastestAirThatWasTried() {
    Worked gale = printed(ROOM + ", air: 25 m/s", PAINT, "");
    assertThat(films(gale)).isEqualTo(films(printed(ROOM + ", air: 10 m/s", PAINT, "")));
    Worked step = printed(ROOM, PAINT, "- dry: 10 min\n  air: 20 m/s\n");
    assertThat(step.the(DryingAir.class, LimitsOfModelsTest::untried).path().text())
        .startsWith("run[2]");
  }

  @Test
  void timesThatThePrinterMeasuredAskForNoModel() {
    String measured = PAINT + ", frame-safe: 70 min, lift-safe: 3 h";
    assertThat(
            printed("temperature: 1 °C", measured, "")
                .all(DryingAir.class, LimitsOfModelsTest::untried))
        .isEmpty();
  }

  @Test
  void inAHotLoftNoLifeIsGiven() {
    Worked loft = printed("temperature: 37 °C, humidity: 40 %", DYE, "");
    assertThat(loft.all(PasteAge.class)).isEmpty();
    assertThat(loft.the(KeptInRoom.class).pastes()).containsExactly("green");
    Worked cold = printed("temperature: 37 °C, humidity: 40 %", DYE + ", kept: cold", "");
    assertThat(cold.the(PasteAge.class).lifeMinutes().isExact()).isTrue();
    assertThat(cold.all(KeptInRoom.class)).isEmpty();
  }

  @Test
  void farBelowItsWindowADyesTimeIsNotGiven() {
    String warmFixing = DYE.replace("DCT", "VS"); // trusted from 27 °C, given up 8 °C below
    assertThat(soaked(warmFixing, 18).warmth().timeKnown()).isFalse();
    assertThat(soaked(warmFixing, 20).warmth().timeKnown()).isTrue();
  }

  @Test
  void aBathNearTheBoilHasNoEstimatedPH() {
    Soak soak = printed(ROOM, DYE.replace("DCT", "MCT"), bath(85)).the(Soak.class);
    assertThat(soak.pH()).isEmpty();
    assertThat(BathSpeech.acidity(soak, Measures.METRIC)).startsWith("not estimated outside");
  }

  @Test
  void aReportNamesTheModelsOfItsOwnFiguresOnly() {
    assertThat(bases(printed(ROOM, PAINT, "")))
        .containsExactly(
            "Drying times", "Deposit of a pull", "Colours on the cloth, overprints and softening");
    Worked dye = printed(ROOM, DYE + ", deposit: 50 g/m²", bath(30));
    assertThat(bases(dye))
        .contains("pH of a soda bath", "Time that dye needs to fix", "Life of a dye paste")
        .doesNotContain("Deposit of a pull", "Finished sizes");
    assertThat(Bases.of(dye.plan(), dye.facts()))
        .allSatisfy(
            basis -> {
              ModelText model = ModelText.of(basis, dye.facts().policy());
              assertThat(model.method()).isNotBlank();
              assertThat(model.holds()).isNotBlank();
              assertThat(model.source()).isNotBlank();
            });
  }

  private static List<String> bases(Worked worked) {
    return Bases.of(worked.plan(), worked.facts()).stream()
        .map(basis -> ModelText.of(basis, worked.facts().policy()).estimate())
        .toList();
  }

  private static FixTemperature soaked(String paste, int celsius) {
    return printed(ROOM, paste, bath(celsius)).the(FixTemperature.class);
  }

  private static String bath(int celsius) {
    return """
    - dry: until fix-safe
    - fix: soak
      bath: {soda ash: 200 g, water: 5 L}
      temperature: %d °C
      for: 60 min
    """
        .formatted(celsius);
  }

  private static List<Film> films(Worked worked) {
    return worked.facts().timeline().impressions().stream().map(Impression::film).toList();
  }

  private static Worked printed(String room, String paste, String steps) {
    return Worked.of(
        """
        plan: test
        cloth: {fibre: cotton, mass: 180 g/m², length: 2 m, width: 1 m, washed: yes}
        table: {length: 2.4 m, width: 1.4 m}
        room: {%s}
        screens:
          reeds: {frame: 50 x 44 cm, image: 31 x 24 cm, mesh: 43/cm, thread: 80 µm}
        pastes:
          green: {%s}
        designs:
          reeds: {size: 30 x 22 cm, separations: [{screen: reeds, paste: green, covers: 40 %%}]}
        placements:
          reeds: {design: reeds, series: 3, pitch: 60 cm, start: 10 cm, across: 30 cm}
        run:
          - mix: all
          - print: reeds
        %s"""
            .formatted(room, paste, steps.isEmpty() ? "" : steps.indent(2)));
  }

  /** As the rule on such air asks. */
  private static boolean untried(DryingAir air) {
    return air.films() > 0 && !air.tried();
  }
}
