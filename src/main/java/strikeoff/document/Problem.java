package strikeoff.document;

import java.util.Comparator;

/**
 * A mistake that keeps a file from being read as a plan.
 *
 * @param path of the value, as far as it is known
 * @param message what was expected and what was found, with the nearest known word if one is near
 */
public record Problem(Position position, PlanPath path, String message) {

  /** Down the file. */
  public static final Comparator<Problem> ORDER =
      Comparator.comparing(Problem::position)
          .thenComparing(Problem::path)
          .thenComparing(Problem::message);
}
