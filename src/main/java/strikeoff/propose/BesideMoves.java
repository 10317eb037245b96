package strikeoff.propose;

import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import strikeoff.plan.Begins;
import strikeoff.plan.Draught;
import strikeoff.plan.PrintStep;
import strikeoff.plan.Step;
import strikeoff.plan.Until;
import strikeoff.plan.Until.Dryness;
import strikeoff.plan.Wait;
import strikeoff.units.Span;

/**
 * Lets work go on beside other work, frames wait for single films, and a fan blow on prints. Each
 * change is null where it fails.
 */
final class BesideMoves {

  private final Leeway leeway;
  private final SplittableRandom random;

  BesideMoves(Leeway leeway, SplittableRandom random) {
    this.leeway = leeway;
    this.random = random;
  }

  /** A step begins as soon as its person is free, or in its turn again. */
  List<Step> whenFree(List<Step> run) {
    int at = leeway.first().size() + random.nextInt(run.size() - leeway.first().size());
    Step step = run.get(at);
    if (leeway.crew().size() < 2) {
      return null;
    }
    Begins begins = step.begins() == Begins.IN_TURN ? Begins.WHEN_FREE : Begins.IN_TURN;
    Step other = beginning(step, begins);
    if (other == step) {
      return null;
    }
    run.set(at, other);
    return run;
  }

  /** The very step if it is one that begins in its turn whatever is wanted. */
  static Step beginning(Step step, Begins begins) {
    if (step instanceof PrintStep print) {
      PrintDraft draft = new PrintDraft(print);
      draft.begins = begins;
      return draft.step();
    }
    if (step instanceof Step.Mix mix) {
      return new Step.Mix(1, mix.pastes(), mix.takes(), mix.by(), begins, Step.path(1));
    }
    if (step instanceof Step.Sew sew) {
      return new Step.Sew(1, sew.seam(), sew.takes(), sew.by(), begins, Step.path(1));
    }
    if (step instanceof Step.WashScreen wash) {
      return new Step.WashScreen(1, wash.screens(), wash.takes(), wash.by(), begins, Step.path(1));
    }
    return step;
  }

  /** Of two print steps one person works the one, and somebody else the other beside it. */
  List<Step> sideBySide(List<Step> run) {
    int at = Moves.pick(random, run, PrintStep.class);
    int next = at + 1;
    while (next < run.size() && !(run.get(next) instanceof PrintStep)) {
      next++;
    }
    List<String> crew = leeway.crew();
    if (at < leeway.first().size() || next >= run.size() || crew.size() < 2) {
      return null;
    }
    int who = random.nextInt(crew.size());
    PrintDraft one = new PrintDraft((PrintStep) run.get(at));
    PrintDraft other = new PrintDraft((PrintStep) run.get(next));
    one.people = List.of(crew.get(who));
    other.people = List.of(crew.get((who + 1 + random.nextInt(crew.size() - 1)) % crew.size()));
    other.begins = Begins.WHEN_FREE;
    run.set(at, one.step());
    run.set(next, other.step());
    return run;
  }

  /** Each film beside a frame is felt, instead of a pause or of a wait between two passes. */
  List<Step> neighbours(List<Step> run) {
    int at = Moves.pick(random, run, PrintStep.class);
    if (at < leeway.first().size()) {
      return null;
    }
    PrintDraft draft = new PrintDraft((PrintStep) run.get(at));
    if (draft.betweenNeighbours.isWait() && random.nextBoolean()) {
      draft.betweenNeighbours = Until.NO_WAIT;
    } else {
      draft.betweenNeighbours =
          random.nextInt(3) > 0
              ? Repair.until(Dryness.FRAME_SAFE)
              : new Until.Time(new Span(1 + random.nextInt(3)));
      draft.pause = new Span(0);
      draft.betweenPasses = Wait.NONE;
    }
    run.set(at, draft.step());
    return run;
  }

  /** A fan blows while a step prints, or not any more. */
  List<Step> air(List<Step> run) {
    int at = Moves.pick(random, run, PrintStep.class);
    Optional<Optional<Draught>> fan =
        leeway.airs().stream()
            .filter(air -> air.filter(a -> a.by() == Draught.By.FAN).isPresent())
            .findFirst();
    if (at < leeway.first().size() || fan.isEmpty()) {
      return null;
    }
    PrintDraft draft = new PrintDraft((PrintStep) run.get(at));
    draft.air = draft.air.isPresent() ? Optional.empty() : fan.get();
    run.set(at, draft.step());
    return run;
  }
}
