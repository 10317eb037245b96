package strikeoff.bath;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import strikeoff.day.Impression;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.plan.Cloth;
import strikeoff.plan.Ingredient;
import strikeoff.plan.Medium;
import strikeoff.plan.Step;
import strikeoff.policy.Substance;
import strikeoff.units.Mass;
import strikeoff.units.Range;
import strikeoff.units.Volume;

/**
 * Silicate liquid that is brushed on a print, against the cloth that it has to wet through.
 *
 * @param step number of the fix step
 * @param liquid what is brushed on, as a best estimate
 * @param wets dry mass of the cloth that it wets through, at most
 * @param images dry mass of the cloth under the images that are printed in dye, the least there is
 * @param cloth dry mass of all of it
 * @param forCloth liquid that wets all of it, so much even by the lowest estimate
 * @param path of the bath
 */
public record Brushing(
    int step, Volume liquid, Mass wets, Mass images, Mass cloth, Volume forCloth, PlanPath path)
    implements Evidence {

  static List<Evidence> all(FixingRun work) {
    List<Evidence> facts = new ArrayList<>();
    for (Step step : work.plan().run()) {
      if (step instanceof Step.Fix fix && fix.brushed()) {
        List<Impression> dye = work.before(fix, Medium.DYE);
        if (!dye.isEmpty()) {
          facts.add(brushing(work, fix, dye));
        }
      }
    }
    return facts;
  }

  private static Brushing brushing(FixingRun work, Step.Fix fix, List<Impression> dye) {
    Cloth cloth = work.plan().cloth();
    double square = cloth.mass().gramsPerSquareMetre();
    double all = cloth.length().m() * cloth.width().m() * square;
    double pickUp = work.policy().fixing().silicatePickUp().fraction();
    double step = work.policy().fixing().measureSilicate().litres();
    Range millilitres = Range.exactly(0);
    double grams = 0;
    double lightest = Double.POSITIVE_INFINITY;
    for (Ingredient part : fix.bath()) {
      Substance substance = work.policy().substance(part.substance());
      if (substance.silicate()) {
        Range mass = substance.grams(part.amount());
        millilitres = millilitres.plus(substance.millilitres(part.amount()).orElse(mass));
        grams += mass.high();
        lightest = Math.min(lightest, substance.gramsPerMl().map(Range::low).orElse(1.0));
      }
    }
    double litres = Soaks.up(all * pickUp / lightest / 1000, step);
    return new Brushing(
        fix.number(),
        new Volume(millilitres.best() / 1000),
        new Mass(pickUp > 0 ? grams / pickUp : all),
        new Mass(squareMetres(dye) * square),
        new Mass(all),
        new Volume(litres),
        fix.path().key("bath"));
  }

  /** Of each placement its largest image: what overlaps is wetted once. */
  private static double squareMetres(List<Impression> dye) {
    Map<Integer, Double> byPlacement = new LinkedHashMap<>();
    for (Impression print : dye) {
      byPlacement.merge(
          print.footprint().placement().id(), print.footprint().image().getArea(), Math::max);
    }
    return byPlacement.values().stream().mapToDouble(mm2 -> mm2 / 1e6).sum();
  }

  /** True if it does not even wet what is printed. */
  public boolean leavesImagesDry() {
    return wets.grams() < images.grams();
  }

  /** True if it wets the images but not the whole cloth. */
  public boolean leavesClothDry() {
    return !leavesImagesDry() && wets.grams() < cloth.grams();
  }
}
