package strikeoff.propose;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import strikeoff.plan.PrintStep;
import strikeoff.plan.Step;
import strikeoff.plan.Wait;

/**
 * Puts back what the printer wrote of people, pauses and waits, wherever a run may take as long: a
 * pause is how fast somebody can work, and who prints has reasons that no plan tells.
 */
final class AsWritten {

  private final Leeway leeway;
  private final Order order;
  private final BooleanSupplier enough;

  /**
   * @param enough true once nobody waits for more of it
   */
  AsWritten(Leeway leeway, Order order, BooleanSupplier enough) {
    this.leeway = leeway;
    this.order = order;
    this.enough = enough;
  }

  /**
   * Leaves a search with the same run and as much as was written as the check accepts.
   *
   * @param worked seconds that it may take
   */
  void putBack(Search search, double worked) {
    int steps = search.best().orElseThrow().candidate().run().size();
    tried(search, worked, run -> all(run, this::people));
    tried(search, worked, run -> all(run, this::unhurried));
    for (UnaryOperator<Step> kept : List.<UnaryOperator<Step>>of(this::people, this::unhurried)) {
      for (int at = leeway.first().size(); at < steps; at++) {
        int place = at;
        tried(search, worked, run -> one(run, place, kept));
      }
    }
    for (int at = leeway.first().size(); at < steps; at++) {
      for (UnaryOperator<Step> kept : single()) {
        int place = at;
        tried(search, worked, run -> one(run, place, kept));
      }
    }
  }

  private void tried(Search search, double worked, UnaryOperator<List<Step>> change) {
    List<Step> run = search.best().orElseThrow().candidate().run();
    List<Step> next = Order.numbered(order.mixedInOrder(change.apply(run)));
    if (enough.getAsBoolean() || next.equals(run) || !order.keeps(next)) {
      return;
    }
    Candidate candidate = search.rehearsed(next);
    if (candidate.isSound() && candidate.worked() <= worked) {
      search.take(candidate);
    }
  }

  private List<Step> all(List<Step> run, UnaryOperator<Step> kept) {
    List<Step> next = new ArrayList<>(run);
    next.subList(leeway.first().size(), next.size()).replaceAll(kept);
    return next;
  }

  private static List<Step> one(List<Step> run, int at, UnaryOperator<Step> kept) {
    List<Step> next = new ArrayList<>(run);
    next.set(at, kept.apply(next.get(at)));
    return next;
  }

  private Step people(Step step) {
    if (step instanceof PrintStep print) {
      Optional<PrintStep> own = written(print).filter(w -> w.by().isPresent());
      return own.isPresent() ? drafted(print, draft -> by(draft, own.get())) : step;
    }
    if (step instanceof Step.Mix mix) {
      Optional<String> by =
          by(Step.Mix.class, w -> !Collections.disjoint(w.pastes(), mix.pastes()));
      return by.isPresent()
          ? new Step.Mix(mix.number(), mix.pastes(), mix.takes(), by, mix.begins(), mix.path())
          : step;
    }
    if (step instanceof Step.Sew sew) {
      Optional<String> by = by(Step.Sew.class, w -> w.seam().equals(sew.seam()));
      return by.isPresent()
          ? new Step.Sew(sew.number(), sew.seam(), sew.takes(), by, sew.begins(), sew.path())
          : step;
    }
    return step;
  }

  /** Who does the first such step as written. */
  private <S extends Step> Optional<String> by(Class<S> kind, Predicate<S> such) {
    return written(kind).filter(such).findFirst().flatMap(Step::by);
  }

  private static void by(PrintDraft draft, PrintStep own) {
    draft.people = own.people();
    draft.washes = own.washes();
  }

  /** Pauses, passes and waits all together. */
  private Step unhurried(Step step) {
    Step kept = step;
    for (UnaryOperator<Step> each : single()) {
      kept = each.apply(kept);
    }
    return kept;
  }

  private List<UnaryOperator<Step>> single() {
    return List.of(
        step ->
            like(
                step,
                (draft, own) -> draft.everyOther |= own.everyOther() && !liesApart(draft.step())),
        // A fan that nobody wrote costs quiet.
        step ->
            like(step, (draft, own) -> draft.air = draft.air.filter(a -> own.air().isPresent())),
        step ->
            like(
                step,
                (draft, own) ->
                    draft.pause =
                        own.pause().compareTo(draft.pause) > 0 ? own.pause() : draft.pause),
        step ->
            like(
                step,
                (draft, own) ->
                    draft.betweenPasses = wait(draft.betweenPasses, own.dryBetweenPasses())),
        step ->
            like(
                step,
                (draft, own) ->
                    draft.betweenColours = wait(draft.betweenColours, own.dryBetweenColours())),
        step ->
            like(
                step,
                (draft, own) -> draft.beforeMoving = wait(draft.beforeMoving, own.beforeMoving())),
        step -> like(step, (draft, own) -> draft.washBetweenColours |= own.washBetweenColours()));
  }

  /** A wait stays one that ends when films are felt to be dry. */
  private static Wait wait(Wait now, Wait own) {
    return now.isNone() ? own : now;
  }

  private interface Kept {
    void put(PrintDraft draft, PrintStep own);
  }

  /** As any of the steps has it that print some of the same. */
  private Step like(Step step, Kept kept) {
    if (!(step instanceof PrintStep print)) {
      return step;
    }
    List<PrintStep> all = written(PrintStep.class).filter(own -> printsSome(own, print)).toList();
    return all.isEmpty() ? step : drafted(print, draft -> all.forEach(own -> kept.put(draft, own)));
  }

  private boolean liesApart(PrintStep print) {
    return new Apart(leeway.layout()).liesApart(order.placements(print));
  }

  private static PrintStep drafted(PrintStep print, Consumer<PrintDraft> change) {
    PrintDraft draft = new PrintDraft(print);
    change.accept(draft);
    return draft.step().at(print.number());
  }

  private <S extends Step> Stream<S> written(Class<S> kind) {
    return leeway.phase().own(leeway.plan().run()).stream()
        .filter(kind::isInstance)
        .map(kind::cast);
  }

  /** The step as written that prints some of the same. */
  private Optional<PrintStep> written(PrintStep print) {
    return written(PrintStep.class).filter(own -> printsSome(own, print)).findFirst();
  }

  private boolean printsSome(PrintStep own, PrintStep print) {
    return print.arrangements().stream()
        .anyMatch(
            name ->
                own.arrangements().contains(name)
                    && order.colours(own, name).stream()
                        .anyMatch(order.colours(print, name)::contains)
                    && order.numbers(own).get(name).stream()
                        .anyMatch(order.numbers(print).get(name)::contains));
  }
}
