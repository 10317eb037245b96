package strikeoff.cloth;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import strikeoff.day.facts.Timeline;
import strikeoff.evidence.Evidence;
import strikeoff.plan.Cloth;
import strikeoff.plan.Medium;
import strikeoff.plan.Paste;
import strikeoff.plan.PrintPlan;
import strikeoff.policy.Policy;
import strikeoff.units.Phrase;
import strikeoff.units.Share;

/**
 * The cloth against the dye that is printed on it.
 *
 * @param take empty if no dye is printed
 * @param evidence all facts about the cloth's fibres that rules judge
 */
public record Fibres(Optional<FibreTake> take, List<Evidence> evidence) {

  public Fibres {
    evidence = List.copyOf(evidence);
  }

  public static Fibres of(PrintPlan plan, Timeline timeline, Policy policy) {
    List<String> dyes = printed(timeline, Medium.DYE);
    List<String> paints = printed(timeline, Medium.PAINT);
    List<Evidence> evidence = new ArrayList<>();
    Optional<FibreTake> take =
        dyes.isEmpty() ? Optional.empty() : Optional.of(take(plan.cloth(), dyes, policy));
    take.ifPresent(evidence::add);
    if (!plan.cloth().washed() && !(dyes.isEmpty() && paints.isEmpty())) {
      evidence.add(
          new UnwashedCloth(
              dyes,
              paints,
              plan.cloth().loomState(),
              plan.washedFirst(),
              plan.cloth().path().key(plan.cloth().loomState() ? "loom-state" : "washed")));
    }
    return new Fibres(take, evidence);
  }

  private static List<String> printed(Timeline timeline, Medium medium) {
    return timeline.impressions().stream()
        .map(i -> i.footprint().paste())
        .filter(p -> p.medium() == medium)
        .map(Paste::name)
        .distinct()
        .toList();
  }

  private static FibreTake take(Cloth cloth, List<String> dyes, Policy policy) {
    double takes = 0;
    double dyeable = 0;
    List<String> resisting = new ArrayList<>();
    List<String> protein = new ArrayList<>();
    for (var fibre : cloth.fibres().entrySet()) {
      double share = policy.fibre(fibre.getKey()).takesDye().fraction();
      takes += share * fibre.getValue().fraction();
      dyeable += share > 0 ? fibre.getValue().fraction() : 0;
      if (share < 1) {
        resisting.add(fibre.getKey());
      }
      if (policy.fibre(fibre.getKey()).protein()) {
        protein.add(fibre.getKey());
      }
    }
    return new FibreTake(
        new Share(takes),
        new Share(dyeable),
        blend(cloth),
        resisting,
        protein,
        dyes,
        policy.cloth().strongestMix().value(),
        cloth.path().key("fibre"));
  }

  /** As {@code silk}, or {@code 60 % cotton and 40 % polyester}. */
  private static String blend(Cloth cloth) {
    List<String> parts = new ArrayList<>();
    cloth.fibres().forEach((fibre, share) -> parts.add(share.text() + " " + fibre));
    return parts.size() == 1 ? cloth.fibres().keySet().iterator().next() : Phrase.list(parts);
  }
}
