package strikeoff.propose;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import strikeoff.day.facts.Surety;

/** Paint that is felt to dry for longer on a slow day, and screens that must not stand so long. */
class SlowScreensTest {

  private static final String BANNER =
      """
      plan: Banner
      cloth: {fibre: cotton, mass: 240 g/m², length: 3.1 m, width: 80 cm, washed: yes, ground: "#f2ead8", allowances: {start: 5 cm, end: 5 cm, near: 4 cm, far: 4 cm}}
      table: {length: 3.4 m, width: 1.2 m, railed: yes}
      crew: [Wren, Tam]
      hours: 09:30-12:30, 13:15-16:30
      protection: [gloves, heat gloves]
      equipment: {fans: 1}
      screens:
        pale: {frame: 66 x 96 cm, image: 48 x 66 cm, mesh: 43/cm, thread: 80 µm, squeegee: 50 cm}
        dark: {frame: 66 x 96 cm, image: 48 x 66 cm, mesh: 61/cm, thread: 64 µm, squeegee: 50 cm}
      pastes:
        straw: {medium: paint, colour: "#e2cf8f"}
        black: {medium: paint, colour: "#23201f"}
      designs:
        star:
          size: 46 x 64 cm
          separations:
            - {screen: pale, paste: straw, covers: 35 %, trap: 2 mm}
            - {screen: dark, paste: black, covers: 12 %, key: yes, trap: 2 mm, detail: 1 mm}
      placements:
        row: {design: star, series: 4, pitch: 49 cm, start: 8 cm, across: 8 cm}
      run:
        - mix: all
        - print: row
          only: [1, 3]
          colours: straw
        - dry: until frame-safe
          air: fan
        - print: row
          only: [2, 4]
          colours: straw
        - dry: until frame-safe
          air: fan
        - print: row
          only: [1, 3]
          colours: black
        - dry: until frame-safe
          air: fan
        - print: row
          only: [2, 4]
          colours: black
        - dry: until fix-safe
        - heat-set: oven
          temperature: 150 °C
          for: 5 min
      """;

  private static Proposal.Found proposed(Surety surety) {
    RunWanted asked = new RunWanted(surety, false, false, false, OptionalLong.of(1_500), () -> 0);
    return (Proposal.Found) Proposer.proposed(SmallPlan.CHECKER, "row.yaml", BANNER, asked, 1);
  }

  @Test
  void noScreenStandsTooLongOnASlowDay() {
    Proposal.Found sure = proposed(Surety.SURE);
    assertThat(sure.before().findings())
        .extracting(f -> f.rule().id())
        .contains("drying/may-dry-in-screen");
    assertThat(sure.after().findings())
        .extracting(f -> f.rule().id())
        .doesNotContain("drying/may-dry-in-screen", "drying/paint-dries-in-screen");
    // Whoever plans for ordinary days need not wait for that.
    assertThat(proposed(Surety.LIKELY).finish()).isLessThanOrEqualTo(sure.finish());
  }
}
