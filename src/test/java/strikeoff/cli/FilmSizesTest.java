package strikeoff.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import strikeoff.artwork.Drawn;

/** What is said of films whose sizes are off, among other films of their design. */
@Timeout(60)
class FilmSizesTest {

  private static final String PLAN =
      """
      plan: Runner of leaves
      cloth: {fibre: cotton, length: 2 m, width: 60 cm, washed: yes}
      table: {length: 2.4 m, width: 1.2 m, railed: yes}
      screens:
        leaf: {frame: 44 x 44 cm, image: 20 x 20 cm, mesh: 43/cm, squeegee: 26 cm}
        veins: {frame: 44 x 44 cm, image: 20 x 20 cm, mesh: 43/cm, squeegee: 26 cm}
      pastes:
        green: {medium: dye, group: dichlorotriazine, colour: "#6f7f45"}
        ink: {medium: dye, group: dichlorotriazine, colour: "#2b3440"}
      designs:
        leaf:
          size: 20 x 16 cm
          separations:
            - {screen: leaf, paste: green, artwork: leaf.png}
            - {screen: veins, paste: ink, artwork: veins.png}
      placements:
        leaves: {design: leaf, series: 6, pitch: 30 cm, start: 10 cm, across: 20 cm}
      """;

  @TempDir private Path desk;

  private static Drawn film(double scale) {
    return new Drawn(200 * scale, 160 * scale, 254)
        .with(Drawn.leaf(100 * scale, 80 * scale, 180 * scale, 120 * scale));
  }

  @BeforeEach
  void lay() throws IOException {
    Files.write(desk.resolve("leaf.png"), film(1).png());
    Files.write(desk.resolve("veins.png"), film(0.98).png());
  }

  private String check(String plan) throws IOException {
    Files.writeString(desk.resolve("plan.yaml"), plan);
    return Scenario.run(desk, Map.of("COLUMNS", "300"), List.of("check", "plan.yaml")).out();
  }

  @Test
  void oneFilmOfTwoThatIsOffIsNotMendedInThePlan() throws IOException {
    assertThat(check(PLAN))
        .contains("STOP  artwork/wrong-scale")
        .contains("Mend: Output it at 100 %.")
        .doesNotContain("write `size")
        .doesNotContain("write `resolution");
  }

  /** Films of resolutions that programs are set to, among one of another. */
  @ParameterizedTest
  @CsvSource({
    "300, 600, 300/in",
    "150, 300, 150/in",
    "254, 300, 100/cm",
    "720, 600, 720/in",
    "152.4, 300, 60/cm"
  })
  void aPlainResolutionThatMakesItAsLargeAsWantedIsOffered(
      double drawn, int says, String resolution) throws IOException {
    Files.write(
        desk.resolve("veins.png"),
        new Drawn(200, 160, drawn).with(Drawn.leaf(100, 80, 180, 120)).png());
    String wrong = PLAN.replace("veins.png", "veins.png, resolution: " + says + "/in");
    assertThat(check(wrong))
        .contains("STOP  artwork/wrong-scale")
        .contains(
            "Mend: If only its resolution is wrong, write `resolution: "
                + resolution
                + "`; otherwise output it at 100 %.")
        .containsPattern("\\+ .*resolution: " + resolution);
    assertThat(check(PLAN.replace("veins.png", "veins.png, resolution: " + resolution)))
        .contains("found:")
        .doesNotContain("artwork/wrong-scale");
  }

  /** A strip round it takes a part of its points. */
  @Test
  void aMarginCountsToItsResolution() throws IOException {
    Files.write(
        desk.resolve("veins.png"),
        new Drawn(220, 180, 300).with(Drawn.leaf(110, 90, 180, 120)).png());
    String plan = PLAN.replace("veins.png", "veins.png, margin: 1 cm, resolution: 400/in");
    assertThat(check(plan)).contains("write `resolution: 300/in`");
    assertThat(check(plan.replace("400/in", "300/in"))).doesNotContain("artwork/wrong-scale");
  }

  /** A film that came out smaller has a smaller strip round it as well. */
  @Test
  void aMarginIsScaledWithItsFilm() throws IOException {
    Files.write(
        desk.resolve("veins.png"),
        new Drawn(220, 180, 200).with(Drawn.bar(110, 90, 150, 6, 0)).png());
    String plan = PLAN.replace("veins.png", "veins.png, margin: 1 cm, resolution: 300/in");
    // Two thirds of 20 by 16 cm, but for its rounded points.
    assertThat(check(plan))
        .contains("veins.png is 13.332 cm by 10.665 cm, and leaf wants 20 cm by 16 cm of it")
        .contains("off by 66.7 mm")
        .contains("write `resolution: 200/in`; otherwise output it at 100 %.")
        .containsPattern("\\+ .*resolution: 200/in")
        .doesNotContain("which no one scale mends");
    Files.write(
        desk.resolve("veins.png"),
        new Drawn(215.6, 176.4, 254).with(Drawn.bar(108, 88, 147, 6, 0)).png());
    assertThat(check(PLAN.replace("veins.png", "veins.png, margin: 1 cm")))
        .contains("off by 4 mm")
        .contains("Mend: Output it at 100 %.");
  }

  /** A strip of 2 cm of which the plan has some cut off: all of it is told, and tried. */
  @ParameterizedTest
  @CsvSource({"5 mm", "1 cm", "15 mm"})
  void aMarginThatIsTooNarrowIsToldWhole(String margin) throws IOException {
    Files.write(
        desk.resolve("veins.png"),
        new Drawn(240, 200, 254).with(Drawn.bar(120, 100, 150, 6, 0)).png());
    String plan = PLAN.replace("veins.png", "veins.png, margin: " + margin);
    assertThat(check(plan))
        .contains("STOP  artwork/wrong-scale")
        .contains(
            "Mend: If a strip with marks runs round it, have it cut off: write `margin: 2 cm`.")
        .containsPattern("\\+ .*margin: 2 cm")
        .doesNotContain("at 100 %");
    assertThat(check(PLAN.replace("veins.png", "veins.png, margin: 2 cm")))
        .contains("found:")
        .doesNotContain("artwork/wrong-scale");
  }

  /** A drawing is as large as it says, however close its points are laid. */
  @Test
  void noResolutionMendsADrawing() throws IOException {
    Files.writeString(
        desk.resolve("veins.svg"),
        "<svg xmlns='http://www.w3.org/2000/svg' width='400mm' height='320mm'"
            + " viewBox='0 0 200 160'><rect x='60' width='20' height='20'/></svg>");
    assertThat(check(PLAN.replace("veins.png", "veins.svg")))
        .contains("artwork/wrong-scale")
        .doesNotContain("write `resolution");
  }

  /** What follows of a film of another shape has one cause, which is told. */
  @Test
  void filmsOfAnotherShapeAreNotLaidOnOthers() throws IOException {
    Files.write(
        desk.resolve("veins.png"),
        new Drawn(130, 150, 254)
            .with(Drawn.leaf(65, 75, 110, 100))
            .with((x, y) -> y > 80 && y < 90)
            .png());
    String said = check(PLAN.replace("veins.png", "veins.png, key: yes"));
    assertThat(said)
        .contains("It is 65 % as long and 93.8 % as wide as wanted, which no one scale mends.")
        .doesNotContainPattern("(RISK|ADVICE) +artwork/");
  }

  @Test
  void aSizeThatWasWrittenForItDoesNotSilenceIt() throws IOException {
    String sized = PLAN.replace("veins.png", "veins.png, size: 19.6 x 15.68 cm");
    assertThat(check(sized))
        .contains("STOP  artwork/films-differ-in-size")
        .contains("veins.png and leaf.png of leaf differ by 4 mm at the far edge")
        .contains("and leave out the `size` of its separations");
    // Half as large, and in a place of its own, it is another part of the design.
    Files.write(desk.resolve("veins.png"), film(0.5).png());
    assertThat(check(PLAN.replace("veins.png", "veins.png, size: 10 x 8 cm")))
        .doesNotContain("artwork/films-differ");
    Files.write(desk.resolve("veins.png"), film(0.98).png());
    assertThat(check(sized.replace("15.68 cm", "15.68 cm, at: [0.4 cm, 0.3 cm]")))
        .doesNotContain("artwork/films-differ");
  }

  @Test
  void whereAllFilmsAreOffAlikeThePlanMayBeWrong() throws IOException {
    Files.write(desk.resolve("leaf.png"), film(0.98).png());
    Files.write(
        desk.resolve("veins.png"),
        new Drawn(196, 156.8, 254).with(Drawn.bar(98, 78, 147, 12, 0)).png());
    assertThat(check(PLAN))
        .contains("or if the films are right, write `size: 19.6 cm x 15.68 cm` for leaf")
        .contains("write `resolution: 98/cm`");
    assertThat(check(PLAN.replace("size: 20 x 16", "size: 19.6 x 15.68")))
        .doesNotContain("artwork/");
  }

  @Test
  void aSquareFilmThatIsSlightlyOffIsNotTurned() throws IOException {
    Files.write(desk.resolve("leaf.png"), new Drawn(160, 160, 254).pngScaled(0.996));
    String square =
        PLAN.replace("20 x 16 cm", "16 x 16 cm")
            .replaceFirst("\n *- \\{screen: veins.*", "")
            .replace("leaf.png", "leaf.png, prints: light");
    assertThat(check(square))
        .contains("RISK  artwork/scale-slightly-off")
        .doesNotContain("turn it")
        .doesNotContain("margin");
  }

  @Test
  void linesOfAFilmOfTheWrongSizeAreNotCounted() throws IOException {
    Drawn coarse = new Drawn(176, 176, 150).with(Drawn.bar(88, 88, 120, 0.4, 0));
    Files.write(desk.resolve("leaf.png"), coarse.png());
    String alone = PLAN.replaceFirst("\n *- \\{screen: veins.*", "");
    assertThat(check(alone)).contains("wrong-scale").doesNotContain("film-too-coarse");
    assertThat(check(alone.replace("size: 20 x 16", "size: 17.6 x 17.6")))
        .contains("artwork/film-too-coarse");
  }

  @Test
  void mendNamesTheFilmsThatNoEditMends() throws IOException {
    Files.write(desk.resolve("leaf.png"), film(0.996).png());
    Files.write(desk.resolve("veins.png"), film(0.996).png());
    Files.writeString(desk.resolve("plan.yaml"), PLAN);
    Scenario.Outcome outcome =
        Scenario.run(desk, Map.of("COLUMNS", "300"), List.of("mend", "plan.yaml"));
    assertThat(outcome.err())
        .contains("left at the light table")
        .contains("artwork/scale-slightly-off (line 14)");
  }

  private static final String THREE =
      PLAN.replace(
          "artwork: veins.png}",
          "artwork: veins.png}\n      - {screen: veins, paste: ink, artwork: dots.png}");

  @Test
  void oneOfThreeWithoutAResolutionIsTheOddOne() throws IOException {
    Files.write(desk.resolve("leaf.png"), film(1).pngSilent());
    Files.write(desk.resolve("veins.png"), film(0.98).pngSilent());
    Files.write(desk.resolve("dots.png"), film(1).pngSilent());
    assertThat(check(THREE))
        .containsIgnoringWhitespaces("RISK  artwork/films-differ-in-points")
        .containsIgnoringWhitespaces(
            "leaf.png and dots.png have 2000 x 1600 points and veins.png 1960 x 1568")
        .containsIgnoringWhitespaces("how many points veins.png has to an inch")
        .containsIgnoringWhitespaces("veins.png is 98 % of the size of leaf.png and dots.png")
        .containsIgnoringWhitespaces("off by 4 mm")
        .containsIgnoringWhitespaces("write `resolution: 98/cm` beside veins.png")
        .doesNotContain("beside leaf.png");
  }

  @Test
  void oneThatSaysItsResolutionSpeaksAgainstOneThatDoesNot() throws IOException {
    Files.write(desk.resolve("veins.png"), film(0.98).pngSilent());
    assertThat(check(PLAN))
        .containsIgnoringWhitespaces("how many points veins.png has to an inch")
        .containsIgnoringWhitespaces("write `resolution: 98/cm` beside veins.png.");
  }

  @Test
  void filmsOfAnotherResolutionOrRoundedOrSaidAreNotCompared() throws IOException {
    Files.write(desk.resolve("leaf.png"), film(1).pngSilent());
    for (Drawn other :
        new Drawn[] {
          new Drawn(200, 160, 508), new Drawn(200, 160, 127), new Drawn(199.9, 159.9, 254)
        }) {
      Files.write(desk.resolve("veins.png"), other.with(Drawn.disc(100, 80, 50)).pngSilent());
      assertThat(check(PLAN)).doesNotContain("films-differ-in-points");
    }
    // Both are said to be as large as the design.
    Files.write(desk.resolve("veins.png"), film(0.98).pngSilent());
    assertThat(
            check(
                PLAN.replace("leaf.png", "leaf.png, resolution: 100/cm")
                    .replace("veins.png", "veins.png, resolution: 98/cm")))
        .doesNotContain("films-differ-in-points");
  }

  /** Ten points of a centimetre each are off by a whole one: that is how the side was rounded. */
  @Test
  void aPointMoreOrLessIsRounding() throws IOException {
    Files.write(
        desk.resolve("leaf.png"), new Drawn(200, 160, 6).with((x, y) -> x > 50).pngSilent());
    Files.write(
        desk.resolve("veins.png"), new Drawn(204, 163, 6).with((x, y) -> x > 50).pngSilent());
    assertThat(check(PLAN)).doesNotContain("films-differ-in-points");
  }

  /** A drawing is laid on 600 points an inch, which says nothing of a film. */
  @Test
  void aDrawingHasNoPointsOfItsOwn() throws IOException {
    Files.write(
        desk.resolve("leaf.png"), new Drawn(200, 160, 590).with((x, y) -> x > 50).pngSilent());
    Files.writeString(
        desk.resolve("veins.svg"),
        "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 200 160'>"
            + "<rect x='60' width='20' height='20'/></svg>");
    assertThat(check(PLAN.replace("veins.png", "veins.svg")))
        .contains("found:")
        .doesNotContain("films-differ-in-points");
  }
}
