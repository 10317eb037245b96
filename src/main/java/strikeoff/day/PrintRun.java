package strikeoff.day;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import strikeoff.day.Passes.Pass;
import strikeoff.day.Sets.Motif;
import strikeoff.day.Sets.PrintSet;
import strikeoff.layout.Footprint;
import strikeoff.layout.Layout;
import strikeoff.layout.Placement;
import strikeoff.plan.Arrangement;
import strikeoff.plan.Design;
import strikeoff.plan.PrintOrder;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.PrintStep;
import strikeoff.plan.Step;

/** What a print step prints, split into sets in the order in which they are worked. */
public final class PrintRun {

  private final PrintPlan plan;
  private final Layout layout;
  private final Boards boards;

  /** By what of a step decides which passes it has, as {@link #decides} lists it. */
  private final Map<List<Object>, List<Pass>> passes;

  /** How many people a plan names for each step by its number, whoever then stays out of it. */
  private final Map<Integer, Integer> people;

  public PrintRun(PrintPlan plan, Layout layout) {
    this(
        plan,
        layout,
        new Boards(
            plan.table(), m -> plan.arrangements().get(m.placement().arrangement()).takesBoard()),
        new HashMap<>());
  }

  private PrintRun(
      PrintPlan plan, Layout layout, Boards boards, Map<List<Object>, List<Pass>> passes) {
    this(plan, layout, boards, passes, named(plan));
  }

  private PrintRun(
      PrintPlan plan,
      Layout layout,
      Boards boards,
      Map<List<Object>, List<Pass>> passes,
      Map<Integer, Integer> people) {
    this.plan = plan;
    this.layout = layout;
    this.boards = boards;
    this.passes = passes;
    this.people = people;
  }

  private static Map<Integer, Integer> named(PrintPlan plan) {
    Map<Integer, Integer> people = new HashMap<>();
    for (Step step : plan.run()) {
      if (step instanceof PrintStep print) {
        people.put(print.number(), 1 + print.also().size());
      }
    }
    return people;
  }

  /**
   * The same with sets as fewer people would make them, in every combination that differs: they may
   * serve more people as well.
   *
   * @param most how many at most
   */
  List<PrintRun> asFewerWould(long most) {
    List<PrintRun> ways = new ArrayList<>(List.of(this));
    for (Step step : plan.run()) {
      if (step instanceof PrintStep print && people.get(print.number()) > 1) {
        for (PrintRun way : List.copyOf(ways)) {
          Set<List<Number>> known = new HashSet<>(Set.of(shape(way.passes(print))));
          for (int fewer = people.get(print.number()) - 1; fewer > 0; fewer--) {
            Map<Integer, Integer> others = new HashMap<>(way.people);
            others.put(print.number(), fewer);
            PrintRun other = new PrintRun(plan, layout, boards, passes, others);
            if (ways.size() <= most && known.add(shape(other.passes(print)))) {
              ways.add(other);
            }
          }
        }
      }
    }
    return ways.subList(1, ways.size());
  }

  /** What tells passes of one step apart: the placements and colours of each. */
  private static List<Number> shape(List<Pass> passes) {
    List<Number> shape = new ArrayList<>();
    for (Pass pass : passes) {
      PrintSet set = pass.set();
      shape.addAll(List.of(set.number(), set.from(), set.to()));
      shape.addAll(List.of(pass.firstColour(), pass.endColour(), set.motifs().size()));
      set.motifs().forEach(motif -> shape.add(motif.placement().id()));
    }
    return shape;
  }

  /** The same for a plan that differs in its run at most. */
  PrintRun of(PrintPlan other) {
    return new PrintRun(other, layout, boards, passes);
  }

  public Boards boards() {
    return boards;
  }

  /** What a step prints in a go, one after the other. */
  List<Pass> passes(PrintStep step) {
    return passes.computeIfAbsent(decides(step), decides -> Passes.of(step, this));
  }

  private List<Object> decides(PrintStep step) {
    return List.of(
        step.arrangements(),
        step.only(),
        step.numbers(),
        step.separations(),
        step.order(),
        step.everyOther(),
        people.get(step.number()));
  }

  /** The sets of one arrangement in a step; empty if nothing of it is printed there. */
  List<PrintSet> sets(PrintStep step, String arrangement) {
    return split(step, motifs(step, arrangement));
  }

  /** The sets of all arrangements of a step taken together. */
  List<PrintSet> setsTogether(PrintStep step) {
    List<Motif> all = new ArrayList<>();
    step.arrangements().forEach(arrangement -> all.addAll(motifs(step, arrangement)));
    return split(step, all);
  }

  private List<PrintSet> split(PrintStep step, List<Motif> motifs) {
    int several = people.get(step.number());
    boolean evenly =
        several > 1
            && !step.everyOther()
            && (step.order() == PrintOrder.BY_COLOUR || step.order() == PrintOrder.BY_STATION);
    return evenly
        ? EvenSets.of(motifs, boards, step.order() == PrintOrder.BY_STATION ? several : 1)
        : Sets.split(motifs, boards);
  }

  private List<Motif> motifs(PrintStep step, String arrangement) {
    List<Motif> motifs = new ArrayList<>();
    Set<Integer> only = Set.copyOf(step.only(arrangement));
    for (Placement placement : layout.of(arrangement)) {
      if (only.isEmpty() || only.contains(placement.number())) {
        List<Footprint> colours = colours(step, placement);
        if (!colours.isEmpty()) {
          motifs.add(new Motif(placement, colours));
        }
      }
    }
    return motifs;
  }

  /** The designs a step prints. */
  List<Design> designs(PrintStep step) {
    return step.arrangements().stream()
        .map(plan.arrangements()::get)
        .filter(Objects::nonNull)
        .map(Arrangement::design)
        .distinct()
        .map(plan.designs()::get)
        .toList();
  }

  /** The screens a step uses, each with the paste that it holds first. */
  Map<String, String> firstPastes(PrintStep step) {
    Map<String, String> screens = new LinkedHashMap<>();
    for (Design design : designs(step)) {
      separations(step, design)
          .forEach(separation -> screens.putIfAbsent(separation.screen(), separation.paste()));
    }
    return screens;
  }

  /** Those that the step prints of a design, in its order. */
  private static List<Design.Separation> separations(PrintStep step, Design design) {
    List<Design.Separation> all = design.separations();
    return step.separations().isEmpty()
        ? all
        : step.separations().stream()
            .filter(number -> number >= 1 && number <= all.size())
            .map(number -> all.get(number - 1))
            .toList();
  }

  private List<Footprint> colours(PrintStep step, Placement placement) {
    List<Footprint> all = layout.footprintsOf(placement.id());
    if (step.separations().isEmpty()) {
      return all;
    }
    return step.separations().stream()
        .filter(number -> number >= 1 && number <= all.size())
        .map(number -> all.get(number - 1))
        .toList();
  }
}
