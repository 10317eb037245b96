package strikeoff.timeline;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import strikeoff.drying.DryingClock;
import strikeoff.layout.Footprint;
import strikeoff.layout.Tube;
import strikeoff.plan.Design;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Step;
import strikeoff.plan.Until;
import strikeoff.timeline.Passes.Pass;
import strikeoff.timeline.Printing.Progress;
import strikeoff.timeline.Sets.Motif;

/**
 * Several people print one set at once. Colour by colour each takes every so-manieth colour and
 * follows behind the one before; station by station each takes every so-manieth station. A colour
 * is laid on a motif once the one before it there has been let dry, when its screen is free, and
 * when nobody else's frame lies in the way. Whoever can begin first does. A fan between colours
 * runs for as long as they print, since some film dries all the time.
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

  /**
   * True, and told, if two colours of a design go through one screen with different pastes; true
   * also if a frame takes two people to lay, since then they cannot print apart.
   */
  boolean impossible(Step.Print step, List<Design> designs) {
    List<String> people = people(step);
    boolean twice = impressing.anyNeedsTwo(designs);
    for (Design design : designs) {
      Map<String, Design.Separation> first = new LinkedHashMap<>();
      for (Design.Separation separation : design.separations()) {
        Design.Separation other = first.putIfAbsent(separation.screen(), separation);
        boolean printed =
            step.separations().isEmpty() || step.separations().contains(separation.number());
        if (printed && other != null && !other.paste().equals(separation.paste())) {
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

  /** One impression to make, after the one before it on the same motif. */
  private record Job(int motif, int colour, Footprint footprint, String person) {}

  /** When a job can start, and what it waits for till then. */
  private record Start(long second, String cause, int after) {}

  void print(Step.Print step, Pass pass, Progress progress) {
    Map<String, Deque<Job>> jobs = jobs(step, pass);
    Map<Integer, Printed> last = new HashMap<>();
    List<Printed> lying = new ArrayList<>();
    Workshop shop = impressing.shop();
    for (Motif motif : pass.set().motifs()) {
      for (Footprint footprint : motif.colours()) {
        shop.exchange(step, shop.washer(step), footprint.screen().name(), footprint.paste().name());
      }
    }
    long begin = shop.clothFree();
    step.dryBetweenColours().air().ifPresent(air -> impressing.cloth().blow(air, begin));
    long busyUntil = begin;
    int waitsBefore = progress.waits;
    while (true) {
      Job next = null;
      Start start = null;
      for (Deque<Job> own : jobs.values()) {
        Job job = own.peek();
        if (job != null && ready(job, pass, last)) {
          Start at = start(step, job, begin, last, lying, progress);
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
      jobs.get(next.person()).poll();
      progress.waits = waitsBefore + next.colour() - pass.firstColour();
      Printed done =
          impressing.beside(
              step, pass.set().number(), next.footprint(), next.person(), start.second(), progress);
      busyUntil = Math.max(busyUntil, done.lifted());
      last.put(next.motif(), done);
      lying.removeIf(p -> p.lifted() <= done.laid());
      lying.add(done);
    }
    progress.waits = waitsBefore + pass.endColour() - pass.firstColour();
    shop.clothBusyUntil(busyUntil);
    step.dryBetweenColours()
        .air()
        .ifPresent(
            air -> {
              shop.fanBeside(step, air, begin, shop.clothFree());
              impressing.cloth().still(shop.clothFree());
            });
  }

  private static boolean ready(Job job, Pass pass, Map<Integer, Printed> last) {
    if (job.colour() == pass.firstColour()) {
      return true;
    }
    Printed before = last.get(job.motif());
    Footprint wanted = pass.set().motifs().get(job.motif()).colours().get(job.colour() - 1);
    return before != null && before.footprint() == wanted;
  }

  private Start start(
      Step.Print step,
      Job job,
      long begin,
      Map<Integer, Printed> last,
      List<Printed> lying,
      Progress progress) {
    Workshop shop = impressing.shop();
    String screen = job.footprint().screen().name();
    Start start = new Start(begin, "pause", HeldUp.NOBODY);
    long person = shop.freeAt(Resource.person(job.person()));
    long pause = progress.impressions > 0 ? Workshop.seconds(step.pause()) : 0;
    start = later(start, person + pause, "pause", shop.lastOf(Resource.person(job.person())));
    start =
        later(
            start,
            shop.freeAt(Resource.screen(screen)),
            "screen " + screen + " is free",
            shop.lastOf(Resource.screen(screen)));
    start =
        later(
            start,
            shop.mixedAt(job.footprint().paste().name()),
            "paste " + job.footprint().paste().name() + " is mixed",
            shop.heldUp().mixingOf(job.footprint().paste().name()));
    Printed before = last.get(job.motif());
    if (before != null) {
      start =
          later(
              start,
              dried(step, before),
              "dry between colours",
              shop.lastOf(Resource.screen(before.footprint().screen().name())));
    }
    long lay = Workshop.seconds(plan.handling().lay());
    for (Printed other : lying) {
      boolean inTheWay = tube.overlaps(other.footprint().frame(), job.footprint().frame());
      if (inTheWay) {
        Resource itsScreen = Resource.screen(other.footprint().screen().name());
        start =
            later(
                start, other.lifted() - lay, "another frame is in the way", shop.lastOf(itsScreen));
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

  private static Map<String, Deque<Job>> jobs(Step.Print step, Pass pass) {
    List<String> people = people(step);
    Map<String, Deque<Job>> jobs = new LinkedHashMap<>();
    people.forEach(person -> jobs.put(person, new ArrayDeque<>()));
    List<Integer> order = order(step, pass);
    boolean byStation = step.order() == Step.Order.BY_STATION;
    int outer = byStation ? order.size() : pass.endColour() - pass.firstColour();
    int inner = byStation ? pass.endColour() - pass.firstColour() : order.size();
    for (int i = 0; i < outer; i++) {
      Deque<Job> own = jobs.get(people.get(i % people.size()));
      for (int j = 0; j < inner; j++) {
        int motif = order.get(byStation ? i : j);
        int colour = pass.firstColour() + (byStation ? j : i);
        Footprint footprint = pass.set().motifs().get(motif).colours().get(colour);
        own.add(new Job(motif, colour, footprint, people.get(i % people.size())));
      }
    }
    return jobs;
  }

  /** Indices of the set's motifs in the order in which they are printed. */
  private static List<Integer> order(Step.Print step, Pass pass) {
    List<Integer> all = new ArrayList<>();
    for (int motif = 0; motif < pass.set().motifs().size(); motif++) {
      all.add(motif);
    }
    return step.everyOther() ? Sets.everyOther(all) : all;
  }

  private static List<String> people(Step.Print step) {
    List<String> people = new ArrayList<>();
    step.by().ifPresent(people::add);
    people.addAll(step.also());
    return people;
  }
}
