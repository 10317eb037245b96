package strikeoff.cloth;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import strikeoff.plan.Basis;
import strikeoff.plan.Cloth;
import strikeoff.plan.Evidence;
import strikeoff.plan.Medium;
import strikeoff.plan.PrintPlan;
import strikeoff.policy.Policy;
import strikeoff.timeline.Timeline;
import strikeoff.units.Share;

/**
 * The cloth against the dye that is printed on it.
 *
 * @param take empty if no dye is printed
 * @param evidence all facts about the cloth's fibres that rules judge
 */
public record Fibres(Optional<FibreTake> take, List<Evidence> evidence) {

  /** What a blend's paleness rests on. */
  public static final Basis BASIS =
      new Basis(
          "How pale a blend comes out",
          "Each fibre takes dye in proportion to its share of the mass.",
          "Fibres of the table. Blends of unlike fibres may also look speckled, which is not reckoned.",
          "suppliers' pages for which fibres take the dye; shares of wool and silk from memory");

  public Fibres {
    evidence = List.copyOf(evidence);
  }

  public static Fibres of(PrintPlan plan, Timeline timeline, Policy policy) {
    List<String> dyes =
        timeline.impressions().stream()
            .map(i -> i.footprint().paste())
            .filter(p -> p.medium() == Medium.DYE)
            .map(p -> p.name())
            .distinct()
            .toList();
    if (dyes.isEmpty()) {
      return new Fibres(Optional.empty(), List.of());
    }
    FibreTake take = take(plan.cloth(), dyes, policy);
    List<Evidence> evidence = new ArrayList<>();
    evidence.add(take);
    if (!plan.cloth().washed()) {
      evidence.add(new UnscouredCloth(dyes, plan.cloth().path().key("washed")));
    }
    return new Fibres(Optional.of(take), evidence);
  }

  private static FibreTake take(Cloth cloth, List<String> dyes, Policy policy) {
    double takes = 0;
    List<String> resisting = new ArrayList<>();
    for (var fibre : cloth.fibres().entrySet()) {
      double share = policy.fibre(fibre.getKey()).takesDye().fraction();
      takes += share * fibre.getValue().fraction();
      if (share < 1) {
        resisting.add(fibre.getKey());
      }
    }
    String blend =
        cloth.fibres().entrySet().stream()
            .map(f -> f.getValue().text() + " " + f.getKey())
            .collect(Collectors.joining(", "));
    return new FibreTake(new Share(takes), blend, resisting, dyes, cloth.path().key("fibre"));
  }
}
