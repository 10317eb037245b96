package strikeoff.bath;

import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import strikeoff.plan.Cloth;
import strikeoff.policy.Fibre;
import strikeoff.policy.Policy;
import strikeoff.units.Temperature;

/** Which fibre of a cloth stands least; a few threads of another one don't count. */
record Delicacy(Cloth cloth, Policy policy) {

  Fibre inDryHeat() {
    return least(Fibre::heatSpoils);
  }

  Fibre inWater() {
    return least(Fibre::warmestWash);
  }

  /** The one that is washed coolest by those who care for its look. */
  Fibre inTheWash() {
    return least(Fibre::advisedWash);
  }

  private Fibre least(Function<Fibre, Temperature> limit) {
    List<Fibre> all = cloth.fibres().keySet().stream().map(policy::fibre).toList();
    return all.stream()
        .filter(this::counts)
        .min(Comparator.comparing(limit))
        .or(() -> all.stream().min(Comparator.comparing(limit)))
        .orElseThrow();
  }

  private boolean counts(Fibre fibre) {
    return policy.counts(fibre, cloth.fibres().get(fibre.name()));
  }
}
