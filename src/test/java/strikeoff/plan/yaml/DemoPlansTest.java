package strikeoff.plan.yaml;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import strikeoff.artwork.DemoFilms;
import strikeoff.document.PlanPath;
import strikeoff.document.Position;
import strikeoff.plan.Arrangement;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Step;
import strikeoff.plan.Until;
import strikeoff.policy.Policy;
import strikeoff.policy.yaml.PolicyReader;
import strikeoff.units.Length;
import strikeoff.units.Span;

class DemoPlansTest {

  private static final Policy POLICY = PolicyReader.builtIn();

  /** The one plan of the class that is meant to be unreadable. */
  private static final Path SLIPS = Path.of("plans/class/uma.yaml");

  static List<Path> plans() throws IOException {
    try (Stream<Path> files = Files.walk(Path.of("plans"))) {
      return files
          .filter(p -> p.toString().endsWith(".yaml"))
          .filter(p -> !p.endsWith(SLIPS))
          // A workshop's plans name what its policy describes, so they aren't read alone.
          .filter(p -> !p.startsWith(Path.of("plans/workshop")))
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
                        "39:5 run[4]: a step says what is done with one of mix, print, dry, wash screen, move"
                            + " on, sew, fix, rinse, wash, heat-set, end of day; did you mean"
                            + " “heat-set”?"));
  }

  @Test
  void theCurtainsSayWhatTheirFileSays() throws IOException {
    Path file = Path.of("plans/estuary-curtains.yaml");
    PlanReading.Readable readable = (PlanReading.Readable) read(file);
    PrintPlan plan = readable.plan();
    assertThat(plan.title()).isEqualTo("Estuary curtains");
    assertThat(plan.cloth().length()).isEqualTo(new Length(4300));
    assertThat(plan.cloth().ground().hex()).isEqualTo("#efe6d3");
    assertThat(plan.cloth().washed()).isTrue();
    assertThat(plan.cloth().closed()).isFalse();
    assertThat(plan.crew().names()).containsExactly("Wren", "Tam");
    assertThat(plan.hours().of(2).closes()).isEqualTo(17 * 60);
    assertThat(plan.screens()).hasSize(7);
    assertThat(plan.screens().get("heron key").thread().mm()).isEqualTo(0.064);
    assertThat(plan.pastes().get("slate blue").recipe()).hasSize(4);
    assertThat(plan.pastes().get("sand").thickener().orElseThrow().age()).isEqualTo(new Span(1440));
    // ImageMagick 6 counts 17.465 % of the film's points as black.
    assertThat(plan.designs().get("heron").separations().get(1).printed().squareCm())
        .isCloseTo(34 * 52 * 0.17465, within(0.01));
    assertThat(plan.arrangements().get("herons"))
        .isInstanceOfSatisfying(
            Arrangement.Series.class, s -> assertThat(s.pitch()).isEqualTo(Length.ofCm(70)));
    assertThat(plan.run()).hasSize(14);
    assertThat(plan.run().get(6))
        .isInstanceOfSatisfying(
            Step.Dry.class,
            d -> assertThat(d.until()).isEqualTo(new Until.State(Until.Dryness.LIFT_SAFE)));
    assertThat(readable.map().position(new PlanPath("run[6]")))
        .isEqualTo(lineOf(file, "dry: until lift-safe", 5));
    assertThat(readable.map().position(new PlanPath("pastes.ink.group.far")))
        .isEqualTo(readable.map().position(new PlanPath("pastes.ink.group")));
  }

  private static Position lineOf(Path file, String text, int column) throws IOException {
    List<String> lines = Files.readAllLines(file);
    for (int i = 0; i < lines.size(); i++) {
      if (lines.get(i).strip().equals("- " + text)) {
        return new Position(i + 1, column);
      }
    }
    throw new AssertionError(text);
  }

  static PlanReading read(Path file) throws IOException {
    return DemoFilms.read(file.toString(), Files.readString(file), POLICY);
  }
}
