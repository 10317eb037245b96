package strikeoff.yaml;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import strikeoff.document.Position;

/**
 * The lines of a text in which slips are mended as a reader would take them, so that reading can go
 * on to the next one. No line is added or lost, and every place leads back to what was written.
 */
final class Mended {

  /** In a line, from a column counted from 0: so many characters gave way to so many others. */
  private record Edit(int from, int removed, int added) {}

  private final List<String> lines;
  private final List<String> phrases;
  private final Map<Integer, List<Edit>> edits = new LinkedHashMap<>();

  /**
   * @param phrases that begin an item of a list, as its key, and that whoever reads the tree misses
   *     a value of
   */
  Mended(List<String> lines, List<String> phrases) {
    this.lines = new ArrayList<>(lines);
    this.phrases = List.copyOf(phrases);
  }

  /** True of a phrase that needs no telling here. */
  boolean isPhrase(String text) {
    return phrases.contains(text);
  }

  /** The phrase of several words that a line begins with; empty if none. */
  String phrase(String content) {
    return phrases.stream()
        .filter(p -> p.indexOf(' ') > 0 && content.startsWith(p + " "))
        .findFirst()
        .orElse("");
  }

  /** The lines as they are now. */
  List<String> lines() {
    return lines;
  }

  /** A line as it is now, counted from 1; empty beyond the end. */
  String line(int number) {
    return number >= 1 && number <= lines.size() ? lines.get(number - 1) : "";
  }

  String text() {
    return String.join("\n", lines);
  }

  boolean touched() {
    return !edits.isEmpty();
  }

  /** Puts other text in place of what stands from one column up to another, counted from 0. */
  void replace(int number, int from, int to, String fresh) {
    String line = line(number);
    lines.set(number - 1, line.substring(0, from) + fresh + line.substring(to));
    edits
        .computeIfAbsent(number, n -> new ArrayList<>())
        .add(new Edit(from, to - from, fresh.length()));
  }

  void insert(int number, int at, String fresh) {
    replace(number, at, at, fresh);
  }

  /** Gives a line another indentation. */
  void indent(int number, int spaces) {
    replace(number, 0, Lines.indent(line(number)), " ".repeat(spaces));
  }

  void blank(int number) {
    replace(number, 0, line(number).length(), "");
  }

  /** Where in the written text a place of the mended one lies. */
  Position original(Position at) {
    List<Edit> made = edits.get(at.line());
    if (made == null) {
      return at;
    }
    int column = at.column() - 1;
    for (int i = made.size() - 1; i >= 0; i--) {
      Edit e = made.get(i);
      if (column >= e.from() + e.added()) {
        column += e.removed() - e.added();
      } else if (column > e.from()) {
        column = e.from() + Math.min(column - e.from(), e.removed());
      }
    }
    return new Position(at.line(), column + 1);
  }

  /** A tree of the mended text with its places in the written one. */
  Node original(Node node) {
    if (!touched()) {
      return node;
    }
    Position at = original(node.at());
    Position end = original(node.end());
    if (node instanceof Node.Scalar s) {
      return new Node.Scalar(s.text(), at, end);
    }
    if (node instanceof Node.Nothing n) {
      return new Node.Nothing(n.comment(), n.told(), at);
    }
    if (node instanceof Node.Sequence s) {
      return new Node.Sequence(s.items().stream().map(this::original).toList(), at, end);
    }
    Node.Mapping m = (Node.Mapping) node;
    Map<String, Node.Entry> entries = new LinkedHashMap<>();
    m.entries().forEach((key, e) -> entries.put(key, original(e)));
    return new Node.Mapping(
        entries, m.again().stream().map(this::original).toList(), m.whole(), at, end);
  }

  private Node.Entry original(Node.Entry e) {
    return new Node.Entry(e.key(), original(e.value()), original(e.at()));
  }
}
