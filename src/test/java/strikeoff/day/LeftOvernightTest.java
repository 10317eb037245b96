package strikeoff.day;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import strikeoff.checks.Worked;
import strikeoff.day.facts.DayEnd;
import strikeoff.speech.HoursSpeech;
import strikeoff.units.Measures;

/** What may lie until the morning, and what may not; the room is open from 9 to 17. */
class LeftOvernightTest {

  private static DayEnd late(String fibre, String steps) {
    List<DayEnd> days =
        Worked.of(
                """
                plan: Reeds overnight
                cloth: {fibre: %s, mass: 180 g/m², length: 2 m, width: 1 m, washed: yes}
                table: {length: 2.4 m, width: 1.4 m}
                screens:
                  reeds: {frame: 50 x 44 cm, image: 31 x 24 cm, mesh: 43/cm, thread: 80 µm}
                pastes:
                  green: {medium: dye, group: DCT, colour: green, amount: 200 g, alkali: in paste}
                designs:
                  reeds: {size: 30 x 22 cm, separations: [{screen: reeds, paste: green, covers: 40 %%}]}
                placements:
                  reeds: {design: reeds, series: 3, pitch: 60 cm, start: 10 cm, across: 30 cm}
                run:
                  - mix: all
                  - print: reeds
                %s
                """
                    .formatted(fibre, steps.indent(2)))
            .all(DayEnd.class)
            .stream()
            .filter(DayEnd::afterClosing)
            .toList();
    assertThat(days).hasSize(1);
    return days.get(0);
  }

  private static final String RINSES =
      "- rinse: 15 °C\n  for: 20 min\n- wash: 60 °C\n  for: 30 min\n";

  @Test
  void aBatchOfCottonLiesUntilTheMorning() {
    DayEnd day = late("cotton", "- fix: batch\n  for: 8 h\n" + RINSES);
    assertThat(day.harmless()).isTrue();
    assertThat(day.needed().minutes()).isZero();
    assertThat(HoursSpeech.goesOn(day, Measures.METRIC))
        .contains("nobody works (fix by batch) until step 4");
  }

  @Test
  void silkInSodaDoesNot() {
    DayEnd day = late("silk", "- fix: batch\n  for: 8 h\n" + RINSES);
    assertThat(day.parts()).isTrue();
    assertThat(day.harmless()).isFalse();
    assertThat(day.needed()).isEqualTo(day.atRest().orElseThrow().until().since(day.closes()));
    assertThat(HoursSpeech.working(day)).contains("harm");
  }

  @Test
  void steamIsToBeEnded() {
    DayEnd day =
        late("cotton", "- dry: until fix-safe\n- dry: 4 h\n- fix: steam\n  for: 2 h\n" + RINSES);
    assertThat(day.harmless()).isFalse();
    assertThat(day.needed().minutes()).isPositive();
  }

  @Test
  void printingThatGoesOnIsNotLeft() {
    DayEnd day = late("cotton", "- dry: 9 h\n- print: reeds\n");
    assertThat(day.parts()).isFalse();
    assertThat(day.rests().minutes()).isGreaterThan(60);
  }
}
