package strikeoff.bath;

import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import strikeoff.plan.Cloth;
import strikeoff.plan.HeatSource;
import strikeoff.policy.Fibre;
import strikeoff.policy.Policy;
import strikeoff.units.Temperature;

/** Which fibre of a cloth stands least; a few threads of another one don't count. */
record Delicacy(Cloth cloth, Policy policy) {

  /** The one that is harmed first in a dry heat. */
  Fibre harmedBy(HeatSource with) {
    return least(fibre -> harmsAbove(fibre, with));
  }

  /** The one that is spoilt first in a dry heat; in a blend it may be another one. */
  Fibre spoiltBy(HeatSource with) {
    return least(fibre -> spoilsAbove(fibre, with));
  }

  Temperature harmsAbove(Fibre fibre, HeatSource with) {
    return stands(fibre, fibre.heatHarms(), with);
  }

  Temperature spoilsAbove(Fibre fibre, HeatSource with) {
    return stands(fibre, fibre.heatSpoils(), with);
  }

  /**
   * An iron's dial tells the sole, which is hotter than film and cloth under it; but what softens
   * does so where it touches the sole.
   */
  private Temperature stands(Fibre fibre, Temperature film, HeatSource with) {
    double sole = policy.fixing().ironAboveFilm().celsius();
    return with == HeatSource.IRON && !fibre.softens()
        ? new Temperature(film.celsius() + sole)
        : film;
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
