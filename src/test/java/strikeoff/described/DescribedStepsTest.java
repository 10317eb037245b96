package strikeoff.described;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import strikeoff.artwork.DemoFilms;
import strikeoff.day.facts.Timeline;
import strikeoff.layout.Layout;
import strikeoff.plan.PrintPlan;
import strikeoff.policy.Policy;
import strikeoff.policy.yaml.PolicyReader;

/** What is said of steps, by the text of the estuary curtains. */
class DescribedStepsTest {

  private static Map<Integer, StepTaken> steps;
  private static List<BathTaken> baths;

  @BeforeAll
  static void describe() throws IOException {
    String text = Files.readString(Path.of("plans/estuary-curtains.yaml"));
    Policy policy = PolicyReader.builtIn();
    PrintPlan plan = DemoFilms.plan(text, policy);
    Layout layout = Layout.of(plan, policy);
    List<?> all = Described.of(plan, layout, Timeline.of(plan, layout, policy));
    steps =
        all.stream()
            .filter(StepTaken.class::isInstance)
            .map(StepTaken.class::cast)
            .collect(Collectors.toMap(StepTaken::step, Function.identity()));
    baths = all.stream().filter(BathTaken.class::isInstance).map(BathTaken.class::cast).toList();
  }

  @Test
  void aStepNamesWhatItMixesAndPrints() {
    assertThat(steps.get(1).pastes())
        .containsExactlyInAnyOrder("sand", "rust", "reed green", "slate blue", "ink");
    assertThat(steps.get(1).screens()).isEmpty();
    assertThat(steps.get(2).arrangements()).containsExactly("herons");
    assertThat(steps.get(2).designs()).containsExactly("heron");
    assertThat(steps.get(2).pastes()).containsExactlyInAnyOrder("rust", "slate blue", "ink");
    assertThat(steps.get(2).screens())
        .containsExactlyInAnyOrder("heron rust", "heron blue", "heron key");
    assertThat(steps.get(8).kind()).isEqualTo("sew");
    assertThat(steps.get(8).pastes()).isEmpty();
  }

  @Test
  void stepsFollowEachOtherOnTheirDays() {
    assertThat(steps).hasSize(14);
    for (int step = 2; step <= 14; step++) {
      assertThat(steps.get(step).begins())
          .as("step " + step)
          .isGreaterThanOrEqualTo(steps.get(step - 1).begins());
      assertThat(steps.get(step).ends()).isGreaterThanOrEqualTo(steps.get(step).begins());
    }
    // Three steps “end of day” part four days.
    assertThat(steps.get(2).day()).isEqualTo(1);
    assertThat(steps.get(4).day()).isEqualTo(2);
    assertThat(steps.get(6).day()).isEqualTo(3);
    assertThat(steps.get(14).day()).isGreaterThanOrEqualTo(4);
    assertThat(steps.get(2).lasts().minutes())
        .isEqualTo(steps.get(2).ends().since(steps.get(2).begins()).minutes());
  }

  /** The night belongs to the step that ends the day. */
  @Test
  void theEndOfADayLastsUntilTheNext() {
    assertThat(steps.get(3).kind()).isEqualTo("end of day");
    assertThat(steps.get(3).day()).isEqualTo(1);
    assertThat(steps.get(3).ends()).isEqualTo(steps.get(4).begins());
    assertThat(steps.get(3).ends().day()).isEqualTo(2);
  }

  @Test
  void aBathBeginsAndEndsWithItsStep() {
    assertThat(baths).extracting(BathTaken::kind).containsExactly("soak", "rinse", "wash");
    for (BathTaken bath : baths) {
      assertThat(bath.begins()).isEqualTo(steps.get(bath.step()).begins());
      assertThat(bath.ends()).isEqualTo(steps.get(bath.step()).ends());
      assertThat(bath.day()).isEqualTo(steps.get(bath.step()).day());
    }
  }
}
