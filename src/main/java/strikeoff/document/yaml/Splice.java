package strikeoff.document.yaml;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Text that takes the place of other text.
 *
 * @param from offset of the first character that goes
 * @param to offset just behind the last one; the same as {@code from} where nothing goes
 */
record Splice(int from, int to, String text) {

  /** All at once; empty if two of them are about the same characters. Order counts at one place. */
  static Optional<String> all(String text, List<Splice> splices) {
    List<Splice> sorted = new ArrayList<>(splices);
    sorted.sort(Comparator.comparingInt(Splice::from));
    StringBuilder result = new StringBuilder(text.length() + 64);
    int at = 0;
    for (Splice each : sorted) {
      if (each.from < at) {
        return Optional.empty();
      }
      result.append(text, at, each.from).append(each.text);
      at = each.to;
    }
    return Optional.of(result.append(text, at, text.length()).toString());
  }
}
