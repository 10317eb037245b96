package strikeoff.plan.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import strikeoff.plan.PlanPath;
import strikeoff.plan.Position;
import strikeoff.plan.SourceMap;
import strikeoff.policy.Policy;
import strikeoff.policy.yaml.PolicyReader;

class DemoPlansTest {

  private static final Policy POLICY = PolicyReader.builtIn();

  /** The one plan of the class that is meant to be unreadable. */
  private static final Path SLIPS = Path.of("plans/class/uma.yaml");

  static List<Path> plans() throws IOException {
    try (Stream<Path> files = Files.walk(Path.of("plans"))) {
      return files
          .filter(p -> p.toString().endsWith(".yaml"))
          .filter(p -> !p.endsWith(SLIPS))
          .sorted()
          .toList();
    }
  }

  @ParameterizedTest
  @MethodSource("plans")
  void everyPlanOfTheDemoCanBeRead(Path file) throws IOException {
    assertThat(read(file)).isInstanceOf(PlanReading.Readable.class);
  }

  @Test
  void theSlipsOfThePenAreToldAtOnce() throws IOException {
    assertThat(read(SLIPS))
        .isInstanceOfSatisfying(
            PlanReading.Unreadable.class,
            u ->
                assertThat(u.problems())
                    .extracting(p -> p.position() + " " + p.path() + ": " + p.message())
                    .containsExactly(
                        "21:60 screens.shell ribs.mesh: a mesh count such as 43/cm was expected;"
                            + " “61 cm” is a length",
                        "30:37 designs.cockle.separations[1].paste: no paste is called “rsut”; did"
                            + " you mean “rust”?",
                        "39:5 run[4]: a step says what is done with one of mix, print, dry, move"
                            + " on, sew, fix, rinse, wash, heat-set, end of day; did you mean"
                            + " “heat-set”?"));
  }

  @ParameterizedTest
  @MethodSource("plans")
  void stepsStandWhereTheFileHasThem(Path file) throws IOException {
    PlanReading.Readable readable = (PlanReading.Readable) read(file);
    List<String> lines = Files.readAllLines(file);
    int step = 0;
    for (int i = lines.indexOf("run:"); i < lines.size(); i++) {
      if (lines.get(i).startsWith("  - ") && step < readable.plan().run().size()) {
        assertThat(readable.map().position(readable.plan().run().get(step).path()))
            .isEqualTo(new Position(i + 1, 5));
        step++;
      }
    }
    assertThat(step).isEqualTo(readable.plan().run().size());
  }

  @Test
  void whatIsNotInTheFileStandsAtItsNearestAncestor() throws IOException {
    SourceMap map = ((PlanReading.Readable) read(Path.of("plans/first-border.yaml"))).map();
    Position group = map.position(new PlanPath("pastes.green.group"));
    assertThat(map.position(new PlanPath("pastes.green.group.far"))).isEqualTo(group);
    assertThat(map.position(new PlanPath("room.air"))).isEqualTo(map.position(PlanPath.ROOT));
    assertThat(map.line(group.line()).substring(group.column() - 1)).startsWith("group:");
  }

  static PlanReading read(Path file) throws IOException {
    return PlanReader.read(file.toString(), Files.readAllBytes(file), POLICY);
  }
}
