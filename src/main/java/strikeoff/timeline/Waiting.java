package strikeoff.timeline;

import java.util.Optional;
import strikeoff.drying.DryingClock;
import strikeoff.plan.Draught;
import strikeoff.plan.Step;
import strikeoff.plan.Until;

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

  /** Waits; what can never be waited for ends the simulation with a fact. */
  void until(Step step, Until until, String cause) {
    if (stops(step)) {
      return;
    }
    long now = shop.clothFree();
    if (until instanceof Until.State state) {
      long end = cloth.until(state.dryness(), now);
      if (end >= DryingClock.NEVER) {
        blocked.dryness(step, state.dryness());
        return;
      }
      shop.waitFor(step, cause, end - now);
    } else if (until instanceof Until.Time time) {
      shop.waitFor(step, cause, Workshop.seconds(time.span()));
    }
  }

  /**
   * Waits in air that is moved meanwhile.
   *
   * @param by who holds a hair-dryer; empty for the first of the crew
   */
  void until(Step step, Until until, Draught air, Optional<String> by, String cause) {
    if (stops(step)) {
      return;
    }
    Blowing blowing = shop.blow(step, air, shop.person(by));
    long start = blowing.start();
    cloth.blow(air.speed(), start);
    long end = start;
    if (until instanceof Until.State state) {
      end = cloth.until(state.dryness(), start);
    } else if (until instanceof Until.Time time) {
      end += Workshop.seconds(time.span());
    }
    if (end >= DryingClock.NEVER) {
      blocked.dryness(step, ((Until.State) until).dryness());
      return;
    }
    blowing.dry(cause, end - start);
    cloth.still(end);
  }

  /** True if the run is given up, or has grown too long to go on. */
  boolean stops(Step step) {
    if (!blocked.givenUp() && shop.full()) {
      blocked.work(step, shop.tasks().size());
    }
    return blocked.givenUp();
  }
}
