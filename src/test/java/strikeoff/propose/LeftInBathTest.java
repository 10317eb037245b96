package strikeoff.propose;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import strikeoff.day.Moment;
import strikeoff.day.Task;
import strikeoff.day.facts.Rehearsed;
import strikeoff.plan.Step;

/** A soak that a break would make longer: who is at the table can't begin to rinse in it. */
class LeftInBathTest {

  private static final SmallPlan OPEN_ALL_DAY = new SmallPlan(2, 1, 52, 180, 1, false);

  /** Without a fan, which a search leaves out to come to the same. */
  private static Proposal.Found proposed(SmallPlan plan) {
    String still = plan.text().replace("fans: 1", "fans: 0");
    return (Proposal.Found)
        Proposer.proposed(SmallPlan.CHECKER, "row.yaml", still, SmallPlan.shortest(400), 1);
  }

  private static Task of(Proposal.Found found, Task.Kind kind) {
    return found.after().facts().timeline().tasks().stream()
        .filter(task -> task.kind() == kind)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void itIsOverWhenHandsAreBack() {
    Task soak = of(proposed(OPEN_ALL_DAY), Task.Kind.FIX);
    assertThat(soak.end().since(soak.start()).minutes()).isEqualTo(60);
    // Everybody has a break from the middle of that soak until half an hour after it.
    Moment from = new Moment(soak.start().seconds() + 30 * 60);
    Moment to = new Moment(soak.end().seconds() + 30 * 60);
    String hours = "09:00-" + from.clock() + ", " + to.clock() + "-17:00";
    Proposal.Found found = proposed(OPEN_ALL_DAY.open(hours));
    assertThat(of(found, Task.Kind.RINSE).start().since(of(found, Task.Kind.FIX).end()).minutes())
        .isLessThanOrEqualTo(SmallPlan.CHECKER.policy().fixing().leftInBath().amount());
    assertThat(found.after().findings())
        .extracting(f -> f.rule().id())
        .doesNotContain("fixing/left-in-bath");
    // Nobody rinses sooner anyway.
    assertThat(of(found, Task.Kind.RINSE).start().clock()).isEqualTo(to.clock());
  }

  /** The plan's own run soaks from nine on, on its second day, and its hour ends in the break. */
  @Test
  void aWaitIsWrittenWithWhichItEndsThen() {
    SmallPlan.Bench bench = OPEN_ALL_DAY.open("09:00-09:45, 10:30-17:00").bench();
    List<Step> run = bench.judged().plan().run();
    Rehearsed rehearsed = bench.rehearsal().of(run);
    assertThat(rehearsed.leftInBath())
        .singleElement()
        .satisfies(left -> assertThat(left.longer().minutes()).isEqualTo(30));
    List<Step> mended =
        Order.numbered(
            Repair.repaired(
                run, rehearsed, Optional.empty(), bench.order(), bench.leeway().screens()));
    assertThat(bench.rehearsal().of(mended).leftInBath()).isEmpty();
    assertThat(bench.rehearsal().of(mended).finish()).isEqualTo(rehearsed.finish());
  }
}
