package strikeoff.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** What the fuzzer once found stays found: each input that broke something, by its target. */
class PastCrashesTest {

  private static final Path FOLDER = Path.of("src/test/resources/strikeoff/fuzz");

  @TestFactory
  Stream<DynamicTest> nothingBreaksAgain() throws IOException {
    return Stream.of(
            of("PlanText", PlanText::fuzzerTestOneInput),
            of("PolicyText", PolicyText::fuzzerTestOneInput),
            of("WholeCheck", WholeCheck::fuzzerTestOneInput),
            of("EditedPlan", EditedPlan::fuzzerTestOneInput),
            of("FilmBytes", FilmBytes::fuzzerTestOneInput))
        .flatMap(List::stream);
  }

  private static List<DynamicTest> of(String target, Consumer<byte[]> run) throws IOException {
    Path folder = FOLDER.resolve(target);
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> inputs = Files.list(folder)) {
      return inputs
          .sorted()
          .map(
              input ->
                  DynamicTest.dynamicTest(
                      target + "/" + input.getFileName(),
                      () -> run.accept(Files.readAllBytes(input))))
          .toList();
    }
  }

  @Test
  void anEmptyInputIsThePlanItself() {
    assertThat(EditedPlan.edited(new byte[0])).anyMatch(line -> line.startsWith("plan:"));
    for (int i = 0; i < 25; i++) {
      EditedPlan.fuzzerTestOneInput(new byte[] {0, (byte) i});
    }
  }
}
