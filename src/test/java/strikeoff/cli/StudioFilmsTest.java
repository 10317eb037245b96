package strikeoff.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import strikeoff.artwork.Drawn;

/** A class whose plans take their films from the studio's inventory, as whole runs. */
@Timeout(60)
class StudioFilmsTest {

  private static final String STUDIO =
      """
      studio: Loft
      screens:
        leaf: {frame: 44 x 44 cm, image: 20 x 20 cm, mesh: 43/cm, squeegee: 26 cm}
      pastes:
        green: {medium: dye, group: dichlorotriazine, colour: "#6f7f45"}
      films:
        leaf: {artwork: films/leaf.png, margin: 1 cm}
      """;

  private static final String PLAN =
      """
      plan: Runner of leaves
      cloth: {fibre: cotton, length: 2 m, width: 60 cm, washed: yes}
      table: {length: 2.4 m, width: 1.2 m}
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

  @BeforeEach
  void lay() throws IOException {
    Files.createDirectories(desk.resolve("loft/films"));
    Files.createDirectories(desk.resolve("loft/class"));
    // A label in the strip that is cut off; 50 x 60 mm within are 7.5 % of 20 x 20 cm.
    Files.write(desk.resolve("loft/films/leaf.png"), leaf().png());
    studio(STUDIO);
    plan("mina", "film: leaf");
  }

  private static Drawn leaf() {
    return new Drawn(220, 220, 100)
        .with(Drawn.bar(110, 110, 50, 60, 0))
        .with(Drawn.bar(30, 4, 20, 3, 0));
  }

  private void studio(String text) throws IOException {
    Files.writeString(desk.resolve("loft/studio.yaml"), text);
  }

  private void plan(String name, String says) throws IOException {
    Files.writeString(desk.resolve("loft/class/" + name + ".yaml"), PLAN.replace("SAYS", says));
  }

  private Scenario.Outcome run(String... words) {
    return Scenario.run(desk, Map.of("COLUMNS", "200"), List.of(words));
  }

  private String check(String plan, String... more) {
    List<String> words = new ArrayList<>(List.of("check", "loft/class/" + plan + ".yaml"));
    words.addAll(Arrays.asList(more));
    return run(words.toArray(String[]::new)).out();
  }

  /** The paste that a plan needs, as its JSON result says. */
  private String need(String plan) throws IOException {
    check(plan, "-f", "json=" + plan + ".json");
    String json = Files.readString(desk.resolve(plan + ".json"));
    int at = json.indexOf("\"needGrams\"");
    assertThat(at).isPositive();
    return json.substring(at, json.indexOf('}', at));
  }

  @Test
  void aClassSharesAFilm() throws IOException {
    plan("stated", "covers: 7.5 %");
    plan("light", "film: leaf, prints: light");
    plan("most", "covers: 92.5 %");
    plan("small", "film: leaf, size: 10 x 10 cm");
    assertThat(need("mina")).isEqualTo(need("stated"));
    assertThat(need("light")).as("a plan's own words win").isEqualTo(need("most"));
    assertThat(check("small")).contains("artwork/wrong-scale");
    assertThat(check("mina", "-v"))
        .contains("leaf.separations 1.film of the studio")
        .contains("artwork films/leaf.png, margin 1 cm")
        .contains("loft/studio.yaml, line 7");
  }

  @Test
  void theFilmsSizeIsCarriedAlong() throws IOException {
    studio(STUDIO.replace("margin: 1 cm", "margin: 1 cm, size: 20 x 20 cm"));
    Files.writeString(
        desk.resolve("loft/class/wide.yaml"),
        PLAN.replace("SAYS", "film: leaf").replace("size: 20 x 20 cm", "size: 24 x 22 cm"));
    assertThat(check("wide")).doesNotContain("artwork/");
    Files.writeString(
        desk.resolve("loft/class/tight.yaml"),
        PLAN.replace("SAYS", "film: leaf").replace("size: 20 x 20 cm", "size: 18 x 20 cm"));
    assertThat(check("tight"))
        .contains("loft/class/tight.yaml:8:44")
        .contains("reaches past its design");
  }

  @Test
  void whereTheStudiosFilmSaysTheSizeItIsNamed() throws IOException {
    studio(STUDIO.replace("margin: 1 cm", "margin: 1 cm, size: 18 x 18 cm"));
    plan("mina", "film: leaf");
    assertThat(check("mina"))
        .contains("artwork/wrong-scale")
        .contains(" cm` in loft/studio.yaml, line 7.");
    plan("mina", "film: leaf, size: 18 x 18 cm");
    assertThat(check("mina")).contains(" cm` for separation 1 of leaf.");
  }

  @Test
  void aMistakenMarginIsToldOnce() throws IOException {
    studio(STUDIO.replace("margin: 1 cm", "margin: -1 cm"));
    assertThat(run("check", "loft").err())
        .contains("“-1 cm” lies below zero")
        .doesNotContain("leaves nothing");
  }

  @Test
  void theNearestStudioHasTheLastWord() throws IOException {
    Files.createDirectories(desk.resolve("loft/class/films"));
    Files.write(
        desk.resolve("loft/class/films/leaf.png"),
        new Drawn(200, 200, 100).with(Drawn.bar(100, 100, 100, 60, 0)).png());
    Files.writeString(
        desk.resolve("loft/class/studio.yaml"),
        "studio: Class\nfilms:\n  leaf: {artwork: films/leaf.png}\n");
    plan("stated", "covers: 15 %");
    assertThat(need("mina")).isEqualTo(need("stated"));
  }

  @Test
  void everyMistakeInTheInventoryIsToldWhereItStands() throws IOException {
    Files.writeString(desk.resolve("loft/films/text.png"), "not a picture");
    Files.write(desk.resolve("loft/films/photo.jpg"), new byte[] {-1, -40, -1, -32, 0, 0, 0, 0});
    Files.createSymbolicLink(desk.resolve("loft/films/away.png"), Path.of("leaf.png"));
    Files.createDirectories(desk.resolve("other"));
    Files.writeString(
        desk.resolve("other/plain.yaml"),
        PLAN.replace("screen: leaf, paste: green, SAYS", "screen: s, paste: p, covers: 20 %")
            .replace(
                "designs:",
                "screens: {s: {frame: 44 x 44 cm, image: 20 x 20 cm, mesh: 43/cm}}\n"
                    + "pastes: {p: {medium: dye, group: DCT, colour: teal}}\ndesigns:"));
    studio(
        STUDIO
            + """
              up: {artwork: ../leaf.png}
              gone: {artwork: films/laef.png, prints: dork}
              text: {artwork: films/text.png}
              photo: {artwork: films/photo.jpg}
              away: {artwork: films/away.png}
              tight: {artwork: films/leaf.png, margin: 12 cm, size: 20 x 20 cm}
              none: {margin: 1 cm}
              odd: {artwork: films/leaf.png, marge: 1 cm}
            """);
    Scenario.Outcome outcome = run("check", "loft", "other");
    assertThat(outcome.exit()).isEqualTo(4);
    assertThat(outcome.err() + outcome.out())
        .contains("loft/studio.yaml:8:17: films.up.artwork: artwork lies beside the policy file or")
        .contains("loft/studio.yaml:9:19: films.gone.artwork: there is no file “films/laef.png”")
        .contains("beside the policy file; did you mean “films/leaf.png”?")
        .contains("loft/studio.yaml:9:43: films.gone.prints: dark or light was expected")
        .contains("loft/studio.yaml:10:19: films.text.artwork: this is no picture that is known")
        .contains("loft/studio.yaml:11:20: films.photo.artwork: this is a JPEG file")
        .contains("loft/studio.yaml:12:19: films.away.artwork: “films/away.png” is a link")
        .contains("loft/studio.yaml:13:20: films.tight.artwork: its margin, cut off all round")
        .contains("loft/studio.yaml:14:3: films.none.artwork: “artwork” is missing")
        .contains("loft/studio.yaml:15:34: films.odd.marge: “marge” is not known here")
        .contains("other/plain.yaml");
    assertThat(run("check", "other").exit()).isNotEqualTo(4);
  }

  @Test
  void whatIsWrongInAPlanIsToldThere() throws IOException {
    byte[] whole = Files.readAllBytes(desk.resolve("loft/films/leaf.png"));
    Files.write(desk.resolve("loft/films/short.png"), Arrays.copyOf(whole, whole.length / 2));
    studio(STUDIO + "  short: {artwork: films/short.png}\n");
    plan("none", "film: laef");
    plan("both", "film: leaf, artwork: films/leaf.png");
    plan("short", "film: short");
    plan("file", "film: films/leaf.png");
    assertThat(check("none"))
        .contains("loft/class/none.yaml:8:44")
        .contains("no film of the studio is called “laef”; did you mean “leaf”?");
    assertThat(check("both")).contains("keep one of them");
    assertThat(check("short"))
        .contains("loft/class/short.yaml:8:44")
        .contains("loft/studio.yaml, line 8, films/short.png: the picture ends");
    assertThat(check("file")).contains("no film of the studio is called “films/leaf.png”");
    assertThat(run("check", "loft/class/mina.yaml").exit()).isNotIn(3, 4);
  }

  @Test
  void withoutAStudioThereIsNoSuchFilm() throws IOException {
    Files.createDirectories(desk.resolve("other"));
    Files.copy(desk.resolve("loft/class/mina.yaml"), desk.resolve("other/mina.yaml"));
    assertThat(run("check", "other/mina.yaml").out())
        .contains("no film of the studio is called “leaf”")
        .doesNotContain("“covers” is missing");
    assertThat(run("check", "other/mina.yaml", "--policy", "loft/studio.yaml", "-v").out())
        .contains("films/leaf.png");
  }

  @Test
  void whatIsKeptIsOfTheStudiosFilmAsItWas() throws IOException {
    String cold = check("mina", "--cache", "kept", "-v");
    assertThat(check("mina", "--cache", "kept", "-v")).isEqualTo(cold);
    Files.write(desk.resolve("loft/films/leaf.png"), new Drawn(220, 220, 100).png());
    assertThat(check("mina", "--cache", "kept", "-v"))
        .contains("films/leaf.png has no dark point")
        .isEqualTo(check("mina", "-v"));
  }

  @Test
  void noResultIsWrittenOverAStudiosFilm() throws IOException {
    byte[] before = Files.readAllBytes(desk.resolve("loft/films/leaf.png"));
    assertThat(run("check", "loft/class/mina.yaml", "-f", "json=loft/films/leaf.png").exit())
        .isEqualTo(2);
    assertThat(Files.readAllBytes(desk.resolve("loft/films/leaf.png"))).isEqualTo(before);
  }

  @Test
  void pagesDrawItUnlessTheyAreNotTo() throws IOException {
    check("mina", "--reports", "drawn");
    check("mina", "--reports", "plain", "--no-artwork");
    assertThat(Files.readString(desk.resolve("drawn/mina.html")))
        .contains("Motifs are drawn from their films")
        .contains("films/leaf.png");
    assertThat(Files.readString(desk.resolve("plain/mina.html")))
        .doesNotContain("Motifs are drawn from their films");
  }

  @Test
  void watchSeesAStudiosFilmThatChanges() throws Exception {
    CompletableFuture<Scenario.Outcome> watch =
        CompletableFuture.supplyAsync(
            () -> run("watch", "loft/class", "--reports", "out", "--rounds", "2"));
    Path page = desk.resolve("out/index.html");
    while (!Files.exists(page)) {
      Thread.sleep(20);
    }
    Files.write(desk.resolve("half"), new Drawn(220, 220, 100).png());
    Files.move(
        desk.resolve("half"),
        desk.resolve("loft/films/leaf.png"),
        StandardCopyOption.REPLACE_EXISTING);
    assertThat(watch.get(50, TimeUnit.SECONDS).out())
        .contains("films/leaf.png has no dark point, so separation 1 of leaf prints nothing.");
  }

  @Test
  void anEditorKnowsTheStudiosFilms() {
    assertThat(run("schema", "plan", "--policy", "loft/studio.yaml").out())
        .containsPattern("\"filmName\"[^}]*\"leaf\"");
  }
}
