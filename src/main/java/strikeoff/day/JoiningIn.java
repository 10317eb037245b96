package strikeoff.day;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import strikeoff.document.GivenUp;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.PrintStep;
import strikeoff.plan.Step;

/**
 * Who stays out of a print step though the plan names several, where one of them has other work in
 * the run that would come later than it need. Nobody's help makes a run later then, as far as
 * {@link Effort#ways} goes.
 */
final class JoiningIn {

  private JoiningIn() {}

  /** Somebody at a print step. */
  private record Hand(int step, String person) {}

  /**
   * The plan with each choice of people left out, at least one of them, and the fewest first; none
   * if that can't make the run end sooner.
   *
   * @param all the run with everybody
   * @param atOneFrame true of a step whose people lay one frame together, so that nobody can stay
   *     out of it
   * @param stays who is left out of nothing
   * @param most how many plans at most
   */
  static List<PrintPlan> withFewer(
      PrintPlan plan,
      Simulation.Run all,
      Predicate<PrintStep> atOneFrame,
      Optional<String> stays,
      long most) {
    List<Hand> hands = hands(plan, atOneFrame);
    List<PrintPlan> plans = new ArrayList<>();
    if (hands.isEmpty() || endHangsOnNightAfter(all, hands.get(hands.size() - 1).step())) {
      return plans;
    }
    hands.removeIf(hand -> stays.equals(Optional.of(hand.person())));
    for (int fewer = 1; fewer <= hands.size() && plans.size() < most; fewer++) {
      leaveOut(plan, hands, 0, fewer, new HashSet<>(), plans, most);
    }
    return plans;
  }

  /** Adds every choice of so many more of the hands from one on, if somebody prints each step. */
  private static void leaveOut(
      PrintPlan plan,
      List<Hand> hands,
      int from,
      int more,
      Set<Hand> out,
      List<PrintPlan> plans,
      long most) {
    if (more == 0) {
      without(plan, out).ifPresent(plans::add);
      return;
    }
    for (int i = from; i <= hands.size() - more && plans.size() < most; i++) {
      GivenUp.ifAsked();
      out.add(hands.get(i));
      leaveOut(plan, hands, i + 1, more - 1, out, plans, most);
      out.remove(hands.get(i));
    }
  }

  /** Empty if a step would be left with nobody. */
  private static Optional<PrintPlan> without(PrintPlan plan, Set<Hand> out) {
    List<Step> run = new ArrayList<>();
    for (Step step : plan.run()) {
      if (step instanceof PrintStep print && !print.also().isEmpty()) {
        List<String> people = new ArrayList<>(print.people());
        people.removeIf(person -> out.contains(new Hand(step.number(), person)));
        if (people.isEmpty()) {
          return Optional.empty();
        }
        run.add(print.by(people));
      } else {
        run.add(step);
      }
    }
    return Optional.of(plan.with(run));
  }

  /**
   * True if work alone leads from the opening after a night to the end of the run, and the night
   * comes after a step: whoever prints there, the room opens no sooner.
   */
  private static boolean endHangsOnNightAfter(Simulation.Run run, int step) {
    List<Task> tasks = run.tasks();
    int at = run.last();
    while (at != HeldUp.NOBODY && tasks.get(at).kind() != Task.Kind.CLOSED) {
      Task task = tasks.get(at);
      int before = run.heldUp().by(at);
      boolean atOnce =
          before != HeldUp.NOBODY
              && run.heldUp().tillTheEnd(at)
              && tasks.get(before).end().seconds() == task.start().seconds();
      if (!atOnce || task.kind() == Task.Kind.WAIT || task.kind() == Task.Kind.QUEUE) {
        return false;
      }
      at = before;
    }
    return at != HeldUp.NOBODY && tasks.get(at).step() > step;
  }

  private static List<Hand> hands(PrintPlan plan, Predicate<PrintStep> atOneFrame) {
    List<Hand> hands = new ArrayList<>();
    boolean wanted = false;
    for (Step step : plan.run()) {
      if (step instanceof PrintStep print && !print.also().isEmpty() && !atOneFrame.test(print)) {
        for (String person : print.people()) {
          hands.add(new Hand(step.number(), person));
          wanted |= plan.run().stream().anyMatch(s -> s != step && worksIn(s, person, plan));
        }
      }
    }
    return wanted ? hands : new ArrayList<>();
  }

  private static boolean worksIn(Step step, String person, PrintPlan plan) {
    String first = plan.crew().names().get(0);
    if (step instanceof PrintStep print) {
      return print.people().contains(person)
          || print.washes().or(print::by).orElse(first).equals(person);
    }
    return !(step instanceof Step.EndOfDay) && step.by().orElse(first).equals(person);
  }
}
