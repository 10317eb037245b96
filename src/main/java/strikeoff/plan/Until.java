package strikeoff.plan;

import strikeoff.units.Span;

/**
 * How long something dries: a stated time, or until every film on the cloth has reached a state.
 */
public sealed interface Until {

  String text();

  /** False for no wait at all. */
  default boolean isWait() {
    return !(this instanceof Time time) || time.span().minutes() != 0;
  }

  /** A stated time; zero for no wait. */
  record Time(Span span) implements Until {
    @Override
    public String text() {
      return span.text();
    }
  }

  /** Until the slowest film is safe. */
  record State(Dryness dryness) implements Until {
    @Override
    public String text() {
      return "until " + dryness.text();
    }
  }

  Until NO_WAIT = new Time(new Span(0));

  /** The three limits of drying. */
  enum Dryness {
    /** Another frame may be laid on it. */
    FRAME_SAFE("frame-safe"),
    /** The cloth may be moved, peeled off its backing, rolled or stacked. */
    LIFT_SAFE("lift-safe"),
    /** It may be put in a bath or be heat-set. */
    FIX_SAFE("fix-safe");

    private final String text;

    Dryness(String text) {
      this.text = text;
    }

    public String text() {
      return text;
    }
  }
}
