package strikeoff.yaml;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import strikeoff.plan.Position;
import strikeoff.yaml.Slips.Slip;

/** Quotation marks that are not closed, close too early, or hold a backslash. */
final class QuoteSlips {

  /** Told where the mark stands, since the parser gives up much later. */
  static final String UNCLOSED = "the quotation mark that opens here is never closed";

  private static final Pattern COLOUR = Pattern.compile("#[0-9a-fA-F]{6}|#[0-9a-fA-F]{3}");

  private QuoteSlips() {}

  static Optional<Slip> find(Fault fault, Mended text) {
    String problem = fault.problem();
    if (problem.contains("escape")) {
      return backslash(fault.at(), text);
    }
    if (problem.contains("unexpected end of stream") && fault.context().contains("quoted")) {
      return close(fault.from(), text);
    }
    if (problem.contains("document separator")) {
      return close(fault.from(), text);
    }
    return problem.contains("'<scalar>'") || problem.contains("<scalar>")
        ? early(fault.at(), text)
        : Optional.empty();
  }

  /** As a value in straight quotes. */
  static String quoted(String value) {
    return "'" + value.replace("'", "''") + "'";
  }

  /** Where an unquoted value that begins at a column ends: brackets count if one is open. */
  static int valueEnd(String line, int from) {
    int depth = 0;
    for (char c : Lines.bare(line.substring(0, from)).toCharArray()) {
      depth += c == '{' || c == '[' ? 1 : c == '}' || c == ']' ? -1 : 0;
    }
    int to = from;
    while (to < line.length()
        && !(depth > 0 && ",}]".indexOf(line.charAt(to)) >= 0)
        && !line.startsWith(" #", to)) {
      to++;
    }
    while (to > from && line.charAt(to - 1) == ' ') {
      to--;
    }
    return to;
  }

  /** A value in quotes that runs on over lines with keys of their own was not meant to. */
  static Optional<Slip> swallowed(Position at, Position end, Mended text) {
    if (end.line() == at.line()) {
      return Optional.empty();
    }
    String first = text.line(at.line());
    int indent = Lines.indent(first);
    for (int n = at.line() + 1; n <= end.line(); n++) {
      String line = text.line(n);
      if (!line.isBlank() && Lines.indent(line) <= indent && Lines.colon(line) >= 0) {
        return close(at, text);
      }
    }
    return Optional.empty();
  }

  private static Optional<Slip> backslash(Position at, Mended text) {
    String line = text.line(at.line());
    int mark = line.lastIndexOf('\\', Math.min(at.column() - 1, line.length() - 1));
    if (mark < 0) {
      return Optional.empty();
    }
    Position written = text.original(new Position(at.line(), mark + 1));
    text.insert(at.line(), mark, "\\");
    return Optional.of(
        new Slip(written, "a backslash in double quotes starts a special sign; use single quotes"));
  }

  private static Optional<Slip> close(Position from, Mended text) {
    String line = text.line(from.line());
    int open = from.column() - 1;
    if (open >= line.length() || "\"'".indexOf(line.charAt(open)) < 0) {
      return Optional.empty();
    }
    Position written = text.original(from);
    Matcher colour = COLOUR.matcher(line);
    int to =
        colour.find(open + 1) && colour.start() == open + 1
            ? colour.end()
            : valueEnd(line, open + 1);
    text.replace(from.line(), open, to, quoted(line.substring(open + 1, to)));
    return Optional.of(new Slip(written, UNCLOSED));
  }

  /** A value goes on behind its closing mark, which was meant as an apostrophe or a quotation. */
  private static Optional<Slip> early(Position at, Mended text) {
    int number = at.line();
    String line = text.line(number);
    int colon = Lines.colon(line);
    int open = colon < 0 ? Lines.content(line) : colon + 1;
    while (open < line.length() && line.charAt(open) == ' ') {
      open++;
    }
    if (open >= at.column() - 1 || "\"'".indexOf(line.charAt(open)) < 0) {
      return open < line.length() && at.column() - 1 <= open + 1
          ? openAbove(number, text)
          : Optional.empty();
    }
    char mark = line.charAt(open);
    int to = line.stripTrailing().length();
    boolean closed = line.charAt(to - 1) == mark && to - 1 > open;
    String value = line.substring(open + 1, closed ? to - 1 : to);
    if (!closed) {
      value = value.replace(String.valueOf(mark), "");
    }
    Position written = text.original(at);
    text.replace(number, open, to, quoted(value));
    String other = mark == '"' ? "single quotes around it" : "double quotes around it";
    return Optional.of(
        new Slip(
            written,
            closed
                ? "the value has ended at the quotation mark before this; put " + other
                : "this stands behind the closing quotation mark; put the whole value in quotes"));
  }

  /** The mark of this line closes one that was opened further up. */
  private static Optional<Slip> openAbove(int number, Mended text) {
    for (int n = number - 1; n >= 1; n--) {
      String line = text.line(n);
      int colon = Lines.colon(line);
      int open = colon + 1;
      while (open < line.length() && line.charAt(open) == ' ') {
        open++;
      }
      if (colon >= 0 && open < line.length() && "\"'".indexOf(line.charAt(open)) >= 0) {
        return line.indexOf(line.charAt(open), open + 1) < 0
            ? close(new Position(n, open + 1), text)
            : Optional.empty();
      }
    }
    return Optional.empty();
  }
}
