package strikeoff.bath;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import strikeoff.chemistry.SodaSolubility;
import strikeoff.chemistry.SodaSolution;
import strikeoff.paste.Recipe;
import strikeoff.plan.Cloth;
import strikeoff.plan.Medium;
import strikeoff.plan.Paste;
import strikeoff.plan.Step;
import strikeoff.units.Concentration;
import strikeoff.units.Mass;
import strikeoff.units.Range;
import strikeoff.units.Ratio;
import strikeoff.units.Share;
import strikeoff.units.Volume;

/** Works out every soda bath of a run. */
final class Soaks {

  private final Work work;

  Soaks(Work work) {
    this.work = work;
  }

  List<Soak> all() {
    List<Soak> soaks = new ArrayList<>();
    for (Step step : work.plan().run()) {
      if (step instanceof Step.Fix fix && fix.how() == Step.Fixing.SOAK) {
        Liquor liquor = Liquor.of(fix.bath(), work.policy());
        if (liquor.hasWater()) {
          soaks.add(soak(fix, liquor));
        }
      }
    }
    return soaks;
  }

  private Soak soak(Step.Fix fix, Liquor liquor) {
    Range strength = liquor.sodaGramsPerLitre();
    Mass cloth = dry(work.plan().cloth());
    double litres = liquor.litres().best();
    double kilograms = cloth.kilograms();
    List<Paste> dyes = dyes(fix);
    double weakest = work.policy().limit("fixing/weakest-bath").amount();
    double strongest = work.policy().limit("fixing/strongest-bath").amount();
    double roomy = work.policy().limit("fixing/tight-liquor-ratio").amount();
    double dissolves = SodaSolubility.gramsPerLitreOfWater(fix.temperature().celsius());
    double scale = work.policy().limit("paste/weigh-fine").amount();
    double jug = work.policy().limit("fixing/measure-water").amount();
    double waterToCover = Math.max(litres, up(kilograms * roomy, jug));
    return new Soak(
        fix.number(),
        liquor.sodaGrams(),
        liquor.bicarbonateGrams(),
        liquor.litres(),
        strength,
        fix.temperature(),
        pH(fix, liquor),
        solution(fix, strength.best(), liquor.bicarbonateGramsPerLitre().best())
            .map(s -> new Ratio(s.ionicStrength())),
        new Concentration(dissolves),
        cloth,
        Ratio.toTenth(kilograms > 0 ? litres / kilograms : 0),
        new Share(cloth.grams() > 0 ? liquor.sodaGrams().best() / cloth.grams() : 0),
        Work.names(dyes),
        Work.names(dyes.stream().filter(p -> new Recipe(p, work.policy()).holdsAlkali()).toList()),
        work.proteinFibres(),
        new Mass(
            up(Math.max(0, weakest * liquor.litres().high() - liquor.sodaGrams().low()), scale)),
        new Volume(up(liquor.sodaGrams().high() / strongest, jug)),
        new Volume(up(liquor.sodaGrams().high() / dissolves, jug)),
        new Volume(waterToCover),
        new Mass(up(Math.max(weakest, strength.best()) * waterToCover, scale)),
        fix.path().key("bath"));
  }

  /** Dye on the cloth in this phase, or else dye that is printed on the soaked cloth later. */
  private List<Paste> dyes(Step.Fix fix) {
    int phase = work.phase(fix.number());
    return Work.pastes(work.impressions(Medium.DYE, i -> work.phase(i.step()) == phase));
  }

  private static Mass dry(Cloth cloth) {
    return new Mass(cloth.length().m() * cloth.width().m() * cloth.mass().gramsPerSquareMetre());
  }

  /** From the weakest to the strongest estimate of the bath, and as well as the model knows it. */
  private static Optional<Range> pH(Step.Fix fix, Liquor liquor) {
    Range soda = liquor.sodaGramsPerLitre();
    Range mild = liquor.bicarbonateGramsPerLitre();
    Optional<SodaSolution> weak = solution(fix, soda.low(), mild.high());
    Optional<SodaSolution> best = solution(fix, soda.best(), mild.best());
    Optional<SodaSolution> strong = solution(fix, soda.high(), mild.low());
    if (weak.isEmpty() || best.isEmpty() || strong.isEmpty()) {
      return Optional.empty();
    }
    double pH = best.get().pH();
    return Optional.of(
        new Range(
            Math.min(pH, weak.get().pH()) - SodaSolution.UNCERTAINTY,
            pH,
            Math.max(pH, strong.get().pH()) + SodaSolution.UNCERTAINTY));
  }

  private static Optional<SodaSolution> solution(Step.Fix fix, double soda, double bicarbonate) {
    return SodaSolution.ofGramsPerLitre(fix.temperature().celsius(), soda, bicarbonate);
  }

  /** Up to the next multiple: nobody weighs 213.7 g. */
  static double up(double value, double step) {
    return Math.ceil(value / step - 1e-9) * step;
  }
}
