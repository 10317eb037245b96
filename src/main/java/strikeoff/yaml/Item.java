package strikeoff.yaml;

import strikeoff.plan.PlanPath;
import strikeoff.plan.Position;

/**
 * A value with its place in the document.
 *
 * @param key where the key or the list item that leads to it begins; faults of something missing
 *     inside it are reported there
 */
public record Item(Node node, PlanPath path, Position key) {

  public static Item root(Node node) {
    return new Item(node, PlanPath.ROOT, node.at());
  }

  Item child(Node.Entry entry) {
    return new Item(entry.value(), path.key(entry.key()), entry.at());
  }

  Item child(Node node, int index) {
    return new Item(node, path.item(index), node.at());
  }
}
