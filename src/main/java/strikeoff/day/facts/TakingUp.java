package strikeoff.day.facts;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import strikeoff.day.DayRun;
import strikeoff.day.Impression;
import strikeoff.day.Moment;
import strikeoff.day.OnTable.Taken;
import strikeoff.day.Reached;
import strikeoff.day.Task;
import strikeoff.evidence.Evidence.Related;
import strikeoff.evidence.Tie;
import strikeoff.plan.Medium;
import strikeoff.plan.PrintStep;
import strikeoff.plan.Until;
import strikeoff.plan.Until.Dryness;
import strikeoff.plan.Wait;
import strikeoff.units.Chance;

/** Finds where the cloth is taken up too wet, each step told once by its worst occasion. */
final class TakingUp {

  private static final int MOST_MARKS = 40;

  private static final Comparator<Reached> SLOWEST_LAST =
      Comparator.comparing(Reached::best)
          .thenComparing(Reached::latest)
          .thenComparing(Reached::earliest);

  private TakingUp() {}

  /**
   * @param trial what comes of a remedy, if that can be told
   */
  static List<ClothTakenUp> all(DayRun day, Function<Remedy, Trials.Outcome> trial) {
    Map<Integer, Integer> occasions = new LinkedHashMap<>();
    List<ClothTakenUp> all = new ArrayList<>();
    worst(day, occasions)
        .forEach((step, occasion) -> all.add(tell(occasion, occasions.get(step), trial)));
    return all;
  }

  /** The worst occasion of each step that takes the cloth up too wet, by the step's number. */
  static Map<Integer, Occasion> worst(DayRun day) {
    return worst(day, new LinkedHashMap<>());
  }

  /**
   * @param occasions takes how often each of them does
   */
  private static Map<Integer, Occasion> worst(DayRun day, Map<Integer, Integer> occasions) {
    Map<Integer, Occasion> worst = new LinkedHashMap<>();
    List<Impression> wet = new ArrayList<>();
    int seen = 0;
    for (Taken taken : day.run().taken()) {
      for (; seen < taken.filmsBefore(); seen++) {
        wet.add(day.impressions().get(seen));
      }
      Optional<Dryness> needed = taken.step().needs();
      if (needed.isPresent()) {
        Moment now = new Moment(taken.second());
        wet.removeIf(i -> i.film().fixSafe().latest().compareTo(now) <= 0);
        List<Impression> concerned = wet.stream().filter(i -> concerns(taken, i)).toList();
        Occasion occasion = Occasion.of(day, taken, needed.get(), concerned);
        if (occasion != null) {
          occasions.merge(taken.step().number(), 1, Integer::sum);
          worst.merge(taken.step().number(), occasion, Occasion::worse);
        }
      }
      wet.removeIf(i -> ends(taken, i));
    }
    return worst;
  }

  /** Fixing asks for its own medium alone; what water does to paint is told elsewhere. */
  private static boolean concerns(Taken taken, Impression film) {
    Medium medium = film.footprint().paste().medium();
    return switch (taken.kind()) {
      case FIX -> medium == Medium.DYE;
      case HEAT_SET -> medium == Medium.PAINT;
      default -> true;
    };
  }

  /** What was fixed or lay in water is no film any more that dries as it was printed. */
  private static boolean ends(Taken taken, Impression film) {
    return switch (taken.kind()) {
      case FIX, HEAT_SET -> concerns(taken, film);
      case RINSE, WASH -> true;
      default -> false;
    };
  }

  /**
   * @param needed how dry it must be
   * @param printed when the last film before it was lifted
   * @param wet films that are not surely safe
   * @param slowest the one that dries last
   * @param safe when that would be safe if it were waited for
   */
  record Occasion(
      Taken taken,
      Dryness needed,
      Moment printed,
      List<Impression> wet,
      Impression slowest,
      Reached safe) {

    static Occasion of(DayRun day, Taken taken, Dryness needed, List<Impression> all) {
      Moment now = new Moment(taken.second());
      List<Impression> wet = new ArrayList<>();
      Impression slowest = null;
      Reached last = null;
      for (Impression film : all) {
        if (film.film().in(needed).latest().compareTo(now) <= 0) {
          continue;
        }
        Reached safe = ifLeft(day, taken, needed, film);
        if (!safe.never()) {
          wet.add(film);
          if (last == null || SLOWEST_LAST.compare(safe, last) > 0) {
            slowest = film;
            last = safe;
          }
        }
      }
      return slowest == null
          ? null
          : new Occasion(
              taken,
              needed,
              day.impressions().get(taken.filmsBefore() - 1).lifted(),
              wet,
              slowest,
              last);
    }

    private double missing() {
      return safe.best().seconds() - taken.second();
    }

    Chance chance() {
      return safe.chanceAfter(new Moment(taken.second()));
    }

    Occasion worse(Occasion other) {
      int more = other.chance().compareTo(chance());
      return more > 0 || more == 0 && other.missing() > missing() ? other : this;
    }
  }

  /** When a film would be safe if the cloth lay on, in the air of the wait that is missing. */
  private static Reached ifLeft(DayRun day, Taken taken, Dryness needed, Impression film) {
    return day.run()
        .cloth()
        .ifLeft(
            needed,
            day.run().printed().get(film.id()),
            film.film().in(needed),
            taken.second(),
            taken.step() instanceof PrintStep print
                ? print.beforeMoving().air()
                : Optional.empty());
  }

  private static ClothTakenUp tell(
      Occasion occasion, int times, Function<Remedy, Trials.Outcome> trial) {
    Taken taken = occasion.taken();
    Impression slowest = occasion.slowest();
    Reached safe = occasion.safe();
    Moment now = new Moment(taken.second());
    boolean ever = safe.latest().compareTo(Reached.NEVER) < 0;
    Remedy ordinary =
        remedy(occasion, safe.best().compareTo(now) > 0 || !ever ? safe.best() : safe.latest());
    Remedy remedy = ever ? remedy(occasion, safe.latest()) : ordinary;
    Trials.Outcome tried = trial.apply(remedy);
    boolean late = tried.late().isPresent();
    return new ClothTakenUp(
        taken.kind(),
        taken.step().number(),
        taken.step(),
        occasion.chance(),
        occasion.wet().size(),
        times,
        occasion.needed().text(),
        BeforeSafe.of(safe, now),
        slowest.footprint().placement().name() + ", " + Causes.colour(slowest),
        slowest.footprint().paste().medium() == Medium.PAINT,
        now,
        safe.best(),
        safe.latest(),
        ordinary,
        tried,
        late && (ordinary.equals(remedy) || trial.apply(ordinary).late().isPresent()),
        late ? night(occasion, trial) : Optional.empty(),
        taken.step().path(),
        List.of(new Related(Tie.FILM, slowest.path())),
        marks(occasion.wet()));
  }

  private static Remedy remedy(Occasion occasion, Moment safe) {
    Taken taken = occasion.taken();
    Moment idle = new Moment(taken.idleFrom());
    long minutes = (long) safe.since(idle).wholeMinutesUp().minutes();
    if (taken.step() instanceof PrintStep print) {
      Wait present = print.beforeMoving();
      // In still air the wait counts from the last lift, in moved air from when the air moves.
      boolean blown = present.air().isPresent() && present.until() instanceof Until.Time;
      long whole =
          blown
              ? minutes + (long) Math.ceil(((Until.Time) present.until()).span().minutes())
              : (long) safe.since(occasion.printed()).wholeMinutesUp().minutes();
      return new Remedy(
          Remedy.How.BEFORE_MOVING, print.number(), whole, present.air(), occasion.needed());
    }
    return new Remedy(
        Remedy.How.DRY_STEP, taken.step().number(), minutes, Optional.empty(), occasion.needed());
  }

  /**
   * The day's end before the step, if films that dry on overnight are safe then and that keeps
   * nobody past closing. A batch wants its print damp, so it waits for no morning.
   */
  private static Optional<Trials.Outcome> night(
      Occasion occasion, Function<Remedy, Trials.Outcome> trial) {
    Taken taken = occasion.taken();
    if (taken.step() instanceof PrintStep
        || occasion.needed() != Dryness.FIX_SAFE && taken.kind() == Task.Kind.FIX) {
      return Optional.empty();
    }
    return Optional.of(trial.apply(Remedy.endOfDay(taken.step().number(), occasion.needed())))
        .filter(night -> night.finish().isPresent() && night.serves() && night.late().isEmpty());
  }

  private static List<String> marks(List<Impression> films) {
    Set<String> names = new LinkedHashSet<>();
    for (Impression film : films) {
      if (names.size() >= MOST_MARKS) {
        break;
      }
      names.add(film.footprint().placement().name());
    }
    return List.copyOf(names);
  }
}
