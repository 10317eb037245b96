package strikeoff.propose;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** A batch is wrapped while its prints are damp: nobody waits until they are dry through. */
class BatchBoundTest {

  private static final String ROW =
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
        a:
          medium: dye
          group: dichlorotriazine
          colour: "#6f7f45"
          amount: 200 g
          recipe: {water: 165 g, dye: 6 g, soda ash: 4 g, urea: 20 g, sodium alginate: 5 g}
      designs:
        shell: {size: 25 x 25 cm, separations: [{screen: one, paste: a, covers: 40 %}]}
      placements:
        row: {design: shell, series: 2, pitch: 52 cm, start: 14 cm, across: 17 cm}
      run:
        - mix: all
        - print: row
        - dry: 5 min
        - fix: batch
          temperature: 24 °C
          for: 24 h
        - rinse: 20 °C
          for: 20 min
        - wash: 60 °C
          for: 15 min
      """;

  @Test
  void itsRunEndsNoSoonerThanTheBound() {
    assertThat(Proposer.proposed(SmallPlan.CHECKER, "row.yaml", ROW, SmallPlan.shortest(200), 1))
        .isInstanceOfSatisfying(
            Proposal.Found.class,
            found ->
                assertThat(found.after().facts().timeline().finish())
                    .isGreaterThanOrEqualTo(found.bound().finish()));
  }
}
