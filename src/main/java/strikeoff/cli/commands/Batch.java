package strikeoff.cli.commands;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.FutureTask;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.BiFunction;
import java.util.function.Consumer;
import java.util.function.Function;
import strikeoff.check.Checked;
import strikeoff.cli.files.PlanFiles.PlanFile;
import strikeoff.cli.text.TooMuch;
import strikeoff.document.ShortOfMemory;
import strikeoff.document.Underway;

/**
 * Checks many plans at once and hands them on in their order. Only a few are in work or wait to be
 * handed on at a time, so that a thousand plans need no more memory than a handful. A plan for
 * which there was too little memory is checked once more, alone: another one may have taken it.
 */
final class Batch {

  /**
   * Plans begun before the oldest is done, for each that is in work: a long one then holds up few.
   */
  private static final int AHEAD = 4;

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

  /** Who is in work, and how many ever were. */
  private static final class Crowd {
    private int within;
    private int entered;

    /** A mark for {@link #leave}; negative if somebody is there. */
    synchronized int enter() {
      entered++;
      return within++ == 0 ? entered : -1;
    }

    /** True if somebody else was there at any time. */
    synchronized boolean leave(int mark) {
      within--;
      return mark != entered;
    }
  }

  /** A plan in work, or done and not yet handed on. */
  private static final class Work<T> {
    final PlanFile file;
    final FutureTask<T> task;
    private long started = System.nanoTime();
    private Throwable why;

    /** True if another plan was in work meanwhile. */
    private volatile boolean crowded;

    /** How far it has come; nobody knows before it begins. */
    private volatile Optional<Underway> underway = Optional.empty();

    private final Semaphore places;
    private final AtomicBoolean left = new AtomicBoolean();

    Work(PlanFile file, Function<PlanFile, T> check, Semaphore places, Crowd crowd) {
      this.file = file;
      this.places = places;
      this.task =
          new FutureTask<>(
              () -> {
                int others = crowd.enter();
                underway = Optional.of(Underway.begin());
                try {
                  return check.apply(file);
                } finally {
                  crowded = crowd.leave(others);
                  leave();
                }
              });
    }

    /** Makes place for another plan, once: when it is done, or when it is given up. */
    void leave() {
      if (left.compareAndSet(false, true)) {
        places.release();
      }
    }
  }

  /**
   * @param check may throw: that plan fails, the others don't
   * @param done takes each result in the order of the plans, on the calling thread
   */
  <T> void run(
      List<PlanFile> plans,
      Function<PlanFile, T> check,
      BiFunction<PlanFile, Checked.Failed, T> failed,
      Consumer<T> done) {
    Semaphore places = new Semaphore(atOnce);
    Crowd crowd = new Crowd();
    Deque<Work<T>> begun = new ArrayDeque<>();
    Iterator<PlanFile> coming = plans.iterator();
    // Threads serve one plan after the other; one whose plan is given up is left to it.
    ExecutorService threads = Executors.newCachedThreadPool(Batch::thread);
    try {
      while (coming.hasNext() || !begun.isEmpty()) {
        if (coming.hasNext() && begun.size() < AHEAD * atOnce && place(places, begun.peek())) {
          Work<T> work = new Work<>(coming.next(), check, places, crowd);
          begun.add(work);
          threads.execute(work.task);
        } else {
          Work<T> work = begun.remove();
          Optional<T> result = result(work, failed);
          if (result.isEmpty() && work.crowded) {
            Work<T> again = new Work<>(work.file, check, places, crowd);
            result = alone(again, begun, threads, failed);
          }
          done.accept(result.orElseGet(() -> failed(work, failed)));
        }
      }
    } finally {
      threads.shutdown();
    }
  }

  private static Thread thread(Runnable checks) {
    Thread thread = new Thread(checks, "check plans");
    // A plan that is given up must not keep the program from ending.
    thread.setDaemon(true);
    return thread;
  }

  /** Waits for a place, but no longer than the oldest plan takes, or may take. */
  private boolean place(Semaphore places, Work<?> oldest) {
    if (places.tryAcquire()) {
      return true;
    }
    if (oldest == null) {
      places.acquireUninterruptibly();
      return true;
    }
    if (oldest.task.isDone()) {
      return false;
    }
    try {
      return places.tryAcquire(left(oldest), TimeUnit.NANOSECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return false;
    }
  }

  private long left(Work<?> work) {
    return Math.max(0, TimeUnit.SECONDS.toNanos(seconds) - (System.nanoTime() - work.started));
  }

  /** Once the others that were begun are done, and while none is begun. */
  private <T> Optional<T> alone(
      Work<T> again,
      Deque<Work<T>> others,
      ExecutorService threads,
      BiFunction<PlanFile, Checked.Failed, T> failed) {
    for (Work<T> other : others) {
      ended(other);
    }
    again.started = System.nanoTime();
    threads.execute(again.task);
    return result(again, failed);
  }

  private static <T> T failed(Work<T> work, BiFunction<PlanFile, Checked.Failed, T> failed) {
    return failed.apply(work.file, Checked.Failed.of(work.file.name(), work.why));
  }

  /** Waits for it, as long as it may take; what it came to is asked for when its turn comes. */
  private void ended(Work<?> work) {
    try {
      work.task.get(left(work), TimeUnit.NANOSECONDS);
    } catch (TimeoutException e) {
      work.task.cancel(true);
    } catch (ExecutionException | CancellationException e) {
      // It is told in its turn.
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  /** Empty if there was too little memory. */
  private <T> Optional<T> result(Work<T> work, BiFunction<PlanFile, Checked.Failed, T> failed) {
    String name = work.file.name();
    try {
      return Optional.of(work.task.get(left(work), TimeUnit.NANOSECONDS));
    } catch (TimeoutException | CancellationException e) {
      work.task.cancel(true);
      work.leave();
      return Optional.of(
          failed.apply(
              work.file,
              new Checked.Failed(
                  name, TooMuch.text(seconds, work.underway.orElseGet(Underway::begin)), "")));
    } catch (ExecutionException e) {
      work.why = e.getCause();
      return ShortOfMemory.caused(work.why) ? Optional.empty() : Optional.of(failed(work, failed));
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return Optional.of(
          failed.apply(work.file, new Checked.Failed(name, "the check was interrupted", "")));
    }
  }
}
