package strikeoff.yaml;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * A list in place of a mapping: it says the same with dashes, so it is read on as if they were not
 * there.
 *
 * @param entries of all that is listed, by key
 * @param clear whether they are sure to be all that was meant
 * @param nameless whether things are listed without the names that they must have
 * @param write how it is to be written, behind a semicolon; may be empty
 */
record ListedKeys(Map<String, Node.Entry> entries, boolean clear, boolean nameless, String write) {

  /**
   * @param byName whether each thing that is listed has to have a name
   */
  static ListedKeys of(Node.Sequence list, boolean byName) {
    Map<String, Node.Entry> entries = new LinkedHashMap<>();
    boolean named = false;
    boolean clear = !list.items().isEmpty();
    boolean nameless = false;
    for (Node each : list.items()) {
      if (!(each instanceof Node.Mapping m)) {
        clear = false;
        continue;
      }
      Node.Entry name = m.entries().get("name");
      if (name != null && name.value() instanceof Node.Scalar s) {
        named = true;
        Map<String, Node.Entry> rest = new LinkedHashMap<>(m.entries());
        rest.remove("name");
        Node.Entry entry =
            new Node.Entry(
                s.text(), new Node.Mapping(rest, m.again(), m.whole(), m.at(), m.end()), name.at());
        clear &= entries.putIfAbsent(s.text(), entry) == null;
      } else {
        // Under the section itself stand names, each with keys of its own.
        boolean names =
            m.entries().values().stream().allMatch(e -> e.value() instanceof Node.Mapping);
        nameless |= byName && !names;
        for (Node.Entry entry : m.entries().values()) {
          clear &= entries.putIfAbsent(entry.key(), entry) == null;
        }
      }
    }
    String write =
        named
            ? "; write each under its name, as in " + entries.keySet().iterator().next() + ": {…}"
            : nameless
                ? "; leave the “- ” out and give each a name, as in NAME: {…}"
                : !clear
                    ? ""
                    : list.items().get(0).at().column() == list.at().column() + 1
                        ? "; write keys in braces: {…}"
                        : "; write the keys without “- ” before them";
    return new ListedKeys(entries, clear && !nameless, nameless, write);
  }
}
