package strikeoff.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import strikeoff.units.Span;

/** Published scheduling examples, told in screens that one motif after the other passes through. */
class ScheduleTest {

  private static final Moment START = new Moment(0);

  /**
   * Johnson's rule, 8 jobs on two machines: Morton and Pentico 1993, §13.2.2, Cmax 37 in the order
   * 3 2 6 5 4 7 1 8 with the completion pairs below.
   */
  @Test
  void johnsonsTwoMachineExample() {
    int[] first = {5, 2, 1, 7, 6, 3, 7, 5};
    int[] second = {2, 6, 2, 5, 6, 7, 2, 1};
    Schedule schedule = flow(new int[] {3, 2, 6, 5, 4, 7, 1, 8}, first, second);
    assertThat(minutes(schedule))
        .containsExactly(1, 3, 3, 9, 6, 16, 12, 22, 19, 27, 26, 29, 31, 33, 36, 37);
    assertThat(schedule.finish(START).seconds()).isEqualTo(37 * 60);
  }

  /** Johnson, 6 jobs in the order D A C B E F: Cmax 43, found by trying all orders. */
  @Test
  void johnsonsRuleForSixJobs() {
    int[] first = {3, 12, 5, 2, 9, 11};
    int[] second = {8, 10, 9, 6, 3, 1};
    assertThat(flow(new int[] {4, 1, 3, 2, 5, 6}, first, second).finish(START).seconds())
        .isEqualTo(43 * 60);
  }

  /** A fixed order C E D B A of five jobs: Cmax 38 by the two-machine recurrence. */
  @Test
  void aFixedOrderThatIsNotTheBest() {
    int[] first = {5, 9, 8, 5, 9};
    int[] second = {2, 3, 7, 4, 6};
    assertThat(flow(new int[] {3, 5, 4, 2, 1}, first, second).finish(START).seconds())
        .isEqualTo(38 * 60);
  }

  /**
   * The 6 × 6 job shop of Fisher and Thompson 1963, optimum 55: worked in the order of the starts
   * of one optimal schedule, nothing starts later than there.
   */
  @Test
  void fisherAndThompsonsSixBySix() {
    int[][] jobs = {
      {2, 1, 0, 3, 1, 6, 3, 7, 5, 3, 4, 6},
      {1, 8, 2, 5, 4, 10, 5, 10, 0, 10, 3, 4},
      {2, 5, 3, 4, 5, 8, 0, 9, 1, 1, 4, 7},
      {1, 5, 0, 5, 2, 5, 3, 3, 4, 8, 5, 9},
      {2, 9, 1, 3, 4, 5, 5, 4, 0, 3, 3, 1},
      {1, 3, 3, 3, 5, 9, 0, 10, 4, 4, 2, 1}
    };
    int[][] starts = {
      {5, 6, 16, 30, 38, 49},
      {0, 8, 13, 28, 38, 48},
      {0, 5, 9, 18, 27, 30},
      {8, 13, 22, 27, 37, 45},
      {13, 22, 25, 41, 48, 52},
      {13, 16, 19, 28, 45, 49}
    };
    assertNothingStartsLater(jobs, starts, 55);
  }

  /**
   * The 10 × 5 job shop la01 of Lawrence 1984, optimum 666, which is the load of its machine 4: one
   * optimal schedule, worked in the order of its starts.
   */
  @Test
  void lawrencesTenByFive() {
    int[][] jobs = {
      {1, 21, 0, 53, 4, 95, 3, 55, 2, 34},
      {0, 21, 3, 52, 4, 16, 2, 26, 1, 71},
      {3, 39, 4, 98, 1, 42, 2, 31, 0, 12},
      {1, 77, 0, 55, 4, 79, 2, 66, 3, 77},
      {0, 83, 3, 34, 2, 64, 1, 19, 4, 37},
      {1, 54, 2, 43, 4, 79, 0, 92, 3, 62},
      {3, 69, 4, 77, 1, 87, 2, 87, 0, 93},
      {2, 38, 0, 60, 1, 41, 3, 24, 4, 83},
      {3, 17, 1, 49, 4, 25, 0, 44, 2, 98},
      {4, 77, 3, 79, 2, 43, 1, 75, 0, 96}
    };
    int[][] starts = {
      {131, 338, 435, 530, 585},
      {0, 207, 530, 556, 582},
      {259, 337, 477, 619, 650},
      {54, 131, 233, 328, 430},
      {21, 173, 394, 458, 629},
      {0, 54, 154, 246, 338},
      {0, 77, 154, 241, 435},
      {0, 186, 365, 406, 546},
      {156, 241, 312, 391, 458},
      {0, 77, 156, 290, 528}
    };
    assertNothingStartsLater(jobs, starts, 666);
  }

  private static void assertNothingStartsLater(int[][] jobs, int[][] starts, int optimum) {
    List<int[]> order = new ArrayList<>();
    for (int job = 0; job < jobs.length; job++) {
      for (int step = 0; step < starts[job].length; step++) {
        order.add(new int[] {starts[job][step], job, step});
      }
    }
    order.sort((a, b) -> Integer.compare(a[0], b[0]));
    int[][] index = new int[jobs.length][starts[0].length];
    List<Operation> operations = new ArrayList<>();
    for (int[] next : order) {
      int job = next[1];
      int step = next[2];
      index[job][step] = operations.size();
      operations.add(
          new Operation(
              "job " + job,
              List.of(Resource.screen("machine " + jobs[job][2 * step])),
              new Span(jobs[job][2 * step + 1]),
              step == 0 ? List.of() : List.of(index[job][step - 1])));
    }
    Schedule schedule = Schedule.of(operations, START);
    assertThat(schedule.finish(START).seconds()).isEqualTo(optimum * 60L);
    for (int i = 0; i < order.size(); i++) {
      assertThat(schedule.booked().get(i).start().seconds())
          .isLessThanOrEqualTo(order.get(i)[0] * 60L);
    }
  }

  @Test
  void whatWaitsForItsOwnSuccessorIsStuckAndSoIsWhatWaitsForIt() {
    Resource screen = Resource.screen("screen");
    Operation waitsForLater = new Operation("a", List.of(screen), new Span(1), List.of(1));
    Operation waitsForStuck = new Operation("b", List.of(screen), new Span(1), List.of(0));
    Operation free = new Operation("c", List.of(screen), new Span(1), List.of());
    Schedule schedule = Schedule.of(List.of(waitsForLater, waitsForStuck, free), START);
    assertThat(schedule.booked()).extracting(b -> b.operation().name()).containsExactly("c");
    assertThat(schedule.stuck())
        .containsExactly(
            new Schedule.Stuck(waitsForLater, 1), new Schedule.Stuck(waitsForStuck, 0));
  }

  private static Schedule flow(int[] order, int[] first, int[] second) {
    List<Operation> operations = new ArrayList<>();
    for (int job : order) {
      int before = operations.size();
      operations.add(
          new Operation(
              "motif " + job,
              List.of(Resource.screen("first")),
              new Span(first[job - 1]),
              List.of()));
      operations.add(
          new Operation(
              "motif " + job,
              List.of(Resource.screen("second")),
              new Span(second[job - 1]),
              List.of(before)));
    }
    return Schedule.of(operations, START);
  }

  private static List<Integer> minutes(Schedule schedule) {
    return schedule.booked().stream().map(b -> (int) (b.end().seconds() / 60)).toList();
  }
}
