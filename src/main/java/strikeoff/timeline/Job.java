package strikeoff.timeline;

import java.util.List;
import strikeoff.layout.Footprint;

/** One impression to make beside others who print on the same stretch. */
final class Job {

  /** Not done, or not asked yet. */
  private static final int NONE = -1;

  private final Footprint footprint;
  private final String person;
  private final int set;
  private final int waits;
  private final List<Job> after;
  private Printed done;
  private int task = NONE;

  /**
   * @param waits how often a colour has dried before it, as the step is written
   * @param after what must be done and dry before: the colour before it on the same motif, the last
   *     one of its anchor, and what its frame lies on of earlier passes
   */
  Job(Footprint footprint, String person, int set, int waits, List<Job> after) {
    this.footprint = footprint;
    this.person = person;
    this.set = set;
    this.waits = waits;
    this.after = after;
  }

  Footprint footprint() {
    return footprint;
  }

  String person() {
    return person;
  }

  int set() {
    return set;
  }

  int waits() {
    return waits;
  }

  List<Job> after() {
    return after;
  }

  /** True if all that must be done before it is done. */
  boolean ready() {
    for (Job before : after) {
      if (before.done == null) {
        return false;
      }
    }
    return true;
  }

  /**
   * @param index of its task
   */
  void done(Printed made, int index) {
    done = made;
    task = index;
  }

  Printed made() {
    return done;
  }

  int task() {
    return task;
  }
}
