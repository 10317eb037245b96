package strikeoff.plan.yaml;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import strikeoff.plan.PlanPath;
import strikeoff.plan.Position;
import strikeoff.yaml.Node;

/** Lists where each key and each list item of a document begins and ends. */
final class Places {

  /** No plan is deeper; deeper parts of a faulty file are not worth their long paths. */
  private static final int DEEPEST = 8;

  private Places() {}

  static Map<PlanPath, Position> of(Node root) {
    Map<PlanPath, Position> places = new LinkedHashMap<>();
    places.put(PlanPath.ROOT, root.at());
    add(root, PlanPath.ROOT, 1, places, new LinkedHashMap<>());
    return places;
  }

  /** Just behind the last character of each value. */
  static Map<PlanPath, Position> ends(Node root) {
    Map<PlanPath, Position> ends = new LinkedHashMap<>();
    ends.put(PlanPath.ROOT, root.end());
    add(root, PlanPath.ROOT, 1, new LinkedHashMap<>(), ends);
    return ends;
  }

  private static void add(
      Node node,
      PlanPath path,
      int depth,
      Map<PlanPath, Position> places,
      Map<PlanPath, Position> ends) {
    if (depth > DEEPEST) {
      return;
    }
    if (node instanceof Node.Mapping m) {
      for (Node.Entry e : m.entries().values()) {
        PlanPath below = path.key(e.key());
        places.putIfAbsent(below, e.at());
        ends.putIfAbsent(below, behind(e));
        add(e.value(), below, depth + 1, places, ends);
      }
    } else if (node instanceof Node.Sequence s) {
      List<Node> items = s.items();
      for (int i = 0; i < items.size(); i++) {
        PlanPath below = path.item(i);
        places.putIfAbsent(below, items.get(i).at());
        ends.putIfAbsent(below, items.get(i).end());
        add(items.get(i), below, depth + 1, places, ends);
      }
    }
  }

  /** A key without a value ends with itself. */
  private static Position behind(Node.Entry entry) {
    Position end = entry.value().end();
    return entry.value() instanceof Node.Nothing
        ? new Position(entry.at().line(), entry.at().column() + entry.key().length())
        : end;
  }
}
