package strikeoff.speech;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import strikeoff.plan.DyeFixing;
import strikeoff.plan.HeatSource;
import strikeoff.plan.Step;
import strikeoff.units.Length;
import strikeoff.units.Measures;
import strikeoff.units.Span;
import strikeoff.units.Temperature;

class StepSpeechTest {

  @Test
  void waterIsToldWithItsWarmthAndHeatWithWhatBringsIt() {
    Temperature warm = new Temperature(60);
    Span hour = new Span(60);
    assertThat(
            Stream.of(
                    new Step.Rinse(1, warm, hour, Optional.empty(), Step.path(1)),
                    new Step.Wash(2, warm, hour, Optional.empty(), Step.path(2)),
                    new Step.HeatSet(
                        3, HeatSource.IRON, warm, hour, 1, Optional.empty(), Step.path(3)),
                    new Step.Fix(
                        4, DyeFixing.SOAK, List.of(), warm, hour, Optional.empty(), Step.path(4)),
                    new Step.EndOfDay(5, Step.path(5)))
                .map(step -> StepSpeech.title(step, Measures.US)))
        .containsExactly(
            "rinse at 140 °F", "wash at 140 °F", "heat-set with iron", "fix by soak", "end of day");
  }

  @Test
  void aPlaceBeforeTheClothIsToldByWhereItsStartComesToLie() {
    assertThat(moveTo(-50)).isEqualTo("move, the start 5 cm inside the table");
    assertThat(moveTo(520)).isEqualTo("move on to 52 cm");
  }

  @Test
  void moreThanADozenPastesAreCounted() {
    List<String> names = IntStream.rangeClosed(1, 14).mapToObj(i -> "p" + i).toList();
    assertThat(mix(names)).endsWith("p11, p12 and 2 more").doesNotContain("p13");
    assertThat(mix(names.subList(0, 12))).endsWith("p11, p12");
    assertThat(mix(Collections.nCopies(1, "rust"))).isEqualTo("mix rust");
  }

  @Test
  void aNumberGoesBeforeItInAFinding() {
    Step sewing = new Step.Sew(4, "centre", Optional.empty(), Optional.empty(), Step.path(4));
    assertThat(StepSpeech.numbered(sewing, Measures.METRIC)).isEqualTo("step 4 (sew centre)");
  }

  private static String mix(List<String> pastes) {
    return StepSpeech.title(
        new Step.Mix(1, pastes, Optional.empty(), Optional.empty(), Step.path(1)), Measures.METRIC);
  }

  private static String moveTo(double mm) {
    return StepSpeech.title(
        new Step.Move(1, new Length(mm), Optional.empty(), Optional.empty(), Step.path(1)),
        Measures.METRIC);
  }
}
