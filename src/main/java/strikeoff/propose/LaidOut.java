package strikeoff.propose;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import strikeoff.day.facts.Rehearsal;
import strikeoff.layout.Footprint;
import strikeoff.layout.Placement;
import strikeoff.plan.Medium;
import strikeoff.plan.PrintOrder;
import strikeoff.plan.PrintStep;
import strikeoff.plan.Step;
import strikeoff.plan.Until.Dryness;
import strikeoff.units.Span;

/** Runs worked stretch by stretch as a printer would lay them out, without the waits they need. */
final class LaidOut {

  private final Leeway leeway;
  private final Order order;
  private final List<Boolean> followAtOnce;
  private final Rehearsal rehearsal;
  private final Apart apart;

  LaidOut(Leeway leeway, Order order, Rehearsal rehearsal) {
    this.leeway = leeway;
    this.order = order;
    this.followAtOnce = leeway.followAtOnce();
    this.rehearsal = rehearsal;
    this.apart = new Apart(leeway.layout());
  }

  /** When the seams are sewn that prints lie across. */
  enum Sewing {
    /** When all is printed that lies away from them. */
    AFTER_THE_REST,
    FIRST,
    /** Where the cloth would be moved otherwise, as soon as something across them comes next. */
    INSTEAD_OF_A_MOVE
  }

  /** How stretches are worked, the most promising first. */
  enum Shape {
    /**
     * By stretch, each colour in passes in which no frame lies on a film of its own colour: where
     * every other one is not enough.
     */
    IN_PASSES,
    /**
     * By stretch, pass by pass, each with all its colours: a screen is done with sooner, and few
     * films dry at a time.
     */
    PASS_BY_PASS,
    /** What takes a board each, stretch by stretch, and then the rest with the boards together. */
    BOARDS_FIRST,
    /** The other way round. */
    BOARDS_LAST,
    /** All that the table shows, then what it shows next, arrangements as the plan has them. */
    BY_STRETCH,
    /** The same, what dries longest first. */
    RICH_FIRST,
    /** The same in one step. */
    SET_BY_SET,
    /** What the table shows in one step each: several go on from one arrangement to the next. */
    ON_AND_ON,
    /**
     * Arrangement after arrangement, the cloth going forth with one and back with the next: fewer
     * moves than with each wholly, and no screen is full twice.
     */
    BACK_AND_FORTH,
    /** Arrangement after arrangement, each wholly, however often the cloth moves. */
    BY_ARRANGEMENT
  }

  /** On a table without loose boards it is all one what takes a board. */
  List<Shape> shapes() {
    boolean loose = leeway.plan().table().stations().filter(boards -> !boards.fixed()).isPresent();
    boolean passes = needsPasses();
    List<Shape> shapes =
        Arrays.stream(Shape.values())
            .filter(shape -> loose || shape != Shape.BOARDS_FIRST && shape != Shape.BOARDS_LAST)
            .filter(shape -> passes || shape != Shape.IN_PASSES)
            .filter(shape -> shape != Shape.PASS_BY_PASS)
            .collect(Collectors.toCollection(ArrayList::new));
    if (!passes && paints()) {
      shapes.add(Shape.IN_PASSES);
    }
    if (paints()) {
      shapes.add(Math.min(1, shapes.size()), Shape.PASS_BY_PASS);
    }
    return shapes;
  }

  private boolean needsPasses() {
    return byArrangement(leeway.own().placements(), false).values().stream()
        .anyMatch(apart::needsMoreThanTwo);
  }

  /** Paint dries in a mesh while neighbours dry, so that screens are washed between two passes. */
  private boolean paints() {
    return leeway.own().films().stream().anyMatch(f -> f.paste().medium() == Medium.PAINT);
  }

  /** One way, unless prints lie across a seam that is to be sewn. */
  List<Sewing> sewing() {
    boolean any = leeway.across().values().stream().anyMatch(ids -> !ids.isEmpty());
    return any ? List.of(Sewing.values()) : List.of(Sewing.AFTER_THE_REST);
  }

  /** Not numbered yet. */
  List<Step> run(List<String> people, Sewing sewing, Shape shape) {
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
    List<Placement> all = leeway.own().placements();
    List<Step> sew = leeway.sewn().stream().<Step>map(leeway::sew).toList();
    if (sewing == Sewing.FIRST) {
      run.addAll(sew);
      run.addAll(prints(all, people, shape));
    } else if (sewing == Sewing.INSTEAD_OF_A_MOVE) {
      List<Step> prints = prints(all, people, shape);
      int at = 0;
      while (at < prints.size() && !liesAcross((PrintStep) prints.get(at), across)) {
        at++;
      }
      run.addAll(prints.subList(0, at));
      run.addAll(sew);
      run.addAll(prints.subList(at, prints.size()));
    } else {
      List<Placement> away = all.stream().filter(p -> !across.contains(p.id())).toList();
      run.addAll(prints(away, people, shape));
      run.addAll(sew);
      List<Placement> over = all.stream().filter(p -> across.contains(p.id())).toList();
      run.addAll(prints(over, people, shape));
    }
    for (int i = 0; i < leeway.last().size(); i++) {
      run.addAll(between(i));
      run.add(leeway.last().get(i));
    }
    return run;
  }

  private boolean liesAcross(PrintStep print, Set<Integer> across) {
    return order.placements(print).stream().anyMatch(p -> across.contains(p.id()));
  }

  /** Rests that the plan has between steps that stay. */
  private List<Step> between(int last) {
    List<Step> rests = new ArrayList<>();
    if (last > 0) {
      int from = leeway.last().get(last - 1).number();
      int to = leeway.last().get(last).number();
      for (Step step : leeway.plan().run().subList(from, to - 1)) {
        boolean sleeps = step instanceof Step.EndOfDay && !followAtOnce.get(last);
        if (step instanceof Step.Dry || sleeps) {
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
            .allMatch(
                e ->
                    e.getValue().size() == leeway.layout().of(e.getKey()).size()
                        && leeway.own().colours(e.getKey(), leeway.colours(e.getKey())).isEmpty());
    if (shape == Shape.SET_BY_SET && complete) {
      PrintDraft draft = new PrintDraft(List.copyOf(whole.keySet()), List.of(), people);
      draft.order = PrintOrder.SET_BY_SET;
      prints.add(draft.step());
      return prints;
    }
    List<List<Placement>> stretches = stretches(placements, shape);
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
    if (shape == Shape.ON_AND_ON) {
      stretches.forEach(stretch -> prints.addAll(onAndOn(stretch, people)));
      return prints;
    }
    if (shape == Shape.PASS_BY_PASS) {
      for (List<Placement> stretch : stretches) {
        byArrangement(stretch, false)
            .forEach(
                (name, own) ->
                    apart.passes(own).forEach(pass -> prints.add(print(name, pass, people))));
      }
      return prints;
    }
    if (shape == Shape.IN_PASSES) {
      for (List<Placement> stretch : stretches) {
        byArrangement(stretch, false)
            .forEach((name, own) -> prints.addAll(inPasses(name, own, people)));
      }
      return prints;
    }
    for (List<Placement> stretch : stretches) {
      byArrangement(stretch, shape == Shape.RICH_FIRST)
          .forEach((name, own) -> prints.add(print(name, own, people)));
    }
    return prints;
  }

  private List<List<Placement>> stretches(List<Placement> placements, Shape shape) {
    if (shape != Shape.BOARDS_FIRST && shape != Shape.BOARDS_LAST) {
      return rehearsal.stretches(placements);
    }
    List<List<Placement>> stretches =
        new ArrayList<>(
            rehearsal.stretches(placements.stream().filter(p -> takesBoard(p)).toList()));
    List<List<Placement>> together =
        rehearsal.stretches(placements.stream().filter(p -> !takesBoard(p)).toList());
    stretches.addAll(shape == Shape.BOARDS_FIRST ? stretches.size() : 0, together);
    return stretches;
  }

  private List<Step> inPasses(String name, List<Placement> own, List<String> people) {
    List<Integer> some = leeway.own().colours(name, leeway.colours(name));
    List<Integer> colours =
        some.isEmpty() ? IntStream.rangeClosed(1, leeway.colours(name)).boxed().toList() : some;
    List<List<Placement>> passes = apart.passes(own);
    List<Step> prints = new ArrayList<>();
    for (int colour : colours) {
      for (List<Placement> pass : passes) {
        PrintDraft draft = new PrintDraft((PrintStep) print(name, pass, people));
        draft.colours = leeway.colours(name) == 1 ? List.of() : List.of(colour);
        prints.add(draft.step());
      }
    }
    return prints;
  }

  private boolean takesBoard(Placement placement) {
    return leeway.plan().arrangements().get(placement.arrangement()).takesBoard();
  }

  /** In one step, unless some arrangements have colours printed that others have not. */
  private List<Step> onAndOn(List<Placement> stretch, List<String> people) {
    List<Step> steps = new ArrayList<>();
    byArrangement(stretch, false).forEach((name, own) -> steps.add(print(name, own, people)));
    Map<String, List<Integer>> each = new LinkedHashMap<>();
    for (Step step : steps) {
      PrintStep print = (PrintStep) step;
      each.put(print.arrangements().get(0), print.only());
      if (!print.separations().isEmpty()) {
        return steps;
      }
    }
    PrintDraft draft = new PrintDraft(List.of(), List.of(), people);
    draft.prints(each);
    return List.of(draft.step());
  }

  private Step print(String name, List<Placement> own, List<String> people) {
    boolean whole = own.size() == leeway.layout().of(name).size();
    List<Integer> only = whole ? List.of() : own.stream().map(Placement::number).sorted().toList();
    PrintDraft draft = new PrintDraft(List.of(name), only, people);
    draft.colours = leeway.own().colours(name, leeway.colours(name));
    return draft.step();
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
}
