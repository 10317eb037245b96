package strikeoff.plan.yaml;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import strikeoff.document.Bounds;
import strikeoff.plan.Arrangement;
import strikeoff.plan.Design;
import strikeoff.yaml.Fields;

/**
 * Checks how placements refer to each other: no circles, no numbers that nobody has; and that they
 * can be counted, so that the layout leaves none out.
 */
final class Relations {

  private final Bounds bounds;
  private final Fields section;
  private final Map<String, Design> designs;
  private final Map<String, Arrangement> placements;
  private final Set<String> settled = new LinkedHashSet<>();
  private boolean circle;

  Relations(
      Bounds bounds,
      Fields section,
      Map<String, Design> designs,
      Map<String, Arrangement> placements) {
    this.bounds = bounds;
    this.section = section;
    this.designs = designs;
    this.placements = placements;
  }

  Map<String, Arrangement> check() {
    placements.keySet().forEach(this::follow);
    if (!circle) {
      count();
    }
    return placements;
  }

  /** Walks from a placement to what it needs, without recursion: chains may be thousands long. */
  private void follow(String first) {
    List<String> trail = new ArrayList<>();
    Map<String, Integer> next = new LinkedHashMap<>();
    trail.add(first);
    while (!trail.isEmpty()) {
      String here = trail.get(trail.size() - 1);
      List<String> needs = needs(placements.get(here));
      int done = next.getOrDefault(here, 0);
      if (settled.contains(here) || done == needs.size()) {
        settled.add(here);
        next.remove(here);
        trail.remove(trail.size() - 1);
        continue;
      }
      next.put(here, done + 1);
      String there = needs.get(done);
      if (next.containsKey(there)) {
        report(trail.subList(trail.indexOf(there), trail.size()));
        settled.addAll(trail);
        return;
      }
      if (!settled.contains(there)) {
        trail.add(there);
      }
    }
  }

  private static List<String> needs(Arrangement a) {
    if (a instanceof Arrangement.Anchored n) {
      return List.of(n.anchor());
    }
    return a instanceof Arrangement.Fill f ? f.around() : List.of();
  }

  private void report(List<String> round) {
    circle = true;
    List<String> shown = round.size() > 8 ? round.subList(0, 8) : round;
    String dots = round.size() > 8 ? "… → " : "";
    section.wrongKey(
        round.get(0),
        "placements wait for each other in a circle: "
            + String.join(" → ", shown)
            + " → "
            + dots
            + round.get(0));
  }

  private void count() {
    Counts counts = new Counts(placements);
    long total = 0;
    long impressions = 0;
    for (Arrangement a : placements.values()) {
      if (a instanceof Arrangement.Anchored n) {
        beyond(n, counts.atMost(n.anchor()));
      }
      total += counts.atMost(a.name());
      if (total > bounds.placements()) {
        section.wrongKey(
            a.name(),
            "with this the plan comes to some "
                + total
                + " placements; more than "
                + bounds.placements()
                + " cannot be checked. Is the pitch right?");
        return;
      }
      Design design = designs.get(a.design());
      int colours = design == null ? 0 : design.separations().size();
      impressions += counts.atMost(a.name()) * colours;
      if (impressions > bounds.impressions()) {
        section.wrongKey(
            a.name(),
            "with this the plan comes to some "
                + impressions
                + " impressions; more than "
                + bounds.impressions()
                + " cannot be checked. Is the pitch right?");
        return;
      }
    }
  }

  private void beyond(Arrangement.Anchored n, long there) {
    for (int number : n.which()) {
      if (number > there) {
        section.wrongKey(
            n.name(),
            "“which” names number " + number + ", and " + n.anchor() + " has only " + there);
      }
    }
  }
}
