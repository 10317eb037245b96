package strikeoff.propose;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import strikeoff.day.facts.Surety;

/** A paste with its alkali in it, which lives for an hour, on a cloth that takes days. */
class AfreshTest {

  private static String plan(String recipe) {
    return """
        plan: Reed border on twelve metres
        cloth: {fibre: linen, length: 12 m, width: 50 cm, washed: yes}
        table: {length: 2.4 m, width: 1.2 m}
        protection: [dust mask, gloves, goggles, heat gloves]
        screens:
          reeds: {frame: 50 x 44 cm, image: 31 x 24 cm, mesh: 43/cm, thread: 80 µm, squeegee: 34 cm}
        pastes:
          green: {medium: dye, group: dichlorotriazine, colour: "#6f7f45", alkali: in paste, recipe: RECIPE}
        designs:
          reeds: {size: 30 x 22 cm, separations: [{screen: reeds, paste: green, covers: 40 %}]}
        placements:
          border: {design: reeds, border: near, from: 0 cm, to: 12 m, repeat: 30 cm, inset: 2 cm}
        run:
          - mix: all
          - print: border
          - dry: until fix-safe
          - fix: steam
            temperature: 101 °C
            for: 15 min
          - rinse: 20 °C
            for: 20 min
          - wash: 60 °C
            for: 15 min
        """
        .replace("RECIPE", recipe);
  }

  private static Proposal proposed(String recipe) {
    RunWanted asked =
        new RunWanted(Surety.SURE, false, false, false, OptionalLong.of(300), () -> 0);
    return Proposer.proposed(SmallPlan.CHECKER, "border.yaml", plan(recipe), asked, 1);
  }

  @Test
  void itIsMixedAfreshForEachStretch() {
    Proposal proposal =
        proposed("{dye: 1 g, urea: 5 g, alginate: 1.3 g, soda ash: 1 g, water: 37 ml}");
    assertThat(proposal)
        .isInstanceOfSatisfying(
            Proposal.Found.class,
            found -> {
              assertThat(found.text())
                  .contains("- mix: all   # afresh: what was mixed before doesn't live so long\n");
              assertThat(found.after().findings()).noneMatch(Judge::stands);
            });
  }

  @Test
  void whatEachBatchWouldHaveToWeighIsTold() {
    assertThat(proposed("{dye: 4 g, urea: 20 g, alginate: 5 g, soda ash: 4 g, water: 140 ml}"))
        .isInstanceOfSatisfying(
            Proposal.Refused.class,
            refused -> {
              assertThat(refused.why())
                  .endsWith("has nothing against it but how much paste is mixed.");
              assertThat(refused.findings())
                  .extracting(f -> f.rule().id())
                  .containsExactly("paste/rest-dies");
              assertThat(refused.findings().get(0).remedy())
                  .containsPattern("Mix \\d+ g each time");
            });
  }
}
