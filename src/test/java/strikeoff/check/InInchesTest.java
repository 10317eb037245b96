package strikeoff.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import strikeoff.artwork.DemoFilms;

/**
 * Whoever writes a plan in inches to three decimals, or in inches, ounces, quarts and °F, finds
 * what she would find in metric units.
 */
class InInchesTest {

  private static final Checker CHECKER = Checker.builtIn().with(DemoFilms.beside());

  @TestFactory
  Stream<DynamicTest> everyExampleFindsTheSameInInches() {
    return CHECKER.rules().rules().stream()
        .flatMap(
            rule -> {
              Example example = Example.packaged(rule.id());
              return Stream.of(
                  same(rule.id(), CHECKER.of(example), example.firingText()),
                  same(rule.id() + ", its twin", CHECKER.of(example), example.twinText()));
            });
  }

  @TestFactory
  Stream<DynamicTest> everyDemoPlanFindsTheSameInInches() throws IOException {
    try (Stream<Path> files = Files.walk(Path.of("plans"))) {
      List<Path> plans =
          files.filter(f -> f.toString().endsWith(".yaml") && text(f).contains("\nplan:")).toList();
      return plans.stream().map(f -> same(f.toString(), CHECKER, text(f)));
    }
  }

  private static DynamicTest same(String name, Checker checker, String plan) {
    return DynamicTest.dynamicTest(
        name,
        () -> {
          TreeSet<String> metric = Inches.told(checker, plan);
          assertThat(Inches.told(checker, Inches.of(plan))).isEqualTo(metric);
          assertThat(Inches.told(checker, Inches.ofAll(plan)))
              .as("in ounces, quarts and °F, too")
              .isEqualTo(metric);
        });
  }

  private static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }
}
