package strikeoff.plan.yaml;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashSet;
import java.util.Set;
import strikeoff.document.Bounds;
import strikeoff.yaml.Node;
import strikeoff.yaml.YamlReader;
import strikeoff.yaml.YamlReading;

/** The films that a plan names, without reading them: what else its verdict depends on. */
public final class NamedArtwork {

  private static final String KEY = "artwork";

  private NamedArtwork() {}

  /** Their names as the plan writes them, whether or not such files are there. */
  public static Set<String> of(byte[] plan, Bounds bounds) {
    Set<String> names = new LinkedHashSet<>();
    String text = new String(plan, StandardCharsets.ISO_8859_1);
    // Most plans name none. A key may be written by escapes, and a text in two bytes a letter.
    if (text.contains(KEY) || text.indexOf('\\') >= 0 || text.indexOf('\0') >= 0) {
      YamlReading reading = YamlReader.read(plan, bounds, StepPart.VERBS);
      if (reading instanceof YamlReading.Document document) {
        collect(document.root(), names);
      } else if (reading instanceof YamlReading.Faulty faulty) {
        faulty.root().ifPresent(root -> collect(root, names));
      }
    }
    return names;
  }

  private static void collect(Node node, Set<String> names) {
    if (node instanceof Node.Mapping mapping) {
      for (Node.Entry entry : mapping.entries().values()) {
        if (entry.key().equals(KEY) && entry.value() instanceof Node.Scalar name) {
          names.add(name.text());
        }
        collect(entry.value(), names);
      }
    } else if (node instanceof Node.Sequence list) {
      list.items().forEach(item -> collect(item, names));
    }
  }
}
