package strikeoff.propose;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import strikeoff.plan.Draught;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Step;
import strikeoff.policy.Policy;

/** What may blow over the cloth while it dries. */
final class Airs {

  private Airs() {}

  /** The room's own air first. */
  static List<Optional<Draught>> of(PrintPlan plan, Policy policy, RunWanted asked) {
    List<Optional<Draught>> airs = new ArrayList<>(List.of(Optional.empty()));
    if (namesFan(plan)) {
      airs.add(Optional.of(draught(Draught.By.FAN, policy)));
    }
    if (asked.hairDryer() && plan.equipment().hairDryers() > 0) {
      airs.add(Optional.of(draught(Draught.By.HAIR_DRYER, policy)));
    }
    return airs;
  }

  /**
   * True if the plan says that there is a fan: among its equipment, in its room, or in a step. That
   * rooms usually have one is no reason to count on it.
   */
  static boolean namesFan(PrintPlan plan) {
    return plan.equipment().fans() > 0
        && (!assumesFans(plan)
            || plan.room().air().by() == Draught.By.FAN
            || blows(plan.run(), Draught.By.FAN));
  }

  /** True if it says nothing of how many there are. */
  static boolean assumesFans(PrintPlan plan) {
    return plan.assumptions().stream()
        .anyMatch(a -> a.path().equals(plan.equipment().path().key("fans")));
  }

  private static Draught draught(Draught.By by, Policy policy) {
    return new Draught(by, policy.assumed().air().of(by).value());
  }

  private static boolean blows(List<Step> run, Draught.By what) {
    return run.stream()
        .flatMap(step -> step.draughts().values().stream())
        .anyMatch(air -> air.by() == what);
  }
}
