package strikeoff.propose;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import strikeoff.plan.Begins;
import strikeoff.plan.PrintOrder;
import strikeoff.plan.PrintStep;
import strikeoff.plan.Step;
import strikeoff.plan.Until;
import strikeoff.plan.Until.Dryness;
import strikeoff.plan.Wait;
import strikeoff.units.Span;

/** Drops every step and every option that a run doesn't need, each tried and checked. */
final class Tidying {

  private final Leeway leeway;
  private final Order order;
  private final Apart apart;
  private final BooleanSupplier enough;

  /**
   * @param enough true once nobody waits for a tidier run
   */
  Tidying(Leeway leeway, Order order, BooleanSupplier enough) {
    this.leeway = leeway;
    this.order = order;
    this.apart = new Apart(leeway.layout());
    this.enough = enough;
  }

  /** Runs with one thing less each. */
  List<List<Step>> lesser(List<Step> run) {
    List<List<Step>> lesser = new ArrayList<>();
    for (int i = leeway.first().size(); i < run.size(); i++) {
      Step step = run.get(i);
      if (step.begins() != Begins.IN_TURN) {
        lesser.add(with(run, i, BesideMoves.beginning(step, Begins.IN_TURN)));
      }
      if (step instanceof Step.Dry dry) {
        lesser.add(without(run, i));
        for (Dryness state : Dryness.values()) {
          lesser.add(with(run, i, Repair.dry(state, dry.air())));
        }
        if (dry.air().isPresent()) {
          Step still =
              new Step.Dry(1, dry.until(), Optional.empty(), Optional.empty(), Step.path(1));
          lesser.add(with(run, i, still));
        }
      } else if (step instanceof Step.EndOfDay || step instanceof Step.WashScreen) {
        lesser.add(without(run, i));
      } else if (step instanceof Step.Sew sew && sew.by().isPresent()) {
        lesser.add(
            with(
                run,
                i,
                new Step.Sew(
                    1, sew.seam(), sew.takes(), Optional.empty(), sew.begins(), Step.path(1))));
      } else if (step instanceof Step.Mix mix) {
        if (mix.by().isPresent()) {
          lesser.add(
              with(
                  run,
                  i,
                  new Step.Mix(
                      1, mix.pastes(), mix.takes(), Optional.empty(), mix.begins(), Step.path(1))));
        }
        lesser.add(without(run, i));
        together(run, i, mix).ifPresent(lesser::add);
      } else if (step instanceof PrintStep print) {
        for (Step other : plainer(print)) {
          lesser.add(with(run, i, other));
        }
        if (i + 1 < run.size() && run.get(i + 1) instanceof PrintStep next) {
          for (PrintStep both : together(print, next)) {
            List<Step> less = without(run, i + 1);
            less.set(i, both);
            lesser.add(less);
          }
        }
      }
    }
    return lesser.stream()
        .map(changed -> Order.numbered(order.mixedInOrder(changed)))
        .filter(order::keeps)
        .toList();
  }

  private Optional<List<Step>> together(List<Step> run, int at, Step.Mix mix) {
    if (!leeway.timedMixing().isEmpty()) {
      return Optional.empty();
    }
    for (int i = at + 1; i < run.size(); i++) {
      if (run.get(i) instanceof Step.Mix other) {
        List<String> all = new ArrayList<>(mix.pastes());
        other.pastes().stream().filter(paste -> !all.contains(paste)).forEach(all::add);
        List<Step> less = without(run, i);
        less.set(at, new Step.Mix(1, all, mix.takes(), mix.by(), Step.path(1)));
        return Optional.of(less);
      }
    }
    return Optional.empty();
  }

  /** Two print steps as one, where they print other numbers alike, or other colours of the same. */
  private List<PrintStep> together(PrintStep one, PrintStep next) {
    List<PrintStep> both = new ArrayList<>();
    if (one.separations().equals(next.separations())) {
      Map<String, List<Integer>> each = new LinkedHashMap<>(order.numbers(one));
      order
          .numbers(next)
          .forEach(
              (name, own) ->
                  each.merge(
                      name,
                      own,
                      (a, b) -> Stream.concat(a.stream(), b.stream()).sorted().toList()));
      PrintDraft draft = new PrintDraft(one);
      draft.prints(order.said(each));
      both.add(draft.step());
    } else if (order.numbers(one).equals(order.numbers(next))) {
      List<Integer> colours =
          Stream.concat(one.separations().stream(), next.separations().stream()).sorted().toList();
      PrintDraft draft = new PrintDraft(next);
      boolean all = one.arrangements().stream().allMatch(a -> leeway.colours(a) == colours.size());
      draft.colours = all ? List.of() : colours;
      draft.betweenColours =
          one.dryBetweenColours().isNone() ? next.dryBetweenColours() : one.dryBetweenColours();
      both.add(draft.step());
    }
    return both;
  }

  private static List<Step> without(List<Step> run, int at) {
    List<Step> less = new ArrayList<>(run);
    less.remove(at);
    return less;
  }

  private static List<Step> with(List<Step> run, int at, Step step) {
    List<Step> other = new ArrayList<>(run);
    other.set(at, step);
    return other;
  }

  private List<Step> plainer(PrintStep print) {
    List<Step> plainer = new ArrayList<>();
    if (!print.dryBetweenColours().isNone()) {
      PrintDraft draft = new PrintDraft(print);
      draft.betweenColours = Wait.NONE;
      plainer.add(draft.step());
      draft = new PrintDraft(print);
      draft.betweenColours = new Wait(print.dryBetweenColours().until(), Optional.empty());
      plainer.add(draft.step());
    }
    if (!print.beforeMoving().isNone()) {
      PrintDraft draft = new PrintDraft(print);
      draft.beforeMoving = Wait.NONE;
      plainer.add(draft.step());
      draft = new PrintDraft(print);
      draft.beforeMoving = new Wait(print.beforeMoving().until(), Optional.empty());
      plainer.add(draft.step());
    }
    if (!print.dryBetweenPasses().isNone()) {
      PrintDraft draft = new PrintDraft(print);
      draft.betweenPasses = Wait.NONE;
      plainer.add(draft.step());
      draft = new PrintDraft(print);
      draft.betweenPasses = new Wait(print.dryBetweenPasses().until(), Optional.empty());
      plainer.add(draft.step());
    }
    if (print.pause().minutes() > 0) {
      PrintDraft draft = new PrintDraft(print);
      draft.pause = new Span(0);
      plainer.add(draft.step());
    }
    if (print.mindsNeighbours()) {
      PrintDraft draft = new PrintDraft(print);
      draft.betweenNeighbours = Until.NO_WAIT;
      plainer.add(draft.step());
    }
    if (print.air().isPresent()) {
      PrintDraft draft = new PrintDraft(print);
      draft.air = Optional.empty();
      plainer.add(draft.step());
    }
    if (print.everyOther()) {
      PrintDraft draft = new PrintDraft(print);
      draft.everyOther = false;
      draft.betweenPasses = Wait.NONE;
      plainer.add(draft.step());
    }
    if (print.order() != PrintOrder.BY_COLOUR) {
      PrintDraft draft = new PrintDraft(print);
      draft.order = PrintOrder.BY_COLOUR;
      plainer.add(draft.step());
    }
    if (print.washBetweenColours()) {
      PrintDraft draft = new PrintDraft(print);
      draft.washBetweenColours = false;
      plainer.add(draft.step());
    }
    if (print.washes().isPresent()) {
      PrintDraft draft = new PrintDraft(print);
      draft.washes = Optional.empty();
      plainer.add(draft.step());
    }
    if (!print.also().isEmpty()) {
      plainer.add(print.byOne());
    }
    if (print.by().isPresent() && print.also().isEmpty()) {
      plainer.add(print.by(List.of()));
    }
    return plainer.stream().filter(step -> !step.at(print.number()).equals(print)).toList();
  }

  /**
   * The same run without options that change nothing: a wait between the colours of a step that
   * prints one, or every other placement of those that lie apart anyway.
   */
  void dropIdle(Search search) {
    int steps = search.best().orElseThrow().candidate().run().size();
    for (int at = leeway.first().size(); at < steps; at++) {
      boolean dropped = true;
      while (dropped && !enough.getAsBoolean()) {
        dropped = false;
        Candidate now = search.best().get().candidate();
        for (PrintStep plainer : idle(now.run().get(at))) {
          Candidate other = search.rehearsed(Order.numbered(with(now.run(), at, plainer)));
          if (other.isSound() && search.worksAlike(now, other) && search.take(other)) {
            dropped = true;
            break;
          }
        }
      }
    }
  }

  /** What may be idle in a step; who does it is always worth its line. */
  private List<PrintStep> idle(Step step) {
    return step instanceof PrintStep print
        ? plainer(print).stream()
            .map(PrintStep.class::cast)
            .filter(other -> other.people().equals(print.people()))
            .filter(other -> other.order() == print.order())
            .filter(
                other ->
                    other.everyOther()
                        || !print.everyOther()
                        || apart.liesApart(order.placements(print)))
            .toList()
        : List.of();
  }

  /**
   * The same run with nothing left that can be dropped at no more cost.
   *
   * @param worked seconds that it may take
   */
  void tidy(Search search, double worked, ToDoubleFunction<Candidate> cost) {
    boolean dropped = true;
    while (dropped && search.best().isPresent()) {
      dropped = false;
      for (List<Step> run : lesser(search.best().get().candidate().run())) {
        if (enough.getAsBoolean()) {
          return;
        }
        Candidate less = search.rehearsed(run);
        if (less.worked() <= worked && search.offer(less, cost)) {
          dropped = true;
          break;
        }
      }
    }
  }
}
