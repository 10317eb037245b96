package strikeoff.layout;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/**
 * Some of the placements.
 *
 * @param numbers theirs, rising, by the name of their arrangement, in the order that these come
 * @param more true if there may be more than were looked at
 */
public record Copies(Map<String, List<Integer>> numbers, boolean more) {

  public Copies {
    Map<String, List<Integer>> copy = new LinkedHashMap<>();
    numbers.forEach((name, own) -> copy.put(name, List.copyOf(own)));
    numbers = Collections.unmodifiableMap(copy);
  }

  /** Just these. */
  public static Copies of(Collection<Placement> placements) {
    Map<String, TreeSet<Integer>> numbers = new LinkedHashMap<>();
    for (Placement placement : placements) {
      numbers
          .computeIfAbsent(placement.arrangement(), name -> new TreeSet<>())
          .add(placement.number());
    }
    Map<String, List<Integer>> lists = new LinkedHashMap<>();
    numbers.forEach((name, own) -> lists.put(name, new ArrayList<>(own)));
    return new Copies(lists, false);
  }

  /** The same where perhaps not all were looked at. */
  public Copies andMore() {
    return new Copies(numbers, true);
  }
}
