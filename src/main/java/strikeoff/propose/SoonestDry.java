package strikeoff.propose;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import strikeoff.day.facts.Rehearsal;
import strikeoff.layout.Footprint;
import strikeoff.plan.Draught;
import strikeoff.plan.Handling;
import strikeoff.plan.Medium;
import strikeoff.plan.Step;
import strikeoff.plan.Until.Dryness;
import strikeoff.units.Span;

/** How soon each print of a part can be made and dry, in the fastest air that may blow. */
final class SoonestDry {

  private final Leeway leeway;
  private final Rehearsal rehearsal;
  private final boolean slowly;

  /**
   * @param slowly as on a slow day
   */
  SoonestDry(Leeway leeway, Rehearsal rehearsal, boolean slowly) {
    this.leeway = leeway;
    this.rehearsal = rehearsal;
    this.slowly = slowly;
  }

  /** All prints of the part. */
  List<PrintTimes> films() {
    List<PrintTimes> films = new ArrayList<>();
    Map<Object, long[]> dried = new HashMap<>();
    for (Footprint footprint : leeway.own().films()) {
      long[] times = dried.computeIfAbsent(footprint.separation(), s -> times(footprint));
      films.add(
          new PrintTimes(
              footprint,
              takes(footprint),
              times[0],
              times[1],
              concerned(footprint.paste().medium()) ? times[wanted().ordinal()] : 0));
    }
    return films;
  }

  /** Seconds from fetching the frame to lifting it. */
  private long takes(Footprint footprint) {
    Handling takes = leeway.plan().handling();
    Span pulled =
        new Span(takes.pull().minutes() * footprint.separation().pulls() + takes.lift().minutes());
    return PrintTimes.seconds(takes.lay()) + PrintTimes.seconds(pulled);
  }

  /** Seconds until its film is as dry as each state wants it. */
  private long[] times(Footprint footprint) {
    long[] times = new long[3];
    for (Dryness state : Dryness.values()) {
      long best = Long.MAX_VALUE / 8;
      for (Optional<Draught> air : leeway.airs()) {
        Optional<Span> dries = rehearsal.dries(footprint, state, air, slowly);
        best = Math.min(best, dries.map(PrintTimes::seconds).orElse(best));
      }
      times[state.ordinal()] = best;
    }
    return times;
  }

  /** How dry the first of the last steps wants films: a batch is wrapped while they are damp. */
  private Dryness wanted() {
    return leeway.last().stream().findFirst().flatMap(Step::needs).orElse(Dryness.FIX_SAFE);
  }

  /** Whether the first of the last steps waits for films of that medium. */
  private boolean concerned(Medium medium) {
    if (leeway.last().isEmpty() || leeway.last().get(0).needs().isEmpty()) {
      return false;
    }
    Step first = leeway.last().get(0);
    return first instanceof Step.Fix
        ? medium == Medium.DYE
        : !(first instanceof Step.HeatSet) || medium == Medium.PAINT;
  }
}
