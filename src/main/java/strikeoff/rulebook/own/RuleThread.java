package strikeoff.rulebook.own;

import java.util.Optional;

/**
 * The thread on which own rules judge one plan. Their conditions ask it again and again whether to
 * go on; on any other thread asking does nothing.
 */
public final class RuleThread extends Thread {

  /**
   * How many combinations of facts the conditions of all rules may keep for one plan. The engine
   * keeps each one, in some 200 bytes: a quarter of a GB, where no rule that anybody reads findings
   * of keeps a tenth of it.
   */
  public static final int MOST_COMBINATIONS = 1_000_000;

  private volatile boolean ended;
  private int combinations;
  private volatile Optional<String> tooMany = Optional.empty();

  /**
   * @param name for whoever looks at threads
   */
  public RuleThread(Runnable work, String name) {
    super(work, name);
    // A rule that never ends must not keep the program from ending.
    setDaemon(true);
  }

  /** Lets the work end where it asks next. */
  public void end() {
    ended = true;
    interrupt();
  }

  /** The rule whose conditions found more combinations of facts than are kept, if one did. */
  public Optional<String> tooMany() {
    return tooMany;
  }

  /**
   * Goes on, unless nobody waits any more.
   *
   * @throws Ended if so
   */
  public static void ask() {
    if (Thread.currentThread() instanceof RuleThread thread && thread.ended) {
      throw new Ended();
    }
  }

  /** Goes on, unless the rule's conditions have found too many combinations of facts. */
  static boolean found(String rule) {
    if (Thread.currentThread() instanceof RuleThread thread) {
      thread.combinations++;
      if (thread.combinations > MOST_COMBINATIONS && !thread.ended) {
        thread.tooMany = Optional.of(rule);
        thread.ended = true;
      }
      ask();
    }
    return true;
  }

  /** The work ended before it was done. An error, since it is no fault of the rule. */
  public static final class Ended extends Error {

    private static final long serialVersionUID = 1;

    Ended() {
      super("ended before it was done", null, false, false);
    }
  }
}
