package strikeoff.yaml;

import strikeoff.document.PlanPath;
import strikeoff.document.Position;

/**
 * A value with its place in the document.
 *
 * @param key where the key or the list item that leads to it begins; faults of something missing
 *     inside it are reported there
 * @param name the key as it is written; empty where no key of a mapping leads here
 */
public record Item(Node node, PlanPath path, Position key, String name) {

  public Item(Node node, PlanPath path, Position key) {
    this(node, path, key, "");
  }

  public static Item root(Node node) {
    return new Item(node, PlanPath.ROOT, node.at());
  }

  Item child(Node.Entry entry) {
    return new Item(entry.value(), path.key(entry.key()), entry.at(), entry.key());
  }

  Item child(Node node, int index) {
    return new Item(node, path.item(index), node.at());
  }
}
