package strikeoff.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Films of which nobody says how large they are: their shape alone speaks. */
@Timeout(60)
class FilmShapesTest {

  private static final String PLAN =
      """
      plan: Runner of leaves
      cloth: {fibre: cotton, length: 2 m, width: 60 cm, washed: yes}
      table: {length: 2.4 m, width: 1.2 m}
      screens:
        leaf: {frame: 44 x 44 cm, image: 20 x 20 cm, mesh: 43/cm, squeegee: 26 cm}
      pastes:
        green: {medium: dye, group: dichlorotriazine, colour: "#6f7f45"}
      designs:
        leaf:
          size: 20 x 20 cm
          separations:
            - {screen: leaf, paste: green, artwork: leaf.pbm, SAYS}
      placements:
        leaves: {design: leaf, series: 6, pitch: 30 cm, start: 10 cm, across: 20 cm}
      """;

  @TempDir private Path desk;

  /** Checks a plan with a film of so many points, dark all over its left half. */
  private String check(int columns, int rows, String says) throws IOException {
    String row = "1".repeat(columns - columns / 2) + "0".repeat(columns / 2) + "\n";
    Files.writeString(
        desk.resolve("leaf.pbm"), "P1\n" + columns + " " + rows + "\n" + row.repeat(rows));
    Files.writeString(desk.resolve("plan.yaml"), PLAN.replace("SAYS", says));
    return Scenario.run(desk, Map.of("COLUMNS", "300"), List.of("check", "plan.yaml")).out();
  }

  @Test
  void aMarginIsCutOffInSquarePoints() throws IOException {
    // 340 points on 12 cm: a centimetre is 28 of them, and 284 by 464 are left.
    assertThat(check(340, 520, "margin: 1 cm, size: 10 x 10 cm"))
        .contains("leaf.pbm is 10 cm by 16.338 cm, and leaf wants 10 cm by 10 cm of it")
        .contains("write `size: 10 cm x 16.338 cm` for separation 1 of leaf.");
    assertThat(check(340, 520, "margin: 1 cm, size: 10 x 16.338 cm")).doesNotContain("artwork/");
  }

  @Test
  void aSizeIsOfferedWhereItFits() throws IOException {
    // 61.176 mm, which is told to its hundredth below.
    assertThat(check(340, 520, "at: [16 cm, 12 cm]"))
        .contains("write `size: 4 cm x 6.117 cm` for separation 1 of leaf.");
    // 15 and 6.1 cm reach past the design.
    assertThat(check(340, 520, "at: [16 cm, 15 cm]"))
        .contains("artwork/wrong-scale")
        .contains(
            "Mend: It is 100 % as long and 122.4 % as wide as wanted, which no one scale mends.")
        .contains(
            "Take the film drawn for leaf; or if this is the one, and was stretched, output it")
        .doesNotContain("Output it at 100 %")
        .doesNotContain("write `resolution");
    // Higher than the stencil.
    assertThat(check(340, 520, "prints: dark"))
        .contains("artwork/wrong-scale")
        .contains(
            "Mend: It is 100 % as long and 152.9 % as wide as wanted, which no one scale mends.");
  }

  @Test
  void whatNoOutputStretchesIsAnotherFilm() throws IOException {
    assertThat(check(2, 600, "prints: dark"))
        .contains("Mend: No output stretches a film so far: it is another one. Take the one drawn")
        .doesNotContain("write `size");
  }
}
