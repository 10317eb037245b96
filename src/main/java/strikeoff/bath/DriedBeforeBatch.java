package strikeoff.bath;

import java.util.ArrayList;
import java.util.List;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.plan.DyeFixing;
import strikeoff.plan.Medium;
import strikeoff.plan.Paste;
import strikeoff.plan.Step;
import strikeoff.units.Share;

/**
 * Prints that are to fix damp in a batch, of pastes that hold urea or whose recipe doesn't say.
 *
 * @param step number of the batch
 * @param ureaKnown true if they hold urea, false if that is not written
 * @param wrapped how dry they are when it starts
 * @param humidity of the room that they dried in
 * @param path of the step
 */
public record DriedBeforeBatch(
    int step,
    List<String> pastes,
    boolean ureaKnown,
    Wrapped wrapped,
    Share humidity,
    List<String> marks,
    PlanPath path)
    implements Evidence {

  public DriedBeforeBatch {
    pastes = List.copyOf(pastes);
    marks = List.copyOf(marks);
  }

  static List<DriedBeforeBatch> all(FixingRun work) {
    List<DriedBeforeBatch> all = new ArrayList<>();
    for (Step step : work.plan().run()) {
      if (step instanceof Step.Fix fix
          && fix.how() == DyeFixing.BATCH
          && !fix.wets()
          && work.isTheLast(fix)
          && !work.isSoakedOnPrintBefore(fix)) {
        List<Paste> pastes =
            FixingRun.pastes(work.before(fix, Medium.DYE)).stream()
                .filter(p -> !UreaNeed.hardlyAny(p, work))
                .toList();
        Wrapped.of(work, fix, pastes)
            .filter(Wrapped::anyDry)
            .ifPresent(
                wrapped ->
                    all.add(
                        new DriedBeforeBatch(
                            fix.number(),
                            FixingRun.names(pastes),
                            pastes.stream().allMatch(p -> UreaNeed.dose(p, work).isPresent()),
                            wrapped,
                            work.plan().room().humidity(),
                            FixingRun.placements(
                                work.before(fix, Medium.DYE).stream()
                                    .filter(i -> pastes.contains(i.footprint().paste()))
                                    .toList()),
                            fix.path())));
      }
    }
    return all;
  }
}
