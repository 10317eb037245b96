package strikeoff.bath;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import strikeoff.chemistry.SodaSolubility;
import strikeoff.chemistry.SodaSolution;
import strikeoff.colour.Lab;
import strikeoff.paste.Recipe;
import strikeoff.plan.Cloth;
import strikeoff.plan.DyeFixing;
import strikeoff.plan.Medium;
import strikeoff.plan.Paste;
import strikeoff.plan.Step;
import strikeoff.policy.Limit;
import strikeoff.units.Concentration;
import strikeoff.units.Mass;
import strikeoff.units.Range;
import strikeoff.units.Ratio;
import strikeoff.units.Share;
import strikeoff.units.Volume;

/** Works out every soda bath of a run. */
final class Soaks {

  private final FixingRun work;

  Soaks(FixingRun work) {
    this.work = work;
  }

  List<Soak> all() {
    List<Soak> soaks = new ArrayList<>();
    for (Step step : work.plan().run()) {
      if (step instanceof Step.Fix fix && fix.how() == DyeFixing.SOAK) {
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
    Limit weakest = work.policy().fixing().weakestBath();
    Limit strongest = work.policy().fixing().strongestBath();
    Limit salty = work.policy().fixing().enoughSalt();
    Limit dissolvable = work.policy().fixing().saltDissolves();
    Limit roomy = work.policy().fixing().tightLiquorRatio();
    double celsius = fix.temperature().celsius();
    double dissolves = SodaSolubility.gramsPerLitreOfWater(celsius);
    double scale = work.policy().paste().weighFine().grams();
    double jug = work.policy().fixing().measureWater().litres();
    double waterToCover = Math.max(litres, up(kilograms * roomy.amount(), jug));
    double waterToWeaken =
        Math.max(waterToCover, up(liquor.sodaGrams().high() / strongest.amount(), jug));
    boolean right = strength.low() >= weakest.amount() && strength.high() <= strongest.amount();
    double wanted = right ? strength.best() : usual();
    // What lies on the bottom is not carried over into another bath.
    double salt = Math.min(liquor.saltGramsPerLitre().best(), dissolvable.amount());
    return new Soak(
        fix.number(),
        liquor.sodaGrams(),
        liquor.bicarbonateGrams(),
        liquor.litres(),
        strength,
        fix.temperature(),
        pH(celsius, liquor),
        liquor
            .solution(celsius, strength.best(), liquor.bicarbonateGramsPerLitre().best())
            .map(s -> new Ratio(s.ionicStrength())),
        new Concentration(dissolves),
        cloth,
        Ratio.toTenth(kilograms > 0 ? litres / kilograms : 0),
        new Share(cloth.grams() > 0 ? liquor.sodaGrams().best() / cloth.grams() : 0),
        FixingRun.names(dyes),
        FixingRun.names(
            dyes.stream().filter(p -> new Recipe(p, work.policy()).holdsAlkali()).toList()),
        work.proteinFibres(),
        work.sodaToAdd(fix),
        new Volume(waterToWeaken),
        new Mass(up(salt * waterToWeaken, scale)),
        new Volume(waterToCover),
        new Mass(up(wanted * waterToCover, scale)),
        new Mass(up(salt * waterToCover, scale)),
        liquor.saltGramsPerLitre(),
        liquor.commonSaltGramsPerLitre(),
        new Mass(Math.floor(dissolvable.amount() * litres / scale) * scale),
        new Mass(up(Math.max(0, salty.amount() * litres - liquor.saltGrams().best()), scale)),
        liquor.silicateLitres().high() > 0,
        !work.before(fix, Medium.DYE).isEmpty(),
        Ratio.toTenth(Lab.of(work.plan().cloth().ground()).lightness()),
        weakest,
        strongest,
        roomy,
        salty,
        dissolvable,
        new BathEdits(fix, work.policy(), work.units()),
        fix.path().key("bath"));
  }

  /** Dye on the cloth in this phase, or else dye that is printed on the soaked cloth later. */
  private List<Paste> dyes(Step.Fix fix) {
    int phase = work.phase(fix.number());
    return FixingRun.pastes(work.impressions(Medium.DYE, i -> work.phase(i.step()) == phase));
  }

  static Mass dry(Cloth cloth) {
    return new Mass(cloth.length().m() * cloth.width().m() * cloth.mass().gramsPerSquareMetre());
  }

  /** From the weakest to the strongest estimate of the bath, and as well as the model knows it. */
  private static Optional<Range> pH(double celsius, Liquor liquor) {
    if (liquor.silicateLitres().high() > 0) {
      return Optional.empty();
    }
    Range soda = liquor.sodaGramsPerLitre();
    Range mild = liquor.bicarbonateGramsPerLitre();
    Optional<SodaSolution> weak = liquor.solution(celsius, soda.low(), mild.high());
    Optional<SodaSolution> best = liquor.solution(celsius, soda.best(), mild.best());
    Optional<SodaSolution> strong = liquor.solution(celsius, soda.high(), mild.low());
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

  /** The usual strength; silk and wool don't bear that much. */
  private double usual() {
    return work.proteinFibres().isEmpty()
        ? work.policy().fixing().usualBath().gramsPerLitre()
        : Math.min(
            work.policy().fixing().usualBath().gramsPerLitre(),
            work.policy().cloth().proteinSoda().gramsPerLitre());
  }

  /** Up to the next multiple: nobody weighs 213.7 g. */
  static double up(double value, double step) {
    return Math.max(0.0, Math.ceil(value / step - 1e-9)) * step;
  }
}
