package strikeoff.day;

import static org.assertj.core.api.Assertions.assertThat;
import static strikeoff.day.TinyDay.of;
import static strikeoff.day.TinyDay.prints;

import org.junit.jupiter.api.Test;
import strikeoff.day.facts.Timeline;
import strikeoff.speech.DaySpeech;
import strikeoff.units.Measures;

/**
 * The cloth moved to before its start, as plans/README.md tells it: the frame over pair 1 reaches
 * from 8 cm to 52 cm, that over pair 2 from 288 cm on. A screen is washed in 10 min.
 */
class MovedBackTest {

  @Test
  void theTableMayBeginBeforeTheCloth() {
    Timeline day =
        TinyDay.of(
            "1",
            "- {print: pair, only: 2, colours: a}\n- move on: -5 cm\n"
                + "- {print: pair, only: 1, colours: b}");
    assertThat(of(day, Task.Kind.MOVE))
        .containsExactly("move back, its start 5 cm inside the table 09:25:50-09:35:50");
    assertThat(prints(day)).containsExactly("pair 2, a 09:15", "pair 1, b 09:35:50");
  }

  /** The table of 120 cm shows 10 cm of the cloth then, and the frame over pair 1 ends at 52 cm. */
  @Test
  void whatItDoesNotShowIsMovedTo() {
    Timeline day = TinyDay.of("1", "- move on: -110 cm\n- {print: pair, only: 1, colours: a}");
    assertThat(of(day, Task.Kind.MOVE)).hasSize(1).first().asString().startsWith("move on to");
    assertThat(prints(day)).containsExactly("pair 1, a 09:25");
  }

  @Test
  void theStepSaysIt() {
    Timeline day = TinyDay.of("1", "- print: near\n- move on: -5 cm\n- print: far");
    assertThat(day.tasks())
        .filteredOn(t -> t.kind() == Task.Kind.MOVE)
        .extracting(t -> DaySpeech.text(t.doing(), Measures.METRIC))
        .containsExactly("move back, its start 5 cm inside the table");
  }
}
