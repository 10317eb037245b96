package strikeoff.day;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import strikeoff.day.Job.Start;
import strikeoff.day.Printing.Progress;
import strikeoff.day.Printing.Turn;
import strikeoff.drying.DryingClock;
import strikeoff.layout.Footprint;
import strikeoff.plan.Design;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.PrintStep;
import strikeoff.plan.Until;

/**
 * Several people print at once what lies on the table. They go through the same impressions as one
 * person would, in the same order: colour by colour, or station by station, the next turn is taken
 * by whoever is free first. An impression waits for its own hands and screen, for the colour before
 * it, for what lies under its frame to dry, and for frames in the way that come before it in that
 * order; one person would wait for all of these too, so nobody who helps ever makes it later. A fan
 * between colours runs for as long as they print, since some film dries all the time.
 */
public final class Together {

  private final PrintPlan plan;
  private final Waiting waiting;
  private final Impressing impressing;
  private final Workshop shop;

  Together(PrintPlan plan, Waiting waiting, Impressing impressing) {
    this.plan = plan;
    this.waiting = waiting;
    this.impressing = impressing;
    this.shop = impressing.shop();
  }

  /**
   * True, and told, if two colours that the step prints of a design go through one screen with
   * different pastes; true also if a frame takes two people to lay, since then they cannot print
   * apart.
   */
  boolean impossible(PrintStep step, List<Design> designs) {
    List<String> people = step.people();
    boolean twice = impressing.anyNeedsTwo(designs);
    if (people.size() < 2) {
      return twice;
    }
    for (Design design : designs) {
      Map<String, Design.Separation> first = new LinkedHashMap<>();
      for (Design.Separation separation : design.separations()) {
        boolean printed =
            step.separations().isEmpty() || step.separations().contains(separation.number());
        Design.Separation other =
            printed ? first.putIfAbsent(separation.screen(), separation) : null;
        if (other != null && !other.paste().equals(separation.paste())) {
          impressing
              .blocked()
              .screen(
                  step,
                  separation.screen(),
                  people.get(0),
                  other.paste(),
                  people.get(1),
                  separation.paste());
          twice = true;
        }
      }
    }
    return twice;
  }

  /** All that the table shows; where a screen holds another paste, all stop until it is washed. */
  void print(PrintStep step, List<Turn> turns, Progress progress, Beside beside) {
    int next = 0;
    while (next < turns.size() && !waiting.stops(step)) {
      turns
          .get(next)
          .frames()
          .forEach(f -> shop.screens().exchange(step, screen(f), f.paste().name()));
      // Whoever washes a screen first goes on when all have finished.
      Planned planned = new Planned(step, progress, next == 0 ? beside : Beside.nobody(shop));
      do {
        planned.take(turns.get(next++));
      } while (next < turns.size() && !planned.mustWash(turns.get(next)));
      planned.book();
    }
  }

  private static String screen(Footprint footprint) {
    return footprint.screen().name();
  }

  /** What is printed between two washings of screens: first planned in order, then booked. */
  private final class Planned {

    private final PrintStep step;
    private final Progress progress;
    private final Beside beside;
    private final long begin;
    private final long lay = Workshop.seconds(plan.handling().lay());
    private final List<Job> jobs = new ArrayList<>();
    private final Map<String, Job> lastBy = new HashMap<>();
    private final Map<String, Job> lastWith = new HashMap<>();
    private final Map<String, Integer> prints = new HashMap<>();
    private Optional<Until> neverDry = Optional.empty();

    Planned(PrintStep step, Progress progress, Beside beside) {
      this.step = step;
      this.progress = progress;
      this.beside = beside;
      this.begin = beside.begin();
      progress.jobs(impressing.meetings()).allDone();
      step.dryBetweenColours().air().ifPresent(air -> impressing.cloth().blow(air, begin));
    }

    boolean mustWash(Turn turn) {
      return turn.frames().stream()
          .anyMatch(
              f -> {
                Job last = lastWith.get(screen(f));
                String paste = f.paste().name();
                return last == null
                    ? shop.screens().mustWash(screen(f), paste)
                    : !last.footprint().paste().name().equals(paste);
              });
    }

    void take(Turn turn) {
      String person = whoTakes(turn);
      for (Footprint footprint : turn.frames()) {
        if (neverDry.isPresent()) {
          return;
        }
        Job job = job(turn.set(), footprint, person);
        if (job.start() >= DryingClock.NEVER) {
          neverDry =
              Optional.of(
                  job.waitsFor().cause() == Doing.Wait.BETWEEN_NEIGHBOURS
                      ? step.dryBetweenNeighbours()
                      : step.dryBetweenColours().until());
        } else {
          jobs.add(job);
          progress.jobs(impressing.meetings()).add(job);
          prints.merge(person, 1, Integer::sum);
          lastBy.put(person, job);
          lastWith.put(screen(footprint), job);
        }
      }
    }

    /**
     * Whoever is free first; of several the one who has its screen in hand, else the one who has
     * printed least. Whoever joins in then makes nobody later: there is never a later one to take.
     */
    private String whoTakes(Turn turn) {
      Footprint first = turn.frames().get(0);
      Job last = lastWith.get(screen(first));
      return step.people().stream()
          .min(
              Comparator.comparingLong((String who) -> shop.over(free(who).second()))
                  .thenComparing(who -> last == null || !last.person().equals(who))
                  .thenComparingInt(who -> prints.getOrDefault(who, 0)))
          .orElseThrow();
    }

    /** When somebody can begin another impression. */
    private Start free(String person) {
      Start start = new Start(begin, Doing.Wait.PAUSE, null, HeldUp.NOBODY);
      long pause = Workshop.seconds(step.pause());
      Job last = lastBy.get(person);
      if (last != null) {
        return start.later(last.end() + pause, pause > 0 ? Doing.Wait.PAUSE : isFree(person), last);
      }
      int task = shop.lastOf(Resource.person(person));
      Long ended = progress.ended.get(person);
      start = start.later(shop.freeAt(Resource.person(person)), isFree(person), task);
      return ended == null ? start : start.later(ended + pause, Doing.Wait.PAUSE, task);
    }

    private static Doing isFree(String person) {
      return new Doing.IsFree(person);
    }

    private Job job(int set, Footprint footprint, String person) {
      Start start = free(person);
      Job last = lastWith.get(screen(footprint));
      Doing isFree = new Doing.ScreenIsFree(screen(footprint));
      Resource screen = Resource.screen(screen(footprint));
      start =
          last == null
              ? start.later(shop.freeAt(screen), isFree, shop.lastOf(screen))
              : start.later(last.end(), isFree, last);
      String paste = footprint.paste().name();
      int mixing = shop.heldUp().mixingOf(paste);
      start = start.later(shop.mixedAt(paste), new Doing.Mixed(paste), mixing);
      Jobs sofar = progress.jobs(impressing.meetings());
      for (Job before : sofar.before(footprint)) {
        start = start.later(before.end(), Doing.Others.EARLIER_PRINT, before);
      }
      List<Job> under = sofar.under(footprint);
      for (Job film : under) {
        start =
            start.later(
                dried(film, step.dryBetweenColours().until()), Doing.Wait.BETWEEN_COLOURS, film);
      }
      List<Job> neighbours = step.mindsNeighbours() ? sofar.neighbours(footprint) : List.of();
      for (Job film : neighbours) {
        start =
            start.later(
                dried(film, step.dryBetweenNeighbours()), Doing.Wait.BETWEEN_NEIGHBOURS, film);
      }
      for (Job other : sofar.inTheWay(footprint)) {
        start = start.later(other.end() - lay, Doing.Others.FRAME, other);
      }
      start = beside.after(start, footprint, impressing.meetings(), lay);
      long begins = shop.over(start.second());
      return new Job(
          set,
          footprint,
          person,
          under,
          neighbours,
          start,
          begins,
          begins + impressing.seconds(footprint),
          new Job.Made());
    }

    private long dried(Job film, Until until) {
      if (until instanceof Until.State state) {
        return impressing.cloth().dry(state.dryness(), film.footprint(), film.end());
      }
      return film.end() + Workshop.seconds(((Until.Time) until).span());
    }

    private void feel(Until until, List<Job> films, long second) {
      if (until instanceof Until.State state) {
        List<Printed> felt = films.stream().map(film -> film.made().printed).toList();
        impressing.cloth().feel(state.dryness(), felt, second);
      }
    }

    void book() {
      jobs.sort(Comparator.comparingLong(Job::start));
      // Nobody waits while others print beside.
      long busyUntil = Math.max(begin, shop.freeAt(Resource.CLOTH));
      for (Job job : jobs) {
        if (waiting.stops(step)) {
          break;
        }
        int after = job.waitsFor().after();
        long ready = job.waitsFor().second();
        if (ready > busyUntil) {
          shop.everybodyWaits(step, job.waitsFor().cause(), busyUntil, ready, after);
        } else if (after >= 0) {
          shop.heldUp().byTask(after);
        } else if (ready == begin) {
          shop.heldUp().byTask(beside.after());
        }
        feel(step.dryBetweenColours().until(), job.under(), job.start());
        feel(step.dryBetweenNeighbours(), job.neighbours(), job.start());
        job.made().printed = impressing.beside(step, job, progress);
        job.made().task = shop.tasks().size() - 1;
        busyUntil = Math.max(busyUntil, job.end());
      }
      if (neverDry.isPresent() && neverDry.get() instanceof Until.State state) {
        impressing.blocked().dryness(step, state.dryness());
      }
      shop.clothBusyUntil(busyUntil);
      step.dryBetweenColours()
          .air()
          .ifPresent(
              air -> {
                shop.fanBeside(step, air, begin, shop.clothFree());
                impressing.cloth().still(shop.clothFree());
              });
    }
  }
}
