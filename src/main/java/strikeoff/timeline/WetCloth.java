package strikeoff.timeline;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import strikeoff.drying.Air;
import strikeoff.drying.Drying;
import strikeoff.drying.DryingClock;
import strikeoff.drying.DryingClock.Dried;
import strikeoff.drying.DryingClock.States;
import strikeoff.drying.FilmNeed;
import strikeoff.layout.Footprint;
import strikeoff.plan.Cloth;
import strikeoff.plan.Design;
import strikeoff.plan.Draught;
import strikeoff.plan.Medium;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Until.Dryness;
import strikeoff.policy.Policy;
import strikeoff.screens.Deposit;
import strikeoff.units.ArealMass;
import strikeoff.units.Span;

/** The films on the cloth and the air they dry in, as far as the simulation has come. */
final class WetCloth {

  private static final List<Dryness> STATES = List.of(Dryness.values());

  private final Policy policy;
  private final Cloth ground;
  private final Drying drying;
  private final Air room;
  private final DryingClock clock;
  private final Map<Dryness, List<Printed>> pending = new HashMap<>();
  private final Map<Dryness, Tests> tested = new EnumMap<>(Dryness.class);
  private final Map<Dryness, Map<Integer, Long>> feltAlone = new EnumMap<>(Dryness.class);

  /** By identity: films of one separation dry alike, and every impression asks. */
  private final Map<Design.Separation, FilmNeed> needs = new IdentityHashMap<>();

  WetCloth(PrintPlan plan, Policy policy, long start) {
    this.policy = policy;
    this.ground = plan.cloth();
    this.drying = Drying.of(ground, policy);
    this.room = Air.of(plan.room());
    Span never = new Span(policy.limit("drying/never").amount());
    this.clock = new DryingClock(drying, room, start, never);
    for (Dryness state : Dryness.values()) {
      pending.put(state, new ArrayList<>());
      tested.put(state, new Tests());
    }
  }

  /** What the film of an impression must lose; its deposit is the best value of the estimate. */
  FilmNeed need(Footprint footprint) {
    return needs.computeIfAbsent(
        footprint.separation(),
        separation -> {
          double laidDown =
              Deposit.of(footprint.screen(), footprint.paste(), ground, policy)
                  .afterPulls(separation.pulls())
                  .best();
          return drying.need(footprint.paste(), new ArealMass(laidDown));
        });
  }

  void add(Printed film) {
    pending.values().forEach(films -> films.add(film));
  }

  /**
   * When the slowest film reaches a state in the air that blows now, by the best value. Whoever
   * waits for a state feels the film before going on, so after that wait the state is certain.
   *
   * @return {@code now} if all have, {@link DryingClock#NEVER} if one never does
   */
  long until(Dryness state, long now) {
    List<Printed> films = pending.get(state);
    long slowest = now;
    List<Printed> left = new ArrayList<>();
    for (Printed film : films) {
      long at = reached(state, film).best();
      if (at > now) {
        left.add(film);
        slowest = Math.max(slowest, at);
      }
    }
    pending.put(state, left);
    tested.get(state).add(slowest);
    return slowest;
  }

  /**
   * When one film reaches a state, felt before the next frame goes down on it.
   *
   * @return {@link DryingClock#NEVER} if it never does
   */
  long feelAlone(Dryness state, Printed film) {
    long at = Math.max(film.lifted(), reached(state, film).best());
    feltAlone.computeIfAbsent(state, s -> new HashMap<>()).put(film.id(), at);
    return at;
  }

  /**
   * Then the slowest credible drying is out of the question: whoever waited has felt the film.
   *
   * @param by what is felt later doesn't count
   */
  private Dried felt(Dryness state, Printed film, Dried estimate, long by) {
    long latest = estimate.latest();
    for (Dryness proof : STATES) {
      if (proof.compareTo(state) < 0) {
        continue;
      }
      long felt = tested.get(proof).next(film.lifted());
      if (felt <= by && felt >= estimate.best()) {
        latest = Math.min(latest, felt);
      }
      Map<Integer, Long> films = feltAlone.get(proof);
      Long alone = films == null ? null : films.get(film.id());
      if (alone != null && alone <= by && alone >= estimate.best()) {
        latest = Math.min(latest, alone);
      }
    }
    return new Dried(estimate.earliest(), estimate.best(), latest);
  }

  Dried reached(Dryness state, Printed film) {
    Medium medium = film.footprint().paste().medium();
    return switch (state) {
      case FRAME_SAFE -> clock.frameSafe(medium, film.need(), film.lifted());
      case LIFT_SAFE -> clock.liftSafe(medium, film.need(), film.lifted());
      case FIX_SAFE -> clock.fixSafe(medium, film.need(), film.lifted());
    };
  }

  /**
   * When a film reaches a state if the work stands still from a second on, in the air that a wait
   * there has. What the run does later, a fan for instance, is no part of that wait.
   *
   * @param inTheRun when it reaches the state in the run as it is
   * @param air what moves the air meanwhile; empty for the room's own
   */
  Reached ifLeft(
      Dryness state, Printed film, Reached inTheRun, long second, Optional<Draught> air) {
    Air then = air.map(draught -> room.moving(draught.speed())).orElse(room);
    if (clock.staysFrom(second, then) && feltAlone.isEmpty() && noneFeltAfter(second)) {
      return inTheRun;
    }
    States states =
        clock.statesIfLeft(
            film.footprint().paste().medium(), film.need(), film.lifted(), second, then);
    return moments(felt(state, film, states.in(state), second));
  }

  private boolean noneFeltAfter(long second) {
    for (Dryness state : STATES) {
      if (tested.get(state).next(second + 1) < Long.MAX_VALUE) {
        return false;
      }
    }
    return true;
  }

  /** A fan or a hair-dryer from now on. */
  void blow(Draught air, long now) {
    clock.change(now, room.moving(air.speed()));
  }

  /** The room's own air again. */
  void still(long now) {
    clock.change(now, room);
  }

  Film film(Printed film) {
    Medium medium = film.footprint().paste().medium();
    DryingClock.States states = clock.states(medium, film.need(), film.lifted());
    return new Film(
        moments(Dryness.FRAME_SAFE, film, states.frameSafe()),
        moments(Dryness.LIFT_SAFE, film, states.liftSafe()),
        moments(Dryness.FIX_SAFE, film, states.fixSafe()));
  }

  private Reached moments(Dryness state, Printed film, Dried estimate) {
    return moments(felt(state, film, estimate, Long.MAX_VALUE));
  }

  private static Reached moments(Dried dried) {
    return new Reached(
        new Moment(dried.earliest()), new Moment(dried.best()), new Moment(dried.latest()));
  }

  /** Seconds at which a state was felt on every film, in their order. */
  private static final class Tests {
    private long[] seconds = new long[16];
    private int count;

    void add(long second) {
      if (count == seconds.length) {
        seconds = Arrays.copyOf(seconds, 2 * count);
      }
      seconds[count++] = second;
    }

    /** The first one not before a second; {@link Long#MAX_VALUE} if there is none. */
    long next(long second) {
      int at = Arrays.binarySearch(seconds, 0, count, second);
      int next = at >= 0 ? at : -at - 1;
      return next < count ? seconds[next] : Long.MAX_VALUE;
    }
  }
}
