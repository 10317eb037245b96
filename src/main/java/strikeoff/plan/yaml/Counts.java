package strikeoff.plan.yaml;

import java.util.LinkedHashMap;
import java.util.Map;
import strikeoff.plan.Arrangement;

/**
 * How many placements arrangements come to at most, so that a slip of the pen (a pitch of 1 mm)
 * ends in words and not in a computation without end. What really fits, the layout works out.
 */
final class Counts {

  private final Map<String, Arrangement> arrangements;
  private final Map<String, Long> known = new LinkedHashMap<>();

  /** The arrangements must be free of circles. */
  Counts(Map<String, Arrangement> arrangements) {
    this.arrangements = arrangements;
  }

  /** At least as many as the layout will place, and exactly as many where the plan says so. */
  long atMost(String name) {
    Long found = known.get(name);
    if (found == null) {
      found = count(arrangements.get(name));
      known.put(name, found);
    }
    return found;
  }

  private long count(Arrangement a) {
    if (a instanceof Arrangement.Series s) {
      return s.count();
    }
    if (a instanceof Arrangement.Border b) {
      return fitting(b.to().minus(b.from()).mm(), b.repeat().mm());
    }
    if (a instanceof Arrangement.Fill f) {
      return fitting(f.to().minus(f.from()).mm(), f.pitchLength().mm())
          * fitting(f.far().minus(f.near()).mm(), f.pitchWidth().mm());
    }
    if (a instanceof Arrangement.Anchored n) {
      return n.which().isEmpty() ? atMost(n.anchor()) : n.which().size();
    }
    return ((Arrangement.Placed) a).at().size();
  }

  /** A last one that fits in part is counted; bounded, so that products don't overflow. */
  private static long fitting(double span, double pitch) {
    return (long) Math.min(1e6, Math.ceil(Math.max(0, span) / pitch) + 1);
  }
}
