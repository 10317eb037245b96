package strikeoff.paste;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import strikeoff.plan.Design;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Screen;
import strikeoff.policy.Limit;
import strikeoff.policy.Policy;
import strikeoff.units.Mass;

/** Sets each thickened paste against the coarsest and the finest mesh that it goes through. */
final class ThickenerMeshes {

  private final PrintPlan plan;
  private final Policy policy;

  ThickenerMeshes(PrintPlan plan, Policy policy) {
    this.plan = plan;
    this.policy = policy;
  }

  List<ThickenerOnMesh> of(ThickenerStrength strength) {
    Map<Double, Screen> meshes = new LinkedHashMap<>();
    for (Design design : plan.designs().values()) {
      for (Design.Separation separation : design.separations()) {
        if (separation.paste().equals(strength.paste())) {
          Screen screen = plan.screens().get(separation.screen());
          meshes.putIfAbsent(screen.mesh().perCm(), screen);
        }
      }
    }
    double density = policy.screens().densityDyePaste().gramsPerLitre() / 1000;
    double rest = strength.batchGrams().best() - strength.thickenerGrams().best();
    Limit least = policy.paste().thinOnCoarse();
    Limit most = policy.paste().thickOnFine();
    Mass coarse = Thickeners.needed(least.amount(), rest, density);
    Mass fine = Thickeners.needed(most.amount(), rest, density);
    List<Screen> ends =
        meshes.values().stream().filter(s -> isEnd(s.mesh().perCm(), meshes.keySet())).toList();
    List<ThickenerOnMesh> facts = new ArrayList<>();
    for (Screen screen : ends) {
      facts.add(
          new ThickenerOnMesh(
              strength.paste(),
              strength.thickener(),
              strength.share(),
              strength.thinnest(),
              strength.thickest(),
              least,
              most,
              screen.name(),
              screen.mesh(),
              coarse,
              fine,
              screen.path().key("mesh"),
              strength.path()));
    }
    return facts;
  }

  private static boolean isEnd(double count, Iterable<Double> all) {
    double coarsest = count;
    double finest = count;
    for (double other : all) {
      coarsest = Math.min(coarsest, other);
      finest = Math.max(finest, other);
    }
    return count == coarsest || count == finest;
  }
}
