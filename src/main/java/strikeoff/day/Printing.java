package strikeoff.day;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import strikeoff.day.Passes.Pass;
import strikeoff.day.Sets.Motif;
import strikeoff.day.Sets.PrintSet;
import strikeoff.layout.Footprint;
import strikeoff.layout.FrameMeetings;
import strikeoff.plan.Begins;
import strikeoff.plan.PrintOrder;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.PrintStep;

/** Prints a step, pass by pass: by one person, or by several at once. */
final class Printing {

  private final PrintRun sets;
  private final OnTable table;
  private final Waiting waiting;
  private final Impressing impressing;
  private final Together together;

  Printing(PrintPlan plan, PrintRun sets, OnTable table, Waiting waiting, Impressing impressing) {
    this.sets = sets;
    this.table = table;
    this.waiting = waiting;
    this.impressing = impressing;
    this.together = new Together(plan, waiting, impressing);
  }

  List<Printed> printed() {
    return impressing.printed();
  }

  void print(PrintStep written) {
    Progress progress = new Progress(printed().size(), written.also());
    boolean alone = !written.beside() || together.impossible(written, sets.designs(written));
    PrintStep step =
        alone
            ? written.byOne()
            : written.people().isEmpty()
                ? written.by(List.of(impressing.shop().person(Optional.empty())))
                : written;
    List<Pass> passes = sets.passes(step);
    List<Footprint> frames = new ArrayList<>();
    for (Turn turn : turns(step, passes)) {
      frames.addAll(turn.frames());
    }
    impressing.shop().screens().toPrint(frames);
    int next = 0;
    long blows = Long.MAX_VALUE;
    while (next < passes.size() && !waiting.stops(step)) {
      show(step, passes.get(next).set());
      int first = next;
      Beside beside = neighbour(step, first);
      if (first == 0 && step.air().isPresent() && !waiting.stops(step)) {
        blows = beside.begin();
        impressing.cloth().blowWhilePrinting(step.air().get(), blows);
      }
      while (next < passes.size() && table.shows(passes.get(next).set())) {
        next++;
      }
      List<Pass> shown = passes.subList(first, next);
      if (!waiting.stops(step)) {
        if (alone) {
          shown.forEach(pass -> byOne(step, pass, frames, progress));
        } else {
          together.print(step, turns(step, shown), progress, beside);
        }
      }
    }
    if (blows < Long.MAX_VALUE) {
      long printed = impressing.shop().clothFree();
      impressing.shop().fanBeside(step, step.air().get(), blows, printed);
      impressing.cloth().printed(printed);
    }
  }

  /**
   * What prints beside the step above it begins where that one did; once it has moved the cloth, on
   * its own.
   */
  private Beside neighbour(PrintStep step, int passesBefore) {
    return step.begins() == Begins.WHEN_FREE && passesBefore == 0
        ? Beside.of(impressing)
        : Beside.nobody(impressing.shop());
  }

  /** Brings a set on to the table, after the wait before moving. */
  private void show(PrintStep step, PrintSet set) {
    if (table.shows(set)) {
      return;
    }
    if (!table.empty() && !printed().isEmpty()) {
      waiting.beforeMoving(step, impressing.lastLifted(), printed().size());
    }
    if (!waiting.stops(step)) {
      table.show(step, set, printed().size());
    }
  }

  /** What one person does at a stretch: a colour over a set, or all colours at a station. */
  record Turn(int set, List<Footprint> frames) {}

  private static List<Turn> turns(PrintStep step, List<Pass> passes) {
    List<Turn> turns = new ArrayList<>();
    for (Pass pass : passes) {
      turns.addAll(turns(step, pass));
    }
    return turns;
  }

  private static List<Turn> turns(PrintStep step, Pass pass) {
    List<Turn> turns = new ArrayList<>();
    List<Motif> order = order(step, pass);
    if (step.order() == PrintOrder.BY_STATION) {
      for (Motif motif : order) {
        turns.add(
            new Turn(
                pass.set().number(),
                motif.colours().subList(pass.firstColour(), pass.endColour())));
      }
    } else {
      for (int colour = pass.firstColour(); colour < pass.endColour(); colour++) {
        int which = colour;
        turns.add(
            new Turn(
                pass.set().number(), order.stream().map(m -> m.colours().get(which)).toList()));
      }
    }
    return turns;
  }

  /**
   * @param all frames of the step, in order
   */
  private void byOne(PrintStep step, Pass pass, List<Footprint> all, Progress progress) {
    boolean byStation = step.order() == PrintOrder.BY_STATION;
    List<Turn> turns = turns(step, pass);
    // The first of the placements 2, 4, 6 …
    int between = (pass.set().motifs().size() + 1) / 2;
    for (int turn = 0; turn < turns.size(); turn++) {
      List<Footprint> frames = turns.get(turn).frames();
      ColourRun run = null;
      for (int i = 0; i < frames.size(); i++) {
        if (waiting.stops(step)) {
          return;
        }
        if (byStation || i == 0) {
          List<Footprint> own = byStation ? List.of(frames.get(i)) : frames;
          run = new ColourRun(step, own, impressing.meetings(), printed().size());
          waiting.betweenColours(step, run, printed(), progress);
        }
        boolean passes = step.everyOther() && pass.set().motifs().size() > 1;
        if (passes && (byStation ? turn == between && i == 0 : i == between)) {
          waiting.betweenPasses(step, impressing.lastLifted());
          progress.passes++;
        }
        if (step.mindsNeighbours()) {
          waiting.betweenNeighbours(
              step, progress.jobs(impressing.meetings()).neighbours(frames.get(i)));
        }
        if (!waiting.stops(step)) {
          Printed done = impressing.alone(step, pass.set().number(), frames.get(i), run, progress);
          if (step.mindsNeighbours()) {
            progress.jobs(impressing.meetings()).add(Job.made(done));
          }
          if (step.washBetweenColours()) {
            washBefore(step, frames.get(i), all.subList(progress.impressions, all.size()));
          }
        }
      }
    }
  }

  /**
   * Washes the screen out if another one prints next; at the end of the step that is done anyway.
   */
  private void washBefore(PrintStep step, Footprint frame, List<Footprint> left) {
    String screen = frame.screen().name();
    if (!left.isEmpty() && !left.get(0).screen().name().equals(screen)) {
      impressing.shop().screens().wash(step, screen);
    }
  }

  static List<Motif> order(PrintStep step, Pass pass) {
    List<Motif> motifs = pass.set().motifs();
    return step.everyOther() ? Sets.everyOther(motifs) : new ArrayList<>(motifs);
  }

  /** How far a print step has come. */
  static final class Progress {
    final Map<String, Long> ended = new HashMap<>();
    final List<String> named;
    List<Printed> maybeWet = new ArrayList<>();
    int looked;
    int blown;
    int impressions;
    int passes;
    private Jobs jobs;

    /**
     * @param first how many impressions there were before the step
     * @param named who is named for it besides the first
     */
    Progress(int first, List<String> named) {
      this.named = named;
      this.looked = first;
      this.blown = first;
    }

    /** What several people have printed of the step. */
    Jobs jobs(FrameMeetings meetings) {
      if (jobs == null) {
        jobs = new Jobs(meetings);
      }
      return jobs;
    }
  }
}
