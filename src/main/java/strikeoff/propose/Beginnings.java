package strikeoff.propose;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import strikeoff.day.facts.Rehearsal;
import strikeoff.day.facts.Rehearsed;
import strikeoff.layout.Footprint;
import strikeoff.layout.Placement;
import strikeoff.plan.Draught;
import strikeoff.plan.Step;
import strikeoff.plan.Until.Dryness;
import strikeoff.units.Span;

/**
 * Runs to begin a search with: the plan's own, and runs worked stretch by stretch as a printer
 * would lay them out, each with the waits that it turns out to need.
 */
final class Beginnings {

  /** Rounds in which waits are written; each shifts what comes after it. */
  private static final int ROUNDS = 8;

  private final Leeway leeway;
  private final Order order;
  private final Rehearsal rehearsal;

  Beginnings(Leeway leeway, Order order, Rehearsal rehearsal) {
    this.leeway = leeway;
    this.order = order;
    this.rehearsal = rehearsal;
  }

  /** All of them, numbered, each kind once; the plan's own first if it keeps to the order. */
  List<List<Step>> all() {
    Set<List<Step>> all = new LinkedHashSet<>();
    List<Step> written = Order.numbered(order.mixedInOrder(withoutMoves(leeway.plan().run())));
    if (order.keeps(written)) {
      all.add(written);
      leeway.airs().forEach(air -> all.add(repaired(written, air)));
    }
    for (List<String> people : crews()) {
      for (Optional<Draught> air : leeway.airs()) {
        for (boolean sewnFirst : sewing()) {
          for (Shape shape : Shape.values()) {
            List<Step> run = Order.numbered(order.mixedInOrder(run(people, sewnFirst, shape)));
            if (order.keeps(run)) {
              all.add(repaired(run, air));
            }
          }
        }
      }
    }
    return List.copyOf(all);
  }

  /** How stretches are worked. */
  private enum Shape {
    /** Arrangement after arrangement, each wholly, however often the cloth moves. */
    BY_ARRANGEMENT,
    /** All that the table shows, then what it shows next, arrangements as the plan has them. */
    BY_STRETCH,
    /** The same, what dries longest first. */
    RICH_FIRST,
    /** The same in one step. */
    SET_BY_SET,
    /**
     * Arrangement after arrangement, the cloth going forth with one and back with the next: fewer
     * moves than with each wholly, and no screen is full twice.
     */
    BACK_AND_FORTH
  }

  private List<List<String>> crews() {
    List<String> crew = leeway.crew();
    return crew.size() > 1 ? List.of(crew, crew.subList(0, 1)) : List.of(crew);
  }

  private List<Boolean> sewing() {
    boolean any = leeway.across().values().stream().anyMatch(ids -> !ids.isEmpty());
    return any ? List.of(false, true) : List.of(false);
  }

  /** Where the cloth lies follows from what is printed. */
  private static List<Step> withoutMoves(List<Step> run) {
    return run.stream().filter(step -> !(step instanceof Step.Move)).toList();
  }

  private List<Step> run(List<String> people, boolean sewnFirst, Shape shape) {
    List<Step> run = new ArrayList<>(leeway.first());
    if (!leeway.timedMixing().isEmpty()) {
      run.addAll(leeway.timedMixing());
    } else if (!leeway.mixed().isEmpty()) {
      run.add(
          new Step.Mix(
              1,
              leeway.mixed(),
              Optional.empty(),
              Optional.of(people.get(people.size() - 1)),
              Step.path(1)));
    }
    Set<Integer> across = new HashSet<>();
    leeway.across().values().forEach(across::addAll);
    List<Placement> all = leeway.layout().placements();
    if (sewnFirst) {
      leeway.sewn().forEach(seam -> run.add(leeway.sew(seam)));
      run.addAll(prints(all, people, shape));
    } else {
      List<Placement> away = all.stream().filter(p -> !across.contains(p.id())).toList();
      run.addAll(prints(away, people, shape));
      leeway.sewn().forEach(seam -> run.add(leeway.sew(seam)));
      List<Placement> over = all.stream().filter(p -> across.contains(p.id())).toList();
      run.addAll(prints(over, people, shape));
    }
    for (int i = 0; i < leeway.last().size(); i++) {
      run.addAll(between(i));
      run.add(leeway.last().get(i));
    }
    return run;
  }

  /** Rests that the plan has between steps that stay. */
  private List<Step> between(int last) {
    List<Step> rests = new ArrayList<>();
    if (last > 0) {
      int from = leeway.last().get(last - 1).number();
      int to = leeway.last().get(last).number();
      for (Step step : leeway.plan().run().subList(from, to - 1)) {
        if (step instanceof Step.Dry || step instanceof Step.EndOfDay) {
          rests.add(step);
        }
      }
    }
    return rests;
  }

  private List<Step> prints(List<Placement> placements, List<String> people, Shape shape) {
    List<Step> prints = new ArrayList<>();
    if (placements.isEmpty()) {
      return prints;
    }
    if (shape == Shape.BY_ARRANGEMENT) {
      byArrangement(placements, false).forEach((name, own) -> prints.add(print(name, own, people)));
      return prints;
    }
    Map<String, List<Placement>> whole = byArrangement(placements, false);
    boolean complete =
        whole.entrySet().stream()
            .allMatch(e -> e.getValue().size() == leeway.layout().of(e.getKey()).size());
    if (shape == Shape.SET_BY_SET && complete) {
      PrintDraft draft = new PrintDraft(List.copyOf(whole.keySet()), List.of(), people);
      draft.order = Step.Order.SET_BY_SET;
      prints.add(draft.step());
      return prints;
    }
    List<List<Placement>> stretches = rehearsal.stretches(placements);
    if (shape == Shape.BACK_AND_FORTH) {
      List<List<Placement>> way = new ArrayList<>(stretches);
      for (String name : whole.keySet()) {
        for (List<Placement> stretch : way) {
          List<Placement> own = stretch.stream().filter(p -> p.arrangement().equals(name)).toList();
          if (!own.isEmpty()) {
            prints.add(print(name, own, people));
          }
        }
        Collections.reverse(way);
      }
      return prints;
    }
    for (List<Placement> stretch : stretches) {
      byArrangement(stretch, shape == Shape.RICH_FIRST)
          .forEach((name, own) -> prints.add(print(name, own, people)));
    }
    return prints;
  }

  private Step print(String name, List<Placement> own, List<String> people) {
    boolean whole = own.size() == leeway.layout().of(name).size();
    List<Integer> only = whole ? List.of() : own.stream().map(Placement::number).sorted().toList();
    return new PrintDraft(List.of(name), only, people).step();
  }

  private Map<String, List<Placement>> byArrangement(
      List<Placement> placements, boolean richFirst) {
    List<String> names = new ArrayList<>(leeway.arrangements());
    if (richFirst) {
      names.sort(Comparator.comparing((String name) -> dries(name)).reversed());
    }
    Map<String, List<Placement>> by = new LinkedHashMap<>();
    for (String name : names) {
      List<Placement> own = placements.stream().filter(p -> p.arrangement().equals(name)).toList();
      if (!own.isEmpty()) {
        by.put(name, own);
      }
    }
    return by;
  }

  /** How long the last colour of an arrangement takes to be lift-safe. */
  private Span dries(String name) {
    List<Placement> own = leeway.layout().of(name);
    if (own.isEmpty()) {
      return new Span(0);
    }
    List<Footprint> colours = leeway.layout().footprintsOf(own.get(0).id());
    return rehearsal
        .dries(colours.get(colours.size() - 1), Dryness.LIFT_SAFE, Optional.empty(), false)
        .orElse(new Span(1e6));
  }

  private Rehearsed rehearsed(List<Step> run) {
    return rehearsal.surely(run, rehearsal.of(run));
  }

  /** With the waits that it needs; as far as it comes in a few rounds. */
  List<Step> repaired(List<Step> run, Optional<Draught> air) {
    List<Step> best = run;
    Rehearsed found = rehearsed(run);
    List<Step> now = run;
    Rehearsed rehearsed = found;
    for (int round = 0; round < ROUNDS && !rehearsed.shortfall().isNothing(); round++) {
      List<Step> next = Order.numbered(Repair.repaired(now, rehearsed, air, leeway.screens()));
      if (next.equals(now)) {
        break;
      }
      now = next;
      rehearsed = rehearsed(now);
      if (rehearsed.shortfall().seconds() <= found.shortfall().seconds()) {
        best = now;
        found = rehearsed;
      }
    }
    return best;
  }
}
