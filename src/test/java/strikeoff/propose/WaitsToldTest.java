package strikeoff.propose;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** What a proposed run says that its waits are for: what comes after them, and no other step. */
class WaitsToldTest {

  private static String proposed(String wait, String fixing) {
    String plan =
        """
        plan: A row of cockle shells
        cloth: {fibre: cotton, mass: 180 g/m², length: 2 m, width: 60 cm, washed: yes}
        table: {length: 180 cm, width: 120 cm, railed: yes}
        hours: 09:00-17:00
        crew: [Wren]
        protection: [dust mask, gloves, goggles, heat gloves]
        screens:
          one: {frame: 44 x 44 cm, image: 27 x 27 cm, mesh: 43/cm, thread: 80 µm, squeegee: 31 cm}
        pastes:
          a: {medium: dye, group: dichlorotriazine, colour: "#6f7f45", amount: 200 g, recipe: {water: 165 g, dye: 6 g, soda ash: 4 g, urea: 20 g, sodium alginate: 5 g}}
        designs:
          shell: {size: 25 x 25 cm, separations: [{screen: one, paste: a, covers: 40 %}]}
        placements:
          row: {design: shell, series: 2, pitch: 52 cm, start: 14 cm, across: 17 cm}
        run:
          - mix: all
          - print: row
          - dry: WAIT
          - fix: FIXING
          - rinse: 20 °C
            for: 20 min
          - wash: 60 °C
            for: 15 min
        """
            .replace("WAIT", wait)
            .replace("FIXING", fixing);
    Proposal proposal =
        Proposer.proposed(SmallPlan.CHECKER, "row.yaml", plan, SmallPlan.shortest(300), 1);
    assertThat(proposal).as(plan + proposal).isInstanceOf(Proposal.Found.class);
    return ((Proposal.Found) proposal).text();
  }

  @Test
  void aBatchWantsThePrintDamp() {
    assertThat(proposed("5 min", "batch\n    temperature: 24 °C\n    for: 24 h"))
        .contains("- dry: until lift-safe")
        .contains(Reasons.WRAPPED)
        .doesNotContain("dry through", "get wet");
  }

  @Test
  void steamWetsNothing() {
    assertThat(proposed("5 min", "steam\n    temperature: 100 °C\n    for: 20 min"))
        .contains(Reasons.STEAM)
        .doesNotContain("get wet");
  }
}
