package strikeoff.layout;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/** How placements of one arrangement are called together: {@code herons 1 to 4, 6}. */
final class Numbering {

  private static final int MOST_RUNS = 6;

  private Numbering() {}

  static String of(String arrangement, Collection<Placement> placements) {
    return arrangement + " " + runs(placements.stream().map(Placement::number).sorted().toList());
  }

  /** Runs of numbers from a sorted list; a long list ends in "and more". */
  static String runs(List<Integer> numbers) {
    List<String> runs = new ArrayList<>();
    int at = 0;
    while (at < numbers.size()) {
      int end = at;
      while (end + 1 < numbers.size() && numbers.get(end + 1) == numbers.get(end) + 1) {
        end++;
      }
      if (runs.size() == MOST_RUNS) {
        runs.add("and more");
        break;
      }
      String link = end == at + 1 ? ", " : " to ";
      runs.add(end == at ? "" + numbers.get(at) : numbers.get(at) + link + numbers.get(end));
      at = end + 1;
    }
    return String.join(", ", runs);
  }
}
