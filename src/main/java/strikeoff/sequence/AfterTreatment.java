package strikeoff.sequence;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import strikeoff.day.Impression;
import strikeoff.drying.HungCloth;
import strikeoff.evidence.Evidence;
import strikeoff.evidence.Evidence.Related;
import strikeoff.evidence.Tie;
import strikeoff.plan.Draught;
import strikeoff.plan.Medium;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Step;
import strikeoff.policy.Policy;

/** Prints on a cloth that has been fixed, rinsed or washed before. */
final class AfterTreatment {

  private final Course course;

  private final PrintPlan plan;
  private final Policy policy;

  AfterTreatment(Course course, PrintPlan plan, Policy policy) {
    this.course = course;
    this.plan = plan;
    this.policy = policy;
  }

  List<Evidence> facts() {
    List<Evidence> facts = new ArrayList<>();
    for (int step : course.printSteps()) {
      last(step, this::fixesDye).ifPresent(fix -> afterFix(facts, step, fix.number()));
      last(step, Course::wets).ifPresent(bath -> afterBath(facts, step, bath.number()));
    }
    return facts;
  }

  private void afterFix(List<Evidence> facts, int step, int fix) {
    for (Medium medium : Medium.values()) {
      List<Impression> printed =
          course.impressions(step).stream()
              .filter(i -> i.footprint().paste().medium() == medium)
              .toList();
      if (!printed.isEmpty()) {
        facts.add(
            new PrintAfterFix(
                course.step(step),
                medium,
                course.step(fix),
                fix,
                course.first(fix, step, Course::rinses).isPresent(),
                course.first(fix, step, Course::washesOff).isPresent(),
                Group.copies(printed),
                Group.names(printed),
                List.of(new Related(Tie.FIXED, course.path(fix))),
                course.path(step)));
      }
    }
  }

  /**
   * Only the first print after a bath: the later ones find the cloth no wetter, and dry heat dries
   * it.
   */
  private void afterBath(List<Evidence> facts, int step, int bath) {
    boolean first = course.printSteps().stream().noneMatch(other -> other > bath && other < step);
    Impression earliest = course.impressions(step).get(0);
    boolean ironed = course.first(bath, step, Step.HeatSet.class::isInstance).isPresent();
    if (first && !ironed && course.end(bath).isPresent()) {
      int before =
          course.first(bath, step, Step.Mix.class::isInstance).map(Step::number).orElse(step);
      facts.add(
          new PrintAfterBath(
              course.step(step),
              course.step(bath),
              course.step(before),
              course.path(before),
              course.impressions(step).stream()
                  .anyMatch(i -> i.footprint().paste().medium() == Medium.PAINT),
              earliest.laid().since(course.end(bath).get()),
              HungCloth.wetFor(
                  plan.cloth(),
                  plan.room(),
                  course.steps().get(bath - 1) instanceof Step.Fix,
                  airMoves(bath, step),
                  policy),
              earliest.laid(),
              List.of(new Related(Tie.BATH, course.path(bath))),
              course.path(step)));
    }
  }

  private boolean airMoves(int bath, int step) {
    boolean always = plan.room().air().by() != Draught.By.STILL;
    return always
        || course
            .first(
                bath,
                step,
                s -> s.draughts().values().stream().anyMatch(a -> a.by() != Draught.By.STILL))
            .isPresent();
  }

  /** A soak before any dye is printed only brings the alkali: nothing is fixed by it. */
  private boolean fixesDye(Step step) {
    return Course.fixes(step)
        && course.printSteps().stream()
            .filter(print -> print < step.number())
            .flatMap(print -> course.impressions(print).stream())
            .anyMatch(i -> i.footprint().paste().medium() == Medium.DYE);
  }

  private Optional<Step> last(int before, Predicate<Step> kind) {
    return course.steps().stream()
        .filter(s -> s.number() < before)
        .filter(kind)
        .reduce((earlier, later) -> later);
  }
}
