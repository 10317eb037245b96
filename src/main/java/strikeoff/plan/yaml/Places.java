package strikeoff.plan.yaml;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import strikeoff.document.PlanPath;
import strikeoff.document.Position;
import strikeoff.yaml.Node;

/**
 * Where each key and each list item of a document begins, and where its value ends, just behind the
 * last character.
 */
record Places(Map<PlanPath, Position> starts, Map<PlanPath, Position> ends) {

  /** No plan is deeper; deeper parts of a faulty file are not worth their long paths. */
  private static final int DEEPEST = 8;

  /** In the document's order; the maps may be added to. */
  static Places of(Node root) {
    Places places = new Places(new LinkedHashMap<>(), new LinkedHashMap<>());
    places.put(PlanPath.ROOT, root.at(), root.end());
    places.add(root, PlanPath.ROOT, 1);
    return places;
  }

  private void add(Node node, PlanPath path, int depth) {
    if (depth > DEEPEST) {
      return;
    }
    if (node instanceof Node.Mapping m) {
      for (Node.Entry e : m.entries().values()) {
        PlanPath below = path.key(e.key());
        put(below, e.at(), behind(e));
        add(e.value(), below, depth + 1);
      }
    } else if (node instanceof Node.Sequence s) {
      List<Node> items = s.items();
      for (int i = 0; i < items.size(); i++) {
        PlanPath below = path.item(i);
        put(below, items.get(i).at(), items.get(i).end());
        add(items.get(i), below, depth + 1);
      }
    }
  }

  /** Unless the path has a place already. */
  void put(PlanPath path, Position start, Position end) {
    starts.putIfAbsent(path, start);
    ends.putIfAbsent(path, end);
  }

  /** A key without a value ends with itself. */
  private static Position behind(Node.Entry entry) {
    Position end = entry.value().end();
    return entry.value() instanceof Node.Nothing
        ? new Position(entry.at().line(), entry.at().column() + entry.key().length())
        : end;
  }
}
