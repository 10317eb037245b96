package strikeoff.day;

import java.util.List;
import java.util.Optional;
import strikeoff.drying.DryingClock;
import strikeoff.plan.Draught;
import strikeoff.plan.PrintStep;
import strikeoff.plan.Step;
import strikeoff.plan.Until;
import strikeoff.plan.Wait;

/** Waits of everybody who works on the cloth. */
final class Waiting {

  private final Workshop shop;
  private final WetCloth cloth;
  private final Blocked blocked;
  private int filmsBlown;

  /** When cloth that hung up wet is dry enough to print on. */
  private long damp = Long.MIN_VALUE;

  Waiting(Workshop shop, WetCloth cloth, Blocked blocked) {
    this.shop = shop;
    this.cloth = cloth;
    this.blocked = blocked;
  }

  /** The cloth came out of a bath, and is dry from then on. */
  void wetted(long dryFrom) {
    damp = dryFrom;
  }

  /** Dry heat went over it. */
  void ironed() {
    damp = Long.MIN_VALUE;
  }

  /**
   * Before a colour: until the step's other colours under its frames have dried. A stated time
   * counts from the lift of each film; in moved air it is the time that the air moves.
   */
  void betweenColours(
      PrintStep step, ColourRun run, List<Printed> printed, Printing.Progress progress) {
    Wait wait = step.dryBetweenColours();
    if (wait.isNone() || stops(step)) {
      return;
    }
    if (wait.until() instanceof Until.State state) {
      feel(step, wait, state.dryness(), run, printed, progress);
    } else if (wait.air().isPresent()) {
      boolean still = false;
      for (int i = printed.size() - 1; i >= progress.blown && !still; i--) {
        still = run.liesOn(printed.get(i));
      }
      if (still) {
        until(step, wait, step.by(), Doing.Wait.BETWEEN_COLOURS);
        progress.blown = printed.size();
      }
    } else {
      long takes = seconds(wait);
      run.lastLift(printed, shop.clothFree() - takes)
          .ifPresent(lift -> waitTo(step, Doing.Wait.BETWEEN_COLOURS, lift + takes));
    }
  }

  /** Feels every film under the frames that come before one of them goes down. */
  private void feel(
      PrintStep step,
      Wait wait,
      Until.Dryness state,
      ColourRun run,
      List<Printed> printed,
      Printing.Progress progress) {
    long now = shop.clothFree();
    progress.maybeWet.addAll(printed.subList(progress.looked, printed.size()));
    progress.looked = printed.size();
    progress.maybeWet.removeIf(film -> cloth.reached(state, film).latest() <= now);
    List<Printed> under = progress.maybeWet.stream().filter(run::liesOn).toList();
    if (under.isEmpty()) {
      return;
    }
    if (wait.air().isPresent()) {
      Blowing blowing = shop.blow(step, wait.air().get(), shop.person(step.by()));
      long start = blowing.start();
      cloth.blow(wait.air().get(), start);
      long end = cloth.slowest(state, under, start);
      if (dries(step, wait.until(), end)) {
        blowing.dry(Doing.Wait.BETWEEN_COLOURS, end - start);
        shop.screens().washMeanwhile(step, start, end);
        cloth.still(end);
        cloth.feel(state, under, end);
      }
    } else {
      long end = cloth.slowest(state, under, now);
      if (dries(step, wait.until(), end)) {
        shop.waitFor(step, Doing.Wait.BETWEEN_COLOURS, end - now);
        cloth.feel(state, under, end);
      }
    }
  }

  /**
   * Before a frame lies on films of its own colour beside it, each of which is waited for; what is
   * felt are they alone.
   */
  void betweenNeighbours(PrintStep step, List<Job> films) {
    if (films.isEmpty() || stops(step)) {
      return;
    }
    long now = shop.clothFree();
    List<Printed> printed = films.stream().map(film -> film.made().printed).toList();
    if (step.dryBetweenNeighbours() instanceof Until.State state) {
      long end = cloth.slowest(state.dryness(), printed, now);
      if (dries(step, state, end)) {
        shop.waitFor(step, Doing.Wait.BETWEEN_NEIGHBOURS, end - now);
        cloth.feel(state.dryness(), printed, end);
      }
    } else {
      long lifted = printed.stream().mapToLong(Printed::lifted).max().getAsLong();
      Until.Time time = (Until.Time) step.dryBetweenNeighbours();
      waitTo(step, Doing.Wait.BETWEEN_NEIGHBOURS, lifted + Workshop.seconds(time.span()));
    }
  }

  /** Before the placements 2, 4, 6 …, from the lift of the last of those before. */
  void betweenPasses(PrintStep step, long lifted) {
    since(step, step.dryBetweenPasses(), lifted, Doing.Wait.BETWEEN_PASSES);
  }

  /**
   * Before the cloth moves on with films on it. A stated time counts from the last lift, so that a
   * night counts; in moved air it is the time that the air moves, once for the same films.
   *
   * @param films how many impressions there are
   */
  void beforeMoving(PrintStep step, long lifted, int films) {
    boolean blown = step.beforeMoving().air().isPresent() && filmsBlown == films;
    if (!blown) {
      since(step, step.beforeMoving(), lifted, Doing.Wait.BEFORE_MOVING);
      filmsBlown = films;
    }
  }

  private void since(PrintStep step, Wait wait, long lifted, Doing cause) {
    if (wait.air().isEmpty() && wait.until() instanceof Until.Time) {
      if (!stops(step)) {
        waitTo(step, cause, lifted + seconds(wait));
      }
    } else {
      until(step, wait, step.by(), cause);
    }
  }

  private void waitTo(Step step, Doing cause, long second) {
    shop.waitFor(step, cause, second - shop.clothFree());
  }

  private static long seconds(Wait wait) {
    return Workshop.seconds(((Until.Time) wait.until()).span());
  }

  /**
   * Waits; what can never be waited for ends the simulation with a fact.
   *
   * @param by who holds a hair-dryer; empty for the first of the crew
   */
  void until(Step step, Wait wait, Optional<String> by, Doing cause) {
    if (stops(step) || wait.isNone()) {
      return;
    }
    if (wait.air().isPresent()) {
      until(step, wait.until(), wait.air().get(), by, cause);
      return;
    }
    long start = shop.clothFree();
    long end = end(step, wait.until(), start);
    if (dries(step, wait.until(), end)) {
      shop.waitFor(step, cause, end - start);
    }
  }

  private void until(Step step, Until until, Draught air, Optional<String> by, Doing cause) {
    Blowing blowing = shop.blow(step, air, shop.person(by));
    long start = blowing.start();
    cloth.blow(air, start);
    long end = end(step, until, start);
    if (dries(step, until, end)) {
      blowing.dry(cause, end - start);
      shop.screens().washMeanwhile(step, start, end);
      cloth.still(end);
    }
  }

  /** Whoever waits for a state in a step of its own feels the cloth as well as the films. */
  private long end(Step step, Until until, long start) {
    return until instanceof Until.State state
        ? Math.max(
            cloth.until(state.dryness(), start), step instanceof Step.Dry ? damp : Long.MIN_VALUE)
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
