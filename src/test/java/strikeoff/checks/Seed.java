package strikeoff.checks;

/**
 * From where invented plans and values are drawn, the same for every build: a build that fails
 * tells of the change and not of its luck. To look for more, set it to the empty text, which draws
 * anew each time, and keep what is found as an example of its own.
 */
public final class Seed {

  public static final String LAWS = "1866";

  private Seed() {}
}
