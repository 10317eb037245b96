package strikeoff.rulebook.own;

import java.util.Comparator;

/**
 * What is wrong with a studio's own rule.
 *
 * @param line from 1; 0 if the file as a whole is meant
 */
public record RuleMistake(String file, int line, String message) {

  /** By file, then down it. */
  public static final Comparator<RuleMistake> ORDER =
      Comparator.comparing(RuleMistake::file)
          .thenComparing(RuleMistake::line)
          .thenComparing(RuleMistake::message);

  /** In one line: file, line, words. */
  public String text() {
    return file + (line > 0 ? ":" + line : "") + ": " + message;
  }
}
