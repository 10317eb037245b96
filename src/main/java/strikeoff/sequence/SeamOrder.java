package strikeoff.sequence;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import strikeoff.day.Impression;
import strikeoff.evidence.Evidence;
import strikeoff.evidence.Evidence.Related;
import strikeoff.evidence.Tie;
import strikeoff.layout.Layout;
import strikeoff.layout.SeamCrossing;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Seam;
import strikeoff.plan.Step;
import strikeoff.plan.Wait;

/** Seams against prints: what crosses one waits for it, all else comes before it. */
final class SeamOrder {

  private final PrintPlan plan;
  private final Course course;
  private final Layout layout;

  SeamOrder(PrintPlan plan, Course course, Layout layout) {
    this.plan = plan;
    this.course = course;
    this.layout = layout;
  }

  List<Evidence> facts() {
    List<Evidence> facts = new ArrayList<>();
    for (Seam seam : plan.seams().values()) {
      if (!seam.sewnBefore()) {
        Set<Integer> across = across(seam);
        Optional<Step> sewing = course.firstAfter(0, s -> sews(s, seam));
        if (sewing.isPresent()) {
          printed(facts, seam, across, sewing.get().number());
          facts.add(sewn(seam, across, sewing.get().number()));
        }
        facts.add(open(seam, across));
      }
    }
    return facts;
  }

  private Set<Integer> across(Seam seam) {
    Set<Integer> ids = new LinkedHashSet<>();
    for (Evidence fact : layout.evidence()) {
      if (fact instanceof SeamCrossing crossing && crossing.seam().equals(seam.name())) {
        ids.addAll(crossing.crossing());
      }
    }
    return ids;
  }

  private void printed(List<Evidence> facts, Seam seam, Set<Integer> across, int sewing) {
    for (int step : course.printSteps()) {
      Map<String, List<Impression>> byArrangement = new LinkedHashMap<>();
      Map<String, Set<Integer>> others = new LinkedHashMap<>();
      for (Impression print : course.impressions(step)) {
        if (across.contains(print.footprint().placement().id())) {
          byArrangement
              .computeIfAbsent(
                  print.footprint().placement().arrangement(), name -> new ArrayList<>())
              .add(print);
        } else {
          others
              .computeIfAbsent(print.footprint().placement().arrangement(), name -> new TreeSet<>())
              .add(print.footprint().placement().number());
        }
      }
      byArrangement.forEach(
          (arrangement, prints) ->
              facts.add(
                  new PrintAcrossSeam(
                      seam.name(),
                      arrangement,
                      List.copyOf(numbers(prints)),
                      course.step(step),
                      step,
                      course.step(sewing),
                      sewing,
                      filmsBefore(step),
                      seam.padded(),
                      List.copyOf(others.getOrDefault(arrangement, Set.of())),
                      others.containsKey(arrangement)
                          ? again(step, arrangement, numbers(prints))
                          : Optional.empty(),
                      Group.names(prints),
                      List.of(
                          new Related(Tie.SEAM, seam.path()),
                          new Related(Tie.SEWN, course.path(sewing))),
                      course.path(step))));
    }
  }

  private SeamSewn sewn(Seam seam, Set<Integer> across, int sewing) {
    int awayBefore = 0;
    int awayAfter = 0;
    int acrossAfter = 0;
    int lastAway = sewing;
    for (Impression print : course.impressions()) {
      boolean after = print.step() > sewing;
      if (across.contains(print.footprint().placement().id())) {
        acrossAfter += after ? 1 : 0;
      } else {
        awayAfter += after ? 1 : 0;
        awayBefore += after ? 0 : 1;
        lastAway = Math.max(lastAway, print.step());
      }
    }
    List<Related> related = new ArrayList<>(List.of(new Related(Tie.SEAM, seam.path())));
    if (lastAway != sewing) {
      related.add(new Related(Tie.LAST_PRINT_AWAY, course.path(lastAway)));
    }
    return new SeamSewn(
        seam.name(),
        course.step(sewing),
        awayAfter,
        awayBefore,
        acrossAfter,
        course.step(lastAway),
        related,
        course.path(sewing));
  }

  private OpenSeam open(Seam seam, Set<Integer> across) {
    List<Impression> prints =
        course.impressions().stream()
            .filter(i -> across.contains(i.footprint().placement().id()))
            .toList();
    int first = prints.isEmpty() ? 0 : prints.get(0).step();
    return new OpenSeam(
        seam.name(),
        (int) plan.run().stream().filter(s -> sews(s, seam)).count(),
        filmsBefore(first),
        seam.padded(),
        first,
        Group.copies(prints),
        Group.names(prints),
        prints.stream()
            .map(Impression::step)
            .distinct()
            .map(s -> new Related(Tie.PRINTED_ACROSS_IT, course.path(s)))
            .toList(),
        seam.path());
  }

  private static boolean sews(Step step, Seam seam) {
    return step instanceof Step.Sew sew && sew.seam().equals(seam.name());
  }

  /** The same step for what crosses the seam alone; empty if it asks for more than one line. */
  private Optional<String> again(int number, String arrangement, Set<Integer> across) {
    return plan.print(number)
        .filter(p -> p.arrangements().size() == 1 && p.separations().isEmpty())
        .filter(p -> p.numbers().isEmpty() && p.air().isEmpty() && !p.mindsNeighbours())
        .filter(p -> !p.everyOther() && !p.beside() && !p.washBetweenColours())
        .map(
            p ->
                "{print: "
                    + arrangement
                    + ", only: "
                    + across
                    + (p.dryBetweenColours().equals(Wait.NONE)
                        ? ""
                        : ", dry between colours: " + p.dryBetweenColours().text(plan.measures()))
                    + "}");
  }

  private boolean filmsBefore(int step) {
    return course.impressions().stream().anyMatch(i -> i.step() < step);
  }

  private static Set<Integer> numbers(List<Impression> prints) {
    Set<Integer> numbers = new TreeSet<>();
    prints.forEach(p -> numbers.add(p.footprint().placement().number()));
    return numbers;
  }
}
