package strikeoff.bath;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.plan.DyeFixing;
import strikeoff.plan.Medium;
import strikeoff.plan.Step;
import strikeoff.policy.Fibre;
import strikeoff.units.Span;

/**
 * Silk or wool that lies in soda or with soda in it, from the first soak to the rinse.
 *
 * @param fibres those of the cloth that strong alkali harms
 * @param lasts all soaks and batches after the soda came in, together
 * @param fibre the one of them that stands it least
 * @param stands for how long it does
 * @param fix the step in which it lies too long
 * @param left how long that may last, if it is enough for the dye
 * @param path of the time of the last of them
 */
public record TimeInSoda(
    List<String> fibres,
    Span lasts,
    String fibre,
    Span stands,
    Step.Fix fix,
    Optional<Span> left,
    PlanPath path)
    implements Evidence {

  public TimeInSoda {
    fibres = List.copyOf(fibres);
  }

  static Optional<TimeInSoda> of(FixingRun work) {
    Optional<Fibre> weakest =
        work.proteinFibres().stream()
            .map(work.policy()::fibre)
            .min(Comparator.comparing(work::standsSoda));
    if (weakest.isEmpty()) {
      return Optional.empty();
    }
    Span stands = work.standsSoda(weakest.get());
    double minutes = 0;
    boolean soda = false;
    TimeInSoda longest = null;
    for (Step step : work.plan().run()) {
      if (step instanceof Step.Rinse || step instanceof Step.Wash) {
        soda = false;
        minutes = 0;
      } else if (step instanceof Step.Fix fix && fix.how() != DyeFixing.STEAM) {
        Liquor liquor = Liquor.of(fix.bath(), work.policy());
        soda |= liquor.sodaGrams().high() > 0 || liquor.silicateLitres().high() > 0;
        double before = minutes;
        minutes += soda ? fix.lasts().minutes() : 0;
        if (soda && (longest == null || minutes > longest.lasts().minutes())) {
          longest =
              new TimeInSoda(
                  work.proteinFibres(),
                  new Span(minutes),
                  weakest.get().name(),
                  stands,
                  fix,
                  left(work, fix, stands.minutes() - before),
                  fix.path().key("for"));
        }
      }
    }
    return Optional.ofNullable(longest);
  }

  /** Less time is no help where the dye needs more than is left. */
  private static Optional<Span> left(FixingRun work, Step.Fix fix, double left) {
    boolean enough =
        !work.groups(FixingRun.pastes(work.before(fix, Medium.DYE))).isEmpty()
            && new DyeProgress(work).slowest(fix).minutes().best() <= left;
    return enough ? Optional.of(new Span(Math.floor(left))) : Optional.empty();
  }
}
