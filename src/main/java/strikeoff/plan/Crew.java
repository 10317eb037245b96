package strikeoff.plan;

import java.util.List;

/** The people who print, by name; the first one does what no step gives to another. */
public record Crew(List<String> names, PlanPath path) {

  public Crew {
    names = List.copyOf(names);
    if (names.isEmpty()) {
      throw new IllegalArgumentException("nobody prints");
    }
  }
}
