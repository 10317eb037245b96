package strikeoff.timeline;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import strikeoff.layout.Footprint;
import strikeoff.plan.Design;
import strikeoff.plan.PrintPlan;
import strikeoff.plan.Step;
import strikeoff.timeline.Passes.Pass;
import strikeoff.timeline.Sets.Motif;

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

  void print(Step.Print written) {
    Progress progress = new Progress();
    boolean alone = written.also().isEmpty() || together.impossible(written, sets.designs(written));
    Step.Print step = alone ? written.byOne() : written;
    List<Pass> passes = Passes.of(step, sets);
    Map<String, Integer> colours = alone ? Map.of() : coloursBefore(passes);
    for (int i = 0; i < passes.size(); i++) {
      Pass pass = passes.get(i);
      boolean onTable = !table.empty();
      if (!table.shows(pass.set())) {
        if (onTable) {
          waiting.until(step, step.beforeMoving(), "before moving");
        }
        if (waiting.stops(step)) {
          return;
        }
        table.show(step, pass.set(), printed().size());
        progress.colour = null;
      }
      if (!alone) {
        i += together(step, passes.subList(i, passes.size()), colours, progress) - 1;
      } else if (step.order() == Step.Order.BY_STATION) {
        byStation(step, pass, progress);
      } else {
        byColour(step, pass, progress);
      }
      if (waiting.stops(step)) {
        return;
      }
    }
  }

  /**
   * Prints the first pass and those after it that need no other stretch of cloth and no screen
   * washed first.
   *
   * @return how many
   */
  private int together(
      Step.Print step, List<Pass> passes, Map<String, Integer> colours, Progress progress) {
    Jobs jobs = new Jobs(step, together.tube(), colours, progress.waits);
    int count = 0;
    while (count < passes.size()
        && table.shows(passes.get(count).set())
        && (count == 0 || !together.washesFirst(passes.get(count)))
        && jobs.add(passes.get(count))) {
      count++;
    }
    together.print(step, passes.subList(0, count), jobs, progress);
    return count;
  }

  /** How many colours the arrangements before each one of a step have. */
  private static Map<String, Integer> coloursBefore(List<Pass> passes) {
    Map<String, Integer> before = new LinkedHashMap<>();
    int colours = 0;
    for (Pass pass : passes) {
      Motif first = pass.set().motifs().get(0);
      if (before.putIfAbsent(first.placement().arrangement(), colours) == null) {
        colours += first.colours().size();
      }
    }
    return before;
  }

  private void byColour(Step.Print step, Pass pass, Progress progress) {
    List<Motif> order = order(step, pass);
    for (int colour = pass.firstColour(); colour < pass.endColour(); colour++) {
      for (Motif motif : order) {
        Footprint footprint = motif.colours().get(colour);
        Design.Separation now = footprint.separation();
        if (progress.colour != null && progress.colour != now) {
          letDry(step, progress);
        }
        progress.colour = now;
        betweenPasses(step, order, motif, progress);
        impress(step, pass, footprint, progress);
        if (waiting.stops(step)) {
          return;
        }
      }
    }
  }

  private void byStation(Step.Print step, Pass pass, Progress progress) {
    List<Motif> order = order(step, pass);
    for (Motif motif : order) {
      boolean first = true;
      betweenPasses(step, order, motif, progress);
      for (Footprint footprint : motif.colours()) {
        if (!first) {
          letDry(step, progress);
        }
        first = false;
        impress(step, pass, footprint, progress);
        if (waiting.stops(step)) {
          return;
        }
      }
    }
  }

  static List<Motif> order(Step.Print step, Pass pass) {
    List<Motif> motifs = pass.set().motifs();
    return step.everyOther() ? Sets.everyOther(motifs) : new ArrayList<>(motifs);
  }

  /** Before the first of the placements 2, 4, 6 …. */
  private void betweenPasses(Step.Print step, List<Motif> order, Motif next, Progress progress) {
    if (step.everyOther() && order.size() > 1 && next == order.get((order.size() + 1) / 2)) {
      waiting.until(step, step.dryBetweenPasses(), "dry between passes");
      progress.passes++;
    }
  }

  private void letDry(Step.Print step, Progress progress) {
    waiting.until(step, step.dryBetweenColours(), "dry between colours");
    progress.waits++;
  }

  private void impress(Step.Print step, Pass pass, Footprint footprint, Progress progress) {
    if (!waiting.stops(step)) {
      impressing.alone(step, pass.set().number(), footprint, progress);
    }
  }

  /** How far a print step has come. */
  static final class Progress {
    Design.Separation colour;
    int waits;
    int impressions;
    int passes;
  }
}
