package strikeoff.propose;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Consumer;
import java.util.function.IntFunction;
import java.util.function.Predicate;

/** Several searches at once, as long as the printer waits for them. */
final class Team {

  /** Searches at once where runs are counted: as many on every machine. */
  private static final int COUNTED = 2;

  /** What of the effort goes into the soonest run; the rest goes into fewer steps. */
  private static final double FOR_SOONEST = 0.65;

  /** Where time is asked for: until when the soonest run is looked for, and fewer steps. */
  private static final double SOONEST_UNTIL = 0.6;

  private static final double FEWEST_UNTIL = 0.85;

  /** What of the effort, or of the time, goes into runs to begin with at the most. */
  private static final double TO_BEGIN_WITH = 0.3;

  private final RunWanted asked;
  private final long begun;
  private final int atOnce;
  private final IntFunction<Search> hired;
  private final AtomicLong tried = new AtomicLong();

  /**
   * @param begun runs that were tried before
   * @param atOnce searches at the same time where seconds end them
   * @param hired a search of that number, from 0; the same number finds the same
   */
  Team(RunWanted asked, long begun, int atOnce, IntFunction<Search> hired) {
    this.asked = asked;
    this.begun = begun;
    this.atOnce = atOnce;
    this.hired = hired;
  }

  /** True while runs to begin with are worked out, of which so many were tried. */
  static boolean begins(RunWanted asked, long tried) {
    return !asked.onlooker().hasEnough()
        && (asked.effort().isPresent()
            ? tried < TO_BEGIN_WITH * asked.effort().getAsLong()
            : asked.timeUsed().getAsDouble() < TO_BEGIN_WITH);
  }

  /** Runs that were tried so far. */
  long tried() {
    return tried.get();
  }

  /**
   * Has them look for the soonest run.
   *
   * @param enough true of one that needs not look any further
   */
  List<Search> soonest(Consumer<Search> work, Predicate<Search> enough) {
    return work(work, enough, FOR_SOONEST, SOONEST_UNTIL);
  }

  /** Has them look for fewer steps, in what is left of the effort or the time. */
  List<Search> fewest(Consumer<Search> work) {
    return work(work, search -> false, 1 - FOR_SOONEST, FEWEST_UNTIL);
  }

  private List<Search> work(
      Consumer<Search> work, Predicate<Search> enough, double part, double until) {
    List<Search> searches = new ArrayList<>();
    for (int number = 0; number < (asked.effort().isPresent() ? COUNTED : atOnce); number++) {
      Search search = hired.apply(number);
      searches.add(search);
      if (asked.effort().isPresent()) {
        long left = asked.effort().getAsLong() - begun;
        long most = Math.max(1, Math.round(left * part / COUNTED));
        search.until(() -> goesOn(search, enough) && search.tried() < most, most);
      } else {
        search.until(
            () -> goesOn(search, enough) && asked.timeUsed().getAsDouble() < until, Long.MAX_VALUE);
      }
    }
    atOnce(searches, work);
    return searches;
  }

  private boolean goesOn(Search search, Predicate<Search> enough) {
    asked
        .onlooker()
        .sees(
            tried.getAndIncrement(),
            search.best().map(best -> best.judged().checked().facts().timeline().finish()));
    return !asked.onlooker().hasEnough() && !enough.test(search);
  }

  private void atOnce(List<Search> searches, Consumer<Search> work) {
    ExecutorService threads =
        Executors.newFixedThreadPool(
            Math.min(atOnce, searches.size()),
            task -> {
              Thread thread = new Thread(task, "propose");
              thread.setDaemon(true);
              return thread;
            });
    try {
      List<Future<?>> all = new ArrayList<>();
      searches.forEach(search -> all.add(threads.submit(() -> work.accept(search))));
      for (Future<?> one : all) {
        one.get();
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    } catch (ExecutionException e) {
      throw new IllegalStateException("a search failed", e.getCause());
    } finally {
      threads.shutdownNow();
    }
  }
}
