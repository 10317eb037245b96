package strikeoff.timeline;

import java.util.List;
import strikeoff.units.Span;

/**
 * A piece of work that holds resources for a time.
 *
 * @param resources held from start to end
 * @param duration how long
 * @param predecessors indices of operations that must have ended, in the list it is scheduled with
 */
public record Operation(
    String name, List<Resource> resources, Span duration, List<Integer> predecessors) {

  public Operation {
    resources = List.copyOf(resources);
    predecessors = List.copyOf(predecessors);
  }
}
