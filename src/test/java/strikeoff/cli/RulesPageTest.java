package strikeoff.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strikeoff.check.Example;
import strikeoff.policy.Glossary;
import strikeoff.report.json.SchemaCheck;

/** The page of rules beside the index, and what leads to it. */
class RulesPageTest {

  @TempDir private Path desk;

  @BeforeEach
  void plan() throws IOException {
    Files.createDirectories(desk.resolve("class"));
    String plan = Example.packaged("drying/frame-on-wet-film").firingText();
    Files.writeString(desk.resolve("class/wet.yaml"), plan);
    Files.writeString(desk.resolve("class/rules.yaml"), plan);
  }

  private Scenario.Outcome run(String... args) {
    return Scenario.run(desk, Map.of(), List.of(args));
  }

  private Document page(String name) throws IOException {
    return Jsoup.parse(Files.readString(desk.resolve("pages").resolve(name)));
  }

  @Test
  void everyRuleOfTheIndexStandsThere() throws IOException {
    run("check", "class", "--reports", "pages");
    Document rules = page("rules.html");
    Document index = page("index.html");
    assertThat(index.select("a[href^=rules.html#]")).isNotEmpty();
    for (Element link : index.select("a[href^=rules.html#]")) {
      assertThat(rules.getElementById(link.attr("href").substring("rules.html#".length())))
          .as(link.attr("href"))
          .isNotNull();
    }
    assertThat(rules.select("dl.words dt").eachText())
        .containsExactlyElementsOf(Glossary.all().keySet());
    assertThat(rules.text()).doesNotContain("from memory");
  }

  /** A plan that is called rules.yaml has a page of its own. */
  @Test
  void noPlanTakesItsName() throws IOException {
    run("check", "class", "--reports", "pages");
    assertThat(page("rules-2.html").select("h1").text())
        .isEqualTo(page("wet.html").select("h1").text());
  }

  @Test
  void aLogLeadsToItAndNamesPlansFromTheWorkingFolder() throws IOException {
    String absolute = desk.toAbsolutePath().resolve("class/wet.yaml").toString();
    run("check", absolute, "--reports", "pages", "--format", "sarif=log.sarif");
    String text = Files.readString(desk.resolve("log.sarif"));
    try (InputStream in = getClass().getResourceAsStream("/schema/sarif-schema-2.1.0.json")) {
      assertThat(SchemaCheck.of(new String(in.readAllBytes(), StandardCharsets.UTF_8)).json(text))
          .isEmpty();
    }
    JsonNode driver = new ObjectMapper().readTree(text).at("/runs/0/tool/driver");
    Document rules = page("rules.html");
    assertThat(Path.of(URI.create(driver.get("informationUri").textValue()))).exists();
    assertThat(driver.get("rules"))
        .isNotEmpty()
        .allSatisfy(
            rule -> {
              URI help = URI.create(rule.get("helpUri").textValue());
              assertThat(help.isAbsolute()).isTrue();
              assertThat(rules.getElementById(help.getFragment())).isNotNull();
            });
    JsonNode run = new ObjectMapper().readTree(text).at("/runs/0");
    assertThat(run.at("/artifacts/0/location/uri").textValue()).isEqualTo("class/wet.yaml");
    assertThat(run.at("/results/0/locations/0/physicalLocation/artifactLocation/uri").textValue())
        .isEqualTo("class/wet.yaml");
  }

  @Test
  void withoutPagesNothingLeadsNowhere() {
    assertThat(run("check", "class", "--format", "sarif").out())
        .doesNotContain("helpUri", "informationUri");
  }
}
