package strikeoff.sequence;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import strikeoff.day.Impression;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;
import strikeoff.evidence.Evidence.Related;
import strikeoff.evidence.Tie;
import strikeoff.layout.Footprint;
import strikeoff.layout.Layout;
import strikeoff.layout.Placement;
import strikeoff.plan.PrintPlan;

/** Whether each colour of each placement is printed once. */
final class Coverage {

  /** In place of an earlier step. */
  private static final int BARE = 0;

  private final PrintPlan plan;
  private final Course course;
  private final Layout layout;

  Coverage(PrintPlan plan, Course course, Layout layout) {
    this.plan = plan;
    this.course = course;
    this.layout = layout;
  }

  List<Evidence> facts() {
    List<Evidence> facts = new ArrayList<>();
    ofArrangements(facts);
    ofSteps(facts);
    return facts;
  }

  private void ofArrangements(List<Evidence> facts) {
    Set<Long> printed = new HashSet<>();
    Map<String, Integer> lastStep = new LinkedHashMap<>();
    for (Impression print : course.impressions()) {
      printed.add(print(print.footprint()));
      lastStep.merge(print.footprint().placement().arrangement(), print.step(), Math::max);
    }
    layout
        .arrangements()
        .forEach(
            (name, placements) -> {
              Missing missing = new Missing();
              for (Placement placement : placements) {
                for (Footprint footprint : layout.footprintsOf(placement.id())) {
                  missing.count(footprint, !printed.contains(print(footprint)));
                }
              }
              PlanPath path = missing.prints > 0 ? path(name, lastStep.get(name)) : arranged(name);
              facts.add(missing.fact(name, path, arranged(name)));
            });
  }

  private PlanPath path(String arrangement, Integer lastStep) {
    return lastStep == null ? arranged(arrangement) : course.path(lastStep);
  }

  private PlanPath arranged(String arrangement) {
    return plan.arrangements().get(arrangement).path();
  }

  private void ofSteps(List<Evidence> facts) {
    Map<Long, Integer> first = new LinkedHashMap<>();
    Map<String, Made> byStep = new LinkedHashMap<>();
    for (Impression print : course.impressions()) {
      Integer before = first.putIfAbsent(print(print.footprint()), print.step());
      String arrangement = print.footprint().placement().arrangement();
      int earlier = before == null ? BARE : before;
      byStep
          .computeIfAbsent(
              arrangement + "\n" + print.step() + "\n" + earlier,
              key -> new Made(arrangement, print.step(), earlier, new ArrayList<>()))
          .prints
          .add(print);
    }
    byStep.values().forEach(made -> facts.add(made.fact(course, layout)));
  }

  /** One separation of one placement, in one number. */
  private static long print(Footprint footprint) {
    return (long) footprint.placement().id() << Integer.SIZE | footprint.separation().number();
  }

  /**
   * @param before the step that printed them first, or {@link #BARE}
   */
  private record Made(String arrangement, int step, int before, List<Impression> prints) {

    PrintsOfStep fact(Course course, Layout layout) {
      if (before == BARE) {
        return new PrintsOfStep(
            arrangement,
            List.of(),
            course.step(step),
            Optional.empty(),
            prints.size(),
            0,
            List.of(),
            List.of(),
            course.path(step));
      }
      Missing seen = new Missing();
      Set<Long> again = new HashSet<>();
      prints.forEach(p -> again.add(print(p.footprint())));
      for (Placement placement : layout.of(arrangement)) {
        for (Footprint footprint : layout.footprintsOf(placement.id())) {
          seen.count(footprint, again.contains(print(footprint)));
        }
      }
      return new PrintsOfStep(
          arrangement,
          seen.parts(),
          course.step(step),
          Optional.of(course.step(before)),
          prints.size(),
          prints.size(),
          Group.names(prints),
          before == step ? List.of() : List.of(new Related(Tie.PRINTED_FIRST, course.path(before))),
          course.path(step));
    }
  }

  /** Picks some prints of an arrangement. */
  private static final class Missing {

    private final Map<Integer, Set<Integer>> numbersBySeparation = new TreeMap<>();
    private final Map<Integer, String> pastes = new TreeMap<>();
    private final Set<Integer> numbers = new TreeSet<>();
    private final Set<String> names = new LinkedHashSet<>();
    private int prints;
    private int all;

    void count(Footprint footprint, boolean picked) {
      all++;
      Placement placement = footprint.placement();
      numbers.add(placement.number());
      pastes.put(footprint.separation().number(), footprint.paste().name());
      if (picked) {
        prints++;
        numbersBySeparation
            .computeIfAbsent(footprint.separation().number(), n -> new TreeSet<>())
            .add(placement.number());
        names.add(placement.name());
      }
    }

    List<PrintsOfArrangement.Part> parts() {
      Map<Set<Integer>, List<String>> colours = new LinkedHashMap<>();
      numbersBySeparation.forEach(
          (separation, own) ->
              colours.computeIfAbsent(own, n -> new ArrayList<>()).add(pastes.get(separation)));
      return colours.entrySet().stream()
          .map(
              part ->
                  new PrintsOfArrangement.Part(
                      List.copyOf(part.getKey()),
                      part.getKey().equals(numbers),
                      numbers.size() == 1,
                      part.getValue().size() == pastes.size() ? List.of() : part.getValue()))
          .toList();
    }

    PrintsOfArrangement fact(String arrangement, PlanPath path, PlanPath arranged) {
      List<Related> related =
          path.equals(arranged) ? List.of() : List.of(new Related(Tie.ARRANGED, arranged));
      return new PrintsOfArrangement(
          arrangement, parts(), prints, all, List.copyOf(names), related, path);
    }
  }
}
