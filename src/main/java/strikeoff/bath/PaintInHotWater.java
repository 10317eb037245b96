package strikeoff.bath;

import java.util.ArrayList;
import java.util.List;
import strikeoff.day.AboutStep;
import strikeoff.day.Impression;
import strikeoff.document.PlanPath;
import strikeoff.plan.DyeFixing;
import strikeoff.plan.Medium;
import strikeoff.plan.Step;
import strikeoff.units.Temperature;

/**
 * Paint that has been heat-set and lies in a bath after that: a soak, a rinse or a wash.
 *
 * @param step number of the bath
 * @param doing the bath itself
 * @param paints the paints
 * @param marks placements concerned
 * @param path of the temperature
 */
public record PaintInHotWater(
    int step,
    Step doing,
    Temperature temperature,
    List<String> paints,
    List<String> marks,
    PlanPath path)
    implements AboutStep {

  public PaintInHotWater {
    paints = List.copyOf(paints);
    marks = List.copyOf(marks);
  }

  static List<PaintInHotWater> all(FixingRun work) {
    List<PaintInHotWater> all = new ArrayList<>();
    int set = 0;
    for (Step step : work.plan().run()) {
      if (step instanceof Step.HeatSet) {
        set = step.number();
      } else if (step instanceof Step.Wash wash) {
        add(all, work, wash, set, wash.temperature(), "wash");
      } else if (step instanceof Step.Rinse rinse) {
        add(all, work, rinse, set, rinse.temperature(), "rinse");
      } else if (step instanceof Step.Fix fix && fix.how() == DyeFixing.SOAK) {
        add(all, work, fix, set, fix.temperature(), "temperature");
      }
    }
    return all;
  }

  private static void add(
      List<PaintInHotWater> all, FixingRun work, Step bath, int set, Temperature warm, String key) {
    List<Impression> prints = work.impressions(Medium.PAINT, i -> i.step() < set);
    if (!prints.isEmpty()) {
      all.add(
          new PaintInHotWater(
              bath.number(),
              bath,
              warm,
              FixingRun.names(FixingRun.pastes(prints)),
              FixingRun.placements(prints),
              bath.path().key(key)));
    }
  }
}
