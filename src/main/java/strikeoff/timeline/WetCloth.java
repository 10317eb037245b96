package strikeoff.timeline;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import strikeoff.drying.Air;
import strikeoff.drying.Drying;
import strikeoff.drying.DryingClock;
import strikeoff.drying.DryingClock.Dried;
import strikeoff.drying.FilmNeed;
import strikeoff.layout.Footprint;
import strikeoff.plan.Medium;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Until.Dryness;
import strikeoff.policy.Policy;
import strikeoff.screens.Deposit;
import strikeoff.units.AirSpeed;
import strikeoff.units.ArealMass;
import strikeoff.units.Span;

/** The films on the cloth and the air they dry in, as far as the simulation has come. */
final class WetCloth {

  private final Policy policy;
  private final Drying drying;
  private final Air room;
  private final DryingClock clock;
  private final Map<Dryness, List<Printed>> pending = new HashMap<>();
  private final Map<Recipe, FilmNeed> needs = new HashMap<>();

  WetCloth(PrintPlan plan, Policy policy, long start) {
    this.policy = policy;
    this.drying = Drying.of(plan.cloth(), policy);
    this.room = Air.of(plan.room());
    Span never = new Span(policy.limit("drying/never").amount());
    this.clock = new DryingClock(drying, room, start, never);
    for (Dryness state : Dryness.values()) {
      pending.put(state, new ArrayList<>());
    }
  }

  /** What the film of an impression must lose; its deposit is the best value of the estimate. */
  FilmNeed need(Footprint footprint) {
    int pulls = footprint.separation().pulls();
    return needs.computeIfAbsent(
        new Recipe(footprint.screen().name(), footprint.paste().name(), pulls),
        r -> {
          double laidDown =
              Deposit.of(footprint.screen(), footprint.paste(), policy).afterPulls(pulls).best();
          return drying.need(footprint.paste(), new ArealMass(laidDown));
        });
  }

  void add(Printed film) {
    pending.values().forEach(films -> films.add(film));
  }

  /**
   * When the slowest film reaches a state in the air that blows now, by the best value: a printer
   * tests by touch and does not wait for the slowest credible drying.
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
    return slowest;
  }

  Dried reached(Dryness state, Printed film) {
    Medium medium = film.footprint().paste().medium();
    return switch (state) {
      case FRAME_SAFE -> clock.frameSafe(medium, film.need(), film.lifted());
      case LIFT_SAFE -> clock.liftSafe(medium, film.need(), film.lifted());
      case FIX_SAFE -> clock.fixSafe(medium, film.need(), film.lifted());
    };
  }

  /** A fan or a hair-dryer from now on. */
  void blow(AirSpeed air, long now) {
    clock.change(now, room.moving(air));
  }

  /** The room's own air again. */
  void still(long now) {
    clock.change(now, room);
  }

  Film film(Printed film) {
    return new Film(
        moments(reached(Dryness.FRAME_SAFE, film)),
        moments(reached(Dryness.LIFT_SAFE, film)),
        moments(reached(Dryness.FIX_SAFE, film)));
  }

  private static Reached moments(Dried dried) {
    return new Reached(
        new Moment(dried.earliest()), new Moment(dried.best()), new Moment(dried.latest()));
  }

  /** Films of one screen, paste and number of pulls dry alike. */
  private record Recipe(String screen, String paste, int pulls) {}
}
