package strikeoff.findings;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import strikeoff.document.Edit;
import strikeoff.document.PlanPath;

class AcceptedStepsTest {

  private static PlanPath step(int number) {
    return new PlanPath("run").item(number - 1);
  }

  private static Map<Integer, Integer> numbers(Edit... edits) {
    return AcceptedSteps.numbers(List.of(edits), 4);
  }

  @Test
  void stepsCountOnFromWhatComesBeforeThem() {
    assertThat(numbers(new Edit.Insert(step(3), "end of day")))
        .isEqualTo(Map.of(1, 1, 2, 2, 3, 4, 4, 5));
  }

  @Test
  void aStepThatGoesHasNoNumberAndThoseBehindItCloseUp() {
    assertThat(numbers(new Edit.Remove(step(2)))).isEqualTo(Map.of(1, 1, 3, 2, 4, 3));
  }

  @Test
  void aStepThatMovesChangesPlacesWithThoseBetween() {
    assertThat(numbers(new Edit.Move(step(4), step(2)))).isEqualTo(Map.of(1, 1, 4, 2, 2, 3, 3, 4));
    assertThat(numbers(new Edit.Move(step(1), step(4)))).isEqualTo(Map.of(2, 1, 3, 2, 1, 3, 4, 4));
  }

  @Test
  void severalEditsNameTheStepsAsTheyWere() {
    assertThat(
            numbers(
                new Edit.Insert(step(2), "dry: 5 min"),
                new Edit.Remove(step(3)),
                new Edit.Insert(step(4), "end of day")))
        .isEqualTo(Map.of(1, 1, 2, 3, 4, 5));
  }

  @Test
  void whatChangesWithinAStepMovesNone() {
    assertThat(
            numbers(
                new Edit.Write(step(2).key("pause"), "3 min"),
                new Edit.Remove(step(3).key("by")),
                new Edit.Insert(new PlanPath("placements").item(0), "x")))
        .isEqualTo(Map.of(1, 1, 2, 2, 3, 3, 4, 4));
  }
}
