package strikeoff.bath;

import java.util.ArrayList;
import java.util.List;
import strikeoff.day.AboutStep;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.plan.DyeFixing;
import strikeoff.plan.Step;
import strikeoff.policy.Fibre;
import strikeoff.units.Measures;
import strikeoff.units.Temperature;

/**
 * Water that the cloth lies in: a soak, a rinse or a wash; and a batch that is kept hot with soda
 * in it.
 *
 * @param step number of the step
 * @param doing the step itself
 * @param fibre the fibre of the cloth that stands least
 * @param stands the hottest water that does it no harm
 * @param moved true if the cloth is moved in it, as in any wash, rinse and soak
 * @param soda true if it holds soda ash or silicate
 * @param felts true if so hot a water felts a fibre of it once it is moved
 * @param path of the temperature
 */
public record HotWater(
    int step,
    Step doing,
    Temperature temperature,
    String fibre,
    Temperature stands,
    boolean moved,
    boolean soda,
    boolean felts,
    PlanPath path)
    implements AboutStep {

  /** The same as the most, in words. */
  public String stands(Measures units) {
    return stands.most(units);
  }

  static List<Evidence> all(FixingRun work) {
    List<Evidence> facts = new ArrayList<>();
    for (Step step : work.plan().run()) {
      if (step instanceof Step.Wash wash) {
        facts.add(water(work, step, wash.temperature(), true, false, step.path().key("wash")));
      } else if (step instanceof Step.Rinse rinse) {
        facts.add(water(work, step, rinse.temperature(), true, false, step.path().key("rinse")));
      } else if (step instanceof Step.Fix fix && fix.how() == DyeFixing.SOAK) {
        boolean soda = holdsSoda(fix, work);
        facts.add(water(work, step, fix.temperature(), true, soda, fix.path().key("temperature")));
      } else if (step instanceof Step.Fix fix
          && fix.how() == DyeFixing.BATCH
          && (holdsSoda(fix, work) || work.soakedBefore(fix))) {
        HotWater batch =
            water(work, step, fix.temperature(), false, true, fix.path().key("temperature"));
        if (batch.felts()) {
          facts.add(batch);
        }
      }
    }
    return facts;
  }

  private static HotWater water(
      FixingRun work,
      Step step,
      Temperature temperature,
      boolean moved,
      boolean soda,
      PlanPath path) {
    Delicacy delicacy = new Delicacy(work.plan().cloth(), work.policy());
    Fibre weakest = delicacy.inWater();
    boolean felts =
        (moved || soda)
            && weakest.feltsFrom().map(f -> temperature.celsius() >= f.celsius()).orElse(false);
    return new HotWater(
        step.number(),
        step,
        temperature,
        weakest.name(),
        weakest.warmestWash(),
        moved,
        soda,
        felts,
        path);
  }

  private static boolean holdsSoda(Step.Fix fix, FixingRun work) {
    Liquor liquor = Liquor.of(fix.bath(), work.policy());
    return liquor.sodaGrams().high() > 0 || liquor.silicateLitres().high() > 0;
  }

  public boolean harms() {
    return !felts && temperature.celsius() > stands.celsius();
  }
}
