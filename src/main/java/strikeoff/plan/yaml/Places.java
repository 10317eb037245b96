package strikeoff.plan.yaml;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import strikeoff.plan.PlanPath;
import strikeoff.plan.Position;
import strikeoff.yaml.Node;

/** Lists where each key and each list item of a document begins. */
final class Places {

  /** No plan is deeper; deeper parts of a faulty file are not worth their long paths. */
  private static final int DEEPEST = 8;

  private Places() {}

  static Map<PlanPath, Position> of(Node root) {
    Map<PlanPath, Position> places = new LinkedHashMap<>();
    places.put(PlanPath.ROOT, root.at());
    add(root, PlanPath.ROOT, 1, places);
    return places;
  }

  private static void add(Node node, PlanPath path, int depth, Map<PlanPath, Position> places) {
    if (depth > DEEPEST) {
      return;
    }
    if (node instanceof Node.Mapping m) {
      for (Node.Entry e : m.entries().values()) {
        PlanPath below = path.key(e.key());
        places.putIfAbsent(below, e.at());
        add(e.value(), below, depth + 1, places);
      }
    } else if (node instanceof Node.Sequence s) {
      List<Node> items = s.items();
      for (int i = 0; i < items.size(); i++) {
        PlanPath below = path.item(i);
        places.putIfAbsent(below, items.get(i).at());
        add(items.get(i), below, depth + 1, places);
      }
    }
  }
}
