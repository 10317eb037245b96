package strikeoff.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import strikeoff.artwork.Drawn;
import strikeoff.artwork.Reeds;

/** Plans whose films lie beside them, as whole runs. */
@Timeout(60)
class FilmsBesidePlansTest {

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
            - {screen: leaf, paste: green, SAYS}
      placements:
        leaves: {design: leaf, series: 6, pitch: 30 cm, start: 10 cm, across: 20 cm}
      run:
        - mix: all
        - print: leaves
      """;

  @TempDir private Path desk;

  private static Drawn blank() {
    return new Drawn(200, 200, 100);
  }

  @BeforeEach
  void lay() throws IOException {
    Files.createDirectories(desk.resolve("plans/films"));
    // 50 x 60 mm are 30 cm², 7.5 % of the square.
    Files.write(
        desk.resolve("plans/films/leaf.png"), blank().with(Drawn.bar(100, 100, 50, 60, 0)).png());
    plan("leaf", "artwork: films/leaf.png");
  }

  private void plan(String name, String says) throws IOException {
    Files.writeString(desk.resolve("plans/" + name + ".yaml"), PLAN.replace("SAYS", says));
  }

  private Scenario.Outcome run(String... words) {
    return Scenario.run(desk, Map.of("COLUMNS", "200"), List.of(words));
  }

  /** The paste that a plan needs, as its JSON result says. */
  private String need(String plan) throws IOException {
    run("check", "plans/" + plan + ".yaml", "-f", "json=" + plan + ".json");
    String json = Files.readString(desk.resolve(plan + ".json"));
    int at = json.indexOf("\"needGrams\"");
    assertThat(at).isPositive();
    return json.substring(at, json.indexOf('}', at));
  }

  @Test
  void theFilmsFigureTakesThePlaceOfCovers() throws IOException {
    plan("stated", "covers: 7.5 %");
    plan("half", "covers: 50 %");
    assertThat(need("leaf")).isEqualTo(need("stated")).isNotEqualTo(need("half"));
  }

  /** Frames of 50 cm over reeds at a repeat of 30 cm: each reaches 10 cm over the one before. */
  private static final String REEDS =
      """
      plan: Runner of reeds
      cloth: {fibre: cotton, length: 2.2 m, width: 60 cm, washed: yes}
      table: {length: 2.6 m, width: 1.2 m}
      screens:
        reeds: {frame: 50 x 44 cm, rail: 3 cm, image: 30 x 22 cm, mesh: 43/cm, squeegee: 26 cm}
      pastes:
        green: {medium: paint, colour: "#6f7f45"}
      designs:
        reeds:
          size: 30 x 22 cm
          separations:
            - {screen: reeds, paste: green, SAYS}
      placements:
        border: {design: reeds, series: 3, pitch: 30 cm, start: 30 cm, across: 12 cm}
      run:
        - mix: all
        - print: border
      """;

  @Test
  void wetFilmUnderFramesIsWhatPrintsThere() throws IOException {
    Reeds reeds = new Reeds();
    Files.write(desk.resolve("plans/films/reeds.png"), reeds.film(254).png());
    Path plan = desk.resolve("plans/reeds.yaml");
    Files.writeString(plan, REEDS.replace("SAYS", "covers: 40 %"));
    assertThat(run("check", "plans/reeds.yaml").out()).contains("up to 440 cm² of film lie under");
    Files.writeString(plan, REEDS.replace("SAYS", "artwork: films/reeds.png"));
    // Rails are 3 cm wide: the last 7 cm of each neighbour lie under the mesh.
    double printed = 2 * reeds.within(Reeds.polygon(200, 0, 300, 0, 300, 220, 200, 220));
    double onRails = 2 * reeds.within(Reeds.polygon(200, 0, 230, 0, 230, 220, 200, 220));
    Matcher told =
        Pattern.compile("([0-9.]+) cm² of film lie under frames, ([0-9.]+) cm² of it under rails")
            .matcher(run("check", "plans/reeds.yaml").out());
    assertThat(told.find()).isTrue();
    assertThat(Double.parseDouble(told.group(1))).isCloseTo(printed, within(0.3));
    assertThat(Double.parseDouble(told.group(2))).isCloseTo(onRails, within(0.3));
  }

  @Test
  void framesOverAPartOfAFilmThatPrintsNothingTouchNoFilm() throws IOException {
    Files.write(
        desk.resolve("plans/films/reeds.png"),
        new Drawn(300, 220, 100).with(Drawn.bar(150, 110, 90, 200, 0)).png());
    Path plan = desk.resolve("plans/reeds.yaml");
    Files.writeString(plan, REEDS.replace("SAYS", "artwork: films/reeds.png"));
    assertThat(run("check", "plans/reeds.yaml").out()).doesNotContain("frame-on-wet");
    Files.writeString(plan, REEDS.replace("SAYS", "covers: 27 %"));
    assertThat(run("check", "plans/reeds.yaml").out()).contains("frame-on-wet-neighbour");
  }

  /** Two colours of one design in paint; the second one is opaque. */
  private String twoColours(String under, String over) {
    return PLAN.replace(
            "leaf: {frame: 44 x 44 cm, image: 20 x 20 cm, mesh: 43/cm, squeegee: 26 cm}",
            "leaf: {frame: 44 x 44 cm, image: 20 x 20 cm, mesh: 43/cm, squeegee: 26 cm}\n"
                + "  veins: {frame: 44 x 44 cm, image: 20 x 20 cm, mesh: 43/cm, squeegee: 26 cm}")
        .replace(
            "green: {medium: dye, group: dichlorotriazine, colour: \"#6f7f45\"}",
            "green: {medium: paint, colour: \"#6f7f45\"}\n"
                + "  ink: {medium: paint, transparent: no, colour: \"#2b3440\"}")
        .replace(
            "{screen: leaf, paste: green, SAYS}",
            "{screen: leaf, paste: green, artwork: films/"
                + under
                + "}\n      - {screen: veins, paste: ink, artwork: films/"
                + over
                + "}");
  }

  @Test
  void aColourOnTheVeryFilmOfAnotherIsToldAsThatAlone() throws IOException {
    Files.writeString(desk.resolve("plans/twice.yaml"), twoColours("leaf.png", "leaf.png"));
    assertThat(run("check", "plans/twice.yaml").out())
        .contains("artwork/same-picture-twice")
        .doesNotContain("order/colour-hidden-under-others")
        .doesNotContain("artwork/hidden-under-opaque");
    Files.write(
        desk.resolve("plans/films/beside.png"), blank().with(Drawn.bar(160, 100, 50, 60, 0)).png());
    Files.writeString(desk.resolve("plans/beside.yaml"), twoColours("leaf.png", "beside.png"));
    assertThat(run("check", "plans/beside.yaml").out())
        .doesNotContain("hidden")
        .doesNotContain("overprint");
  }

  @Test
  void filmsOfDifferentRectanglesAreLaidWhereTheyLieOnTheDesign() throws IOException {
    Files.write(
        desk.resolve("plans/films/leaf.png"),
        new Drawn(200, 200, 254).with(Drawn.bar(100, 100, 50, 60, 0)).png());
    // The leaf ends at 125 mm; the part begins at 100 mm, and its bar at 25.5 mm of that.
    Files.write(
        desk.resolve("plans/films/part.png"),
        new Drawn(60, 80, 254).with(Drawn.bar(40.5, 30, 30, 40, 0)).png());
    String part = "films/part.png, at: \"10 cm, 5 cm\", size: 6 x 8 cm";
    Files.writeString(
        desk.resolve("plans/part.yaml"), twoColours("leaf.png", part.substring("films/".length())));
    assertThat(run("check", "plans/part.yaml").out())
        .contains("artwork/colours-do-not-meet")
        .containsPattern("Between green and ink of leaf lies 0\\.[45]\\d* mm of ground, over 4 cm");
    Files.writeString(
        desk.resolve("plans/part.yaml"),
        twoColours("leaf.png", part.substring("films/".length()).replace("10 cm", "9.9 cm")));
    assertThat(run("check", "plans/part.yaml").out()).doesNotContain("colours-do-not-meet");
  }

  @Test
  void aColourThatIsMostlyHiddenIsKnockedOutOfItsFilm() throws IOException {
    // 35 of 50 mm.
    Files.write(
        desk.resolve("plans/films/over.png"), blank().with(Drawn.bar(115, 100, 50, 60, 0)).png());
    Files.writeString(desk.resolve("plans/over.yaml"), twoColours("leaf.png", "over.png"));
    assertThat(run("check", "plans/over.yaml").out())
        .contains("order/colour-mostly-under-others")
        .contains("covers about 70 % of it, by their films")
        .contains("Knock it out of the film of green, and leave 2 mm under ink all round, or")
        .doesNotContain("Look at the drawing");
  }

  @Test
  void whatAnOpaqueColourHidesCostsPaste() throws IOException {
    // 20 x 60 mm lie under it; less 2 mm on three sides, since frames are laid by eye: 18 x 56 mm
    // but for the left side, where the lower one goes on.
    Files.write(
        desk.resolve("plans/films/over.png"), blank().with(Drawn.bar(130, 100, 50, 60, 0)).png());
    Files.writeString(desk.resolve("plans/over.yaml"), twoColours("leaf.png", "over.png"));
    assertThat(run("check", "plans/over.yaml").out())
        .containsPattern(
            "In each leaf, 10\\.[01] cm² of green lie under ink, which is opaque: 33\\.?\\d* % of what"
                + " it prints, which is about [\\d.]+ g of paste in 6 prints");
  }

  @Test
  void whatThePlanSaysBesidesIsComparedAndTheFilmCounts() throws IOException {
    plan("stated", "artwork: films/leaf.png, covers: 30 %");
    assertThat(need("stated")).isEqualTo(need("leaf"));
    assertThat(run("check", "plans/stated.yaml").out())
        .contains(
            "The plan says that separation 1 of leaf prints 120 cm² (30 %); films/leaf.png prints"
                + " 30 cm² (7.5 %).");
  }

  @Test
  void whatAWrongSizeMayComeOfIsToldWithWhatMendsIt() throws IOException {
    // 100 points an inch: 254 by 228.6 mm, once with a strip of 10 mm round 234 by 208.6.
    Files.write(
        desk.resolve("plans/films/leaf.png"),
        new Drawn(254, 228.6, 100).with(Drawn.bar(100, 100, 50, 60, 0)).png());
    String plan = PLAN.replace("SAYS", "artwork: films/leaf.png");
    String[][] sizes = {
      {"23.4 x 20.86 cm", "write `margin: 1 cm`", ", margin: 1 cm"},
      {"22.86 x 25.4 cm", "It lies across: turn it by 90°.", ""},
      {"12.7 x 11.43 cm", "write `resolution: 200/in`", ", resolution: 200/in"}
    };
    for (String[] size : sizes) {
      String sized = plan.replace("size: 20 x 20 cm", "size: " + size[0]);
      Files.writeString(desk.resolve("plans/sized.yaml"), sized);
      assertThat(run("check", "plans/sized.yaml").out())
          .contains("artwork/wrong-scale")
          .contains(size[1]);
      if (!size[2].isEmpty()) {
        Files.writeString(
            desk.resolve("plans/sized.yaml"), sized.replace("leaf.png", "leaf.png" + size[2]));
        assertThat(run("check", "plans/sized.yaml").out())
            .as(size[2])
            .doesNotContain("artwork/wrong-scale")
            .doesNotContain("artwork/scale-slightly-off");
      }
    }
  }

  @Test
  void aNegativeIsToldByWhatItLeavesBare() throws IOException {
    plan("stated", "artwork: films/leaf.png, covers: 92.5 %");
    assertThat(run("check", "plans/stated.yaml").out())
        .contains("if it is a negative, write `prints: light`");
    plan("stated", "artwork: films/leaf.png, covers: 92.5 %, prints: light");
    assertThat(run("check", "plans/stated.yaml").out()).doesNotContain("artwork/");
    plan("stated", "artwork: films/leaf.png, covers: 60 %");
    assertThat(run("check", "plans/stated.yaml").out()).doesNotContain("negative");
  }

  @Test
  void everyMistakeIsToldAtItsPlaceAndOtherPlansAreChecked() throws IOException {
    Files.writeString(desk.resolve("plans/films/text.png"), "not a picture");
    plan("a", "artwork: films/laef.png, prints: dork, reads: right");
    plan("b", "artwork: films/text.png");
    plan("c", "covers: 5 %, resolution: 600/in");
    plan("d", "artwork: films/leaf.png, resolution: 600 dpi, margin: 3");
    plan("e", "artwork: ../leaf.png");
    plan("f", "");
    Scenario.Outcome outcome = run("check", "plans");
    assertThat(outcome.exit()).isEqualTo(3);
    assertThat(outcome.out().lines().map(String::strip))
        .contains(
            "plans/a.yaml:12:71  designs.leaf.separations 1.prints",
            "dark or light was expected; “dork” is not known; did you mean “dark”?",
            "plans/a.yaml:12:47  designs.leaf.separations 1.artwork",
            "there is no file “films/laef.png” beside the plan; did you mean “films/leaf.png”?",
            "plans/b.yaml:12:47  designs.leaf.separations 1.artwork",
            "this is no picture that is known; save the film as PNG, TIFF or PBM",
            "plans/c.yaml:12:63  designs.leaf.separations 1.resolution",
            "“resolution” says how artwork is read, and no artwork is named here",
            "plans/d.yaml:12:75  designs.leaf.separations 1.resolution",
            "a resolution such as 600/in or 240/cm was expected; for “600 dpi” write 600/in");
    assertThat(outcome.out())
        .contains("plans/d.yaml:12:92")
        .contains("artwork lies beside the plan or in a folder below it")
        .contains("or artwork such as films/heron.png, belongs here")
        .contains("NOT PRINTABLE  plans/leaf.yaml");
  }

  @Test
  void aLineOfAQuarterMillimetreIsARiskOnACoarseMeshAlone() throws IOException {
    // Openings by the plain-weave formula: 1/43 cm less 80 µm are 0.153 mm, 1/61 cm less 64 µm 0.1
    // mm.
    Files.write(
        desk.resolve("plans/films/line.png"),
        new Drawn(60, 60, 600).with(Drawn.bar(30, 30, 50, 0.25, 30)).png());
    String plan =
        PLAN.replace("size: 20 x 20 cm", "size: 6 x 6 cm")
            .replace("SAYS", "artwork: films/line.png");
    Files.writeString(
        desk.resolve("plans/coarse.yaml"),
        plan.replace("mesh: 43/cm", "mesh: 43/cm, thread: 80 µm"));
    Files.writeString(
        desk.resolve("plans/fine.yaml"), plan.replace("mesh: 43/cm", "mesh: 61/cm, thread: 64 µm"));
    assertThat(run("check", "plans/coarse.yaml").out())
        .contains("RISK  screens/mesh-too-coarse-for-detail")
        .contains("Separation 1 of leaf has on its film lines of 0.25 mm, over");
    assertThat(run("check", "plans/fine.yaml").out()).doesNotContain("for-detail");
  }

  @Test
  void aFilmThatIsItsOwnMirrorImageNeedsNoSecondScreen() throws IOException {
    String plan =
        PLAN.replace("SAYS", "artwork: films/one.png")
            .replace(
                "leaves: {",
                "others: {design: leaf, mirrored: yes, series: 2, pitch: 60 cm, start: 30 cm, across:"
                    + " 2 cm}\n  leaves: {");
    Files.writeString(desk.resolve("plans/two.yaml"), plan);
    Files.write(
        desk.resolve("plans/films/one.png"), blank().with(Drawn.leaf(100, 90, 150, 60)).png());
    assertThat(run("check", "plans/two.yaml").out()).doesNotContain("cannot-be-mirrored");
    Files.write(
        desk.resolve("plans/films/one.png"), blank().with(Drawn.leaf(60, 90, 150, 60)).png());
    assertThat(run("check", "plans/two.yaml").out())
        .contains("RISK  screens/stencil-cannot-be-mirrored");
  }

  @Test
  void aPlanFromStandardInputHasNoFilms() throws IOException {
    String text = Files.readString(desk.resolve("plans/leaf.yaml"));
    Scenario.Outcome outcome = Scenario.run(desk, Map.of(), List.of("check", "-"), text);
    assertThat(outcome.exit()).isEqualTo(3);
    assertThat(outcome.out().replaceAll("\\s+", " "))
        .contains("artwork lies beside the plan's file, and this plan comes from none");
  }

  @Test
  void whatIsKeptIsOfTheFilmAsItWas() throws IOException {
    String cold = run("check", "plans/leaf.yaml", "--cache", "kept", "-v").out();
    assertThat(run("check", "plans/leaf.yaml", "--cache", "kept", "-v").out()).isEqualTo(cold);
    Files.write(desk.resolve("plans/films/leaf.png"), blank().png());
    String changed = run("check", "plans/leaf.yaml", "--cache", "kept", "-v").out();
    assertThat(changed)
        .contains("films/leaf.png has no dark point")
        .isEqualTo(run("check", "plans/leaf.yaml", "-v").out());
    Files.delete(desk.resolve("plans/films/leaf.png"));
    assertThat(run("check", "plans/leaf.yaml", "--cache", "kept").exit()).isEqualTo(3);
  }

  @Test
  void noResultIsWrittenOverAFilm() throws IOException {
    byte[] before = Files.readAllBytes(desk.resolve("plans/films/leaf.png"));
    Scenario.Outcome outcome = run("check", "plans/leaf.yaml", "-f", "json=plans/films/leaf.png");
    assertThat(outcome.exit()).isEqualTo(2);
    assertThat(Files.readAllBytes(desk.resolve("plans/films/leaf.png"))).isEqualTo(before);
  }

  @Test
  void watchSeesAFilmThatChanges() throws Exception {
    CompletableFuture<Scenario.Outcome> watch =
        CompletableFuture.supplyAsync(
            () -> run("watch", "plans/leaf.yaml", "--reports", "out", "--rounds", "2"));
    Path page = desk.resolve("out/index.html");
    while (!Files.exists(page)) {
      Thread.sleep(20);
    }
    Files.write(desk.resolve("half"), blank().png());
    Files.move(
        desk.resolve("half"),
        desk.resolve("plans/films/leaf.png"),
        StandardCopyOption.REPLACE_EXISTING);
    assertThat(watch.get(50, TimeUnit.SECONDS).out())
        .contains("films/leaf.png has no dark point, so separation 1 of leaf prints nothing.");
  }

  @Test
  void boundsAreKeptAndMoved() {
    Scenario.Outcome outcome =
        run("check", "plans/leaf.yaml", "--bound", "artwork-mib=1", "--bound", "megapixels=1");
    assertThat(outcome.exit()).isNotEqualTo(2);
    // 787 x 787 points are 0.6 million.
    assertThat(outcome.out()).doesNotContain("are taken in");
  }

  @Test
  void aFilmCountsOnceForEachWayThatItIsMeasured() throws IOException {
    String[] bound = {"--bound", "artwork-megapixels=1"};
    String again = "artwork: films/leaf.png}\n            - {screen: leaf, paste: green, ";
    plan("twice", again + "artwork: films/leaf.png");
    plan("turned", again + "artwork: films/leaf.png, reads: wrong");
    assertThat(run("check", "plans/twice.yaml", bound[0], bound[1]).out())
        .doesNotContain("are taken in");
    assertThat(run("check", "plans/turned.yaml", bound[0], bound[1]).out())
        .contains("million that are taken in");
  }

  @Test
  void whatWasKeptWithoutPagesMakesNoPageWithoutPictures() throws IOException {
    run("check", "plans/leaf.yaml", "--cache", "kept");
    run("check", "plans/leaf.yaml", "--cache", "kept", "--reports", "out");
    run("check", "plans/leaf.yaml", "--reports", "fresh");
    assertThat(Files.readString(desk.resolve("out/leaf.html")))
        .contains("Motifs are drawn from their films")
        .isEqualTo(Files.readString(desk.resolve("fresh/leaf.html")));
  }
}
