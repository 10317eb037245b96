package strikeoff.document;

/**
 * Work on a plan ends because nobody waits for it any more. Loops that a plan can make long ask
 * {@link #ifAsked()} on every round; asking costs next to nothing.
 */
public final class GivenUp extends RuntimeException {

  private static final long serialVersionUID = 1;

  private GivenUp() {
    super("given up");
  }

  /** True once nobody waits any more. */
  public static boolean isAsked() {
    return Thread.currentThread().isInterrupted();
  }

  /**
   * Does nothing unless the thread is interrupted.
   *
   * @throws GivenUp if it is
   */
  public static void ifAsked() {
    if (isAsked()) {
      throw new GivenUp();
    }
  }
}
