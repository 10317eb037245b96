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
import strikeoff.artwork.Drawn;
import strikeoff.artwork.Drawn.Shape;

/** No trap is asked of what the films show, whatever else they are. */
@Timeout(60)
class TrapsOfFilmsTest {

  private static final String PLAN =
      """
      plan: Two colours
      cloth: {fibre: cotton, length: 2 m, width: 60 cm, washed: yes}
      table: {length: 2.4 m, width: 1.2 m, railed: yes}
      screens:
        one: {frame: 44 x 44 cm, image: 20 x 20 cm, mesh: 61/cm, thread: 64 µm, squeegee: 26 cm}
        two: {frame: 44 x 44 cm, image: 20 x 20 cm, mesh: 61/cm, thread: 64 µm, squeegee: 26 cm}
      pastes:
        sand: {medium: dye, group: dichlorotriazine, colour: "#d9b77e", amount: 200 g}
        rust: {medium: dye, group: dichlorotriazine, colour: "#8a3a20", amount: 100 g}
      designs:
        leaf:
          size: 12 x 12 cm
          separations:
            - {screen: one, paste: sand, artwork: one.png}
            - {screen: two, paste: rust, artwork: two.png}
      placements:
        leaves: {design: leaf, series: 3, pitch: 50 cm, start: 10 cm, across: 20 cm}
      """;

  private static final String ASKED = "sand and rust can adjoin, and the plan states no trap";

  @TempDir private Path desk;

  private String check(Shape one, Shape two) throws IOException {
    Files.write(desk.resolve("one.png"), new Drawn(120, 120, 300).with(one).png());
    Files.write(desk.resolve("two.png"), new Drawn(120, 120, 300).with(two).png());
    Files.writeString(desk.resolve("plan.yaml"), PLAN);
    return Scenario.run(desk, Map.of("COLUMNS", "300"), List.of("check", "plan.yaml")).out();
  }

  private static Shape and(Shape one, Shape other) {
    return (x, y) -> one.covers(x, y) && other.covers(x, y);
  }

  /** The only cause of all that is seen of it. */
  @Test
  void ofANegativeAmongFills() throws IOException {
    Shape disc = Drawn.disc(85, 60, 40);
    assertThat(check(Drawn.disc(45, 60, 42), (x, y) -> !disc.covers(x, y)))
        .contains("RISK  artwork/may-be-negative")
        .contains("found: 1 risk\n")
        .doesNotContain("Widen the trap");
  }

  @Test
  void ofColoursThatStandApart() throws IOException {
    assertThat(check(Drawn.disc(30, 60, 40), Drawn.disc(90, 60, 40)))
        .contains("1 printable")
        .doesNotContain(ASKED);
  }

  /** A halftone has no edges to follow; its cells tell where it prints. */
  @Test
  void ofAHalftoneThatLiesAllOnAnotherColour() throws IOException {
    Shape dots = Drawn.halftone(8, 30, (x, y) -> 0.4);
    assertThat(check(Drawn.disc(60, 60, 90), and(dots, Drawn.disc(60, 60, 90))))
        .contains("1 printable")
        .doesNotContain(ASKED);
    assertThat(check(Drawn.disc(60, 60, 90), and(dots, Drawn.disc(60, 60, 94)))).contains(ASKED);
  }

  @Test
  void ofAHalftoneThatStandsApartByMoreThanAFrameIsOff() throws IOException {
    Shape dots = Drawn.halftone(8, 30, (x, y) -> 0.4);
    assertThat(check(Drawn.disc(30, 60, 40), and(dots, Drawn.disc(90, 60, 40))))
        .contains("1 printable")
        .doesNotContain(ASKED);
    assertThat(check(Drawn.disc(30, 60, 58), and(dots, Drawn.disc(90, 60, 60)))).contains(ASKED);
  }
}
