package strikeoff.paste;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import strikeoff.day.Impression;
import strikeoff.day.Moment;
import strikeoff.day.facts.Mixings;
import strikeoff.day.facts.Timeline;
import strikeoff.plan.Paste;
import strikeoff.plan.PrintPlan;
import strikeoff.policy.Policy;
import strikeoff.units.Mass;
import strikeoff.units.Range;

/**
 * One mixing of a paste, for what is printed until it is mixed again.
 *
 * @param batch the mixing; empty for what is mixed before the first day, or by no step
 * @param needGrams what these prints need of it; nothing where there are none
 * @param mixed what the plan says is mixed each time, or else a round amount that is enough by the
 *     most careful estimate
 */
public record Portion(Paste paste, Optional<Mixings.Batch> batch, Range needGrams, Mass mixed) {

  /** All of them, paste by paste in the plan's order; none of which nothing is mixed or needed. */
  public static List<Portion> all(PrintPlan plan, Timeline timeline, Policy policy) {
    Mixings mixings = new Mixings(plan, timeline);
    LeftInScreens screens = LeftInScreens.of(timeline, policy);
    List<Portion> portions = new ArrayList<>();
    for (Paste paste : plan.pastes().values()) {
      List<Impression> left =
          new ArrayList<>(
              timeline.impressions().stream()
                  .filter(i -> i.footprint().paste().name().equals(paste.name()))
                  .toList());
      List<Mixings.Batch> batches = mixings.of(paste.name());
      Moment first = batches.isEmpty() ? timeline.finish() : batches.get(0).ready();
      if (batches.isEmpty() || paste.mixedBefore().isPresent()) {
        List<Impression> before =
            batches.isEmpty() ? List.copyOf(left) : taken(left, i -> i.laid().compareTo(first) < 0);
        left.removeAll(before);
        if (!before.isEmpty()) {
          portions.add(of(paste, Optional.empty(), before, plan, screens, policy));
        }
      }
      for (int i = 0; i < batches.size(); i++) {
        Optional<Moment> next =
            i + 1 < batches.size() ? Optional.of(batches.get(i + 1).ready()) : Optional.empty();
        List<Impression> until =
            taken(left, one -> next.isEmpty() || one.laid().compareTo(next.get()) < 0);
        left.removeAll(until);
        Portion portion = of(paste, Optional.of(batches.get(i)), until, plan, screens, policy);
        if (portion.mixed().grams() > 0) {
          portions.add(portion);
        }
      }
    }
    return portions;
  }

  private static List<Impression> taken(
      List<Impression> all, java.util.function.Predicate<Impression> which) {
    return all.stream().filter(which).toList();
  }

  private static Portion of(
      Paste paste,
      Optional<Mixings.Batch> batch,
      List<Impression> impressions,
      PrintPlan plan,
      LeftInScreens screens,
      Policy policy) {
    Range need = Needs.of(impressions, screens, plan.cloth(), policy);
    Mass mixed =
        new Recipe(paste, policy)
            .batchGrams()
            .map(grams -> new Mass(grams.best()))
            .orElseGet(() -> new Mass(Needs.weighed(need.high(), policy)));
    return new Portion(paste, batch, need, mixed);
  }
}
