package strikeoff.day;

import static org.assertj.core.api.Assertions.assertThat;
import static strikeoff.day.TinyDay.prints;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import strikeoff.checks.Draws;
import strikeoff.day.facts.Timeline;
import strikeoff.day.facts.WetContact;
import strikeoff.layout.Tube;
import strikeoff.plan.PrintPlan;
import strikeoff.speech.RemedySpeech;
import strikeoff.units.Measures;

/**
 * Waits for neighbours of one colour, as plans/README.md tells them. The frames of loose reach 12
 * cm over images of 20 cm that lie side by side, in the order 2, 3, 1 along the cloth; blue is
 * frame-safe 10 min after its lift.
 */
class NeighboursInWordsTest {

  private static Timeline day(String crew, String options) {
    return TinyDay.of(crew, "- {print: " + options + "}", PrintDay.POLICY);
  }

  /** Number 1 lies beside 3, and 12 cm short of 2. */
  @Test
  void aFrameWaitsForFilmsOfItsColourUnderIt() {
    String loose = "loose, colours: a, dry between neighbours: ";
    List<String> stated = prints(day("1", loose + "4 min"));
    assertThat(stated)
        .containsExactly("loose 2, a 09:15", "loose 3, a 09:19:50", "loose 1, a 09:24:40");
    assertThat(prints(day("1", loose + "until frame-safe")))
        .containsExactly("loose 2, a 09:15", "loose 3, a 09:25:50", "loose 1, a 09:36:40");
    assertThat(prints(day("[Wren, Tam]", loose + "until frame-safe, by: [Wren, Tam]")))
        .containsExactly("loose 2, a 09:15", "loose 3, a 09:25:50", "loose 1, a 09:36:40");
  }

  @Test
  void apartNobodyWaits() {
    assertThat(prints(day("1", "two, colours: a, dry between neighbours: 10 min")))
        .containsExactly("two 1, a 09:15", "two 2, a 09:15:50");
  }

  /** 2 is followed by 1, then 3 comes between them: 1 is off at 9:16:40. */
  @Test
  void everyOtherWaitsForBothNeighbours() {
    String loose = "loose, colours: a, every other: yes, dry between neighbours: 10 min";
    assertThat(prints(day("1", loose)))
        .containsExactly("loose 2, a 09:15", "loose 1, a 09:15:50", "loose 3, a 09:26:40");
  }

  @Test
  void whatIsFeltIsSafe() {
    for (String felt : List.of("until frame-safe", "10 min")) {
      assertThat(
              TinyDay.of("1", "- {print: loose, colours: a, dry between neighbours: " + felt + "}")
                  .contacts()
                  .isEmpty())
          .as(felt)
          .isEqualTo(felt.startsWith("until"));
    }
  }

  @Test
  void aWaitThatIsTooShortIsToBeLonger() {
    assertThat(day("1", "loose, colours: a, dry between neighbours: 4 min").evidence())
        .filteredOn(WetContact.class::isInstance)
        .first()
        .satisfies(
            contact ->
                assertThat(RemedySpeech.text(((WetContact) contact).remedy(), Measures.METRIC))
                    .isEqualTo("`dry between neighbours: 10 min` in step 1"));
  }

  /**
   * On all days, since each is felt: no frame lies on a wet film of its own colour in that step.
   */
  @Property(tries = 500, seed = Draws.ALIKE)
  void noFrameLiesOnAWetNeighbourOfItsColour(
      @ForAll(supplier = AnyRun.Any.class) AnyRun run, @ForAll @IntRange(max = 5) int step) {
    int at = step % run.parts().size();
    PrintPlan plan = run.with(c -> c.neighbours = at);
    DayRun day = SmallDay.day(plan);
    assertThat(day.contacts())
        .noneMatch(
            c ->
                c.earlier().step() == at + 1
                    && c.later().step() == at + 1
                    && c.earlier().footprint().separation() == c.later().footprint().separation());
    assertThat(day.contacts())
        .extracting(c -> new ClockProperties.Pair(c.earlier().id(), c.later().id(), c.area()))
        .isEqualTo(ClockProperties.naive(day.impressions(), Tube.of(plan.cloth())));
  }
}
