package strikeoff.paste;

import java.util.ArrayList;
import java.util.List;
import strikeoff.plan.Basis;
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

  /** What a paste's life rests on. */
  public static final Basis LIFE =
      new Basis(
          "Life of a dye paste",
          "The reactive group's life at room temperature, with alkali or without, carried over to the"
              + " room's temperature by Arrhenius' law with 60 to 100 kJ/mol; kept cold, as stated.",
          "Within 15 °C of the room that the table holds for, or as the policy says. Beyond, no life is"
              + " given and a finding says so.",
          "hand-dyeing FAQ of 2005; Broadbent 2001; Dyestuffs & Coloration 2004(6):331; some lives"
              + " common practice, no source");

  public Pastes {
    uses = List.copyOf(uses);
    ages = List.copyOf(ages);
    cards = List.copyOf(cards);
    evidence = List.copyOf(evidence);
  }

  public static Pastes of(PrintPlan plan, Timeline timeline, Policy policy) {
    Mixings mixings = new Mixings(plan, timeline);
    List<PasteUse> uses = new Needs(plan, timeline, policy, mixings).all();
    Ages lives = new Ages(plan, timeline, policy, mixings);
    List<PasteAge> ages = lives.all();
    List<Evidence> evidence = new ArrayList<>(uses);
    evidence.addAll(ages);
    lives.unknown().ifPresent(evidence::add);
    evidence.addAll(new MixOrder(plan, timeline, mixings).all());
    Thickeners thickeners = new Thickeners(policy);
    ThickenerMeshes meshes = new ThickenerMeshes(plan, policy);
    for (Paste paste : plan.pastes().values()) {
      for (Evidence fact : thickeners.of(paste)) {
        evidence.add(fact);
        if (fact instanceof ThickenerStrength strength) {
          evidence.addAll(meshes.of(strength));
        }
      }
    }
    return new Pastes(uses, ages, Cards.of(plan, uses, policy), evidence);
  }
}
