package strikeoff.sequence;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import strikeoff.day.Impression;
import strikeoff.document.Bounds;
import strikeoff.document.Edit;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.evidence.Evidence.Related;
import strikeoff.evidence.Tie;
import strikeoff.layout.Layout;
import strikeoff.plan.Medium;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.PrintStep;
import strikeoff.plan.Step;
import strikeoff.policy.Policy;

/** Dye and paint on one cloth: which comes on which, and what water reaches. */
final class MediaPasses {

  private final PrintPlan plan;
  private final String dryAfterBath;
  private final Course course;
  private final Layout layout;
  private final long mostPairs;
  private final List<Impression> dye;
  private final List<Impression> paint;

  MediaPasses(PrintPlan plan, Course course, Layout layout, Policy policy) {
    this.plan = plan;
    dryAfterBath = policy.media().dryAfterBath().text(plan.measures());
    mostPairs = Bounds.PAIRS;
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
    Laps laps = new Laps(plan, layout, dye, mostPairs);
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
                    course.step(step),
                    group.above(),
                    group.below(),
                    group.copies(),
                    group.most(),
                    group.certain(),
                    course.step(lastBefore(step, group.earlierSteps())),
                    course.firstAfter(step, Course::fixes),
                    washFirst(step),
                    group.names(),
                    group.related(course, step),
                    course.path(step)));
          }
        });
  }

  private void dyeOverPaint(List<Evidence> facts) {
    Map<Integer, Group> byStep = new TreeMap<>();
    Laps laps = new Laps(plan, layout, paint, mostPairs);
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
                    course.step(step),
                    group.above(),
                    group.below(),
                    group.copies(),
                    group.most(),
                    group.certain(),
                    group.names(),
                    group.related(course, step),
                    course.path(step)));
          }
        });
  }

  /** Each paint is told of once, at the first water that reaches it, by whether heat has set it. */
  private void wetBaths(List<Evidence> facts) {
    Map<Integer, List<Impression>> set = new TreeMap<>();
    Map<Integer, List<Impression>> unset = new TreeMap<>();
    for (int step : course.printSteps()) {
      List<Impression> printed = course.impressions(step).stream().filter(this::isPaint).toList();
      Optional<Step> bath = course.firstAfter(step, Course::wets);
      if (!printed.isEmpty() && bath.isPresent()) {
        int number = bath.get().number();
        (heats(step, number) > 0 ? set : unset)
            .computeIfAbsent(number, n -> new ArrayList<>())
            .addAll(printed);
      }
    }
    for (Map<Integer, List<Impression>> byBath : List.of(set, unset)) {
      byBath.forEach((bath, printed) -> facts.add(inBath(bath, printed)));
    }
  }

  private int heats(int step, int bath) {
    return (int)
        course.steps().stream()
            .filter(s -> s.number() > step && s.number() < bath && Course.sets(s))
            .count();
  }

  private PaintInBath inBath(int bath, List<Impression> printed) {
    int heats = heats(printed.get(printed.size() - 1).step(), bath);
    Optional<Integer> looseDye = looseDye(printed, bath);
    return new PaintInBath(
        course.step(bath),
        heats,
        Group.pastes(printed),
        Group.copies(printed),
        course.firstAfter(bath, Course::sets),
        looseDye.map(course::step),
        lastWater(bath),
        heats > 0 ? List.of() : looseDye.isPresent() ? washFirst(first(printed)) : setFirst(bath),
        Group.names(printed),
        printed.stream()
            .map(Impression::step)
            .distinct()
            .map(s -> new Related(Tie.PAINT_PRINTED, course.path(s)))
            .toList(),
        course.path(bath));
  }

  /**
   * What fixes dye and takes what is loose out, moved with the drying after it to before paint is
   * printed; nothing where the run doesn't fix, wash and dry it in one go.
   */
  private List<List<Edit>> washFirst(int paintStep) {
    Optional<Step> fix = course.firstAfter(paintStep, s -> Course.fixes(s) || Course.rinses(s));
    if (fix.isEmpty()) {
      return List.of();
    }
    List<Step> block = new ArrayList<>();
    for (Step step : course.steps().subList(fix.get().number() - 1, course.steps().size())) {
      if (!Course.fixes(step) && !Course.rinses(step) && !(step instanceof Step.Dry)) {
        break;
      }
      block.add(step);
    }
    if (block.stream().noneMatch(Course::washesOff)) {
      return List.of();
    }
    PlanPath before = course.path(paintStep);
    List<Edit> edits = new ArrayList<>();
    block.forEach(step -> edits.add(new Edit.Move(step.path(), before)));
    if (!(block.get(block.size() - 1) instanceof Step.Dry)) {
      edits.add(new Edit.Insert(before, "dry: " + dryAfterBath));
    }
    List<Edit> dried = new ArrayList<>();
    dried.add(new Edit.Insert(before, "dry: until fix-safe"));
    dried.addAll(edits);
    return List.of(edits, dried);
  }

  /** The heat-set that comes too late, moved to before the bath. */
  private List<List<Edit>> setFirst(int bath) {
    return course
        .firstAfter(bath, Course::sets)
        .map(set -> List.of(List.<Edit>of(new Edit.Move(set.path(), course.path(bath)))))
        .orElse(List.of());
  }

  /**
   * The last step before a bath that printed dye which no wash took out before paint came on it.
   */
  private Optional<Integer> looseDye(List<Impression> paints, int bath) {
    int first = first(paints);
    return dye.stream()
        .map(Impression::step)
        .filter(s -> s < bath && course.first(s, first, Course::washesOff).isEmpty())
        .max(Integer::compare);
  }

  private static int first(List<Impression> prints) {
    return prints.stream().mapToInt(Impression::step).min().orElseThrow();
  }

  /** The last water of those that follow each other from a bath on. */
  private Step lastWater(int bath) {
    int last = bath;
    for (Step step : course.steps().subList(bath, course.steps().size())) {
      if (step instanceof PrintStep || Course.sets(step)) {
        break;
      }
      last = Course.wets(step) ? step.number() : last;
    }
    return course.step(last);
  }

  private static int lastBefore(int step, Set<Integer> steps) {
    return steps.stream().filter(s -> s < step).max(Integer::compare).orElse(step);
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
}
