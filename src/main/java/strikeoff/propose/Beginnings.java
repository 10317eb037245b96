package strikeoff.propose;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Predicate;
import strikeoff.day.facts.Rehearsal;
import strikeoff.day.facts.Rehearsed;
import strikeoff.document.GivenUp;
import strikeoff.plan.Draught;
import strikeoff.plan.PrintStep;
import strikeoff.plan.Step;
import strikeoff.plan.Until.Dryness;
import strikeoff.plan.Wait;
import strikeoff.propose.LaidOut.Shape;

/**
 * Runs to begin a search with: the plan's own, and runs worked stretch by stretch as a printer
 * would lay them out, each with the waits that it turns out to need.
 */
final class Beginnings {

  /**
   * Rounds without a better run in which waits and nights are written: each shifts what comes after
   * it. A job of many days gets its nights one by one.
   */
  private static final int ROUNDS = 8;

  /** So many ways to lay the prints out are tried however little time there is. */
  private static final int AT_LEAST = 3;

  private final Leeway leeway;
  private final Order order;
  private final Rehearsal rehearsal;
  private final PasteLeft stock;
  private final LaidOut laidOut;
  private long tried;

  Beginnings(Leeway leeway, Order order, Rehearsal rehearsal, PasteLeft stock) {
    this.leeway = leeway;
    this.order = order;
    this.rehearsal = rehearsal;
    this.stock = stock;
    this.laidOut = new LaidOut(leeway, order, rehearsal);
  }

  /** Runs that were tried so far. */
  long tried() {
    return tried;
  }

  /**
   * All of them, numbered, each kind once; the plan's own first if it keeps to the order, or else
   * one that works as the plan lists its prints. What is the most promising comes before the rest.
   *
   * @param goesOn asked before each but the first few, and before what takes longer
   */
  List<Candidate> all(BooleanSupplier goesOn) {
    Map<List<Step>, Candidate> all = new LinkedHashMap<>();
    List<Step> written = Order.numbered(order.mixedInOrder(withoutMoves(leeway.written())));
    List<Optional<Draught>> airs = new ArrayList<>(leeway.airs());
    Collections.reverse(airs);
    if (order.keeps(written)) {
      Candidate own = rehearsed(written);
      add(all, own);
      for (Optional<Draught> air : airs) {
        if (!own.isSound()) {
          add(all, repaired(written, air, goesOn));
        }
        List<Step> moved = inAllWaits(written, air);
        if (!moved.equals(written)) {
          add(all, repaired(moved, air, goesOn));
        }
      }
    } else {
      begin(
          all,
          leeway.crew(),
          Optional.empty(),
          laidOut.sewing().get(0),
          Shape.BY_ARRANGEMENT,
          goesOn);
    }
    int surely = AT_LEAST;
    for (List<String> people : crews()) {
      for (Optional<Draught> air : airs) {
        for (LaidOut.Sewing sewing : laidOut.sewing()) {
          for (Shape shape : laidOut.shapes()) {
            if (all.isEmpty() || surely-- > 0 || goesOn.getAsBoolean()) {
              begin(all, people, air, sewing, shape, goesOn);
            }
          }
        }
      }
    }
    for (Candidate run : List.copyOf(all.values())) {
      List<Step> washed = washedLast(run.run());
      if (run.isSound() && goesOn.getAsBoolean() && order.keeps(washed)) {
        add(all, rehearsed(washed));
      }
    }
    return List.copyOf(all.values());
  }

  private void begin(
      Map<List<Step>, Candidate> all,
      List<String> people,
      Optional<Draught> air,
      LaidOut.Sewing sewing,
      Shape shape,
      BooleanSupplier goesOn) {
    begun(people, air, sewing, shape, goesOn).ifPresent(run -> add(all, run));
  }

  private Optional<Candidate> begun(
      List<String> people,
      Optional<Draught> air,
      LaidOut.Sewing sewing,
      Shape shape,
      BooleanSupplier goesOn) {
    List<Step> run = Order.numbered(order.mixedInOrder(laidOut.run(people, sewing, shape)));
    return order.keeps(run)
        ? Optional.of(repaired(people.size() > 1 ? blown(run, air) : run, air, goesOn))
        : Optional.empty();
  }

  /** The first of those that everybody works at, in the air that dries soonest, that is so. */
  Optional<Candidate> first(Predicate<Candidate> wanted) {
    Optional<Draught> air = leeway.airs().get(leeway.airs().size() - 1);
    return laidOut.shapes().stream()
        .limit(AT_LEAST)
        .flatMap(
            shape ->
                begun(leeway.crew(), air, laidOut.sewing().get(0), shape, () -> false).stream())
        .filter(wanted)
        .findFirst();
  }

  /** Several who print at the same time have a fan blow that is wanted between colours. */
  private static List<Step> blown(List<Step> run, Optional<Draught> air) {
    return air.filter(moved -> moved.by() == Draught.By.FAN).isEmpty()
        ? run
        : run.stream()
            .map(step -> step instanceof PrintStep print ? blown(print, air) : step)
            .toList();
  }

  private static Step blown(PrintStep print, Optional<Draught> air) {
    PrintDraft draft = new PrintDraft(print);
    draft.betweenColours = Repair.wait(Dryness.FRAME_SAFE, air);
    return draft.step().at(print.number());
  }

  /** The air moves in every wait in which it stood. */
  private static List<Step> inAllWaits(List<Step> run, Optional<Draught> air) {
    return air.isEmpty() ? run : run.stream().map(step -> inAllWaits(step, air)).toList();
  }

  private static Step inAllWaits(Step step, Optional<Draught> air) {
    if (step instanceof Step.Dry dry && dry.air().isEmpty()) {
      return new Step.Dry(dry.number(), dry.until(), air, dry.by(), dry.path());
    }
    if (!(step instanceof PrintStep print)) {
      return step;
    }
    PrintDraft draft = new PrintDraft(print);
    boolean held = air.get().by() == Draught.By.HAIR_DRYER;
    if (!held || draft.people.size() < 2) {
      draft.betweenColours = moved(draft.betweenColours, air);
    }
    draft.betweenPasses = moved(draft.betweenPasses, air);
    draft.beforeMoving = moved(draft.beforeMoving, air);
    return draft.step().at(print.number());
  }

  private static Wait moved(Wait wait, Optional<Draught> air) {
    return wait.isNone() || wait.air().isPresent() ? wait : new Wait(wait.until(), air);
  }

  private static void add(Map<List<Step>, Candidate> all, Candidate run) {
    all.putIfAbsent(run.run(), run);
  }

  private List<List<String>> crews() {
    List<String> crew = leeway.crew();
    return crew.size() > 1 ? List.of(crew, crew.subList(0, 1)) : List.of(crew);
  }

  /** Nobody washes a screen before everything is printed. */
  private List<Step> washedLast(List<Step> run) {
    List<Step> washed = new ArrayList<>();
    int last = 0;
    for (Step step : run) {
      if (!(step instanceof Step.WashScreen)) {
        washed.add(step);
        last = step instanceof PrintStep ? washed.size() : last;
      }
    }
    List<String> crew = leeway.crew();
    washed.add(
        last,
        new Step.WashScreen(
            1,
            leeway.screens(),
            Optional.empty(),
            Optional.of(crew.get(crew.size() - 1)),
            Step.path(1)));
    return Order.numbered(washed);
  }

  /** Where the cloth lies follows from what is printed. */
  private static List<Step> withoutMoves(List<Step> run) {
    return run.stream().filter(step -> !(step instanceof Step.Move)).toList();
  }

  private Candidate rehearsed(List<Step> run) {
    tried++;
    Rehearsed rehearsed = rehearsal.surely(run, rehearsal.of(run));
    return Candidate.of(run, rehearsed, rehearsal, stock);
  }

  /**
   * With the waits that it needs; as far as it comes in a few rounds.
   *
   * @param goesOn asked before each further one
   */
  private Candidate repaired(List<Step> run, Optional<Draught> air, BooleanSupplier goesOn) {
    Candidate best = rehearsed(run);
    Candidate now = best;
    int left = ROUNDS;
    // What is written first may lack less than any that follows for a while.
    long least = Long.MAX_VALUE;
    int rounds = 0;
    while (left-- > 0 && now.rehearsed().lacks() && (rounds++ < ROUNDS || goesOn.getAsBoolean())) {
      GivenUp.ifAsked();
      List<Step> next =
          Order.numbered(Repair.repaired(now.run(), now.rehearsed(), air, order, leeway.screens()));
      if (next.equals(now.run()) || !order.keeps(next)) {
        break;
      }
      now = rehearsed(next);
      long lacks = now.rehearsed().shortfall().seconds();
      if (lacks < least) {
        least = lacks;
        left = ROUNDS;
      }
      if (lacks <= best.rehearsed().shortfall().seconds()) {
        best = now;
      }
    }
    return best;
  }
}
