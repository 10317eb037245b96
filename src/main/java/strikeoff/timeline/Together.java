package strikeoff.timeline;

import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import strikeoff.drying.DryingClock;
import strikeoff.layout.Footprint;
import strikeoff.layout.Tube;
import strikeoff.plan.Design;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Step;
import strikeoff.plan.Until;
import strikeoff.timeline.Passes.Pass;
import strikeoff.timeline.Printing.Progress;

/**
 * Several people print at once what lies on the table. Colour by colour each takes every so-manieth
 * colour and follows behind the one before; station by station each takes every so-manieth station.
 * Who is done with one arrangement runs ahead to the next. A colour is laid once the one before it
 * there, and what of earlier arrangements lies under its frame, has been let dry, when its screen
 * is free, and when nobody else's frame lies in the way. Whoever can begin first does. A fan
 * between colours runs for as long as they print, since some film dries all the time.
 */
final class Together {

  private final PrintPlan plan;
  private final Waiting waiting;
  private final Impressing impressing;
  private final Tube tube;

  Together(PrintPlan plan, Waiting waiting, Impressing impressing) {
    this.plan = plan;
    this.waiting = waiting;
    this.impressing = impressing;
    this.tube = Tube.of(plan.cloth());
  }

  Tube tube() {
    return tube;
  }

  /**
   * True, and told, if two colours that the step prints of a design go through one screen with
   * different pastes; true also if a frame takes two people to lay, since then they cannot print
   * apart.
   */
  boolean impossible(Step.Print step, List<Design> designs) {
    List<String> people = Jobs.people(step);
    boolean twice = impressing.anyNeedsTwo(designs);
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

  /** When a job can start, and what it waits for till then. */
  private record Start(long second, String cause, int after) {}

  /** Screens that hold another paste than the pass needs are washed out before anybody prints. */
  boolean washesFirst(Pass pass) {
    return footprints(pass)
        .anyMatch(f -> impressing.shop().mustWash(f.screen().name(), f.paste().name()));
  }

  private static Stream<Footprint> footprints(Pass pass) {
    return pass.set().motifs().stream()
        .flatMap(m -> m.colours().subList(pass.firstColour(), pass.endColour()).stream());
  }

  /** Passes that lie on the table together, each person going on to the next when free. */
  void print(Step.Print step, List<Pass> passes, Jobs jobs, Progress progress) {
    List<Printed> lying = new ArrayList<>();
    Workshop shop = impressing.shop();
    footprints(passes.get(0))
        .forEach(f -> shop.exchange(step, shop.washer(step), f.screen().name(), f.paste().name()));
    long begin = shop.clothFree();
    step.dryBetweenColours().air().ifPresent(air -> impressing.cloth().blow(air, begin));
    long busyUntil = begin;
    while (true) {
      Job next = null;
      Start start = null;
      for (Deque<Job> own : jobs.byPerson().values()) {
        Job job = own.peek();
        if (job != null && job.ready()) {
          Start at = start(step, job, begin, lying, progress);
          if (start == null || at.second() < start.second()) {
            next = job;
            start = at;
          }
        }
      }
      if (next == null || waiting.stops(step)) {
        break;
      }
      if (start.second() >= DryingClock.NEVER) {
        Until.State state = (Until.State) step.dryBetweenColours().until();
        impressing.blocked().dryness(step, state.dryness());
        break;
      }
      if (start.second() > busyUntil) {
        shop.everybodyWaits(step, start.cause(), busyUntil, start.second(), start.after());
      } else if (start.after() >= 0) {
        shop.heldUp().byTask(start.after());
      } else if (start.second() == begin) {
        shop.heldUp().by(Resource.CLOTH);
      }
      jobs.byPerson().get(next.person()).poll();
      progress.waits = next.waits();
      Printed made =
          impressing.beside(
              step, next.set(), next.footprint(), next.person(), start.second(), progress);
      next.done(made, shop.tasks().size() - 1);
      busyUntil = Math.max(busyUntil, made.lifted());
      // A frame lifted just then still holds up whoever waited for it.
      lying.removeIf(p -> p.lifted() < made.laid());
      lying.add(made);
    }
    progress.waits = jobs.waits();
    shop.clothBusyUntil(busyUntil);
    step.dryBetweenColours()
        .air()
        .ifPresent(
            air -> {
              shop.fanBeside(step, air, begin, shop.clothFree());
              impressing.cloth().still(shop.clothFree());
            });
  }

  private Start start(
      Step.Print step, Job job, long begin, List<Printed> lying, Progress progress) {
    Workshop shop = impressing.shop();
    Resource screen = Resource.screen(job.footprint().screen().name());
    Resource person = Resource.person(job.person());
    String paste = job.footprint().paste().name();
    long pause = progress.impressions > 0 ? Workshop.seconds(step.pause()) : 0;
    Start start = new Start(begin, Task.PAUSE, HeldUp.NOBODY);
    int last = shop.lastOf(person);
    long free = shop.freeAt(person);
    start = later(start, free, person.name() + " is free", last);
    start = later(start, free + pause, Task.PAUSE, last);
    start =
        later(
            start,
            shop.freeAt(screen),
            "screen " + screen.name() + " is free",
            shop.lastOf(screen));
    start =
        later(
            start,
            shop.mixedAt(paste),
            "paste " + paste + " is mixed",
            shop.heldUp().mixingOf(paste));
    for (Job before : job.after()) {
      start = later(start, dried(step, before.made()), "dry between colours", before.task());
    }
    long lay = Workshop.seconds(plan.handling().lay());
    for (Printed other : lying) {
      if (tube.overlaps(other.footprint().frame(), job.footprint().frame())) {
        Resource its = Resource.screen(other.footprint().screen().name());
        start = later(start, other.lifted() - lay, "another frame is in the way", shop.lastOf(its));
      }
    }
    return start;
  }

  private static Start later(Start start, long second, String cause, int after) {
    return second > start.second() ? new Start(second, cause, after) : start;
  }

  private long dried(Step.Print step, Printed before) {
    if (step.dryBetweenColours().until() instanceof Until.State state) {
      return impressing.cloth().feelAlone(state.dryness(), before);
    }
    Until.Time time = (Until.Time) step.dryBetweenColours().until();
    return before.lifted() + Workshop.seconds(time.span());
  }
}
