package strikeoff.paste;

import java.util.ArrayList;
import java.util.List;
import strikeoff.day.facts.Mixings;
import strikeoff.day.facts.Timeline;
import strikeoff.evidence.Basis;
import strikeoff.evidence.Evidence;
import strikeoff.plan.Paste;
import strikeoff.plan.PrintPlan;
import strikeoff.policy.Policy;
import strikeoff.units.Measures;
import strikeoff.units.Quantity;

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
  public static Basis lifeBasis(Policy policy) {
    return new Basis(
        "Life of a dye paste",
        "The reactive group's life at room temperature, with alkali or without, carried over to the"
            + " room's temperature by Arrhenius' law with "
            + text(policy.paste().activationEnergyUsual())
            + " kJ/mol ("
            + text(policy.paste().activationEnergyLeast())
            + " to "
            + text(policy.paste().activationEnergyMost())
            + "); kept cold, as stated.",
        "Within "
            + text(policy.paste().carriedOver())
            + " of the room that the table holds for. Beyond, no life is given and a finding says so.",
        "hand-dyeing FAQ of 2005; Broadbent 2001; hand-dyeing FAQ on temperature; some lives"
            + " common practice, no source");
  }

  private static String text(Quantity limit) {
    return limit.text(Measures.METRIC);
  }

  public Pastes {
    uses = List.copyOf(uses);
    ages = List.copyOf(ages);
    cards = List.copyOf(cards);
    evidence = List.copyOf(evidence);
  }

  public static Pastes of(PrintPlan plan, Timeline timeline, Policy policy) {
    Mixings mixings = new Mixings(plan, timeline);
    Ages lives = new Ages(plan, timeline, policy, mixings);
    List<PasteUse> uses = new Needs(plan, timeline, policy, mixings, lives).all();
    List<PasteAge> ages = lives.all();
    List<Evidence> evidence = new ArrayList<>(uses);
    evidence.addAll(ages);
    evidence.addAll(lives.mixed());
    lives.inRoom().ifPresent(evidence::add);
    evidence.addAll(new MixOrder(plan, timeline, mixings).all());
    Thickeners thickeners = new Thickeners(plan.cloth(), policy);
    ThickenerMeshes meshes = new ThickenerMeshes(plan, policy);
    for (Paste paste : plan.pastes().values()) {
      SaltInPaste.of(paste, policy, plan.measures()).ifPresent(evidence::add);
      AcidInPaste.of(paste, plan.cloth(), policy, plan.measures()).ifPresent(evidence::add);
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
