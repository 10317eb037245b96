package strikeoff.studio;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import strikeoff.document.PlanPath;
import strikeoff.document.Position;
import strikeoff.document.Problem;
import strikeoff.policy.Limit;
import strikeoff.policy.LimitOrder;
import strikeoff.policy.Policy;
import strikeoff.policy.yaml.PolicyReader;

/**
 * Limits of policy files that contradict one another, or those that are built in: nothing can be
 * worked out between a least and a most that is less.
 */
public final class LimitConflicts {

  private final Policy policy;
  private final Map<String, Where> set = new LinkedHashMap<>();
  private final List<Conflict> conflicts = new ArrayList<>();

  private LimitConflicts(Policy policy) {
    this.policy = policy;
  }

  private record Where(String file, Position at, int depth) {}

  /**
   * A contradiction.
   *
   * @param file the policy file that has to change, nearest to the plans
   * @param problem with its place there
   */
  public record Conflict(String file, Problem problem) {}

  /**
   * @param files from the top down; those under one that holds below count for nothing
   */
  public static List<Conflict> of(Policy builtIn, List<StudioFile> files) {
    LimitConflicts all = new LimitConflicts(Studio.of(builtIn, files).policy());
    for (StudioFile file : files) {
      file.limitsAt()
          .forEach(
              (name, at) -> all.set.put(name, new Where(file.name(), at, files.indexOf(file))));
      if (file.holdsBelow()) {
        break;
      }
    }
    all.look();
    return List.copyOf(all.conflicts);
  }

  private void look() {
    TreeSet<String> families = new TreeSet<>();
    set.keySet().forEach(name -> families.add(name.substring(0, name.indexOf('/'))));
    for (String family : families) {
      LimitOrder order = PolicyReader.order(family);
      for (String name : order.aboveZero()) {
        if (set.containsKey(name) && base(name) <= 0) {
          tell(name, value(name) + " leaves nothing to work with; write more than zero");
        }
      }
      for (List<String> rising : order.rising()) {
        for (int i = 1; i < rising.size(); i++) {
          compare(rising.get(i - 1), rising.get(i));
        }
      }
    }
  }

  private void compare(String low, String high) {
    if (base(low) <= base(high) || !set.containsKey(low) && !set.containsKey(high)) {
      return;
    }
    boolean lowIsNearer =
        set.containsKey(low)
            && (!set.containsKey(high) || set.get(low).depth() >= set.get(high).depth());
    if (lowIsNearer) {
      tell(
          low,
          value(low)
              + " is more than "
              + named(high)
              + "; write at most "
              + value(high)
              + ", or set "
              + high
              + " higher as well");
    } else {
      tell(
          high,
          value(high)
              + " is less than "
              + named(low)
              + "; write at least "
              + value(low)
              + ", or set "
              + low
              + " lower as well");
    }
  }

  private String named(String name) {
    Where where = set.get(name);
    return name
        + ", which is "
        + value(name)
        + (where == null ? " as it comes" : " by " + where.file() + ", line " + where.at().line());
  }

  private void tell(String name, String what) {
    Where where = set.get(name);
    PlanPath path = new PlanPath("limits").key(name);
    conflicts.add(new Conflict(where.file(), new Problem(where.at(), path, what)));
  }

  private double base(String name) {
    return limit(name).value().base();
  }

  private String value(String name) {
    return limit(name).value().text();
  }

  private Limit limit(String name) {
    return policy.limit(name);
  }
}
