package strikeoff.timeline;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import strikeoff.plan.Draught;
import strikeoff.plan.PlanPath;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Step;
import strikeoff.plan.Until;
import strikeoff.plan.Wait;
import strikeoff.units.Span;

/**
 * A change of the run that a printer could write.
 *
 * @param how what is changed
 * @param step number of the step that is changed, or before which one is put in
 * @param minutes the whole value to write, not what is added; for printing every other one the time
 *     to dry between its two passes, which may be 0
 * @param air what moves the air in that wait as the plan has it; empty for the room's own
 */
public record Remedy(How how, int step, long minutes, Optional<Draught> air) {

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

  /** In the air that the plan has in that place. */
  static Remedy in(PrintPlan plan, How how, int step, long minutes) {
    return plan.run().stream()
        .filter(s -> s.number() == step && s instanceof Step.Print)
        .findFirst()
        .map(s -> new Remedy(how, step, minutes, written(how, (Step.Print) s).air()))
        .orElseGet(() -> new Remedy(how, step, minutes, Optional.empty()));
  }

  /** What a print step has in the place of a wait. */
  static Wait written(How how, Step.Print step) {
    return switch (how) {
      case DRY_BETWEEN_COLOURS -> step.dryBetweenColours();
      case DRY_BETWEEN_PASSES, EVERY_OTHER -> step.dryBetweenPasses();
      case BEFORE_MOVING -> step.beforeMoving();
      case PAUSE -> Wait.of(new Until.Time(step.pause()));
      case DRY_STEP -> Wait.NONE;
    };
  }

  /** What to write, and where. */
  public String text() {
    return switch (how) {
      case DRY_BETWEEN_COLOURS -> "`dry between colours: " + inMinutes() + "` in step " + step;
      case DRY_BETWEEN_PASSES -> "`dry between passes: " + inMinutes() + "` in step " + step;
      case PAUSE -> "`pause: " + minutes + " min` in step " + step;
      case BEFORE_MOVING -> "`before moving: " + inMinutes() + "` in step " + step;
      case DRY_STEP -> "a step `- dry: " + minutes + " min` before step " + step;
      case EVERY_OTHER ->
          "`every other: yes`"
              + (minutes > 0 ? " and `dry between passes: " + inMinutes() + "`" : "")
              + " in step "
              + step;
    };
  }

  /** Whole minutes, however many, so that figures of one finding can be compared. */
  private String inMinutes() {
    String time = minutes + " min";
    return air.map(a -> "{for: " + time + ", air: " + a.text() + "}").orElse(time);
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
    return new Remedy(how, step, minutes + more, air);
  }

  /** The plan with it; steps keep their numbers, so that runs can be compared. */
  public PrintPlan applied(PrintPlan plan) {
    List<Step> run = new ArrayList<>();
    for (Step each : plan.run()) {
      if (each.number() != step || (each instanceof Step.Dry dry && dry.path().equals(PUT_IN))) {
        run.add(each);
      } else if (how == How.DRY_STEP) {
        run.add(new Step.Dry(step, drying().until(), Optional.empty(), Optional.empty(), PUT_IN));
        run.add(each);
      } else {
        run.add(each instanceof Step.Print print ? changed(print) : each);
      }
    }
    return with(plan, run);
  }

  private static final PlanPath PUT_IN = new PlanPath("run");

  private Wait drying() {
    return new Wait(new Until.Time(new Span(minutes)), air);
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
        how == How.DRY_BETWEEN_COLOURS ? drying() : p.dryBetweenColours(),
        how == How.BEFORE_MOVING ? drying() : p.beforeMoving(),
        p.by(),
        p.also(),
        p.washes(),
        how == How.DRY_BETWEEN_PASSES || how == How.EVERY_OTHER && minutes > 0
            ? drying()
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
