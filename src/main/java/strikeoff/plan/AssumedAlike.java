package strikeoff.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import strikeoff.document.PlanPath;

/**
 * One value that was taken for the same thing in one place of a plan or in several.
 *
 * @param name what it is, in the trade's words
 * @param value what was taken
 * @param source where that default comes from
 * @param paths where it would stand, in the plan's order; one at least
 */
public record AssumedAlike(String name, String value, String source, List<PlanPath> paths) {

  public AssumedAlike {
    paths = List.copyOf(paths);
  }

  /** What was assumed, by what it is and what was taken, in the order of first places. */
  public static List<AssumedAlike> of(List<Assumption> assumptions) {
    Map<List<String>, List<PlanPath>> places = new LinkedHashMap<>();
    for (Assumption one : assumptions) {
      places
          .computeIfAbsent(
              List.of(one.name(), one.value(), one.source()), what -> new ArrayList<>())
          .add(one.path());
    }
    List<AssumedAlike> alike = new ArrayList<>();
    places.forEach(
        (what, paths) -> alike.add(new AssumedAlike(what.get(0), what.get(1), what.get(2), paths)));
    return alike;
  }
}
