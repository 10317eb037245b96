package strikeoff.cli.text;

/** Tells how far a long batch is, on one line of the error output that goes again. */
public final class Progress {

  /** Takes away what stands on the line, so that it can be written anew. */
  static final String CLEAR = "\r\u001B[K";

  private final Surroundings here;
  private final int plans;
  private final boolean shown;
  private int done;

  public Progress(Surroundings here, int plans, boolean shown) {
    this.here = here;
    this.plans = plans;
    this.shown = shown;
  }

  /** One more plan is done. */
  public void one() {
    done++;
    if (shown && done < plans) {
      here.err().print("\rchecked " + done + " of " + plans + " plans");
      here.err().flush();
    }
  }

  /** Takes the line away before something else is printed. */
  public void clear() {
    if (shown && done > 0) {
      here.err().print(CLEAR);
      here.err().flush();
    }
  }
}
