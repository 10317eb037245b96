package strikeoff.day.facts;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import strikeoff.day.Beforehand;
import strikeoff.day.DayRun;
import strikeoff.day.Effort;
import strikeoff.day.Moment;
import strikeoff.day.Reached;
import strikeoff.day.facts.Causes.Cause;
import strikeoff.day.facts.Causes.Pair;
import strikeoff.document.PlanPath;
import strikeoff.plan.PrintPlan;

/**
 * Puts waits in where they are missing, the earliest place first, and simulates again, until
 * nothing is too wet. A later wait may be needless after an earlier one; so each is as short as it
 * can be with those before it.
 */
final class Clearing {

  /** Nobody writes a wait of more than a year; it stands for a film that never dries. */
  private static final long LONGEST = 366L * 24 * 60;

  private static final Function<Remedy, Trials.Outcome> UNTRIED =
      remedy -> Trials.Outcome.untried(remedy, true);

  private final PrintPlan plan;
  private final Beforehand known;
  private final Map<Place, Remedy> waits = new LinkedHashMap<>();
  private final Map<Place, Integer> rounds = new HashMap<>();
  private long budget;

  private Clearing(PrintPlan plan, Beforehand known) {
    this.plan = plan;
    this.known = known;
    this.budget = known.effort().trials();
  }

  /** What clears the likely drying, and what clears slow drying too; none if nothing is too wet. */
  static List<ClearedRun> of(DayRun day, PrintPlan plan, Beforehand known) {
    Clearing clearing = new Clearing(plan, known);
    List<ClearedRun> runs = new ArrayList<>();
    DayRun cleared = day;
    for (boolean surely : new boolean[] {false, true}) {
      int before = wet(day, surely);
      if (before > 0) {
        cleared = clearing.clear(cleared, surely);
        int left = wet(cleared, surely);
        runs.add(
            new ClearedRun(
                surely,
                day.finish(),
                cleared.finish(),
                List.copyOf(clearing.waits.values()),
                TableDay.all(cleared.tasks(), plan.hours()),
                Math.max(0, before - left),
                left,
                Outlasted.in(cleared, clearing.written(), known)
                    .without(Outlasted.in(day, plan, known)),
                PlanPath.ROOT.key("run")));
      }
    }
    return runs;
  }

  private DayRun clear(DayRun from, boolean surely) {
    DayRun day = from;
    rounds.clear();
    while (true) {
      int cost = Math.max(1, day.impressions().size());
      PrintPlan now = written();
      Optional<Remedy> next = missing(day, now, surely);
      if (next.isEmpty() || budget < cost) {
        return day;
      }
      Place place = Place.of(next.get());
      rounds.merge(place, 1, Integer::sum);
      waits.merge(place, next.get(), Clearing::together);
      day = DayRun.of(written(), known);
      budget -= day.run().simulated();
    }
  }

  /** A drying step is put in beside the one that is there already; other waits are rewritten. */
  private static Remedy together(Remedy old, Remedy next) {
    return next.how() == Remedy.How.DRY_STEP ? old.longer(next.minutes()) : next;
  }

  private PrintPlan written() {
    PrintPlan written = plan;
    for (Remedy wait : waits.values()) {
      written = wait.applied(written);
    }
    return written;
  }

  /** The wait that is missing first. */
  private Optional<Remedy> missing(DayRun day, PrintPlan now, boolean surely) {
    Remedy first = null;
    Moment earliest = Reached.NEVER;
    for (Map.Entry<Cause, List<Pair>> cause : Causes.of(day).entrySet()) {
      List<Pair> pairs = cause.getValue().stream().filter(p -> surely || p.likely()).toList();
      Remedy remedy =
          Remedy.in(
              now,
              cause.getKey().how(),
              cause.getKey().step(),
              Trials.minutes(now, cause.getKey(), pairs, surely));
      if (!pairs.isEmpty()
          && pairs.get(0).contact().later().laid().compareTo(earliest) < 0
          && helps(remedy)) {
        first = remedy;
        earliest = pairs.get(0).contact().later().laid();
      }
    }
    for (ClothTakenUp taken : TakingUp.all(day, UNTRIED)) {
      if ((surely || taken.likely())
          && taken.at().compareTo(earliest) < 0
          && helps(taken.remedy(surely))) {
        first = taken.remedy(surely);
        earliest = taken.at();
      }
    }
    return Optional.ofNullable(first);
  }

  private boolean helps(Remedy remedy) {
    return remedy.minutes() > 0
        && remedy.minutes() <= LONGEST
        && rounds.getOrDefault(Place.of(remedy), 0) < Effort.LONGER_WAITS_TOGETHER;
  }

  private static int wet(DayRun day, boolean surely) {
    long pairs =
        Causes.of(day).values().stream()
            .flatMap(List::stream)
            .filter(p -> surely || p.likely())
            .count();
    long taken = TakingUp.all(day, UNTRIED).stream().filter(t -> surely || t.likely()).count();
    return (int) (pairs + taken);
  }

  /** Where a wait is written. */
  private record Place(Remedy.How how, int step) {
    static Place of(Remedy remedy) {
      return new Place(remedy.how(), remedy.step());
    }
  }
}
