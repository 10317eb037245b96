package strikeoff.propose;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.BooleanSupplier;
import java.util.function.ToDoubleFunction;
import strikeoff.day.facts.Rehearsal;
import strikeoff.day.facts.Rehearsed;
import strikeoff.document.GivenUp;
import strikeoff.plan.Step;

/**
 * One search: it changes a run again and again, takes what is better and at first a little of what
 * is worse, and has what would become the best checked. The same draws in every search of that
 * number, so that the same count of runs leads to the same run.
 */
final class Search {

  /** Moves from each of the best starting runs. */
  private static final int FROM_EACH = 900;

  /** Moves from the best run, or from a starting run, after that. */
  private static final int LATER = 2_500;

  private static final int STARTS = 4;
  private static final double COLDEST = 25;
  private static final double HOTTEST = 120;

  private final Moves moves;
  private final Rehearsal rehearsal;
  private final Judge judge;
  private final PasteLeft stock;
  private final SplittableRandom random;
  private BooleanSupplier goesOn = () -> false;
  private long tried;
  private Optional<Found> best = Optional.empty();

  /** A run that was accepted. */
  record Found(Candidate candidate, Judge.Judged judged) {}

  /**
   * @param number of the search, from 0
   */
  Search(
      int number, Leeway leeway, Order order, Rehearsal rehearsal, Judge judge, PasteLeft stock) {
    this.random = new SplittableRandom(4_711L + 7_919L * number);
    this.moves = new Moves(leeway, order, random);
    this.rehearsal = rehearsal;
    this.judge = judge;
    this.stock = stock;
  }

  /**
   * @param still asked before each run is tried
   */
  void until(BooleanSupplier still) {
    goesOn = still;
  }

  long tried() {
    return tried;
  }

  Optional<Found> best() {
    return best;
  }

  private boolean goesOn() {
    GivenUp.ifAsked();
    return goesOn.getAsBoolean();
  }

  Candidate rehearsed(List<Step> run) {
    return surely(ordinarily(run));
  }

  private Candidate ordinarily(List<Step> run) {
    tried++;
    Rehearsed rehearsed = rehearsal.of(run);
    return new Candidate(run, rehearsed, stock.missing(rehearsed));
  }

  private Candidate surely(Candidate ordinary) {
    Rehearsed surely = rehearsal.surely(ordinary.run(), ordinary.rehearsed());
    return new Candidate(ordinary.run(), surely, ordinary.pasteShort());
  }

  /** Looks for the soonest run. */
  void soonest(List<List<Step>> beginnings) {
    List<Candidate> starts = new ArrayList<>();
    for (List<Step> run : beginnings) {
      if (!starts.isEmpty() && !goesOn()) {
        break;
      }
      starts.add(rehearsed(run));
    }
    starts.sort(Comparator.comparingDouble(Candidate::cost));
    // The best of them first, so that few are checked.
    starts.forEach(start -> offer(start, Candidate::cost));
    int from = 0;
    while (goesOn()) {
      boolean first = from < Math.min(STARTS, starts.size());
      Candidate start =
          first
              ? starts.get(from)
              : best.isPresent() && random.nextInt(3) > 0
                  ? best.get().candidate()
                  : starts.get(random.nextInt(starts.size()));
      from++;
      anneal(start, first ? FROM_EACH : LATER, Candidate::cost);
    }
  }

  /** Looks for the fewest steps within some time. */
  void fewest(Found soonest, double within) {
    best = Optional.of(soonest);
    while (goesOn()) {
      anneal(best.get().candidate(), LATER, c -> c.costOfFew(within));
    }
  }

  private void anneal(Candidate start, int most, ToDoubleFunction<Candidate> cost) {
    double hot = COLDEST + random.nextDouble() * (HOTTEST - COLDEST);
    Candidate now = start;
    double costs = cost.applyAsDouble(now);
    for (int i = 0; i < most && goesOn(); i++) {
      double temperature = hot * Math.pow(0.01, (double) i / most);
      Optional<List<Step>> next = moves.next(now.run(), now.rehearsed());
      if (next.isEmpty()) {
        continue;
      }
      Candidate candidate = ordinarily(next.get());
      double highest = costs - temperature * Math.log(1 - random.nextDouble());
      if (cost.applyAsDouble(candidate) > highest) {
        continue;
      }
      // A slow day adds to the cost at most, so it is tried only where that may matter.
      candidate = surely(candidate);
      double other = cost.applyAsDouble(candidate);
      if (other <= highest && (!isBetter(candidate, cost) || offer(candidate, cost))) {
        now = candidate;
        costs = other;
      }
    }
  }

  private boolean isBetter(Candidate candidate, ToDoubleFunction<Candidate> cost) {
    return candidate.isSound()
        && best.filter(b -> cost.applyAsDouble(b.candidate()) <= cost.applyAsDouble(candidate))
            .isEmpty();
  }

  /** True if it becomes the best: it lacks nothing, and the check accepts it. */
  boolean offer(Candidate candidate, ToDoubleFunction<Candidate> cost) {
    if (!isBetter(candidate, cost)) {
      return false;
    }
    Optional<Judge.Judged> judged = judge.judged(candidate.run());
    if (judged.filter(judge::accepts).isEmpty()) {
      return false;
    }
    best = Optional.of(new Found(candidate, judged.get()));
    return true;
  }
}
