package strikeoff.timeline;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import strikeoff.plan.PlanPath;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Step;
import strikeoff.plan.Until;
import strikeoff.units.Span;

/**
 * A change of the run that a printer could write.
 *
 * @param how what is changed
 * @param step number of the step that is changed, or before which one is put in
 * @param minutes the whole value to write, not what is added; for printing every other one the time
 *     to dry between its two passes, which may be 0
 */
public record Remedy(How how, int step, long minutes) {

  /** A month, in minutes. */
  private static final long MOST_WORTH_SAYING = 30L * 24 * 60;

  /** Places of a plan where a wait can be written. */
  public enum How {
    DRY_BETWEEN_COLOURS,
    DRY_BETWEEN_PASSES,
    PAUSE,
    BEFORE_MOVING,
    DRY_STEP,
    EVERY_OTHER
  }

  /** What to write, and where. */
  public String text() {
    return switch (how) {
      case DRY_BETWEEN_COLOURS -> "`dry between colours: " + minutes + " min` in step " + step;
      case DRY_BETWEEN_PASSES -> "`dry between passes: " + minutes + " min` in step " + step;
      case PAUSE -> "`pause: " + minutes + " min` in step " + step;
      case BEFORE_MOVING -> "`before moving: " + minutes + " min` in step " + step;
      case DRY_STEP -> "a step `- dry: " + minutes + " min` before step " + step;
      case EVERY_OTHER ->
          "`every other: yes`"
              + (minutes > 0 ? " and `dry between passes: " + minutes + " min`" : "")
              + " in step "
              + step;
    };
  }

  /** What clears slow drying too, to be said after what clears the likely one; may be empty. */
  String andFor(Remedy surely) {
    return surely.minutes() > minutes && surely.minutes() <= MOST_WORTH_SAYING
        ? "; with " + surely.minutes() + " min slow drying is clear too"
        : "";
  }

  /** How much too early something is done to a film for which quick drying would do. */
  static String inDoubt(Span shortBest, Span shortMost) {
    return shortBest.seconds() > 0
        ? "most likely that is "
            + shortBest.text()
            + " too early, in slow drying "
            + shortMost.text()
            + "; if the film dries quickly it is safe by then"
        : "in slow drying that is "
            + shortMost.text()
            + " too early; most likely it is dry by then";
  }

  Remedy longer(long more) {
    return new Remedy(how, step, minutes + more);
  }

  /** The plan with it; steps keep their numbers, so that runs can be compared. */
  public PrintPlan applied(PrintPlan plan) {
    List<Step> run = new ArrayList<>();
    for (Step each : plan.run()) {
      if (each.number() != step || (each instanceof Step.Dry dry && dry.path().equals(PUT_IN))) {
        run.add(each);
      } else if (how == How.DRY_STEP) {
        run.add(new Step.Dry(step, time(), Optional.empty(), Optional.empty(), PUT_IN));
        run.add(each);
      } else {
        run.add(each instanceof Step.Print print ? changed(print) : each);
      }
    }
    return with(plan, run);
  }

  private static final PlanPath PUT_IN = new PlanPath("run");

  private Until time() {
    return new Until.Time(new Span(minutes));
  }

  private Step changed(Step.Print p) {
    return new Step.Print(
        p.number(),
        p.arrangements(),
        p.only(),
        p.separations(),
        p.order(),
        p.everyOther() || how == How.EVERY_OTHER,
        how == How.PAUSE ? new Span(minutes) : p.pause(),
        how == How.DRY_BETWEEN_COLOURS ? time() : p.dryBetweenColours(),
        how == How.BEFORE_MOVING ? time() : p.beforeMoving(),
        p.by(),
        p.also(),
        p.washes(),
        how == How.DRY_BETWEEN_PASSES || how == How.EVERY_OTHER && minutes > 0
            ? time()
            : p.dryBetweenPasses(),
        p.path());
  }

  private static PrintPlan with(PrintPlan p, List<Step> run) {
    return new PrintPlan(
        p.title(),
        p.notes(),
        p.cloth(),
        p.seams(),
        p.table(),
        p.room(),
        p.crew(),
        p.hours(),
        p.handling(),
        p.equipment(),
        p.screens(),
        p.pastes(),
        p.designs(),
        p.arrangements(),
        run,
        p.protection(),
        p.acceptances(),
        p.assumptions());
  }
}
