package strikeoff.rulebook.own;

import java.util.Comparator;

/**
 * What is wrong with a studio's own rule.
 *
 * @param line from 1; 0 if the file as a whole is meant
 * @param column from 1; 0 if the line as a whole is meant
 */
public record RuleMistake(String file, int line, int column, String message) {

  /** Of a line as a whole. */
  public RuleMistake(String file, int line, String message) {
    this(file, line, 0, message);
  }

  /** By file, then down it. */
  public static final Comparator<RuleMistake> ORDER =
      Comparator.comparing(RuleMistake::file)
          .thenComparing(RuleMistake::line)
          .thenComparing(RuleMistake::column)
          .thenComparing(RuleMistake::message);

  /** In one line: file, line, column, words. */
  public String text() {
    String place = line == 0 ? "" : ":" + line + (column == 0 ? "" : ":" + column);
    return file + place + ": " + message;
  }
}
