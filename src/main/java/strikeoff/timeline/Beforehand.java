package strikeoff.timeline;

import strikeoff.layout.Layout;
import strikeoff.plan.PrintPlan;
import strikeoff.policy.Policy;

/**
 * What is the same however often a plan's run is simulated: plans that differ in their steps alone
 * share it.
 *
 * @param films how what is printed dries
 * @param sets what each step prints
 */
record Beforehand(Layout layout, Policy policy, Effort effort, Films films, PrintRun sets) {

  static Beforehand of(PrintPlan plan, Layout layout, Policy policy, Effort effort) {
    return new Beforehand(
        layout, policy, effort, Films.of(plan, policy), new PrintRun(plan, layout));
  }

  /** The same for a plan that differs in its run at most. */
  Beforehand in(PrintPlan other) {
    return new Beforehand(layout, policy, effort, films, sets.of(other));
  }
}
