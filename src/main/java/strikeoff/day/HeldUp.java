package strikeoff.day;

import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Notes for every task which earlier one it could not start before: the last holder of what it
 * needs, the mixing of its paste, or the first task of the step before. The notes lead back from
 * the end of a run along its critical chain.
 */
public final class HeldUp {

  /** No earlier task: it starts with the run. */
  public static final int NOBODY = -1;

  private final Map<Resource, Integer> lastHolder = new HashMap<>();
  private final Map<String, Integer> mixing = new HashMap<>();
  private final BitSet tillItsEnd = new BitSet();
  private int[] by = new int[64];
  private int tasks;
  private final Map<Integer, Resource> through = new HashMap<>();
  private int cause = NOBODY;
  private Resource causeIs;
  private int firstOfStep = NOBODY;
  private int firstOfStepBefore = NOBODY;

  /** Whether the step waits for the end of that task, and not only for its beginning. */
  private boolean done;

  /** What the steps in turn wait for while another is worked aside. */
  private int inTurn = NOBODY;

  private boolean inTurnDone;

  /** The next step begins, not before the one before it has begun. */
  void nextStep() {
    firstOfStepBefore = firstOfStep;
    firstOfStep = NOBODY;
    done = false;
  }

  /** The step begins after the end of a task, which nothing that was begun before it outlasts. */
  void doneWith(int task) {
    firstOfStepBefore = task;
    done = true;
  }

  /** The step that is worked now waits for no other, and none for it. */
  void aside() {
    inTurn = firstOfStepBefore;
    inTurnDone = done;
    firstOfStepBefore = NOBODY;
    done = false;
  }

  /** Such a step is over. */
  void backInTurn() {
    firstOfStepBefore = inTurn;
    done = inTurnDone;
    firstOfStep = NOBODY;
  }

  /** The task added last mixes a paste. */
  void mixed(String paste) {
    mixing.put(paste, tasks - 1);
  }

  /** The next task waits for a paste; the pause until then is no cause of its own. */
  void byMixing(String paste) {
    cause = mixingOf(paste);
  }

  /** The task that mixes a paste; {@link #NOBODY} if none does. */
  int mixingOf(String paste) {
    return mixing.getOrDefault(paste, NOBODY);
  }

  /** The next task waits for whoever holds a resource. */
  public void by(Resource resource) {
    cause = lastOf(resource);
    causeIs = resource;
  }

  /** The next task waits for an earlier one, by its index. */
  void byTask(int task) {
    cause = task;
  }

  /** The task added last that holds a resource; {@link #NOBODY} if none has. */
  int lastOf(Resource resource) {
    return lastHolder.getOrDefault(resource, NOBODY);
  }

  /** A task that held a resource without having booked it. */
  void took(Resource resource, int task) {
    lastHolder.put(resource, task);
  }

  /**
   * A task is about to be booked.
   *
   * @param bookings until when each resource is held now
   * @param earliestOfStep whether no task of its step starts earlier so far
   */
  void add(List<Resource> held, long start, Bookings bookings, boolean earliestOfStep) {
    int index = tasks++;
    int before = cause;
    Resource which = causeIs;
    cause = NOBODY;
    causeIs = null;
    for (Resource resource : held) {
      if (before == NOBODY && bookings.freeAt(resource) == start) {
        before = lastOf(resource);
        which = resource;
      }
    }
    if (which != null && before != NOBODY && which.kind().equipment()) {
      through.put(index, which);
    }
    boolean whole = before != NOBODY;
    if (index == by.length) {
      by = Arrays.copyOf(by, 2 * index);
    }
    by[index] = whole ? before : firstOfStepBefore;
    tillItsEnd.set(index, whole || done);
    Integer holder = index;
    for (Resource resource : held) {
      lastHolder.put(resource, holder);
    }
    if (earliestOfStep) {
      firstOfStep = index;
    }
  }

  /** Index of the task that it waited for, always a smaller one; {@link #NOBODY} if none. */
  public int by(int task) {
    return by[task];
  }

  /** The piece of equipment that it waited for; empty if it was something else, or somebody. */
  public Optional<Resource> piece(int task) {
    return Optional.ofNullable(through.get(task));
  }

  /** Whether it waited for that task's end; else only for its beginning. */
  public boolean tillTheEnd(int task) {
    return tillItsEnd.get(task);
  }
}
