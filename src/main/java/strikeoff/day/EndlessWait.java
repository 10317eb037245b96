package strikeoff.day;

import java.util.List;
import java.util.Optional;
import strikeoff.document.PlanPath;
import strikeoff.plan.Step;
import strikeoff.plan.Until;
import strikeoff.units.Share;
import strikeoff.units.Temperature;

/**
 * A step that cannot start, or cannot go on, as the run is written.
 *
 * @param step its number
 * @param doing the step itself
 * @param missing what it waits for
 */
public record EndlessWait(
    int step, Step doing, Missing missing, PlanPath path, List<Related> related)
    implements AboutStep {

  public EndlessWait {
    related = List.copyOf(related);
  }

  /** What never comes. */
  public sealed interface Missing {}

  /**
   * @param later number of a later step that mixes it; empty if none does
   */
  public record PasteMixed(String paste, Optional<Integer> later) implements Missing {}

  public record FilmsDry(Until.Dryness state, Share humidity, Temperature temperature)
      implements Missing {}

  /**
   * @param tasks how many the simulation follows
   */
  public record WorkDone(int tasks) implements Missing {}

  /**
   * @param paste what it holds
   * @param one who prints that
   * @param other who needs it as well
   * @param next what for
   */
  public record ScreenFree(String screen, String paste, String one, String other, String next)
      implements Missing {}

  /** Which kind of wait it is. */
  public Why why() {
    if (missing instanceof PasteMixed paste) {
      return paste.later().isPresent() ? Why.MIXED_LATER : Why.NEVER_MIXED;
    }
    return missing instanceof FilmsDry
        ? Why.NEVER_DRY
        : missing instanceof WorkDone ? Why.TOO_LONG : Why.SCREEN_TWICE;
  }

  /** True if it waits for a paste, which is the mixing's fault and not the clock's. */
  public boolean forPaste() {
    return missing instanceof PasteMixed;
  }

  /** True if it waits for a film that never dries. */
  public boolean forFilm() {
    return missing instanceof FilmsDry;
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
