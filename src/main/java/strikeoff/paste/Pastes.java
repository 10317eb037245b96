package strikeoff.paste;

import java.util.ArrayList;
import java.util.List;
import strikeoff.plan.Evidence;
import strikeoff.plan.Paste;
import strikeoff.plan.PrintPlan;
import strikeoff.policy.Policy;
import strikeoff.timeline.Timeline;

/**
 * Everything about the pastes of a run.
 *
 * @param uses need against amount, for each paste that is printed
 * @param ages age against life, for each dye paste that is mixed and printed
 * @param cards recipes scaled to the need
 * @param evidence all facts about pastes that rules judge, uses and ages among them
 */
public record Pastes(
    List<PasteUse> uses, List<PasteAge> ages, List<MixingCard> cards, List<Evidence> evidence) {

  public Pastes {
    uses = List.copyOf(uses);
    ages = List.copyOf(ages);
    cards = List.copyOf(cards);
    evidence = List.copyOf(evidence);
  }

  public static Pastes of(PrintPlan plan, Timeline timeline, Policy policy) {
    Mixings mixings = new Mixings(plan, timeline);
    List<PasteUse> uses = new Needs(plan, timeline, policy, mixings).all();
    List<PasteAge> ages = new Ages(plan, timeline, policy, mixings).all();
    List<Evidence> evidence = new ArrayList<>(uses);
    evidence.addAll(ages);
    evidence.addAll(new MixOrder(plan, timeline, mixings).all());
    Thickeners thickeners = new Thickeners(policy);
    for (Paste paste : plan.pastes().values()) {
      evidence.addAll(thickeners.of(paste));
    }
    return new Pastes(uses, ages, Cards.of(plan, uses, policy), evidence);
  }
}
