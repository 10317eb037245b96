package strikeoff.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import strikeoff.artwork.Drawn;

/**
 * What films print decides what lies across a seam, in an allowance, under a frame and on others.
 */
@Timeout(60)
class FilmsOnClothTest {

  /** The image of the first leaf is 20 cm square, from 90 cm on; the seam lies at 100 cm. */
  private static final String PLAN =
      """
      plan: Runner of leaves
      cloth: {fibre: cotton, length: 3 m, width: 60 cm, washed: yes, ALLOWANCE}
      table: {length: 3.4 m, width: 1.2 m}
      seams: {centre: {at: 100 cm, allowance: 1.5 cm, SEWN}}
      screens:
        leaf: {frame: 44 x 44 cm, image: 20 x 20 cm, mesh: 43/cm, squeegee: 26 cm}
        dot: {frame: 44 x 44 cm, image: 20 x 20 cm, mesh: 43/cm, squeegee: 26 cm}
      pastes:
        green: {medium: dye, group: dichlorotriazine, colour: "#6f7f45"}
        white: {medium: paint, transparent: no, colour: "#f4f2ea"}
      designs:
        leaf: {size: 20 x 20 cm, separations: [{screen: leaf, paste: green, SAYS}]}
        dot: {size: 20 x 20 cm, separations: [{screen: dot, paste: white, DOT}]}
      placements:
        leaves: {design: leaf, at: ["90 cm, 20 cm", "140 cm, 20 cm"] TURN}
        dots: {design: dot, at: "155 cm, 35 cm"}
      run:
        - mix: all
        - print: leaves
        - dry: 5 h
        - sew: centre
        - print: dots
      """;

  @TempDir private Path desk;

  private String plan = PLAN;

  @BeforeEach
  void empty() {
    say("DOT", "covers: 3 %");
  }

  private void say(String placeholder, String says) {
    plan = plan.replace(placeholder, says);
  }

  /** A film on which a bar is so long and so wide, from so far to the right and from the top. */
  private void film(String name, double right, double top, double length, double width)
      throws IOException {
    Files.write(
        desk.resolve(name),
        new Drawn(200, 200, 100)
            .with(Drawn.bar(right + length / 2, top + width / 2, length, width, 0))
            .png());
  }

  private String check() throws IOException {
    String all = plan;
    for (String left : List.of("SAYS", "SEWN", "ALLOWANCE", "TURN")) {
      all = all.replace(left.equals("SAYS") ? left : "NOTHING", "covers: 20 %");
      all = all.replace(", " + left, "").replace(" " + left, "");
    }
    Files.writeString(desk.resolve("it.yaml"), all);
    Scenario.Outcome outcome =
        Scenario.run(desk, Map.of("COLUMNS", "400"), List.of("check", "it.yaml"));
    assertThat(outcome.err()).doesNotContain("mistake");
    return outcome.out();
  }

  @Test
  void anImageIsAcrossASeamWhereNoFilmTellsOtherwise() throws IOException {
    assertThat(check()).contains("placement-across-unsewn-seam");
  }

  @Test
  void theEmptyPartOfAFilmOverAnUnsewnSeamSpoilsNoPrint() throws IOException {
    // From 12 to 19 cm of the film: the seam lies at 10 cm, the allowance ends at 11.5.
    film("leaf.png", 120, 60, 70, 80);
    say("SAYS", "artwork: leaf.png");
    assertThat(check())
        .doesNotContain("placement-across-unsewn-seam")
        .doesNotContain("sewn-under")
        .doesNotContain("seam-allowance");
  }

  @Test
  void whatPrintsBesideItReachesSoFarIntoTheAllowance() throws IOException {
    // 6 mm beside the seam: 9 of the 15 mm.
    film("leaf.png", 106, 60, 80, 80);
    say("SAYS", "artwork: leaf.png");
    assertThat(check())
        .doesNotContain("placement-across-unsewn-seam")
        .containsPattern(
            "The image of leaves 1 reaches (0\\.9 cm|9 mm|8\\.9\\d* mm) into the allowance");
  }

  @Test
  void whatPrintsOnBothSidesIsTornWhateverLiesBetween() throws IOException {
    Files.write(
        desk.resolve("leaf.png"),
        new Drawn(200, 200, 100)
            .with(Drawn.bar(40, 100, 60, 80, 0))
            .with(Drawn.bar(160, 100, 60, 80, 0))
            .png());
    say("SAYS", "artwork: leaf.png");
    assertThat(check()).contains("placement-across-unsewn-seam");
  }

  @Test
  void aTurnedFilmIsLookedAtAsItLies() throws IOException {
    // Turned by 45° the square's corner crosses the seam, and the disc in it stays clear.
    say("\"90 cm, 20 cm\"", "\"92 cm, 20 cm\"");
    say("TURN", ", turn: 45°");
    assertThat(check()).contains("placement-across-unsewn-seam");
    Files.write(
        desk.resolve("leaf.png"), new Drawn(200, 200, 100).with(Drawn.disc(150, 50, 40)).png());
    say("SAYS", "artwork: leaf.png");
    assertThat(check()).doesNotContain("placement-across-unsewn-seam");
  }

  @Test
  void aFrameThatPrintsBesideASewnSeamLiesOnItsRidge() throws IOException {
    film("leaf.png", 120, 60, 70, 80);
    say("SAYS", "artwork: leaf.png");
    say("SEWN", "sewn: yes");
    plan = plan.replace("  - sew: centre\n", "");
    assertThat(check())
        .contains("ridge-under-frame")
        .contains("The image of leaves 1 keeps clear of seam centre")
        .doesNotContain("ridge-under-squeegee");
  }

  @Test
  void anAllowanceHoldsWhatPrintsInIt() throws IOException {
    say("ALLOWANCE", "selvedge: 1 cm, allowances: {near: 22 cm}");
    assertThat(check()).contains("reaches 3 cm into");
    // The last 4 cm of the film print nothing.
    film("leaf.png", 10, 60, 60, 100);
    say("SAYS", "artwork: leaf.png");
    assertThat(check()).doesNotContain("in-allowance").doesNotContain("lost-in-allowance");
  }

  /** The dot's near left quarter lies on the leaf's far right one: 5 x 5 cm. */
  @Test
  void neighboursLieOnEachOtherAsFarAsTheyPrintThere() throws IOException {
    Pattern over = Pattern.compile("up to ([\\d.]+) cm² of paint lies on dye");
    say("\"155 cm, 35 cm\"", "\"155 cm, 35 cm\", over: leaves");
    plan = plan.replace(", over: leaves", "");
    String guessed = check();
    assertThat(guessed).contains("media/paint-near-unfixed-dye");
    Matcher most = over.matcher(guessed);
    assertThat(most.find()).isTrue();
    assertThat(Double.parseDouble(most.group(1))).isEqualTo(12);

    // Their outlines share a square of 2 cm, of which the dot prints half.
    film("leaf.png", 10, 30, 160, 160);
    film("dot.png", 0, 170, 80, 20);
    plan = plan.replace("covers: 3 %", "artwork: dot.png");
    say("SAYS", "artwork: leaf.png");
    assertThat(check()).contains("media/paint-over-unfixed-dye", "over up to 2 cm²");

    // In the corner of the leaf's image nothing prints.
    film("leaf.png", 10, 60, 130, 130);
    assertThat(check()).doesNotContain("media/paint-").doesNotContain("corners-overlap");
  }

  @Test
  void nobodyWaitsForAFilmThatNoFrameLiesOn() throws IOException {
    plan =
        PLAN.replace("\"140 cm, 20 cm\"", "\"119 cm, 20 cm\"")
            .replace("DOT", "covers: 3 %")
            .replace("- print: leaves", "- {print: leaves, dry between neighbours: 3 h}");
    // The second frame begins 12 cm to the left of its image, 3 cm inside the first one's.
    int waits = minutes();
    film("leaf.png", 5, 60, 150, 80);
    say("SAYS", "artwork: leaf.png");
    assertThat(waits - minutes()).isBetween(170, 180);
  }

  private int minutes() throws IOException {
    check();
    Scenario.run(desk, Map.of(), List.of("check", "it.yaml", "-f", "json=it.json"));
    Matcher ends =
        Pattern.compile("\"finishSeconds\": (\\d+)")
            .matcher(Files.readString(desk.resolve("it.json")));
    assertThat(ends.find()).isTrue();
    return Integer.parseInt(ends.group(1)) / 60;
  }
}
