package strikeoff.yaml;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import strikeoff.document.Position;

/**
 * A part of a YAML document with its place. Scalars stay text, so that {@code on}, {@code no} and
 * {@code 09:00} mean what the reader of the place says they mean.
 */
public sealed interface Node {

  /** Where it begins. */
  Position at();

  /** Just behind its last character; where it begins if it has none. */
  Position end();

  /** In words, for messages: {@code a list}. */
  String kind();

  /** A single value. */
  record Scalar(String text, Position at, Position end) implements Node {
    @Override
    public String kind() {
      return "a single value";
    }
  }

  /**
   * A place where a value belongs and none stands.
   *
   * @param comment true if a comment stands there instead, as after an unquoted {@code #}
   * @param told true if what stands there was refused, so that nobody need miss it again
   */
  record Nothing(boolean comment, boolean told, Position at) implements Node {

    public Nothing(boolean comment, Position at) {
      this(comment, false, at);
    }

    @Override
    public Position end() {
      return at;
    }

    @Override
    public String kind() {
      return "nothing";
    }
  }

  /** A list. */
  record Sequence(List<Node> items, Position at, Position end) implements Node {

    public Sequence {
      items = List.copyOf(items);
    }

    @Override
    public String kind() {
      return "a list";
    }
  }

  /**
   * A mapping in the document's order.
   *
   * @param entries with distinct keys
   * @param again what stands under a key that was there before
   * @param whole false if some of it was refused, so that nobody need miss it
   */
  record Mapping(
      Map<String, Entry> entries, List<Entry> again, boolean whole, Position at, Position end)
      implements Node {

    public Mapping {
      entries = Collections.unmodifiableMap(new LinkedHashMap<>(entries));
      again = List.copyOf(again);
    }

    public Mapping(Map<String, Entry> entries, Position at, Position end) {
      this(entries, List.of(), true, at, end);
    }

    @Override
    public String kind() {
      return "a mapping of keys";
    }
  }

  /** A key with its value; {@code at} is where the key begins. */
  record Entry(String key, Node value, Position at) {}
}
