package strikeoff.artwork;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What copies what, and how many shapes that makes before any is drawn. */
final class SvgCopies {

  /** Shapes that are drawn, copies and all. */
  private static final long MOST = 50_000;

  private static final int DEEPEST = 15;

  /** Copies alone, by the id of each group that holds them. */
  private final Map<String, Map<String, Integer>> copied = new HashMap<>();

  private final Map<String, Integer> shapes = new HashMap<>();
  private final Map<String, Integer> lines = new HashMap<>();
  private final Set<String> open = new HashSet<>();
  private final Map<String, Long> known = new HashMap<>();
  private final Set<String> drawn;

  /**
   * @param drawn ids of all that is drawn; filled until {@link #check}
   */
  SvgCopies(Set<String> drawn) {
    this.drawn = drawn;
  }

  /**
   * A shape.
   *
   * @param holders ids of it and of all that it lies in
   */
  void shape(List<String> holders) {
    holders.forEach(id -> shapes.merge(id, 1, Integer::sum));
  }

  void copy(List<String> holders, String of, int line) {
    lines.putIfAbsent(of, line);
    holders.forEach(
        id -> copied.computeIfAbsent(id, k -> new HashMap<>()).merge(of, 1, Integer::sum));
  }

  /** Tells what is copied and isn't there, or without end. */
  void check(SvgWrong wrong) throws UnreadablePicture {
    for (Map.Entry<String, Integer> copy : lines.entrySet()) {
      if (!drawn.contains(copy.getKey())) {
        wrong.tell(
            copy.getValue(),
            "#" + copy.getKey(),
            "it is copied, but nothing of that name is drawn: delete the copy");
      }
    }
    wrong.requireNothing();
    for (String id : lines.keySet()) {
      count(id, 0);
    }
    if (count("", 0) > MOST) {
      throw new UnreadablePicture(
          "this drawing makes more than "
              + MOST
              + " shapes by copies of copies; save the film as PNG");
    }
  }

  private long count(String id, int depth) throws UnreadablePicture {
    if (known.containsKey(id)) {
      return known.get(id);
    }
    if (!open.add(id)) {
      throw new UnreadablePicture(
          "this drawing holds what a film can't: line "
              + lines.get(id)
              + " “#"
              + id
              + "” (it is copied into itself: delete that copy)");
    }
    if (depth > DEEPEST) {
      throw new UnreadablePicture(
          "this drawing has copies of copies, more than "
              + DEEPEST
              + " deep; save the film as PNG");
    }
    long all = shapes.getOrDefault(id, 0);
    for (Map.Entry<String, Integer> copy : copied.getOrDefault(id, Map.of()).entrySet()) {
      // A copy of nothing is work as well.
      all += copy.getValue() * (1 + count(copy.getKey(), depth + 1));
      all = Math.min(all, 10 * MOST);
    }
    open.remove(id);
    known.put(id, all);
    return all;
  }
}
