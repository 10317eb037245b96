package strikeoff.plan;

import strikeoff.document.PlanPath;

/**
 * What the print room has for everybody to share. Each piece serves one at a time; who comes later
 * waits. A count of 0 means that there is none.
 *
 * @param sinks where screens are washed out, and the cloth is rinsed and washed off
 * @param fans that blow over the cloth by themselves
 * @param hairDryers that somebody holds
 * @param dryingPlaces for washed screens, each holds one
 */
public record Equipment(int sinks, int fans, int hairDryers, int dryingPlaces, PlanPath path) {

  /** No room has more pieces of a kind. */
  public static final int MOST = 100;
}
