package strikeoff.document;

import java.util.Collections;
import java.util.List;
import java.util.Map;

/**
 * Turns paths of a plan into places of its file.
 *
 * @param file as the user named it
 * @param lines the file's text, line by line, for quoting
 * @param positions where each key (of a map entry) or list item begins
 * @param ends where the values of those end, just behind the last character
 */
public record SourceMap(
    String file,
    List<String> lines,
    Map<PlanPath, Position> positions,
    Map<PlanPath, Position> ends) {

  public SourceMap {
    lines = List.copyOf(lines);
    // Copies would be a tenth of reading a plan; who made the maps has no more to do with them.
    positions = Collections.unmodifiableMap(positions);
    ends = Collections.unmodifiableMap(ends);
  }

  /** The file's text, but for its line ends. */
  public String text() {
    return String.join("\n", lines);
  }

  /** The place of a path, or of its nearest ancestor that stands in the file. */
  public Position position(PlanPath path) {
    return nearest(path, positions, new Position(1, 1));
  }

  /** The path itself, or its nearest ancestor that stands in the file; the root if none does. */
  public PlanPath written(PlanPath path) {
    PlanPath here = path;
    while (!here.text().isEmpty() && !positions.containsKey(here)) {
      here = here.parent();
    }
    return here;
  }

  /** Where the value of a path, or of its nearest ancestor in the file, ends. */
  public Position end(PlanPath path) {
    return nearest(path, ends, position(path));
  }

  private static Position nearest(PlanPath path, Map<PlanPath, Position> places, Position none) {
    PlanPath here = path;
    while (true) {
      Position found = places.get(here);
      if (found != null) {
        return found;
      }
      if (here.text().isEmpty()) {
        return none;
      }
      here = here.parent();
    }
  }

  /** The text of a line, counted from 1; empty past the end. */
  public String line(int number) {
    return number >= 1 && number <= lines.size() ? lines.get(number - 1) : "";
  }
}
