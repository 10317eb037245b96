package strikeoff.day;

import java.util.List;
import java.util.Optional;
import strikeoff.plan.PrintPlan;

/**
 * What the people in the room may choose though the plan names more: who had better stay out of a
 * print step, whether the sets are those that fewer people would make, and whether a second sink is
 * left alone. The soonest run is taken, so that nobody and nothing that is added ever makes a run
 * later, as far as {@link Effort#ways} goes.
 */
public final class Choices {

  private final long most;
  private long runs;

  private Choices(long most) {
    this.most = most;
    this.runs = 1;
  }

  /**
   * The run as written, or a sooner one.
   *
   * @param stays who isn't left out, since how the run goes without her is known
   */
  public static Simulation.Run soonest(PrintPlan plan, Beforehand all, Optional<String> stays) {
    Beforehand known = all.in(plan);
    Simulation.Run written = Simulation.once(plan, known, plan.equipment().sinks());
    long each = written.simulated();
    Choices choices = new Choices(known.effort().ways() / each);
    Helpers helpers = new Helpers(plan, known.policy().table().longestHandFrame().amount());
    List<PrintPlan> fewer =
        JoiningIn.withFewer(
            plan,
            written,
            step -> helpers.anyNeedsTwo(known.sets().designs(step)),
            stays,
            choices.most);
    Simulation.Run best = choices.atFewerSinks(written, plan, known);
    for (PrintPlan people : fewer) {
      choices.runs++;
      // Its sets too are those of a plan that names nobody else.
      Beforehand theirs = known.in(people);
      Simulation.Run other = Simulation.once(people, theirs, plan.equipment().sinks());
      best = best.orSooner(choices.atFewerSinks(other, people, theirs));
    }
    for (PrintRun sets : known.sets().asFewerWould(choices.most - choices.runs)) {
      choices.runs++;
      Beforehand theirs = known.with(sets);
      Simulation.Run other = Simulation.once(plan, theirs, plan.equipment().sinks());
      best = best.orSooner(choices.atFewerSinks(other, plan, theirs));
    }
    return best.after(each * choices.runs);
  }

  private Simulation.Run atFewerSinks(Simulation.Run run, PrintPlan plan, Beforehand theirs) {
    Simulation.Run best = run;
    for (int sinks = run.sinks() - 1; sinks > 0 && runs < most; sinks--) {
      runs++;
      best = best.orSooner(Simulation.once(plan, theirs, sinks));
    }
    return best;
  }
}
