package strikeoff.sequence;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import strikeoff.layout.Layout;
import strikeoff.plan.Evidence;
import strikeoff.plan.Evidence.Related;
import strikeoff.plan.Medium;
import strikeoff.plan.Step;
import strikeoff.policy.Policy;
import strikeoff.timeline.Impression;

/** Dye and paint on one cloth: which comes on which, and what water reaches. */
final class MediaPasses {

  static final String NO_STEP = "no step";

  private final Course course;
  private final Layout layout;
  private final double mostPairs;
  private final List<Impression> dye;
  private final List<Impression> paint;

  MediaPasses(Course course, Layout layout, Policy policy) {
    mostPairs = policy.limit("media/most-pairs").amount();
    this.course = course;
    this.layout = layout;
    dye = of(Medium.DYE);
    paint = of(Medium.PAINT);
  }

  List<Evidence> facts() {
    List<Evidence> facts = new ArrayList<>();
    if (!dye.isEmpty() && !paint.isEmpty()) {
      paintOverDye(facts);
      dyeOverPaint(facts);
    }
    wetBaths(facts);
    return facts;
  }

  private void paintOverDye(List<Evidence> facts) {
    Map<Integer, Group> byStep = new TreeMap<>();
    Laps laps = new Laps(layout, dye, mostPairs);
    for (Impression later : paint) {
      Group group = byStep.computeIfAbsent(later.step(), s -> new Group());
      group.add(laps.under(later, earlier -> isUnfixed(earlier, later.step())));
    }
    byStep.forEach(
        (step, group) -> {
          if (laps.isTired()) {
            group.cutShort();
          }
          if (!group.isEmpty()) {
            facts.add(
                new PaintOverDye(
                    course.name(step),
                    group.above(),
                    group.below(),
                    group.places(),
                    group.most(),
                    group.certain(),
                    named(course.firstAfter(step, Course::fixes)),
                    group.names(),
                    group.related(course, step),
                    course.path(step)));
          }
        });
  }

  private void dyeOverPaint(List<Evidence> facts) {
    Map<Integer, Group> byStep = new TreeMap<>();
    Laps laps = new Laps(layout, paint, mostPairs);
    for (Impression later : dye) {
      Group group = byStep.computeIfAbsent(later.step(), s -> new Group());
      group.add(laps.under(later, earlier -> true));
    }
    byStep.forEach(
        (step, group) -> {
          if (laps.isTired()) {
            group.cutShort();
          }
          if (!group.isEmpty()) {
            facts.add(
                new DyeOverPaint(
                    course.name(step),
                    group.above(),
                    group.below(),
                    group.places(),
                    group.most(),
                    group.certain(),
                    group.names(),
                    group.related(course, step),
                    course.path(step)));
          }
        });
  }

  /** Each unset paint is told of once, at the first water that reaches it. */
  private void wetBaths(List<Evidence> facts) {
    Map<Integer, List<Impression>> byBath = new TreeMap<>();
    for (int step : course.printSteps()) {
      List<Impression> printed = course.impressions(step).stream().filter(this::isPaint).toList();
      Optional<Step> bath = course.firstAfter(step, Course::wets);
      if (!printed.isEmpty()
          && bath.isPresent()
          && course.first(step, bath.get().number(), Course::sets).isEmpty()) {
        byBath.computeIfAbsent(bath.get().number(), n -> new ArrayList<>()).addAll(printed);
      }
    }
    byBath.forEach(
        (bath, printed) ->
            facts.add(
                new WetBathOverPaint(
                    course.name(bath),
                    Group.pastes(printed),
                    Group.places(printed),
                    named(course.firstAfter(bath, Course::sets)),
                    Group.names(printed),
                    printed.stream()
                        .map(Impression::step)
                        .distinct()
                        .map(s -> new Related("paint printed", course.path(s)))
                        .toList(),
                    course.path(bath))));
  }

  private boolean isUnfixed(Impression earlier, int step) {
    return course.first(earlier.step(), step, Course::fixes).isEmpty();
  }

  private boolean isPaint(Impression impression) {
    return impression.footprint().paste().medium() == Medium.PAINT;
  }

  private List<Impression> of(Medium medium) {
    return course.impressions().stream()
        .filter(i -> i.footprint().paste().medium() == medium)
        .toList();
  }

  private String named(Optional<Step> step) {
    return step.map(s -> course.name(s.number())).orElse(NO_STEP);
  }
}
