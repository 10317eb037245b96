package strikeoff.document.yaml;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import strikeoff.document.PlanPath;
import strikeoff.document.Position;
import strikeoff.yaml.Node;

/** What stands where in a YAML text. */
final class TextPlaces {

  private final String text;
  private final LineOffsets lines;

  /** What stands at each path; keys by the path of their value. */
  private final Map<PlanPath, Place> places = new LinkedHashMap<>();

  TextPlaces(String text, Node root) {
    this.text = text;
    this.lines = new LineOffsets(text);
    places.put(PlanPath.ROOT, new Place(root, root.at(), "", Optional.empty(), 0));
    add(root, PlanPath.ROOT);
  }

  /**
   * @param key where the key begins, or the item
   * @param name the key; empty for an item
   * @param parent the mapping or list that holds it; nothing for the whole document
   * @param number of its place among the others that the parent holds, from 0
   */
  record Place(Node node, Position key, String name, Optional<Node> parent, int number) {}

  private void add(Node node, PlanPath path) {
    if (node instanceof Node.Mapping m) {
      int number = 0;
      for (Node.Entry e : m.entries().values()) {
        PlanPath below = path.key(e.key());
        places.putIfAbsent(below, new Place(e.value(), e.at(), e.key(), Optional.of(m), number++));
        add(e.value(), below);
      }
    } else if (node instanceof Node.Sequence s) {
      for (int i = 0; i < s.items().size(); i++) {
        Node item = s.items().get(i);
        PlanPath below = path.item(i);
        places.putIfAbsent(below, new Place(item, item.at(), "", Optional.of(s), i));
        add(item, below);
      }
    }
  }

  String text() {
    return text;
  }

  LineOffsets lines() {
    return lines;
  }

  /** Null if nothing stands there. */
  Place at(PlanPath path) {
    return places.get(path);
  }

  int behindColon(Position key, String name) {
    int from = lines.offset(key);
    char first = text.charAt(from);
    boolean quoted = first == '"' || first == '\'';
    // A name with quotes in it is longer as it is written; what is left of it holds no colon then.
    int at = quoted ? text.indexOf(first, from + 1 + name.length()) : from + name.length();
    return text.indexOf(':', at) + 1;
  }

  /** Just behind a value; a text of several lines ends before the line end that closes it. */
  int behind(Node node) {
    int from = lines.offset(node.at());
    int to = lines.offset(node.end());
    while (to > from && Character.isWhitespace(text.charAt(to - 1))) {
      to--;
    }
    return to;
  }

  /** Just behind an entry's value, or behind its colon if it has none. */
  int behind(Position key, String name, Node value) {
    return value instanceof Node.Nothing ? behindColon(key, name) : behind(value);
  }

  /** An item may begin on a line below its dash. */
  int dashOf(Node.Sequence list, Node item) {
    int at = lines.offset(item.at());
    int column = lines.column(list.at());
    int line = lines.lineOf(at);
    while (line > 0
        && (lines.start(line) + column >= text.length()
            || text.charAt(lines.start(line) + column) != '-')) {
      line--;
    }
    return lines.start(line) + column;
  }

  static int size(Node node) {
    return node instanceof Node.Mapping m
        ? m.entries().size()
        : ((Node.Sequence) node).items().size();
  }

  boolean isBlock(Node node) {
    if (node instanceof Node.Scalar || node instanceof Node.Nothing) {
      return false;
    }
    int at = lines.offset(node.at());
    return at >= text.length() || (text.charAt(at) != '{' && text.charAt(at) != '[');
  }
}
