package strikeoff.sequence;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import strikeoff.layout.Placement;

/** Says numbers of placements in short: {@code 1–4, 6}. */
final class NumberRuns {

  private NumberRuns() {}

  /** Placements by arrangement: {@code herons 1–4, 6; shells 2}. */
  static String places(Collection<Placement> placements) {
    Map<String, Set<Integer>> numbers = new LinkedHashMap<>();
    for (Placement placement : placements) {
      numbers
          .computeIfAbsent(placement.arrangement(), name -> new TreeSet<>())
          .add(placement.number());
    }
    List<String> words = new ArrayList<>();
    numbers.forEach((name, own) -> words.add(name + " " + text(own)));
    return String.join("; ", words);
  }

  static String text(Iterable<Integer> numbers) {
    TreeSet<Integer> sorted = new TreeSet<>();
    numbers.forEach(sorted::add);
    List<String> runs = new ArrayList<>();
    Integer from = null;
    Integer to = null;
    for (Integer number : sorted) {
      if (from != null && number == to + 1) {
        to = number;
        continue;
      }
      if (from != null) {
        runs.add(run(from, to));
      }
      from = number;
      to = number;
    }
    if (from != null) {
      runs.add(run(from, to));
    }
    return String.join(", ", runs);
  }

  private static String run(int from, int to) {
    return from == to ? "" + from : to == from + 1 ? from + ", " + to : from + "–" + to;
  }
}
