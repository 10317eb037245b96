package strikeoff.day;

import java.util.List;
import strikeoff.document.PlanPath;
import strikeoff.evidence.Evidence;

/**
 * A step that cannot start, or cannot go on, as the run is written.
 *
 * @param step its number
 * @param title the step in a few words
 * @param waitsFor what it waits for, as the rest of "it waits for …"
 * @param cure what to write instead
 * @param why which kind of wait it is
 */
public record EndlessWait(
    int step,
    String title,
    String waitsFor,
    String cure,
    Why why,
    PlanPath path,
    List<Related> related)
    implements Evidence {

  public EndlessWait {
    related = List.copyOf(related);
  }

  /** True if it waits for a paste, which is the mixing's fault and not the clock's. */
  public boolean forPaste() {
    return why == Why.NEVER_MIXED || why == Why.MIXED_LATER;
  }

  /** True if it waits for a film that never dries. */
  public boolean forFilm() {
    return why == Why.NEVER_DRY;
  }

  /** How the run is followed from there on, as a sentence that begins with a space. */
  public String after() {
    return switch (why) {
      case NEVER_MIXED, MIXED_LATER -> "";
      case SCREEN_TWICE -> " The step is simulated as if one person printed all of it.";
      case TOO_LONG, NEVER_DRY -> " The run is not simulated beyond it.";
    };
  }

  /** Kinds of waits that never end. */
  public enum Why {
    /** A paste that no step mixes. */
    NEVER_MIXED,
    /** A paste that a later step mixes. */
    MIXED_LATER,
    /** More work than the simulation follows; the rest of the run isn't simulated. */
    TOO_LONG,
    /** A screen that two people need at once; the run is simulated as if one printed alone. */
    SCREEN_TWICE,
    /** A film that never dries; the rest of the run isn't simulated. */
    NEVER_DRY
  }
}
