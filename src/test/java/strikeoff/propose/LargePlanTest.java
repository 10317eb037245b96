package strikeoff.propose;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import strikeoff.findings.Severity;

/** A long cloth: forty motifs of four designs, and a screen for each of their twelve colours. */
class LargePlanTest {

  private static final String[] DESIGNS = {"heron", "reed", "shell", "gull"};
  private static final String[] TINTS = {"#d9b77e", "#8a6d4b", "#2b3440"};

  static String text() {
    StringBuilder screens = new StringBuilder();
    StringBuilder designs = new StringBuilder();
    StringBuilder placements = new StringBuilder();
    for (int design = 0; design < DESIGNS.length; design++) {
      String name = DESIGNS[design];
      designs.append("  ").append(name).append(":\n    size: 20 x 20 cm\n    separations:\n");
      for (int colour = 1; colour <= 3; colour++) {
        screens.append(
            String.format(
                "  %s %d: {frame: 40 x 40 cm, image: 22 x 22 cm, mesh: 43/cm, thread: 80 µm,"
                    + " squeegee: 24 cm}%n",
                name, colour));
        designs.append(
            String.format(
                "      - {screen: %s %d, paste: p%d, covers: %d %%, %s}%n",
                name,
                colour,
                colour,
                30 - 8 * colour,
                colour == 3 ? "key: yes, detail: 1 mm" : "trap: 1.5 mm"));
      }
      placements.append(
          String.format(
              "  %ss: {design: %s, series: 10, pitch: 40 cm, start: 10 cm, across: %d cm}%n",
              name, name, 10 + 36 * design));
    }
    StringBuilder pastes = new StringBuilder();
    for (int i = 0; i < TINTS.length; i++) {
      pastes.append(
          String.format(
              "  p%d: {medium: dye, group: dichlorotriazine, colour: \"%s\"}%n", i + 1, TINTS[i]));
    }
    return String.format(
        Locale.ROOT,
        """
        plan: A long hanging of herons, reeds, shells and gulls
        cloth:
          fibre: cotton
          mass: 180 g/m²
          length: 4.2 m
          width: 150 cm
          ground: "#f4efe4"
          washed: yes
          allowances: {start: 2 cm, end: 2 cm, near: 2 cm, far: 2 cm}
        table: {length: 2.2 m, width: 190 cm, railed: yes}
        crew: [Wren, Tam]
        protection: [dust mask, gloves, goggles, heat gloves]
        screens:
        %spastes:
        %sdesigns:
        %splacements:
        %srun:
          - mix: all
          - print: all
          - end of day
          - dry: until fix-safe
        %s""",
        screens,
        pastes,
        designs,
        placements,
        SmallPlan.fixed(false, "soda ash: 800 g, salt: 2 kg, water: 20 L"));
  }

  @Test
  void getsASoundRunAndItsGapIsTold() {
    Proposal proposal =
        Proposer.proposed(SmallPlan.CHECKER, "hanging.yaml", text(), SmallPlan.shortest(60), 1);
    assertThat(proposal)
        .isInstanceOfSatisfying(
            Proposal.Found.class,
            found -> {
              assertThat(found.before()).isNotEqualTo(found.after());
              assertThat(
                      found.after().findings().stream()
                          .filter(f -> f.severity() != Severity.ADVICE))
                  .isEmpty();
              assertThat(found.finish()).isGreaterThanOrEqualTo(found.bound().finish());
              assertThat(found.bound().because().text()).isNotBlank();
            });
  }
}
