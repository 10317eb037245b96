package strikeoff.day;

import java.util.Optional;
import java.util.function.Function;
import strikeoff.layout.FrameMeetings;
import strikeoff.layout.Layout;
import strikeoff.plan.Paste;
import strikeoff.plan.PrintPlan;
import strikeoff.policy.Policy;
import strikeoff.units.Span;

/**
 * What is the same however often a plan's run is simulated: plans that differ in their steps alone
 * share it.
 *
 * @param meetings which frames meet, and which films they lie on
 * @param films how what is printed dries
 * @param sets what each step prints
 * @param lives how long a paste may stand between mixing and print, by the shortest estimate; empty
 *     where it may stand for as long as one likes
 */
public record Beforehand(
    Layout layout,
    Policy policy,
    Effort effort,
    FrameMeetings meetings,
    Films films,
    PrintRun sets,
    Function<Paste, Optional<Span>> lives) {

  public static Beforehand of(PrintPlan plan, Layout layout, Policy policy, Effort effort) {
    return of(plan, layout, policy, effort, paste -> Optional.empty());
  }

  public static Beforehand of(
      PrintPlan plan,
      Layout layout,
      Policy policy,
      Effort effort,
      Function<Paste, Optional<Span>> lives) {
    return new Beforehand(
        layout,
        policy,
        effort,
        new FrameMeetings(layout),
        Films.of(plan, policy),
        new PrintRun(plan, layout),
        lives);
  }

  public Beforehand with(PrintRun others) {
    return new Beforehand(layout, policy, effort, meetings, films, others, lives);
  }

  /** The same where films dry otherwise. */
  public Beforehand with(Films others) {
    return new Beforehand(layout, policy, effort, meetings, others, sets, lives);
  }

  /** The same for a plan that differs in its run at most. */
  public Beforehand in(PrintPlan other) {
    return new Beforehand(layout, policy, effort, meetings, films, sets.of(other), lives);
  }
}
