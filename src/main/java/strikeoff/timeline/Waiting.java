package strikeoff.timeline;

import java.util.Optional;
import strikeoff.drying.DryingClock;
import strikeoff.plan.Draught;
import strikeoff.plan.Step;
import strikeoff.plan.Until;
import strikeoff.plan.Wait;

/** Waits of everybody who works on the cloth. */
final class Waiting {

  private final Workshop shop;
  private final WetCloth cloth;
  private final Blocked blocked;

  Waiting(Workshop shop, WetCloth cloth, Blocked blocked) {
    this.shop = shop;
    this.cloth = cloth;
    this.blocked = blocked;
  }

  /** Waits as a print step has it; a hair-dryer is held by who prints first. */
  void until(Step.Print step, Wait wait, String cause) {
    until(step, wait, step.by(), cause);
  }

  /**
   * Waits; what can never be waited for ends the simulation with a fact.
   *
   * @param by who holds a hair-dryer; empty for the first of the crew
   */
  void until(Step step, Wait wait, Optional<String> by, String cause) {
    if (stops(step) || wait.isNone()) {
      return;
    }
    if (wait.air().isPresent()) {
      until(step, wait.until(), wait.air().get(), by, cause);
      return;
    }
    long start = shop.clothFree();
    long end = end(wait.until(), start);
    if (dries(step, wait.until(), end)) {
      shop.waitFor(step, cause, end - start);
    }
  }

  private void until(Step step, Until until, Draught air, Optional<String> by, String cause) {
    Blowing blowing = shop.blow(step, air, shop.person(by));
    long start = blowing.start();
    cloth.blow(air, start);
    long end = end(until, start);
    if (dries(step, until, end)) {
      blowing.dry(cause, end - start);
      cloth.still(end);
    }
  }

  private long end(Until until, long start) {
    return until instanceof Until.State state
        ? cloth.until(state.dryness(), start)
        : start + Workshop.seconds(((Until.Time) until).span());
  }

  /** False, and told, if a wait never ends. */
  private boolean dries(Step step, Until until, long end) {
    boolean never = end >= DryingClock.NEVER;
    if (never) {
      blocked.dryness(step, ((Until.State) until).dryness());
    }
    return !never;
  }

  /** True if the run is given up, or has grown too long to go on. */
  boolean stops(Step step) {
    if (!blocked.givenUp() && shop.full()) {
      blocked.work(step, shop.tasks().size());
    }
    return blocked.givenUp();
  }
}
