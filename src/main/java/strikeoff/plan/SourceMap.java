package strikeoff.plan;

import java.util.List;
import java.util.Map;

/**
 * Turns paths of a plan into places of its file.
 *
 * @param file as the user named it
 * @param lines the file's text, line by line, for quoting
 * @param positions where each key (of a map entry) or list item begins
 */
public record SourceMap(String file, List<String> lines, Map<PlanPath, Position> positions) {

  public SourceMap {
    lines = List.copyOf(lines);
    positions = Map.copyOf(positions);
  }

  /** The place of a path, or of its nearest ancestor that stands in the file. */
  public Position position(PlanPath path) {
    String text = path.text();
    while (true) {
      Position found = positions.get(new PlanPath(text));
      if (found != null) {
        return found;
      }
      if (text.isEmpty()) {
        return new Position(1, 1);
      }
      int cut = Math.max(text.lastIndexOf('.'), text.lastIndexOf('['));
      text = cut < 0 ? "" : text.substring(0, cut);
    }
  }

  /** The text of a line, counted from 1; empty past the end. */
  public String line(int number) {
    return number >= 1 && number <= lines.size() ? lines.get(number - 1) : "";
  }
}
