package strikeoff.studio;

import java.util.List;
import strikeoff.document.Problem;

/** What came of reading a policy file. */
public sealed interface StudioReading {

  /** A sound one. */
  record Read(StudioFile file) implements StudioReading {}

  /**
   * One with mistakes.
   *
   * @param problems every mistake, down the file
   */
  record Faulty(String name, List<Problem> problems) implements StudioReading {
    public Faulty {
      problems = List.copyOf(problems);
    }
  }
}
