package strikeoff.day;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import strikeoff.checks.Worked;
import strikeoff.cloth.FibreTake;
import strikeoff.day.facts.WetContact;
import strikeoff.speech.RemedySpeech;

/** What a remedy costs is told with it, and figures are told as a printer reckons them. */
class LateRemedyTest {

  @Test
  void aRemedyThatKeepsPeoplePastClosingSaysSo() {
    assertThat(cure("09:00-09:50")).contains("after the room closes at 09:50");
    assertThat(cure("09:00-23:00")).contains("the run then ends").doesNotContain("closes");
  }

  /** Reeds 30 cm apart under frames of 50 cm: each is laid on its wet neighbour. */
  private static String cure(String hours) {
    Worked worked =
        Worked.of(
            """
            plan: test
            cloth: {fibre: cotton, mass: 180 g/m², length: 2 m, width: 1 m, washed: yes}
            hours: HOURS
            screens:
              reeds: {frame: 50 x 44 cm, image: 31 x 24 cm, mesh: 43/cm}
            pastes:
              green: {medium: paint, colour: green, amount: 300 g, mixed before: 1 h}
            designs:
              reeds: {size: 30 x 22 cm, separations: [{screen: reeds, paste: green, covers: 40 %}]}
            placements:
              reeds: {design: reeds, series: 5, pitch: 32 cm, start: 10 cm, across: 30 cm}
            run:
              - print: reeds
            """
                .replace("HOURS", hours));
    return RemedySpeech.cure(worked.the(WetContact.class), worked.plan().measures());
  }

  @Test
  void aBlendIsMixedStrongerByWhatItLacks() {
    // 80 % cotton and 20 % polyester, which takes none: 1 / 0.8 = 1.25
    FibreTake take =
        Worked.of(
                """
                plan: test
                cloth: {fibre: {cotton: 80 %, polyester: 20 %}, mass: 180 g/m², length: 2 m, width: 1 m}
                screens:
                  reeds: {frame: 50 x 44 cm, image: 31 x 24 cm, mesh: 43/cm}
                pastes:
                  green: {medium: dye, group: DCT, colour: green}
                designs:
                  reeds: {size: 30 x 22 cm, separations: [{screen: reeds, paste: green, covers: 40 %}]}
                placements:
                  reeds: {design: reeds, at: "20 cm, 30 cm"}
                run:
                  - mix: all
                  - print: reeds
                """)
            .the(FibreTake.class);
    assertThat(take.stronger().text()).isEqualTo("1.25");
  }

  @Test
  void aMomentBeforeTheRunIsNotAtADay() {
    assertThat(Moment.of(-2, 18 * 60).when()).isEqualTo("3 days before day 1, 18:00");
    assertThat(Moment.of(2, 9 * 60).when()).isEqualTo("on day 2, 09:00");
  }
}
