package strikeoff.day;

import static org.assertj.core.api.Assertions.assertThat;
import static strikeoff.day.TinyDay.of;
import static strikeoff.day.TinyDay.prints;

import org.junit.jupiter.api.Test;
import strikeoff.day.facts.CriticalChain;
import strikeoff.day.facts.RunFigures;
import strikeoff.day.facts.Timeline;
import strikeoff.speech.DaySpeech;
import strikeoff.units.Measures;
import strikeoff.units.Span;

/**
 * What plans/README.md says of breaks, each point with a tiny plan worked by hand. The cloth is
 * laid from 9:00 to 9:15; an impression takes 50 s, a washing and a mixing 10 min.
 */
class BreaksInWordsTest {

  private static Timeline day(String breaks, String run) {
    return day("1", breaks, run);
  }

  private static Timeline day(String crew, String breaks, String run) {
    return TinyDay.of(crew + "\nhours: 09:00-" + breaks + "-17:00", run);
  }

  /** The first of two prints begins at 9:15 and is off at 9:15:50. */
  @Test
  void aPrintThatWasBegunIsFinishedAndTheNextComesAfterTheBreak() {
    Timeline day = day("09:16, 09:45", "- {print: two, colours: a}");
    assertThat(prints(day)).containsExactly("two 1, a 09:15", "two 2, a 09:15:50");
    day = day("09:15, 09:45", "- {print: two, colours: a}");
    assertThat(prints(day)).containsExactly("two 1, a 09:45", "two 2, a 09:45:50");
  }

  /** Mixed from 9:15 to 9:25, five minutes into the break; the next one waits for its end. */
  @Test
  void whoComesLateIntoTheBreakGoesOnWithTheOthers() {
    Timeline day = day("09:20, 09:45", "- {print: near, colours: a}\n- mix: [gold, sand]");
    assertThat(of(day, Task.Kind.WASH_SCREEN)).containsExactly("wash out a 09:15:50-09:25:50");
    assertThat(of(day, Task.Kind.MIX))
        .containsExactly("mix gold 09:45-09:55", "mix sand 09:55-10:05");
  }

  @Test
  void aBathThatWasBegunIsFinished() {
    String run = "- {print: near, colours: a}\n- {rinse: 20 °C, for: 1 h}\n- {mix: gold}";
    assertThat(of(day("09:30, 10:00", run), Task.Kind.RINSE))
        .first()
        .asString()
        .endsWith("09:25:50-10:25:50");
    assertThat(of(day("09:30, 10:00", run), Task.Kind.MIX))
        .containsExactly("mix gold 10:25:50-10:35:50");
  }

  /** Blue off at 9:15:50; its ten minutes are over in the break. */
  @Test
  void filmsDryOnAndWaitsRunOn() {
    String run = "- {print: near, dry between colours: 10 min}";
    assertThat(prints(day("09:20, 09:45", run)))
        .containsExactly("near 1, a 09:15", "near 1, b 09:45");
    assertThat(prints(day("09:20, 09:22", run)))
        .containsExactly("near 1, a 09:15", "near 1, b 09:25:50");
  }

  /** Blue is off at 9:16:40 and waits until 9:46:40: too short for a washing from 9:37 on. */
  @Test
  void nobodyWashesScreensInABreak() {
    String run = "- {print: two, dry between colours: 30 min}";
    assertThat(of(day("09:16, 09:37", run), Task.Kind.WASH_SCREEN))
        .containsExactly("wash out a 09:48:20-09:58:20", "wash out b 09:58:20-10:08:20");
    assertThat(of(day("09:16, 09:36", run), Task.Kind.WASH_SCREEN))
        .containsExactly("wash out a 09:36-09:46", "wash out b 09:48:20-09:58:20");
  }

  /** Two people: the second colour of each is free to be printed in the break. */
  @Test
  void severalStandStillTogether() {
    String run = "- {print: two, dry between colours: 10 min, by: [Wren, Tam]}";
    assertThat(prints(day("[Wren, Tam]", "09:20, 09:45", run)))
        .containsExactly(
            "two 1, a 09:15", "two 2, a 09:15:50", "two 1, b 09:45", "two 2, b 09:45:50");
  }

  /** Off at 9:15:50, washed to 9:25:50; the batch begins after the break and runs through one. */
  @Test
  void aBatchIsBegunByHandAndLiesOn() {
    String run = "- {print: near, colours: a}\n- {dry: 10 min}\n- {fix: batch, for: 2 h}";
    Timeline day = day("09:20, 09:45-10:30, 11:00", run);
    assertThat(of(day, Task.Kind.FIX)).first().asString().endsWith(" 09:45-11:45");
  }

  /** The cloth lies from 9:15 to 10:15, 25 min of it in the break. */
  @Test
  void aBreakIsNoWaiting() {
    String run = "- dry: 1 h\n- {print: near, colours: a}";
    assertThat(TinyDay.of("1", run).waiting()).isEqualTo(new Span(60));
    assertThat(day("09:20, 09:45", run).waiting()).isEqualTo(new Span(35));
    Timeline mixed = day("09:10, 09:45", "- mix: [gold, sand]");
    CriticalChain chain =
        mixed.evidence().stream()
            .filter(RunFigures.class::isInstance)
            .map(f -> ((RunFigures) f).chain())
            .findFirst()
            .orElseThrow();
    assertThat(chain.links())
        .extracting(
            link -> DaySpeech.text(link.doing(), Measures.METRIC) + " " + link.span().text())
        .containsExactly("mix gold 10 min", "break 35 min", "mix sand 10 min");
  }
}
