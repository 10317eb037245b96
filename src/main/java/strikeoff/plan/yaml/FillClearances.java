package strikeoff.plan.yaml;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import strikeoff.plan.Arrangement;
import strikeoff.plan.Arrangement.Anchored;
import strikeoff.plan.Arrangement.Fill;

/**
 * Gives fills that name nothing to keep clear of everything that is placed without a fill's help;
 * leaving out what hangs on fills keeps placements from waiting for each other.
 */
final class FillClearances {

  private final Map<String, Arrangement> placements;
  private final Assumptions assumptions;

  /** Whether it hangs on a fill, by name, so that a long chain is gone through once. */
  private final Map<String, Boolean> hanging = new HashMap<>();

  public FillClearances(Map<String, Arrangement> placements, Assumptions assumptions) {
    this.placements = placements;
    this.assumptions = assumptions;
  }

  /**
   * @param open names of the fills that say nothing of what is around them
   */
  Map<String, Arrangement> fillIn(Set<String> open) {
    Map<String, Arrangement> all = new LinkedHashMap<>(placements);
    List<String> firm = new ArrayList<>(placements.keySet());
    firm.removeIf(this::hangsOnFill);
    all.replaceAll((name, a) -> open.contains(name) && a instanceof Fill f ? keep(f, firm) : a);
    return all;
  }

  private boolean hangsOnFill(String name) {
    Set<String> chain = new LinkedHashSet<>();
    String here = name;
    while (!hanging.containsKey(here)
        && chain.add(here)
        && placements.get(here) instanceof Anchored a) {
      here = a.anchor();
    }
    boolean hangs = hanging.getOrDefault(here, placements.get(here) instanceof Fill);
    chain.forEach(one -> hanging.put(one, hangs));
    return hangs;
  }

  /** A fill doesn't go around what it is printed over, nor around what is printed over it. */
  private Fill keep(Fill f, List<String> firm) {
    List<String> around =
        firm.stream()
            .filter(name -> !f.over().contains(name))
            .filter(name -> !placements.get(name).over().contains(f.name()))
            .toList();
    if (around.isEmpty()) {
      return f;
    }
    assumptions.derived(
        f.path().key("around"),
        "placements to keep clear of",
        String.join(", ", around),
        "every other placement of the plan");
    return new Fill(
        f.name(),
        f.design(),
        f.lattice(),
        f.pitchLength(),
        f.pitchWidth(),
        f.from(),
        f.to(),
        f.near(),
        f.far(),
        f.clear(),
        around,
        f.count(),
        f.turn(),
        f.mirrored(),
        f.over(),
        f.path());
  }
}
