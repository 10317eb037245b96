package strikeoff.day;

import java.util.List;
import java.util.OptionalLong;
import strikeoff.layout.Footprint;
import strikeoff.layout.FrameMeetings;
import strikeoff.plan.PrintStep;

/**
 * Impressions of one colour that follow one another, before whose first one the other colours under
 * their frames are let dry. Of people who print side by side each impression is waited for alone.
 */
public final class ColourRun {

  private final PrintStep step;
  private final List<Footprint> frames;
  private final FrameMeetings meetings;
  private final int first;
  private long begins;
  private OptionalLong dryFrom = OptionalLong.empty();
  private boolean known;

  /**
   * @param first how many impressions there were before it
   */
  ColourRun(PrintStep step, List<Footprint> frames, FrameMeetings meetings, int first) {
    this.step = step;
    this.frames = List.copyOf(frames);
    this.meetings = meetings;
    this.first = first;
  }

  public int first() {
    return first;
  }

  void begins(long second) {
    begins = second;
  }

  /** When the last film under its frames was lifted; empty if there is none. */
  void dryFrom(OptionalLong second) {
    dryFrom = second;
    known = true;
  }

  /** True if a film of another colour of the step lies under one of the frames. */
  boolean liesOn(Printed film) {
    boolean sameColour = frames.get(0).separation() == film.footprint().separation();
    if (film.step() != step || sameColour) {
      return false;
    }
    // Backwards, since the film printed last is most often that of the last frame's motif.
    for (int i = frames.size() - 1; i >= 0; i--) {
      if (meetings.lies(film.footprint(), frames.get(i))) {
        return true;
      }
    }
    return false;
  }

  /**
   * When the last film under its frames was lifted, looking back as far as films lifted later than
   * {@code since}; empty if there is none.
   */
  OptionalLong lastLift(List<Printed> printed, long since) {
    for (int i = first - 1; i >= 0; i--) {
      Printed film = printed.get(i);
      if (film.step() != step || film.lifted() <= since) {
        return OptionalLong.empty();
      }
      if (liesOn(film)) {
        return OptionalLong.of(film.lifted());
      }
    }
    return OptionalLong.empty();
  }

  /** True if there is something to let dry before it. */
  public boolean liesOnAny(List<Printed> printed) {
    return dryFrom(printed).isPresent();
  }

  /** How long what lies under its frames has dried when it begins, in seconds; 0 for nothing. */
  public long dried(List<Printed> printed) {
    return begins - dryFrom(printed).orElse(begins);
  }

  private OptionalLong dryFrom(List<Printed> printed) {
    if (!known) {
      dryFrom = lastLift(printed, Long.MIN_VALUE);
      known = true;
    }
    return dryFrom;
  }
}
