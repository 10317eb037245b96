package strikeoff.cli;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Iterator;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.BiFunction;
import java.util.function.Consumer;
import java.util.function.Function;
import strikeoff.check.Checked;
import strikeoff.cli.PlanFiles.PlanFile;

/**
 * Checks many plans at once and hands them on in their order. Only a few are in work at a time, so
 * that a thousand plans need no more memory than a handful.
 */
final class Batch {

  private final int atOnce;
  private final long seconds;

  /**
   * @param atOnce plans in work at a time
   * @param seconds a plan that takes longer is given up
   */
  Batch(int atOnce, long seconds) {
    this.atOnce = Math.max(1, atOnce);
    this.seconds = seconds;
  }

  /** A plan in work. */
  private record Work<T>(PlanFile file, FutureTask<T> task, long started) {}

  /**
   * @param check may throw: that plan fails, the others don't
   * @param done takes each result in the order of the plans, on the calling thread
   */
  <T> void run(
      List<PlanFile> plans,
      Function<PlanFile, T> check,
      BiFunction<PlanFile, Checked.Failed, T> failed,
      Consumer<T> done) {
    Deque<Work<T>> inWork = new ArrayDeque<>();
    Iterator<PlanFile> coming = plans.iterator();
    while (coming.hasNext() || !inWork.isEmpty()) {
      while (coming.hasNext() && inWork.size() < atOnce) {
        inWork.add(start(coming.next(), check));
      }
      done.accept(result(inWork.remove(), failed));
    }
  }

  private static <T> Work<T> start(PlanFile file, Function<PlanFile, T> check) {
    FutureTask<T> task = new FutureTask<>(() -> check.apply(file));
    Thread thread = new Thread(task, "check " + file.name());
    // A plan that is given up must not keep the program from ending.
    thread.setDaemon(true);
    thread.start();
    return new Work<>(file, task, System.nanoTime());
  }

  private <T> T result(Work<T> work, BiFunction<PlanFile, Checked.Failed, T> failed) {
    PlanFile file = work.file();
    String name = file.name();
    long spent = System.nanoTime() - work.started();
    try {
      return work.task()
          .get(Math.max(0, TimeUnit.SECONDS.toNanos(seconds) - spent), TimeUnit.NANOSECONDS);
    } catch (TimeoutException e) {
      work.task().cancel(true);
      return failed.apply(
          file,
          new Checked.Failed(name, "it took more than " + seconds + " s and was given up", ""));
    } catch (ExecutionException e) {
      return failed.apply(file, Checked.Failed.of(name, e.getCause()));
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return failed.apply(file, new Checked.Failed(name, "the check was interrupted", ""));
    }
  }
}
