package strikeoff.propose;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import strikeoff.day.Doing;
import strikeoff.day.Moment;
import strikeoff.day.Task;
import strikeoff.document.PlanPath;
import strikeoff.plan.Hours;
import strikeoff.plan.Step;

/** Days of work that last longer where films dry slowly. */
class SlowDaysTest {

  private final SlowDays days =
      new SlowDays(new Hours(List.of(new Hours.Day(9 * 60, 17 * 60)), new PlanPath("hours")));

  private static Task washed(int day, int from, int to) {
    return new Task(
        1,
        Task.Kind.WASH_SCREEN,
        Doing.Wait.PAUSE,
        Moment.of(day, from),
        Moment.of(day, to),
        Optional.of("Wren"),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        OptionalInt.empty(),
        OptionalInt.empty(),
        Step.path(1));
  }

  @Test
  void aDayThatGoesOnPastClosingIsToldWithBoth() {
    List<Task> usual = List.of(washed(1, 900, 922), washed(2, 600, 635));
    List<Task> slow = List.of(washed(1, 1000, 1024), washed(2, 600, 635));
    assertThat(days.longer(usual, slow))
        .containsExactly(
            "Where films dry slowly somebody works on day 1 until 17:04, on an ordinary day until"
                + " 15:22 (the room closes at 17:00).");
    assertThat(days.pastClosing(slow)).contains("day 1 goes on until 17:04, past closing at 17:00");
    assertThat(days.pastClosing(usual)).isEmpty();
    assertThat(days.longer(usual, usual)).isEmpty();
  }
}
