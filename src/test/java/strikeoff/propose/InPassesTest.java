package strikeoff.propose;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import strikeoff.check.Checked;
import strikeoff.day.Impression;

/**
 * Gulls in a brick so close that a frame lies on all six beside it: as in a map of three colours,
 * two passes can't keep them apart and three can.
 */
class InPassesTest {

  private static final String GULLS =
      """
      plan: White gulls on a dark curtain
      cloth:
        fibre: cotton
        mass: 200 g/m²
        length: 2 m
        width: 110 cm
        washed: yes
        ground: "#232b4f"
        allowances: {start: 3 cm, end: 3 cm, near: 3 cm, far: 3 cm}
      table: {length: 2.4 m, width: 1.3 m, railed: yes}
      crew: [Wren]
      protection: [gloves, heat gloves]
      screens:
        gull: {frame: 45 x 45 cm, image: 26 x 26 cm, mesh: 43/cm, thread: 80 µm, squeegee: 28 cm}
        beak: {frame: 45 x 45 cm, image: 26 x 26 cm, mesh: 55/cm, thread: 64 µm, squeegee: 28 cm}
      pastes:
        white: {medium: paint, colour: "#f7f7f2", transparent: no}
        rose: {medium: paint, colour: "#d48a90"}
      designs:
        gull:
          size: 24 x 24 cm
          separations:
            - {screen: gull, paste: white, covers: 40 %, pulls: 3}
            - {screen: beak, paste: rose, covers: 15 %, trap: 1.2 mm}
      placements:
        gulls: {design: gull, fill: brick, pitch: 34 x 34 cm}
      run:
        - mix: all
        - print: gulls
          every other: yes
          dry between passes: until frame-safe
          dry between colours: until frame-safe
        - dry: until fix-safe
        - heat-set: press
          temperature: 160 °C
          for: 2 min
      """;

  private static Proposal proposed(String text) {
    return Proposer.proposed(SmallPlan.CHECKER, "gulls.yaml", text, SmallPlan.shortest(100), 1);
  }

  @Test
  void aCloseBrickIsPrintedInThreePasses() {
    assertThat(proposed(GULLS))
        .isInstanceOfSatisfying(
            Proposal.Found.class,
            found -> {
              Checked.Judged after = found.after();
              assertThat(after.findings()).noneMatch(Judge::stands);
              assertThat(
                      after.facts().timeline().impressions().stream()
                          .filter(i -> i.footprint().separation().number() == 1)
                          .map(Impression::step)
                          .distinct())
                  .hasSize(3);
            });
  }

  /** Of a check without trials: six frames around each film leave no wait that would do. */
  @Test
  void theCheckSaysThatItTakesMorePasses() {
    assertThat(((Checked.Judged) SmallPlan.CHECKER.check("gulls.yaml", GULLS)).findings())
        .filteredOn(f -> f.rule().id().equals("drying/frame-on-wet-neighbour"))
        .singleElement()
        .satisfies(f -> assertThat(f.remedy()).contains("each with its own `only`"));
  }

  @Test
  void whatThatNeedsOfPasteIsToldIfLessIsMixed() {
    String little = GULLS.replace("#d48a90\"}", "#d48a90\", amount: 120 g}");
    assertThat(proposed(little))
        .isInstanceOfSatisfying(
            Proposal.Refused.class,
            refused -> {
              assertThat(refused.why())
                  .endsWith("has nothing against it but how much paste is mixed.");
              assertThat(refused.findings())
                  .extracting(f -> f.rule().id())
                  .containsOnly("paste/may-run-short");
            });
  }
}
