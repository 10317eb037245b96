package strikeoff.facts;

import java.util.ArrayList;
import java.util.List;
import strikeoff.artwork.facts.ArtworkFacts;
import strikeoff.bath.Fixing;
import strikeoff.care.Care;
import strikeoff.cloth.ClothMass;
import strikeoff.cloth.Fibres;
import strikeoff.colour.Swatches;
import strikeoff.day.Effort;
import strikeoff.day.facts.Timeline;
import strikeoff.document.Underway;
import strikeoff.document.Underway.Much;
import strikeoff.evidence.Evidence;
import strikeoff.layout.Layout;
import strikeoff.paste.Lives;
import strikeoff.paste.Pastes;
import strikeoff.plan.PrintPlan;
import strikeoff.policy.Policy;
import strikeoff.screens.Screens;
import strikeoff.sequence.Sequence;

/**
 * Everything derived from one plan, subject by subject. Nothing here says what is right or wrong.
 *
 * @param films what is true of the films
 * @param policy that they were derived by
 * @param evidence the facts of all subjects that rules judge, in the order of derivation
 */
public record Facts(
    Layout layout,
    List<Evidence> films,
    Screens screens,
    Swatches swatches,
    Timeline timeline,
    Sequence sequence,
    Pastes pastes,
    Fixing fixing,
    Fibres fibres,
    Care care,
    Policy policy,
    List<Evidence> evidence) {

  public Facts {
    films = List.copyOf(films);
    evidence = List.copyOf(evidence);
  }

  /** Derives a plan's facts, each subject from the plan and the subjects before it. */
  public static Facts derive(PrintPlan plan, Policy policy) {
    return derive(plan, policy, Effort.USUAL);
  }

  /**
   * @param effort how much work the clock takes on
   */
  public static Facts derive(PrintPlan plan, Policy policy, Effort effort) {
    return derive(plan, policy, effort, ArtworkFacts.of(plan, policy));
  }

  /**
   * The facts of a plan that {@linkplain PrintPlan#hasFilmsOf has the films} of the one of these
   * facts, which take longer than all else.
   *
   * @param effort how much work the clock takes on
   */
  public Facts derive(PrintPlan plan, Effort effort) {
    return derive(plan, policy, effort, films);
  }

  private static Facts derive(PrintPlan plan, Policy policy, Effort effort, List<Evidence> films) {
    Underway.at(Underway.Stage.DERIVING);
    Underway.has(Much.STEPS, plan.run().size());
    Underway.has(
        Much.SEPARATIONS,
        plan.designs().values().stream().mapToInt(d -> d.separations().size()).sum());
    Layout layout = Layout.of(plan, policy);
    Underway.has(Much.COPIES, layout.placements().size());
    Underway.has(Much.PRINTS, layout.footprints().size());
    Swatches swatches = Swatches.of(plan, layout, policy);
    Timeline timeline = Timeline.of(plan, layout, policy, effort, new Lives(plan, policy)::least);
    Underway.has(Much.IMPRESSIONS, timeline.impressions().size());
    Underway.has(Much.CONTACTS, timeline.contacts().size());
    return mixed(
        plan,
        policy,
        layout,
        films,
        Screens.of(plan, policy),
        swatches,
        timeline,
        Sequence.of(plan, layout, timeline, policy));
  }

  /**
   * The facts of a plan that {@linkplain PrintPlan#isButForMixing is} the one of these facts but
   * for what its pastes are mixed from, and how much of them: everything lies, is printed and dries
   * as it did.
   */
  public Facts mixed(PrintPlan plan) {
    return mixed(
        plan, policy, layout, films, screens, swatches, timeline.with(plan.pastes()), sequence);
  }

  private static Facts mixed(
      PrintPlan plan,
      Policy policy,
      Layout layout,
      List<Evidence> films,
      Screens screens,
      Swatches swatches,
      Timeline timeline,
      Sequence sequence) {
    Pastes pastes = Pastes.of(plan, timeline, policy);
    Fixing fixing = Fixing.of(plan, timeline, pastes.ages(), policy);
    Fibres fibres = Fibres.of(plan, timeline, policy);
    Care care = Care.of(plan, fixing, policy);
    List<Evidence> evidence = new ArrayList<>();
    evidence.addAll(layout.evidence());
    evidence.addAll(screens.evidence());
    evidence.addAll(films);
    evidence.addAll(swatches.evidence());
    evidence.addAll(timeline.evidence());
    evidence.addAll(sequence.evidence());
    evidence.addAll(pastes.evidence());
    evidence.addAll(fixing.evidence());
    evidence.add(ClothMass.of(plan, policy));
    evidence.addAll(fibres.evidence());
    evidence.addAll(care.evidence());
    return new Facts(
        layout, films, screens, swatches, timeline, sequence, pastes, fixing, fibres, care, policy,
        evidence);
  }

  /** What the rules are given: the facts, and the limits they compare them with. */
  public List<Object> forRules() {
    List<Object> all = new ArrayList<>(evidence);
    all.addAll(policy.limits().values());
    return all;
  }
}
