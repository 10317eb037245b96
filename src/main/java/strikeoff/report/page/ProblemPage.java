package strikeoff.report.page;

import java.util.List;

/**
 * The report of a file that couldn't be read as a plan, or that the tool failed on.
 *
 * @param more mistakes that are counted only
 */
public record ProblemPage(
    Head head, String file, String verdict, String sentence, List<Mistake> mistakes, int more) {

  public ProblemPage {
    mistakes = List.copyOf(mistakes);
  }

  /** One mistake with the line it stands in. */
  public record Mistake(String place, String message, Quote line) {}
}
