package strikeoff.sequence;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import strikeoff.plan.Evidence;
import strikeoff.plan.Evidence.Related;
import strikeoff.plan.Medium;
import strikeoff.plan.Step;
import strikeoff.timeline.Impression;

/** Prints on a cloth that has been fixed, rinsed or washed before. */
final class AfterTreatment {

  private final Course course;

  AfterTreatment(Course course) {
    this.course = course;
  }

  List<Evidence> facts() {
    List<Evidence> facts = new ArrayList<>();
    for (int step : course.printSteps()) {
      last(step, Course::fixes).ifPresent(fix -> afterFix(facts, step, fix.number()));
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
                course.name(step),
                medium,
                course.name(fix),
                course.first(fix, step, Course::rinses).isPresent(),
                course.first(fix, step, Course::washesOff).isPresent(),
                Group.places(printed),
                Group.names(printed),
                List.of(new Related("fixed", course.path(fix))),
                course.path(step)));
      }
    }
  }

  /** Only the first print after a bath: the later ones find the cloth no wetter. */
  private void afterBath(List<Evidence> facts, int step, int bath) {
    boolean first = course.printSteps().stream().noneMatch(other -> other > bath && other < step);
    Impression earliest = course.impressions(step).get(0);
    if (first && course.end(bath).isPresent()) {
      facts.add(
          new PrintAfterBath(
              course.name(step),
              course.name(bath),
              earliest.laid().since(course.end(bath).get()),
              earliest.laid(),
              List.of(new Related("the bath", course.path(bath))),
              course.path(step)));
    }
  }

  private Optional<Step> last(int before, Predicate<Step> kind) {
    return course.steps().stream()
        .filter(s -> s.number() < before)
        .filter(kind)
        .reduce((earlier, later) -> later);
  }
}
