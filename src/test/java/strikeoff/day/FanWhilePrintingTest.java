package strikeoff.day;

import static org.assertj.core.api.Assertions.assertThat;
import static strikeoff.day.TinyDay.prints;

import java.util.List;
import org.junit.jupiter.api.Test;
import strikeoff.day.facts.NotInRoom;
import strikeoff.day.facts.Timeline;

/**
 * A fan that blows while a step prints, as plans/README.md tells it. Blue is off at 9:15:50, and
 * frame-safe ten minutes later in still air.
 */
class FanWhilePrintingTest {

  private static Timeline near(String options) {
    return TinyDay.of("1", "- {print: near, " + options + "}", PrintDay.POLICY);
  }

  @Test
  void filmsDryInItFromTheirLift() {
    List<String> blown = prints(near("dry between colours: until frame-safe, air: fan"));
    assertThat(blown)
        .isEqualTo(prints(near("dry between colours: {until: frame-safe, air: fan}")))
        .doesNotContain("near 1, b 09:25:50");
    assertThat(prints(near("dry between colours: until frame-safe")))
        .contains("near 1, b 09:25:50");
  }

  /** A minute less than ten is too little in still air, and enough in moved air. */
  @Test
  void aStatedTimeCountsFromTheLiftAllTheSame() {
    String wait = "dry between colours: 9 min";
    assertThat(prints(near(wait))).contains("near 1, b 09:24:50");
    assertThat(prints(near(wait + ", air: fan"))).contains("near 1, b 09:24:50");
    assertThat(near(wait).contacts()).hasSize(1);
    assertThat(near(wait + ", air: fan").contacts()).isEmpty();
  }

  @Test
  void aWaitWithItsOwnAirHasThat() {
    String wait = "dry between colours: {until: frame-safe, air: still}";
    assertThat(prints(near(wait + ", air: fan"))).contains("near 1, b 09:25:50");
  }

  /** Near's blue is off at 9:15:50, and the next step lays its frame on it nine minutes later. */
  @Test
  void itStandsWhenTheStepIsDone() {
    String run =
        "- {print: near, colours: a, washes: Tam, air: fan}\n- dry: 9 min\n"
            + "- {print: near, colours: b}";
    assertThat(TinyDay.of("[Wren, Tam]", run, PrintDay.POLICY).contacts()).hasSize(1);
  }

  @Test
  void theRoomMustHaveOne() {
    String run = "- {print: near, colours: a, air: fan}";
    assertThat(TinyDay.of("1\nequipment: {fans: 0}", run).evidence())
        .anyMatch(NotInRoom.class::isInstance);
    assertThat(TinyDay.of("1", run).evidence()).noneMatch(NotInRoom.class::isInstance);
  }
}
