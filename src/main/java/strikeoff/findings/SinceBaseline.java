package strikeoff.findings;

import java.util.ArrayList;
import java.util.List;

/**
 * What a plan's findings come to beside those of an earlier run.
 *
 * @param fresh how many are new
 * @param old how many were there
 * @param gone rules of those that are there no more, one for each finding
 */
public record SinceBaseline(int fresh, int old, List<String> gone) {

  public SinceBaseline {
    gone = List.copyOf(gone);
  }

  /** As {@code 1 new, 3 old, 2 gone since the baseline}. */
  public String counted() {
    List<String> parts = new ArrayList<>(List.of(fresh + " new"));
    if (old > 0) {
      parts.add(old + " old");
    }
    if (!gone.isEmpty()) {
      parts.add(gone.size() + " gone");
    }
    return String.join(", ", parts) + " since the baseline";
  }
}
