package strikeoff.yaml;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import strikeoff.document.Position;
import strikeoff.yaml.Slips.Slip;

/** Quotation marks that are not closed, close too early, or hold a backslash. */
final class QuoteSlips {

  /** Told where the mark stands, since the parser gives up much later. */
  static final String UNCLOSED = "the quotation mark that opens here is never closed";

  private static final Pattern COLOUR = Pattern.compile("#[0-9a-fA-F]{6}|#[0-9a-fA-F]{3}");

  /** A key of more lines, or a sentence within brackets, was hardly meant as one. */
  private static final int MOST_LINES = 8;

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
    if (problem.contains("mapping values are not allowed") || problem.contains("but got :")) {
      return longKey(fault.at(), text);
    }
    if (problem.contains("could not find expected ':'")) {
      return longKeyFrom(fault.from(), text);
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

  /**
   * A value in quotes that runs on over lines with keys of their own was not meant to.
   *
   * @param block the line at whose indentation such keys would stand: the value's own or, within
   *     brackets, the one where the outermost opens
   */
  static Optional<Slip> swallowed(Position at, Position end, int block, Mended text) {
    int indent = Lines.indent(text.line(block));
    for (int n = at.line() + 1; n <= end.line(); n++) {
      String line = text.line(n);
      String inside = n == end.line() ? line.substring(0, end.column() - 1) : line;
      if (!inside.isBlank() && Lines.indent(inside) <= indent && Lines.colon(inside) >= 0) {
        return close(at, text);
      }
    }
    return Optional.empty();
  }

  /** The same by where it opens. */
  private static Optional<Slip> longKeyFrom(Position from, Mended text) {
    String first = text.line(from.line());
    char mark = from.column() <= first.length() ? first.charAt(from.column() - 1) : 0;
    if (mark != '"' && mark != '\'' || first.indexOf(mark, from.column()) >= 0) {
      return Optional.empty();
    }
    for (int n = from.line() + 1; n <= from.line() + MOST_LINES; n++) {
      int closes = text.line(n).indexOf(mark);
      if (closes >= 0) {
        return text.line(n).startsWith(":", closes + 1)
            ? longKey(new Position(n, closes + 2), text)
            : Optional.empty();
      }
    }
    return Optional.empty();
  }

  /** The colon behind a key in quotes that was opened on a line further up. */
  private static Optional<Slip> longKey(Position at, Mended text) {
    String last = text.line(at.line());
    int closes = at.column() - 2;
    if (closes < 0 || "\"'".indexOf(last.charAt(closes)) < 0) {
      return Optional.empty();
    }
    char mark = last.charAt(closes);
    StringBuilder inside = new StringBuilder(last.substring(0, closes).strip());
    if (inside.indexOf(String.valueOf(mark)) >= 0) {
      return Optional.empty();
    }
    for (int n = at.line() - 1; n >= Math.max(1, at.line() - MOST_LINES); n--) {
      String line = text.line(n);
      int opens = line.lastIndexOf(mark);
      inside.insert(0, line.substring(opens + 1).strip() + " ");
      if (opens >= 0) {
        Position written = text.original(new Position(n, opens + 1));
        text.replace(n, opens, line.length(), quoted(inside.toString().strip()) + ":");
        for (int between = n + 1; between < at.line(); between++) {
          text.blank(between);
        }
        text.replace(at.line(), 0, at.column(), " ".repeat(at.column()));
        return Optional.of(
            new Slip(written, "this key in quotes goes on in another line; write it in one"));
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
    if (closeBelow(from, text)) {
      return Optional.of(new Slip(written, UNCLOSED));
    }
    Matcher colour = COLOUR.matcher(line);
    int to =
        colour.find(open + 1) && colour.start() == open + 1
            ? colour.end()
            : valueEnd(line, open + 1);
    text.replace(from.line(), open, to, quoted(line.substring(open + 1, to)));
    return Optional.of(new Slip(written, UNCLOSED));
  }

  /** A text that goes on over lines within a bracket ends where that does, if it holds no keys. */
  static boolean closeBelow(Position from, Mended text) {
    String line = text.line(from.line());
    int open = from.column() - 1;
    boolean within = !Lines.bare(line.substring(0, open)).replaceAll("[^{\\[]", "").isEmpty();
    for (int n = from.line() + 1; within && n <= from.line() + MOST_LINES; n++) {
      String below = text.line(n);
      int end = Lines.end(below);
      if (below.isBlank()
          || Lines.colon(below) >= 0
          || below.startsWith("- ", Lines.indent(below))) {
        return false;
      }
      if ("}]".indexOf(below.charAt(end - 1)) >= 0) {
        text.insert(n, end - 1, line.substring(open, open + 1));
        return true;
      }
    }
    return false;
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
