package strikeoff.timeline;

/**
 * When a film reaches a state of drying. The best value is the most likely one; models of drying in
 * still air disagree, so it may be as early as {@code earliest} or as late as {@code latest}. All
 * three are alike where the printer measured it.
 */
public record Reached(Moment earliest, Moment best, Moment latest) {

  /** Stands for a state that is never reached in this air. */
  public static final Moment NEVER = new Moment(Long.MAX_VALUE / 4);

  public boolean never() {
    return best.seconds() >= NEVER.seconds();
  }
}
