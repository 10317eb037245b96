package strikeoff.plan;

import java.util.List;
import strikeoff.document.PlanPath;

/**
 * The people who print, by name; the first one does what no step gives to another.
 *
 * @param children true if a class of children works along
 */
public record Crew(List<String> names, boolean children, PlanPath path) {

  /** More can't print one plan. */
  public static final int MOST = 20;

  public Crew {
    names = List.copyOf(names);
    if (names.isEmpty()) {
      throw new IllegalArgumentException("nobody prints");
    }
  }

  /** Adults alone. */
  public Crew(List<String> names, PlanPath path) {
    this(names, false, path);
  }
}
