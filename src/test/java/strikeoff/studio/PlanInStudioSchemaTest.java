package strikeoff.studio;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import strikeoff.artwork.Artworks;
import strikeoff.artwork.StudioFolder;
import strikeoff.check.Checker;
import strikeoff.document.Bounds;
import strikeoff.document.Problem;
import strikeoff.plan.yaml.PlanReader;
import strikeoff.plan.yaml.PlanReading;
import strikeoff.plan.yaml.PlanSchema;
import strikeoff.plan.yaml.Stock;
import strikeoff.policy.Policy;
import strikeoff.report.json.SchemaCheck;
import strikeoff.units.UnitChoice;

/** Plans that name what the studio has are held alike by reader and schema. */
class PlanInStudioSchemaTest {

  private static final Policy POLICY = Checker.builtIn().policy();

  private static final Stock STOCK =
      stock(
          """
          studio: Loft
          screens:
            open: {frame: 44 x 44 cm, image: 27 x 27 cm, mesh: 43/cm}
          pastes:
            rust: {medium: paint, colour: "#a4532f"}
            tin: {medium: paint, colour: gold, label: {temperature: 150 °C, for: 4 min}}
            green: {medium: dye, group: DCT, colour: teal}
          films:
            shell: {artwork: films/shell-sand.png, margin: 1 mm}
          """);

  private static final String PLAN =
      """
      plan: A row
      cloth: {length: 2 m, width: 50 cm}
      screens: {}
      pastes: {}
      designs:
        reed:
          size: 20 x 20 cm
          separations:
            - {screen: open, paste: rust, covers: 40 %}
      """;

  private static Stock stock(String policy) {
    StudioReading reading =
        StudioReader.read(
            "studio.yaml",
            policy.getBytes(StandardCharsets.UTF_8),
            POLICY,
            Checker.builtIn().rules().rules().stream().map(r -> r.id()).toList(),
            true,
            new StudioFolder(Optional.of(Path.of("plans"))));
    return ((StudioReading.Read) reading).file().stock();
  }

  private static List<String> bySchema(Stock stock, String plan) throws IOException {
    return SchemaCheck.of(PlanSchema.text(POLICY, stock))
        .json(new ObjectMapper().writeValueAsString(new YAMLMapper().readTree(plan)));
  }

  private static List<String> byReader(Stock stock, String plan) {
    PlanReading reading =
        PlanReader.read(
            "plan.yaml",
            plan.getBytes(StandardCharsets.UTF_8),
            POLICY,
            stock,
            Bounds.USUAL,
            UnitChoice.PLAN,
            Artworks.nowhere());
    return reading instanceof PlanReading.Unreadable u
        ? u.problems().stream().map(Problem::message).toList()
        : List.of();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          pastes: {} | pastes: {rust: {amount: 60 g}}                   | true
          pastes: {} | pastes: {rust: {medium: paint, amount: 60 g}}    | true
          pastes: {} | pastes: {rust: {colour: red}}                    | true
          pastes: {} | pastes: {rust: {medium: dye}}                    | false
          pastes: {} | pastes: {rust: {medium: dye, group: DCT}}        | true
          pastes: {} | pastes: {rust: {group: DCT}}                     | false
          pastes: {} | pastes: {rust: {amont: 60 g}}                    | false
          pastes: {} | pastes: {rust: {amount: 60 min}}                 | false
          pastes: {} | pastes: {russet: {amount: 60 g}}                 | false
          pastes: {} | pastes: {russet: {medium: paint, colour: red}}   | true
          pastes: {} | pastes: {green: {amount: 60 g}}                  | true
          pastes: {} | pastes: {green: {group: MCT}}                    | true
          pastes: {} | pastes: {green: {medium: paint}}                 | false
          pastes: {} | pastes: {green: {label: {temperature: 150 °C, for: 4 min}}} | false
          pastes: {} | pastes: {tin: {medium: dye, group: DCT}}         | false
          pastes: {} | pastes: {tin: {label: {temperature: 160 °C, for: 3 min}}} | true
          screens: {} | screens: {open: {squeegee: 30 cm}}              | true
          covers: 40 % | film: shell                                    | true
          covers: 40 % | film: shell, covers: 40 %                      | true
          covers: 40 % | film: shell, reads: wrong, margin: 0 cm        | true
          covers: 40 % | film: shell, artwork: films/shell-sand.png     | false
          covers: 40 % | film: shell, reads: left                       | false
          covers: 40 % | film: [shell]                                  | false
          covers: 40 % | covers: 40 %, reads: wrong                     | false
          screens: {} | screens: {open: {squegee: 30 cm}}               | false
          screens: {} | screens: {shut: {squeegee: 30 cm}}              | false
          """)
  void whatTheStudioHasNeedNotBeDescribed(String old, String fresh, boolean good)
      throws IOException {
    String plan = PLAN.replace(old, fresh);
    assertThat(byReader(STOCK, plan).isEmpty()).as("%s", byReader(STOCK, plan)).isEqualTo(good);
    assertThat(bySchema(STOCK, plan).isEmpty()).as("%s", bySchema(STOCK, plan)).isEqualTo(good);
  }

  @Test
  void withoutTheStudioTheSamePlansLackIt() throws IOException {
    String plan = PLAN.replace("pastes: {}", "pastes: {rust: {amount: 60 g}}");
    assertThat(byReader(Stock.NONE, plan)).isNotEmpty();
    assertThat(bySchema(Stock.NONE, plan)).isNotEmpty();
  }

  @Test
  void everyPlanOfTheWorkshopIsValidByItsSchemaIfItIsReadable() throws IOException {
    Stock workshop = stock(Files.readString(Path.of("plans/workshop/studio.yaml")));
    try (Stream<Path> files = Files.list(Path.of("plans/workshop/saturday"))) {
      for (Path file : files.filter(f -> !f.endsWith("studio.yaml")).sorted().toList()) {
        String plan = Files.readString(file);
        List<String> problems = byReader(workshop, plan);
        // That a name is nothing's, only the reader can tell.
        problems = problems.stream().filter(p -> !p.contains(" is called ")).toList();
        assertThat(bySchema(workshop, plan).isEmpty())
            .as("%s: %s", file, bySchema(workshop, plan))
            .isEqualTo(problems.isEmpty());
      }
    }
  }
}
