package strikeoff.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strikeoff.cli.Scenario.Outcome;

/** What to buy and to weigh, wherever it is told. */
class MaterialsTest {

  private static final String STUDIO =
      """
      studio: Net loft
      recipes:
        dye: {dye: 3 g, urea: 10 g, alginate: 2 g, water: 85 g}
      """;

  @TempDir private Path folder;

  @BeforeEach
  void plan() throws IOException {
    Files.copy(Path.of("plans/first-border.yaml"), folder.resolve("border.yaml"));
    Files.writeString(folder.resolve("studio.yaml"), STUDIO);
  }

  private Outcome run(String... words) {
    return Scenario.run(folder, Map.of("COLUMNS", "80"), List.of(words));
  }

  /** 110 g by a recipe of 100 g: 3.3 g of dye, 11 g of urea, 2.2 g of alginate, 93.5 ml. */
  @Test
  void aTerminalTellsThemOnDemand() {
    Outcome asked = run("check", "border.yaml", "--materials");
    assertThat(asked.exit()).as(asked.err()).isZero();
    assertThat(asked.out())
        .contains(
            """
              To buy
                3.5 g             dye for green
                12 g              urea (green 11 g)
                2.4 g             alginate (green 2.2 g)
                210 g             soda ash (bath of the soak 200 g)
                525 g             salt (bath of the soak 500 g)
            """)
        .contains(
            """
              To weigh
                green, 110 g; step 1: day 1, 09:15; by the studio's usual recipe
                  (studio.yaml, line 3)
                  3.3 g           dye
                  11 g            urea
            """)
        .contains("safety data sheet");
    assertThat(asked.out().lines()).allMatch(line -> line.length() <= 80);
    assertThat(run("check", "border.yaml").out()).doesNotContain("To buy");
    assertThat(run("check", "border.yaml", "--materials", "-q").exit()).isEqualTo(2);
  }

  @Test
  void inThePlansOwnUnits() {
    String told = run("check", "border.yaml", "--materials", "--units", "us").out();
    assertThat(told).contains("0.13 oz           dye for green").contains("18.6 oz           salt");
  }

  @Test
  void pageSheetsAndJsonTellTheSame() throws IOException {
    run("check", "border.yaml", "--reports", "pages", "--sheets", "wall", "-f", "json=all.json");
    Document page = Jsoup.parse(Files.readString(folder.resolve("pages/border.html")));
    Document wall = Jsoup.parse(Files.readString(folder.resolve("wall/border.html")));
    List<String> bought = page.select("#materials > .goods li").eachText();
    assertThat(bought).contains("3.5 g dye for green", "210 g soda ash bath of the soak 200 g");
    assertThat(wall.select(".sheet").first().select("h3").first().text()).isEqualTo("To buy");
    assertThat(wall.select(".sheet").first().select("> .goods li").eachText()).isEqualTo(bought);
    assertThat(wall.select(".sheet").get(1).select("h3").first().text()).isEqualTo("To weigh");
    assertThat(wall.select(".sheet").get(1).select(".cards .goods li").eachText())
        .isEqualTo(page.select("#materials .cards .goods li").eachText());
    assertThat(page.select("#materials").text())
        .contains("dye powder: out of draughts")
        .contains("soda and silicate: keep them out of the eyes")
        .contains("safety data sheet");
    JsonNode materials =
        new ObjectMapper()
            .readTree(folder.resolve("all.json").toFile())
            .at("/plans/0/figures/materials");
    assertThat(materials.at("/buy/0/name").asText()).isEqualTo("dye");
    assertThat(materials.at("/buy/0/paste").asText()).isEqualTo("green");
    assertThat(materials.at("/buy/0/buyGrams").asDouble()).isEqualTo(3.5);
    assertThat(materials.at("/weigh/0/recipe").asText()).isEqualTo("studio");
    assertThat(materials.at("/weigh/0/step").asInt()).isEqualTo(1);
    assertThat(materials.at("/weigh/1/kind").asText()).isEqualTo("bath");
  }

  @Test
  void partsOfABatchKeepThem() throws IOException {
    run("check", "border.yaml", "-f", "json=all.json");
    run("join", "all.json", "-f", "json=again.json");
    assertThat(folder.resolve("again.json")).hasSameTextualContentAs(folder.resolve("all.json"));
  }

  @Test
  void mistakesInUsualRecipesHaveTheirPlaces() throws IOException {
    Files.writeString(
        folder.resolve("studio.yaml"),
        """
        studio: Net loft
        recipes:
          dye: {dye: 3 g, soda ash: 10 g, water: 85 g}
          dye with alkali: {dye: 3 g, water: 85 g}
          paint: {pigmint: 3 g, binder: 10 m}
          pigment: {binder: 3 g}
        """);
    String told =
        Scenario.run(folder, Map.of("COLUMNS", "200"), List.of("check", "border.yaml")).err();
    assertThat(told)
        .contains("studio.yaml:3:8: recipes.dye: this recipe holds an alkali")
        .contains("studio.yaml:4:20: recipes.dye with alkali: this recipe holds no alkali")
        .contains("studio.yaml:5:11: ")
        .contains("did you mean “pigment”")
        .contains("studio.yaml:5:33: ")
        .contains("studio.yaml:6:3: ");
  }

  /** The nearest file has the last word, recipe by recipe. */
  @Test
  void aFolderBelowHasItsOwn() throws IOException {
    Files.createDirectory(folder.resolve("course"));
    Files.move(folder.resolve("border.yaml"), folder.resolve("course/border.yaml"));
    Files.writeString(
        folder.resolve("course/studio.yaml"),
        "studio: Course\nrecipes: {dye: {dye: 1 g, water: 99 g}}\n");
    assertThat(run("check", "course/border.yaml", "--materials").out())
        .contains("1.1 g           dye")
        .doesNotContain("urea");
  }
}
