package strikeoff.paste;

import java.util.ArrayList;
import java.util.List;
import strikeoff.day.facts.Mixings;
import strikeoff.day.facts.Timeline;
import strikeoff.evidence.Evidence;
import strikeoff.plan.Paste;
import strikeoff.plan.PrintPlan;
import strikeoff.policy.Policy;

/**
 * Everything about the pastes of a run.
 *
 * @param uses need against amount, for each paste that is printed
 * @param ages age against life, for each dye paste that is mixed and printed
 * @param evidence all facts about pastes that rules judge, uses and ages among them
 */
public record Pastes(List<PasteUse> uses, List<PasteAge> ages, List<Evidence> evidence) {

  public Pastes {
    uses = List.copyOf(uses);
    ages = List.copyOf(ages);
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
    evidence.addAll(HiddenUnderOpaque.all(plan, timeline.impressions(), policy));
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
    return new Pastes(uses, ages, evidence);
  }
}
