package strikeoff.day;

import java.util.List;
import java.util.OptionalLong;
import strikeoff.layout.Footprint;

/**
 * One impression that somebody makes beside others, with its time.
 *
 * @param under films of other colours of the step under its frame
 * @param neighbours films of its own colour under its frame, if they are waited for
 * @param waitsFor what it waited for last
 * @param start when it begins: later than that if it fell into a break
 */
record Job(
    int set,
    Footprint footprint,
    String person,
    List<Job> under,
    List<Job> neighbours,
    Start waitsFor,
    long start,
    long end,
    Made made) {

  /**
   * When it can start, and what it waits for till then.
   *
   * @param before the impression it waits for; null if it is none of these
   * @param task index of the task it waits for if that is no impression of these
   */
  record Start(long second, Doing cause, Job before, int task) {

    Start later(long until, Doing what, Job job) {
      return until > second ? new Start(until, what, job, HeldUp.NOBODY) : this;
    }

    Start later(long until, Doing what, int index) {
      return until > second ? new Start(until, what, null, index) : this;
    }

    /** Index of the task it waits for; {@link HeldUp#NOBODY} if there is none. */
    int after() {
      return before == null ? task : before.made.task;
    }
  }

  /** One that somebody has made alone. */
  static Job made(Printed printed) {
    Made made = new Made();
    made.printed = printed;
    return new Job(
        printed.set(),
        printed.footprint(),
        printed.person(),
        List.of(),
        List.of(),
        new Start(printed.begins(), Doing.Wait.PAUSE, null, HeldUp.NOBODY),
        printed.begins(),
        printed.lifted(),
        made);
  }

  /** What became of it once it is booked. */
  static final class Made {
    Printed printed;
    int task = HeldUp.NOBODY;
  }

  /** When the last film under its frame was lifted; empty if there is none. */
  OptionalLong dryFrom() {
    return under.stream().mapToLong(Job::end).max();
  }
}
