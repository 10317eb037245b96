package strikeoff.speech;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.TreeSet;
import strikeoff.layout.Copies;

/** Says many placements in few words: {@code herons 1–4, 6; shells 2}. */
public final class Numbering {

  private static final int MOST_RUNS = 6;

  private Numbering() {}

  /** Placements by arrangement, in the order that the arrangements come. */
  public static String places(Copies copies) {
    List<String> words = new ArrayList<>();
    copies.numbers().forEach((name, own) -> words.add(name + " " + brief(own)));
    return String.join("; ", words) + (copies.more() ? " and perhaps more" : "");
  }

  /** Numbers sorted, each once; what has more than six runs ends in "and more". */
  public static String brief(Collection<Integer> numbers) {
    List<String> runs = listed(List.copyOf(new TreeSet<>(numbers)));
    return runs.size() <= MOST_RUNS
        ? String.join(", ", runs)
        : String.join(", ", runs.subList(0, MOST_RUNS)) + ", and more";
  }

  /** All numbers in their own order; those that follow each other become one run. */
  public static String runs(List<Integer> numbers) {
    return String.join(", ", listed(numbers));
  }

  private static List<String> listed(List<Integer> numbers) {
    List<String> runs = new ArrayList<>();
    int at = 0;
    while (at < numbers.size()) {
      int end = at;
      while (end + 1 < numbers.size() && numbers.get(end + 1) == numbers.get(end) + 1) {
        end++;
      }
      runs.add(run(numbers.get(at), numbers.get(end)));
      at = end + 1;
    }
    return runs;
  }

  private static String run(int from, int to) {
    return from == to ? "" + from : to == from + 1 ? from + ", " + to : from + "–" + to;
  }
}
