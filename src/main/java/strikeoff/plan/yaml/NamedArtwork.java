package strikeoff.plan.yaml;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashSet;
import java.util.Set;
import strikeoff.document.Bounds;
import strikeoff.yaml.Node;
import strikeoff.yaml.YamlReader;
import strikeoff.yaml.YamlReading;

/**
 * The films that a plan or a policy names, without reading them: what else verdicts depend on.
 *
 * @param files names of pictures as they are written, whether or not such files are there
 * @param films names of films of a studio
 */
public record NamedArtwork(Set<String> files, Set<String> films) {

  private static final String FILE = "artwork";
  private static final String FILM = "film";

  /** Those of a file's text. */
  public static NamedArtwork of(byte[] bytes, Bounds bounds) {
    NamedArtwork names = new NamedArtwork(new LinkedHashSet<>(), new LinkedHashSet<>());
    String text = new String(bytes, StandardCharsets.ISO_8859_1);
    // Most plans name none. A key may be written by escapes, and a text in two bytes a letter.
    if (text.contains(FILE)
        || text.contains(FILM)
        || text.indexOf('\\') >= 0
        || text.indexOf('\0') >= 0) {
      YamlReading reading = YamlReader.read(bytes, bounds, StepPart.VERBS);
      if (reading instanceof YamlReading.Document document) {
        names.collect(document.root());
      } else if (reading instanceof YamlReading.Faulty faulty) {
        faulty.root().ifPresent(names::collect);
      }
    }
    return names;
  }

  private void collect(Node node) {
    if (node instanceof Node.Mapping mapping) {
      for (Node.Entry entry : mapping.entries().values()) {
        if (entry.value() instanceof Node.Scalar name) {
          if (entry.key().equals(FILE)) {
            files.add(name.text());
          } else if (entry.key().equals(FILM)) {
            films.add(name.text());
          }
        }
        collect(entry.value());
      }
    } else if (node instanceof Node.Sequence list) {
      list.items().forEach(this::collect);
    }
  }
}
