package strikeoff.report;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import strikeoff.day.Task;

/** Puts a day's blocks of work together that are one job. */
final class WorkGroups {

  private static final Set<Task.Kind> ALIKE = EnumSet.of(Task.Kind.MIX, Task.Kind.WASH_SCREEN);

  private WorkGroups() {}

  /**
   * Colours of one set with the waits and moves between them; pastes mixed and screens washed, each
   * one after the other. A set's last wait stays with it though screens are washed meanwhile.
   */
  static List<List<WorkBlock>> of(List<WorkBlock> blocks) {
    List<List<WorkBlock>> groups = new ArrayList<>();
    Map<Integer, List<WorkBlock>> sets = new HashMap<>();
    for (WorkBlock work : blocks) {
      if (work.kind() == Task.Kind.DRY_SCREEN || work.isPause()) {
        continue;
      }
      List<WorkBlock> last = before(groups, work);
      List<WorkBlock> set = sets.get(work.first().step());
      if (set != null && work.kind() == Task.Kind.WAIT) {
        set.add(work);
      } else if (last != null && carriesOn(last.get(0), work)) {
        last.add(work);
      } else {
        groups.add(new ArrayList<>(List.of(work)));
        if (work.prints()) {
          sets.put(work.first().step(), groups.get(groups.size() - 1));
        }
      }
    }
    return groups;
  }

  /** Whether the cloth stays as it lies for no further print. */
  static boolean mayMoveAfter(List<List<WorkBlock>> groups, int at) {
    if (groups.get(at).stream().anyMatch(work -> work.kind() == Task.Kind.MOVE)) {
      return true;
    }
    for (List<WorkBlock> later : groups.subList(at + 1, groups.size())) {
      if (later.get(0).prints()) {
        return false;
      }
      if (!ALIKE.contains(later.get(0).kind()) && later.get(0).kind() != Task.Kind.WAIT) {
        return true;
      }
    }
    return true;
  }

  /** The group that work may carry on, past what others print beside it. */
  private static List<WorkBlock> before(List<List<WorkBlock>> groups, WorkBlock work) {
    int at = groups.size() - 1;
    while (at >= 0
        && work.prints()
        && groups.get(at).get(0).prints()
        && !sameStep(groups.get(at).get(0), work)) {
      at--;
    }
    return at < 0 ? null : groups.get(at);
  }

  private static boolean carriesOn(WorkBlock first, WorkBlock work) {
    if (!first.prints()) {
      return ALIKE.contains(work.kind()) && first.kind() == work.kind() && sameStep(first, work);
    }
    return work.prints()
        ? first.sameSet(work) && arrangement(first).equals(arrangement(work))
        : work.kind() == Task.Kind.MOVE && sameStep(first, work);
  }

  private static boolean sameStep(WorkBlock first, WorkBlock next) {
    return first.first().step() == next.first().step();
  }

  static String arrangement(WorkBlock work) {
    return work.impressions().get(0).footprint().placement().arrangement();
  }
}
