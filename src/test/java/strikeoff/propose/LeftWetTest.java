package strikeoff.propose;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import strikeoff.day.Moment;
import strikeoff.day.Task;
import strikeoff.day.facts.Surety;
import strikeoff.plan.Step;

/** From the soak to the last wash the cloth is never left wet with loose dye in it. */
class LeftWetTest {

  private static final SmallPlan ROW = new SmallPlan(2, 1, 52, 180, 1, false);

  private static Proposal proposed(String text, boolean anyOrder) {
    RunWanted asked =
        new RunWanted(Surety.SURE, true, anyOrder, false, OptionalLong.of(400), () -> 0);
    return Proposer.proposed(SmallPlan.CHECKER, "row.yaml", text, asked, 1);
  }

  private static Task of(Proposal.Found found, Task.Kind kind) {
    return found.after().facts().timeline().tasks().stream()
        .filter(task -> task.kind() == kind)
        .findFirst()
        .orElseThrow();
  }

  /** Soak, rinse and wash of 60, 20 and 15 min. */
  @Test
  void whereNoDayHoldsAllBathsNoRunIsProposed() {
    String text = ROW.open("09:00-10:15").text();
    assertThat(proposed(text, true))
        .isInstanceOfSatisfying(
            Proposal.Refused.class,
            refused ->
                assertThat(refused.why())
                    .contains("soak, rinse and wash need 95 min")
                    .contains("no day has more than 75 min"));
    assertThat(proposed(text.replace("09:00-10:15", "09:00-10:35"), true))
        .isInstanceOfSatisfying(
            Proposal.Found.class,
            found -> {
              assertThat(of(found, Task.Kind.WASH).end().day())
                  .isEqualTo(of(found, Task.Kind.FIX).start().day());
              assertThat(found.text().indexOf("- end of day", found.text().indexOf("fix: soak")))
                  .isNegative();
            });
  }

  /** A night that the plan writes after the soak is moved before it. */
  @Test
  void aNightAfterTheSoakIsToldAndNotKept() {
    String text = ROW.text().replace("  - rinse", "  - end of day\n  - rinse");
    Proposal.Found found = (Proposal.Found) proposed(text, true);
    assertThat(found.before().findings())
        .extracting(f -> f.rule().id())
        .contains("fixing/left-unrinsed");
    assertThat(of(found, Task.Kind.RINSE).start()).isEqualTo(of(found, Task.Kind.FIX).end());
  }

  /** The steam of a run is over ten minutes before a break, or less; then it is rinsed. */
  @ParameterizedTest
  @ValueSource(ints = {10, 15, 19})
  void whatIsRinsedIsWashedBeforeABreakOrBothAfterIt(int before) {
    String whole = ROW.text();
    Proposal.Found free = (Proposal.Found) proposed(whole, false);
    Task rinse = of(free, Task.Kind.RINSE);
    long closes = rinse.start().seconds() + before * 60L;
    String hours =
        "09:00-" + new Moment(closes).clock() + ", " + new Moment(closes + 3600).clock() + "-17:00";
    Proposal.Found found = (Proposal.Found) proposed(ROW.open(hours).text(), false);
    assertThat(found.after().findings())
        .extracting(f -> f.rule().id())
        .doesNotContain("fixing/left-unwashed", "fixing/left-in-bath");
    assertThat(of(found, Task.Kind.WASH).start().since(of(found, Task.Kind.RINSE).end()).minutes())
        .isLessThanOrEqualTo(SmallPlan.CHECKER.policy().fixing().leftUnwashed().amount());
  }

  /** As an iron finds it: nothing printed, printed, in the soak and after it. */
  @Test
  void aSeamIsPressedWithCareWhileAPrintIsUnfixed() {
    List<Step> run = ROW.bench().judged().plan().run();
    assertThat(Reasons.liesUnfixed(run.subList(0, 1))).isFalse();
    assertThat(Reasons.liesUnfixed(run.subList(0, 2))).isTrue();
    assertThat(Reasons.liesUnfixed(run.subList(0, 4))).isTrue();
    assertThat(Reasons.liesUnfixed(run.subList(0, 5))).isFalse();
    assertThat(Reasons.isOwn(Reasons.PRESSED)).isTrue();
  }

  @Test
  void aNightIsToldByWhatLiesOverIt() {
    List<Step> run = ROW.bench().judged().plan().run();
    int wash = run.size() - 1;
    assertThat(Reasons.night(run, wash)).isEqualTo(Reasons.IN_WATER);
    assertThat(Reasons.night(run, wash - 1)).isEqualTo(Reasons.MORNING);
    assertThat(Reasons.night(run, wash - 3)).isEqualTo(Reasons.NIGHT);
  }
}
