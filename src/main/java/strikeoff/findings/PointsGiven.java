package strikeoff.findings;

import java.util.List;
import java.util.stream.Collectors;
import strikeoff.units.Numbers;

/**
 * What a plan gets by a studio's marks.
 *
 * @param points what is left of the full mark, never below 0
 * @param of the full mark
 * @param where the policy's file and line that say so
 * @param taken what was taken for which rule, most first
 */
public record PointsGiven(double points, double of, String where, List<Taken> taken) {

  public PointsGiven {
    taken = List.copyOf(taken);
  }

  /** PointsGiven taken for what a rule found. */
  public record Taken(String rule, int findings, double points) {

    /** As {@code 2 for drying/frame-on-wet-film (3 findings)}. */
    public String text() {
      return Numbers.plain(points, 2)
          + " for "
          + rule
          + (findings == 1 ? "" : " (" + findings + " findings)");
    }
  }

  /** As {@code 14.5 of 20}. */
  public String text() {
    return Numbers.plain(points, 2) + " of " + Numbers.plain(of, 2);
  }

  /** What several get together, as {@code 31.5 of 40}; empty if there are none. */
  public static String sum(List<PointsGiven> all) {
    return all.isEmpty()
        ? ""
        : Numbers.plain(all.stream().mapToDouble(PointsGiven::points).sum(), 2)
            + " of "
            + Numbers.plain(all.stream().mapToDouble(PointsGiven::of).sum(), 2);
  }

  /** Why not all of them, in one line; empty if all. */
  public String reasons() {
    return taken.stream().map(Taken::text).collect(Collectors.joining("; "));
  }
}
