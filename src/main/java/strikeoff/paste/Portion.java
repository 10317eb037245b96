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
      List<Mixings.Batch> batches = mixings.of(paste.name());
      // What is printed before any mixing comes first.
      List<List<Impression>> printed = new ArrayList<>();
      for (int i = 0; i <= batches.size(); i++) {
        printed.add(new ArrayList<>());
      }
      for (Impression impression : timeline.impressions()) {
        if (impression.footprint().paste().name().equals(paste.name())) {
          printed.get(batch(paste, batches, impression.laid())).add(impression);
        }
      }
      if (!printed.get(0).isEmpty()) {
        portions.add(of(paste, Optional.empty(), printed.get(0), plan, screens, policy));
      }
      for (int i = 0; i < batches.size(); i++) {
        Portion portion =
            of(paste, Optional.of(batches.get(i)), printed.get(i + 1), plan, screens, policy);
        if (portion.mixed().grams() > 0) {
          portions.add(portion);
        }
      }
    }
    return portions;
  }

  /** Which mixing was there when something was printed, from 1; 0 is what was there before. */
  private static int batch(Paste paste, List<Mixings.Batch> batches, Moment laid) {
    boolean before = batches.isEmpty() || paste.mixedBefore().isPresent();
    int batch = before ? 0 : 1;
    while (batch < batches.size() && laid.compareTo(batches.get(batch).ready()) >= 0) {
      batch++;
    }
    return batch;
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
