package strikeoff.paste;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import strikeoff.day.Doing;
import strikeoff.day.Impression;
import strikeoff.day.Task;
import strikeoff.plan.Paste;
import strikeoff.plan.PrintPlan;
import strikeoff.policy.Policy;
import strikeoff.screens.Deposit;
import strikeoff.units.Range;

/** Whether what is mixed of each paste is enough for a run that is only tried. */
public final class Enough {

  private final PrintPlan plan;
  private final Policy policy;
  private final Map<String, Range> mixed = new HashMap<>();
  private final Map<String, Map<String, Deposit>> deposits = new HashMap<>();

  public Enough(PrintPlan plan, Policy policy) {
    this.plan = plan;
    this.policy = policy;
    for (Paste paste : plan.pastes().values()) {
      new Recipe(paste, policy).batchGrams().ifPresent(grams -> mixed.put(paste.name(), grams));
    }
  }

  /**
   * Grams that are missing of each paste whose amount the plan states; negative where some is left.
   *
   * @param tasks in order of start
   * @param impressions in order of laying
   */
  public Map<String, Range> missing(List<Task> tasks, List<Impression> impressions) {
    if (mixed.isEmpty()) {
      return Map.of();
    }
    LeftInScreens screens = LeftInScreens.of(tasks, impressions, policy);
    Map<String, Needs.Tally> tallies = new LinkedHashMap<>();
    for (Impression impression : impressions) {
      String paste = impression.footprint().paste().name();
      if (mixed.containsKey(paste)) {
        tallies
            .computeIfAbsent(
                paste,
                name ->
                    new Needs.Tally(
                        screens,
                        plan.cloth(),
                        policy,
                        deposits.computeIfAbsent(name, n -> new HashMap<>())))
            .add(impression);
      }
    }
    Map<String, Range> missing = new LinkedHashMap<>();
    tallies.forEach(
        (paste, tally) -> {
          Range need = tally.need();
          Range has = mixed.get(paste).times(batches(paste, tasks));
          missing.put(
              paste,
              new Range(
                  need.low() - has.high(), need.best() - has.best(), need.high() - has.low()));
        });
    return missing;
  }

  /** Each mixing of a paste makes what the plan states. */
  private static long batches(String paste, List<Task> tasks) {
    return Math.max(
        1,
        tasks.stream()
            .filter(task -> task.kind() == Task.Kind.MIX)
            .filter(task -> task.doing() instanceof Doing.Mix mix && mix.paste().equals(paste))
            .count());
  }
}
