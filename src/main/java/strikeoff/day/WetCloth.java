package strikeoff.day;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import strikeoff.drying.Air;
import strikeoff.drying.Dried;
import strikeoff.drying.DryingClock;
import strikeoff.drying.DryingClock.States;
import strikeoff.drying.FilmNeed;
import strikeoff.layout.Footprint;
import strikeoff.plan.Draught;
import strikeoff.plan.Until.Dryness;

/** The films on the cloth and the air they dry in, as far as the simulation has come. */
public final class WetCloth {

  private static final List<Dryness> STATES = List.of(Dryness.values());
  private static final Comparator<Printed> LIFTED = Comparator.comparingLong(Printed::lifted);

  private final Films films;
  private final Air room;
  private Air usual;
  private final DryingClock clock;
  private final Map<Dryness, List<Printed>> pending = new EnumMap<>(Dryness.class);
  private final Map<Dryness, Tests> tested = new EnumMap<>(Dryness.class);
  private final Map<Dryness, Map<Integer, Long>> feltAlone = new EnumMap<>(Dryness.class);

  WetCloth(Films films, long start) {
    this.films = films;
    this.room = films.drying().room();
    this.usual = room;
    this.clock = new DryingClock(films.drying(), start);
    for (Dryness state : Dryness.values()) {
      pending.put(state, new ArrayList<>());
      tested.put(state, new Tests());
    }
  }

  public Films films() {
    return films;
  }

  void add(Printed film) {
    for (List<Printed> films : pending.values()) {
      films.add(film);
    }
  }

  /**
   * When the slowest film reaches a state in the air that blows now, on an ordinary day. Whoever
   * waits for a state feels the film before going on, so after that wait the state is certain.
   *
   * @return {@code now} if all have, {@link DryingClock#NEVER} if one never does
   */
  long until(Dryness state, long now) {
    List<Printed> left = new ArrayList<>();
    long slowest = slowest(state, pending.get(state), now, left::add);
    pending.put(state, left);
    tested.get(state).add(slowest);
    return slowest;
  }

  /**
   * When the slowest of some films reaches a state, on an ordinary day.
   *
   * @return {@code now} if all have, {@link DryingClock#NEVER} if one never does
   */
  long slowest(Dryness state, List<Printed> films, long now) {
    return slowest(state, films, now, film -> {});
  }

  /**
   * Of films that need the same the last one is the slowest, where nothing speaks against it; so
   * the others need not be followed.
   *
   * @param wet told of each film that has not reached it by now, or may not have
   */
  private long slowest(Dryness state, List<Printed> films, long now, Consumer<Printed> wet) {
    Map<FilmNeed, List<Printed>> alike = new IdentityHashMap<>();
    films.forEach(film -> alike.computeIfAbsent(film.need(), n -> new ArrayList<>()).add(film));
    long slowest = now;
    for (List<Printed> same : alike.values()) {
      Printed last = Collections.max(same, LIFTED);
      long reaches = reached(state, last).best();
      long aheadSince = same.size() == 1 ? 0 : clock.aheadSince(last.need(), reaches);
      for (Printed film : same) {
        boolean ahead = film == last || film.lifted() >= aheadSince;
        long at = ahead ? reaches : reached(state, film).best();
        if (at > now) {
          wet.accept(film);
          slowest = Math.max(slowest, at);
        }
      }
    }
    return slowest;
  }

  /**
   * When a film that is to be lifted then reaches a state, on an ordinary day.
   *
   * @return {@link DryingClock#NEVER} if it never does
   */
  long dry(Dryness state, Footprint footprint, long lifted) {
    return Math.max(lifted, clock.state(films.need(footprint), lifted, state).best());
  }

  /** Some films are felt, and have reached the state, before the next frame goes down on them. */
  void feel(Dryness state, List<Printed> films, long second) {
    Map<Integer, Long> felt = feltAlone.computeIfAbsent(state, s -> new HashMap<>());
    for (Printed film : films) {
      felt.putIfAbsent(film.id(), second);
    }
  }

  /**
   * Then slow drying is out of the question: whoever waited has felt the film.
   *
   * @param by what is felt later doesn't count
   */
  private Dried felt(Dryness state, Printed film, Dried estimate, long by) {
    long latest = DryingClock.NEVER;
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
    return estimate.felt(latest);
  }

  Dried reached(Dryness state, Printed film) {
    return clock.state(film.need(), film.lifted(), state);
  }

  /**
   * When a film reaches a state if the work stands still from a second on, in the air that a wait
   * there has. What the run does later, a fan for instance, is no part of that wait.
   *
   * @param inTheRun when it reaches the state in the run as it is
   * @param air what moves the air meanwhile; empty for the room's own
   */
  public Reached ifLeft(
      Dryness state, Printed film, Reached inTheRun, long second, Optional<Draught> air) {
    Air then = air.map(films.drying()::moved).orElse(room);
    if (clock.staysFrom(second, then) && feltAlone.isEmpty() && noneFeltAfter(second)) {
      return inTheRun;
    }
    States states = clock.statesIfLeft(film.need(), film.lifted(), second, then);
    return new Reached(felt(state, film, states.in(state), second));
  }

  private boolean noneFeltAfter(long second) {
    for (Dryness state : STATES) {
      if (tested.get(state).next(second + 1) < Long.MAX_VALUE) {
        return false;
      }
    }
    return true;
  }

  /** When the air changed last, or all films were felt. */
  long lastChange() {
    long last = clock.lastChange();
    for (Tests tests : tested.values()) {
      last = Math.max(last, tests.last());
    }
    return last;
  }

  /** A fan or a hair-dryer from now on. */
  void blow(Draught air, long now) {
    clock.change(now, films.drying().moved(air));
  }

  /** What blew stands again, but for what blows while people print. */
  void still(long now) {
    clock.change(now, usual);
  }

  /** That air but in waits that have another, until it stands. */
  void blowWhilePrinting(Draught air, long now) {
    usual = films.drying().moved(air);
    clock.change(now, usual);
  }

  /** The room's own air again. */
  void printed(long now) {
    usual = room;
    clock.change(now, room);
  }

  Film film(Printed film) {
    States states = clock.states(film.need(), film.lifted());
    Dried frameSafe = asFelt(Dryness.FRAME_SAFE, film, states);
    // Where a fan comes on after a wait that lasts longer on a slow day, it comes on later too.
    Dried liftSafe = asFelt(Dryness.LIFT_SAFE, film, states).slowNotBefore(frameSafe);
    Dried fixSafe = asFelt(Dryness.FIX_SAFE, film, states).slowNotBefore(liftSafe);
    return new Film(new Reached(frameSafe), new Reached(liftSafe), new Reached(fixSafe));
  }

  private Dried asFelt(Dryness state, Printed film, States states) {
    Dried dried = felt(state, film, states.in(state), Long.MAX_VALUE);
    if (dried.slow() > dried.latest()) { // on a slow day the wait goes on, and what blows in it
      States waited = clock.statesIfUnchanged(film.need(), film.lifted(), dried.latest());
      return dried.slowAs(waited.in(state));
    }
    return dried;
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

    long last() {
      return count == 0 ? Long.MIN_VALUE : seconds[count - 1];
    }

    /** The first one not before a second; {@link Long#MAX_VALUE} if there is none. */
    long next(long second) {
      int at = Arrays.binarySearch(seconds, 0, count, second);
      int next = at >= 0 ? at : -at - 1;
      return next < count ? seconds[next] : Long.MAX_VALUE;
    }
  }
}
