package strikeoff.timeline;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import strikeoff.plan.Evidence.Related;
import strikeoff.plan.Medium;
import strikeoff.plan.Step;
import strikeoff.plan.Until;
import strikeoff.plan.Until.Dryness;
import strikeoff.plan.Wait;
import strikeoff.timeline.OnTable.Taken;

/** Finds where the cloth is taken up too wet, each step told once by its worst occasion. */
final class TakingUp {

  private static final int MOST_MARKS = 40;

  private static final Comparator<Reached> SLOWEST_LAST =
      Comparator.comparing(Reached::earliest)
          .thenComparing(Reached::best)
          .thenComparing(Reached::latest);

  private TakingUp() {}

  /**
   * @param finish when the run ends with a remedy, if that can be told
   */
  static List<TakenUpWet> all(Timeline.Day day, Function<Remedy, Optional<Moment>> finish) {
    Map<Integer, Occasion> worst = new LinkedHashMap<>();
    Map<Integer, Integer> occasions = new LinkedHashMap<>();
    List<Impression> wet = new ArrayList<>();
    int seen = 0;
    for (Taken taken : day.run().taken()) {
      for (; seen < taken.filmsBefore(); seen++) {
        wet.add(day.impressions().get(seen));
      }
      Moment now = new Moment(taken.second());
      wet.removeIf(i -> i.film().fixSafe().latest().compareTo(now) <= 0);
      Occasion occasion = Occasion.of(day, taken, wet);
      if (occasion != null) {
        occasions.merge(taken.step().number(), 1, Integer::sum);
        worst.merge(taken.step().number(), occasion, Occasion::worse);
      }
    }
    List<TakenUpWet> all = new ArrayList<>();
    worst.forEach((step, occasion) -> all.add(tell(occasion, occasions.get(step), finish)));
    return all;
  }

  /**
   * @param printed when the last film before it was lifted
   * @param wet films that are surely not safe; if there are none, those that are not surely safe
   * @param slowest the one that dries last
   * @param safe when that would be safe if it were waited for
   */
  private record Occasion(
      Taken taken, Moment printed, List<Impression> wet, Impression slowest, Reached safe) {

    static Occasion of(Timeline.Day day, Taken taken, List<Impression> all) {
      Moment now = new Moment(taken.second());
      List<Impression> wet = new ArrayList<>();
      List<Impression> surelyWet = new ArrayList<>();
      Impression slowest = null;
      Reached last = null;
      for (Impression film : all) {
        if (inTheRun(taken, film).latest().compareTo(now) <= 0) {
          continue;
        }
        Reached safe = ifLeft(day, taken, film);
        if (!safe.never()) {
          wet.add(film);
          if (safe.earliest().compareTo(now) > 0) {
            surelyWet.add(film);
          }
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
              day.impressions().get(taken.filmsBefore() - 1).lifted(),
              surelyWet.isEmpty() ? wet : surelyWet,
              slowest,
              last);
    }

    private Reached missing() {
      return new Reached(
          new Moment(safe.earliest().seconds() - taken.second()),
          new Moment(safe.best().seconds() - taken.second()),
          new Moment(safe.latest().seconds() - taken.second()));
    }

    Occasion worse(Occasion other) {
      return SLOWEST_LAST.compare(other.missing(), missing()) > 0 ? other : this;
    }
  }

  /** When a film would be safe if the cloth lay on, in the air of the wait that is missing. */
  private static Reached ifLeft(Timeline.Day day, Taken taken, Impression film) {
    return day.run()
        .cloth()
        .ifLeft(
            state(taken),
            day.run().printed().get(film.id()),
            inTheRun(taken, film),
            taken.second(),
            taken.step() instanceof Step.Print print
                ? print.beforeMoving().air()
                : Optional.empty());
  }

  private static Reached inTheRun(Taken taken, Impression film) {
    return state(taken) == Dryness.LIFT_SAFE ? film.film().liftSafe() : film.film().fixSafe();
  }

  private static Dryness state(Taken taken) {
    return taken.kind() == Task.Kind.MOVE || taken.kind() == Task.Kind.SEW
        ? Dryness.LIFT_SAFE
        : Dryness.FIX_SAFE;
  }

  private static TakenUpWet tell(
      Occasion occasion, int times, Function<Remedy, Optional<Moment>> finish) {
    Taken taken = occasion.taken();
    Impression slowest = occasion.slowest();
    Reached safe = occasion.safe();
    Moment now = new Moment(taken.second());
    Remedy surely = remedy(occasion, safe.latest());
    Remedy remedy = safe.best().compareTo(now) > 0 ? remedy(occasion, safe.best()) : surely;
    return new TakenUpWet(
        taken.kind(),
        done(taken.kind()),
        taken.step().number(),
        taken.step().title(),
        safe.earliest().compareTo(now) > 0,
        occasion.wet().size(),
        times,
        state(taken).text(),
        safe.earliest().since(now),
        safe.best().since(now),
        safe.latest().since(now),
        slowest.footprint().placement().name() + ", " + Causes.colour(slowest),
        slowest.footprint().paste().medium() == Medium.PAINT,
        now,
        safe.best(),
        safe.latest(),
        remedy,
        surely,
        finish.apply(remedy),
        until(taken),
        taken.step().path(),
        List.of(new Related("the film", slowest.path())),
        marks(occasion.wet()));
  }

  private static Remedy remedy(Occasion occasion, Moment safe) {
    Taken taken = occasion.taken();
    Moment idle = new Moment(taken.idleFrom());
    long minutes = (long) safe.since(idle).wholeMinutesUp().minutes();
    if (taken.step() instanceof Step.Print print) {
      Wait present = print.beforeMoving();
      // A wait until some state is replaced by one in minutes, which begins when that one began.
      double waited =
          present.until() instanceof Until.Time time
              ? time.span().minutes()
              : idle.since(occasion.printed()).minutes();
      long whole = minutes + (long) Math.ceil(waited);
      return new Remedy(Remedy.How.BEFORE_MOVING, print.number(), whole, present.air());
    }
    return new Remedy(Remedy.How.DRY_STEP, taken.step().number(), minutes, Optional.empty());
  }

  private static String until(Taken taken) {
    int step = taken.step().number();
    return taken.step() instanceof Step.Print print
        ? "`before moving: "
            + new Wait(new Until.State(Dryness.LIFT_SAFE), print.beforeMoving().air()).text()
            + "` in step "
            + step
        : "a step `- dry: until " + state(taken).text() + "` before step " + step;
  }

  private static String done(Task.Kind kind) {
    return switch (kind) {
      case MOVE -> "moved on";
      case SEW -> "sewn";
      case FIX -> "put to fixing";
      case RINSE -> "rinsed";
      case WASH -> "washed";
      default -> "heat-set";
    };
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
