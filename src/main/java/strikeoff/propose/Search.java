package strikeoff.propose;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.BooleanSupplier;
import java.util.function.ToDoubleFunction;
import strikeoff.day.Moment;
import strikeoff.day.Task;
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

  /** Fewer moves than that lead nowhere. */
  private static final int LEAST = 60;

  /** Where runs are counted there is a beginning again at least so often. */
  private static final int ROUNDS = 6;

  /** What a run costs more in the end that lacks something, in seconds. */
  private static final double UNSOUND = 7_200;

  /** What costs less by so much is checked at once: a check takes as long as many trials. */
  private static final double AT_ONCE = 60;

  private final Moves moves;
  private final Rehearsal rehearsal;
  private final Judge judge;
  private final PasteLeft stock;
  private final SplittableRandom random;
  private BooleanSupplier goesOn = () -> false;
  private long all;
  private long tried;
  private Optional<Found> best = Optional.empty();
  private Optional<Candidate> awaiting = Optional.empty();

  /** A run that was accepted. */
  record Found(Candidate candidate, Judge.Judged judged) {

    boolean ends(Moment atLast) {
      return judged.checked().facts().timeline().finish().compareTo(atLast) <= 0;
    }
  }

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
   * @param many how many runs may be tried; a number past all where time ends it
   */
  void until(BooleanSupplier still, long many) {
    goesOn = still;
    all = many;
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

  /** True if the work of another run goes on alike to the second, on a slow day too. */
  boolean worksAlike(Candidate one, Candidate other) {
    return work(one.rehearsed().tasks()).equals(work(other.rehearsed().tasks()))
        && work(rehearsal.slowly(one.run())).equals(work(rehearsal.slowly(other.run())));
  }

  private record Work(Task.Kind kind, Moment start, Moment end, Optional<String> screen) {}

  private static List<Work> work(List<Task> tasks) {
    return tasks.stream().map(t -> new Work(t.kind(), t.start(), t.end(), t.screen())).toList();
  }

  private Candidate ordinarily(List<Step> run) {
    tried++;
    Rehearsed rehearsed = rehearsal.of(run);
    return Candidate.of(run, rehearsed, rehearsal, stock);
  }

  private Candidate surely(Candidate ordinary) {
    return ordinary.with(rehearsal.surely(ordinary.run(), ordinary.rehearsed()));
  }

  /**
   * Looks for the soonest run.
   *
   * @param cost what it costs, above all the time
   */
  void soonest(List<Candidate> beginnings, ToDoubleFunction<Candidate> cost) {
    List<Candidate> starts = new ArrayList<>(beginnings);
    starts.sort(Comparator.comparingDouble(cost));
    // The best of them first, so that few are checked.
    starts.forEach(start -> offer(start, cost));
    List<Candidate> first = first(starts);
    int from = 0;
    while (goesOn()) {
      Candidate start =
          from < first.size()
              ? first.get(from)
              : best.isPresent() && random.nextInt(3) > 0
                  ? best.get().candidate()
                  : starts.get(random.nextInt(starts.size()));
      anneal(start, from < first.size() ? FROM_EACH : LATER, cost);
      from++;
    }
  }

  /** The best of those that lack nothing, and the best of the others, in turn. */
  private static List<Candidate> first(List<Candidate> starts) {
    List<Candidate> sound = starts.stream().filter(Candidate::isSound).limit(STARTS / 2).toList();
    List<Candidate> first = new ArrayList<>(sound);
    starts.stream()
        .filter(start -> !first.contains(start))
        .limit(STARTS - sound.size())
        .forEach(first::add);
    return first;
  }

  /**
   * Looks for what is least to read or to change.
   *
   * @param soonest which is the best so far
   * @param starts others that may cost less
   */
  void least(Found soonest, List<Candidate> starts, ToDoubleFunction<Candidate> cost) {
    best = Optional.of(soonest);
    starts.stream().sorted(Comparator.comparingDouble(cost)).forEach(start -> offer(start, cost));
    while (goesOn()) {
      anneal(best.get().candidate(), LATER, cost);
    }
  }

  private void anneal(Candidate start, int longest, ToDoubleFunction<Candidate> cost) {
    double hot = COLDEST + random.nextDouble() * (HOTTEST - COLDEST);
    long most = Math.max(LEAST, Math.min(longest, all / ROUNDS));
    Candidate now = start;
    for (int i = 0; i < most && goesOn(); i++) {
      double over = (double) i / most;
      double temperature = hot * Math.pow(0.01, over);
      Optional<List<Step>> next = moves.next(now.run(), now.rehearsed());
      if (next.isEmpty()) {
        continue;
      }
      Candidate candidate = ordinarily(next.get());
      double highest =
          cost.applyAsDouble(now)
              + unsound(now, over)
              - temperature * Math.log(1 - random.nextDouble());
      if (cost.applyAsDouble(candidate) + unsound(candidate, over) > highest) {
        continue;
      }
      // A slow day adds to the cost at most, so it is tried only where that may matter.
      candidate = surely(candidate);
      if (cost.applyAsDouble(candidate) + unsound(candidate, over) <= highest
          && passes(candidate, cost)) {
        now = candidate;
      }
    }
    offerAwaiting(cost);
  }

  /** At first a run may lack something for a while; in the end no hour saved makes up for that. */
  private static double unsound(Candidate candidate, double over) {
    return candidate.isSound() ? 0 : UNSOUND * over;
  }

  /**
   * True unless the check refuses it. It is asked at once about what is better by far, and about
   * the best of what is little better when the search comes to an end or that sums up.
   */
  private boolean passes(Candidate candidate, ToDoubleFunction<Candidate> cost) {
    if (!isBetter(candidate, cost)) {
      return true;
    }
    double costs = cost.applyAsDouble(candidate);
    if (best.isEmpty() || costs < cost.applyAsDouble(best.get().candidate()) - AT_ONCE) {
      return offer(candidate, cost);
    }
    if (awaiting.filter(a -> cost.applyAsDouble(a) <= costs).isEmpty()) {
      awaiting = Optional.of(candidate);
    }
    return true;
  }

  private void offerAwaiting(ToDoubleFunction<Candidate> cost) {
    awaiting.ifPresent(candidate -> offer(candidate, cost));
    awaiting = Optional.empty();
  }

  private boolean isBetter(Candidate candidate, ToDoubleFunction<Candidate> cost) {
    return candidate.isSound()
        && best.filter(b -> cost.applyAsDouble(b.candidate()) <= cost.applyAsDouble(candidate))
            .isEmpty();
  }

  /** True if it becomes the best, whatever it costs: the check accepts it. */
  boolean take(Candidate candidate) {
    Optional<Judge.Judged> judged = judge.judged(candidate.run()).filter(judge::accepts);
    judged.ifPresent(one -> best = Optional.of(new Found(candidate, one)));
    return judged.isPresent();
  }

  /** True if it becomes the best: it lacks nothing, and the check accepts it. */
  boolean offer(Candidate candidate, ToDoubleFunction<Candidate> cost) {
    return isBetter(candidate, cost) && take(candidate);
  }
}
