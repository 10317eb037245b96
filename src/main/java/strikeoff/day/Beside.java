package strikeoff.day;

import java.util.ArrayList;
import java.util.List;
import strikeoff.layout.Footprint;
import strikeoff.layout.FrameMeetings;

/**
 * What others print while a step prints beside them, on cloth that lies as it does.
 *
 * @param begin from which second on: the cloth has not been moved, laid or left to dry since then
 * @param after the task that ended then; {@link HeldUp#NOBODY} if there is none
 * @param prints what others print after that second
 */
record Beside(long begin, int after, List<Other> prints) {

  Beside {
    prints = List.copyOf(prints);
  }

  /**
   * An impression of another step.
   *
   * @param task that makes it, by its index
   */
  record Other(Printed printed, int task) {}

  /** All others have finished. */
  static Beside nobody(Workshop shop) {
    return new Beside(shop.clothFree(), shop.lastOf(Resource.CLOTH), List.of());
  }

  /** Since the cloth was last touched otherwise than to print. */
  static Beside of(Impressing impressing) {
    Workshop shop = impressing.shop();
    long begin = Math.max(shop.floor(), impressing.cloth().lastChange());
    int after = HeldUp.NOBODY;
    List<Task> tasks = shop.tasks();
    for (int i = 0; i < tasks.size(); i++) {
      Task task = tasks.get(i);
      if (holdsAll(task) && task.end().seconds() >= begin) {
        begin = task.end().seconds();
        after = i;
      }
    }
    List<Other> prints = new ArrayList<>();
    for (int i = 0; i < tasks.size(); i++) {
      Task task = tasks.get(i);
      if (task.impression().isPresent() && task.end().seconds() > begin) {
        Printed printed = impressing.printed().get(task.impression().getAsInt());
        prints.add(new Other(printed, i));
      }
    }
    return new Beside(begin, after, prints);
  }

  /** True if nobody prints anywhere meanwhile: what waits for some frames is no such thing. */
  private static boolean holdsAll(Task task) {
    boolean allWait =
        task.kind() == Task.Kind.WAIT
            && (task.doing() instanceof Doing.OfStep
                || task.doing() == Doing.Wait.BETWEEN_PASSES
                || task.doing() == Doing.Wait.BEFORE_MOVING);
    return allWait
        || task.kind() == Task.Kind.CLOSED
        || task.onCloth() && task.kind() != Task.Kind.PRINT;
  }

  /** Later, if others print what lies in its way, or what it is set from. */
  Job.Start after(Job.Start start, Footprint footprint, FrameMeetings meetings, long lay) {
    Job.Start later = start;
    for (Other other : prints) {
      Footprint own = other.printed().footprint();
      if (footprint.placement().anchor().orElse(-1) == own.placement().id()) {
        later = later.later(other.printed().lifted(), Doing.Others.EARLIER_PRINT, other.task());
      } else if (meetings.meet(own, footprint)) {
        later = later.later(other.printed().lifted() - lay, Doing.Others.FRAME, other.task());
      }
    }
    return later;
  }
}
