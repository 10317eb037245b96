package strikeoff.propose;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import strikeoff.day.facts.Surety;

/** Six large stars in paint, and a plan that says nothing of how they are set. */
class LongIroningTest {

  private static final String STARS =
      """
      plan: Stars
      cloth: {fibre: cotton, mass: 240 g/m², length: 3.1 m, width: 80 cm, washed: yes}
      table: {length: 3.4 m, width: 1.2 m, railed: yes}
      crew: [Wren, Tam]
      equipment: {fans: 1}
      hours: 09:30-16:30
      protection: [gloves, heat gloves]
      screens:
        star: {frame: 66 x 96 cm, image: 48 x 66 cm, mesh: 43/cm, thread: 80 µm, squeegee: 50 cm}
      pastes:
        red: {medium: paint, colour: "#a13328"}
      designs:
        star: {size: 46 x 64 cm, separations: [{screen: star, paste: red, covers: 35 %}]}
      placements:
        row: {design: star, series: 6, pitch: 49 cm, start: 8 cm, across: 8 cm}
      """;

  private static Proposal proposed(String text) {
    RunWanted asked =
        new RunWanted(Surety.SURE, false, false, false, OptionalLong.of(400), () -> 0);
    return Proposer.proposed(SmallPlan.CHECKER, "stars.yaml", text, asked, 1);
  }

  /**
   * 46 by 64 cm are 2944 cm². A sole of 200 cm² goes into that 14.72 times: 15 spots on each of six
   * images, 90 in all, 5 min at each, are 7 h 30 min. A plate of 1400 cm² goes into it 2.1 times: 3
   * spots on each, 18 in all, are 90 min. Sole and plate as in rules/fixing/limits.yaml.
   */
  @Test
  void howLongIroningTakesAndWhatToWriteIsTold() {
    assertThat(proposed(STARS))
        .isInstanceOfSatisfying(
            Proposal.Refused.class,
            refused -> {
              assertThat(refused.findings()).isEmpty();
              assertThat(refused.why())
                  .contains("90 spots of 200 cm², 5 min at each, are 7 h 30 min", "than 7 h.")
                  .contains(
                      "`- heat-set: oven`", "`- heat-set: press` (18 spots of 1400 cm², 90 min)");
            });
  }

  @Test
  void whatItSaysToWriteLeadsToARun() {
    for (String with : new String[] {"oven", "press"}) {
      assertThat(proposed(STARS + "run:\n  - heat-set: " + with + "\n"))
          .as(with)
          .isInstanceOfSatisfying(
              Proposal.Found.class,
              found -> assertThat(found.after().findings()).noneMatch(Judge::stands));
    }
  }
}
