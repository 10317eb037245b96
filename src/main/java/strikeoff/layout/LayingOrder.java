package strikeoff.layout;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import strikeoff.plan.Arrangement;

/**
 * In which order arrangements can be laid: an anchor before what is set from it, a motif before the
 * fill that keeps clear of it.
 *
 * @param order every arrangement that can be laid
 * @param circles rings of arrangements that wait for each other, each beginning with the one that
 *     the plan names first
 * @param waiting those outside a ring that wait for one in it
 */
record LayingOrder(
    List<Arrangement> order, List<List<Arrangement>> circles, List<Arrangement> waiting) {

  static LayingOrder of(Map<String, Arrangement> arrangements) {
    Map<String, Arrangement> left = new LinkedHashMap<>(arrangements);
    Set<String> laid = new LinkedHashSet<>();
    List<Arrangement> order = new ArrayList<>();
    // Depth first on an explicit path: a chain may be as long as the plan, the call stack may not.
    for (Arrangement start : arrangements.values()) {
      List<Arrangement> path = new ArrayList<>(List.of(start));
      Set<String> onPath = new LinkedHashSet<>(Set.of(start.name()));
      while (!path.isEmpty()) {
        Arrangement last = path.get(path.size() - 1);
        Arrangement next = firstUnlaid(last, arrangements, laid);
        if (next == null) {
          if (laid.add(last.name())) {
            order.add(last);
            left.remove(last.name());
          }
          path.remove(path.size() - 1);
          onPath.remove(last.name());
        } else if (onPath.add(next.name())) {
          path.add(next);
        } else {
          break; // a ring; nothing on this path can be laid
        }
      }
    }
    return withCircles(order, left);
  }

  private static LayingOrder withCircles(List<Arrangement> order, Map<String, Arrangement> left) {
    List<List<Arrangement>> circles = new ArrayList<>();
    Set<String> known = new LinkedHashSet<>();
    List<Arrangement> waiting = new ArrayList<>();
    for (Arrangement start : left.values()) {
      List<Arrangement> walk = new ArrayList<>();
      Set<String> walked = new LinkedHashSet<>();
      Arrangement at = start;
      while (at != null && !known.contains(at.name()) && walked.add(at.name())) {
        walk.add(at);
        at = firstUnlaid(at, left, Set.of());
      }
      if (at != null && walked.contains(at.name())) {
        circles.add(fromEarliest(walk.subList(walk.indexOf(at), walk.size()), left));
      }
      known.addAll(walked);
    }
    Set<String> inCircle = new LinkedHashSet<>();
    circles.forEach(circle -> circle.forEach(member -> inCircle.add(member.name())));
    left.values().stream().filter(a -> !inCircle.contains(a.name())).forEach(waiting::add);
    return new LayingOrder(order, circles, waiting);
  }

  private static List<Arrangement> fromEarliest(
      List<Arrangement> ring, Map<String, Arrangement> inPlan) {
    Arrangement earliest =
        inPlan.values().stream().filter(ring::contains).findFirst().orElseThrow();
    int at = ring.indexOf(earliest);
    List<Arrangement> turned = new ArrayList<>(ring.subList(at, ring.size()));
    turned.addAll(ring.subList(0, at));
    return List.copyOf(turned);
  }

  private static Arrangement firstUnlaid(
      Arrangement arrangement, Map<String, Arrangement> among, Set<String> laid) {
    for (String name : needs(arrangement)) {
      if (among.containsKey(name) && !laid.contains(name)) {
        return among.get(name);
      }
    }
    return null;
  }

  private static List<String> needs(Arrangement arrangement) {
    if (arrangement instanceof Arrangement.Anchored anchored) {
      return List.of(anchored.anchor());
    }
    return arrangement instanceof Arrangement.Fill fill ? fill.around() : List.of();
  }
}
