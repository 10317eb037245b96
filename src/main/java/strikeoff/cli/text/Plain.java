package strikeoff.cli.text;

import java.util.ArrayList;
import java.util.List;
import strikeoff.units.Visible;

/** Makes untrusted text harmless for a terminal, and fits it into columns. */
public final class Plain {

  private Plain() {}

  /** One line of visible text, so that a name in a plan can't forge a line of output. */
  public static String line(String text) {
    return Visible.line(text);
  }

  /** Columns that a text takes on a terminal. */
  public static int columns(String text) {
    return text.codePoints().map(Plain::columns).sum();
  }

  private static int columns(int point) {
    int type = Character.getType(point);
    if (type == Character.NON_SPACING_MARK || type == Character.ENCLOSING_MARK) {
      return 0;
    }
    boolean wide =
        Character.isIdeographic(point)
            || (point >= 0x1100 && point <= 0x115F)
            || (point >= 0x3000 && point <= 0x30FF)
            || (point >= 0xAC00 && point <= 0xD7A3)
            || (point >= 0xFF00 && point <= 0xFF60)
            || (point >= 0x1F300 && point <= 0x1FAFF);
    return wide ? 2 : 1;
  }

  /**
   * Breaks a text at spaces.
   *
   * @param first what the first line begins with
   * @param rest what the others begin with
   * @param width columns in all; a longer word is cut
   */
  public static List<String> wrap(String first, String rest, String text, int width) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder(first);
    int indent = columns(rest);
    int used = columns(first);
    boolean empty = true;
    for (String word : line(text).split(" +")) {
      int takes = columns(word);
      if (!empty && used + 1 + takes > width) {
        lines.add(line.toString());
        line = new StringBuilder(rest);
        used = indent;
        empty = true;
      }
      int from = 0;
      while (used + takes > width && word.length() - from > 1) {
        int to = fitting(word, from, width - used);
        lines.add(line + word.substring(from, to));
        takes -= columns(word.substring(from, to));
        from = to;
        line = new StringBuilder(rest);
        used = indent;
      }
      line.append(empty ? "" : " ").append(word, from, word.length());
      used += (empty ? 0 : 1) + takes;
      empty = false;
    }
    lines.add(withoutEndingSpaces(line));
    return lines;
  }

  /** Only the blank goes: other spaces, such as an ideographic one, are the text's own. */
  private static String withoutEndingSpaces(StringBuilder line) {
    int end = line.length();
    while (end > 0 && line.charAt(end - 1) == ' ') {
      end--;
    }
    return line.substring(0, end);
  }

  /** The end of what fits of a word from there on: at least one character, so that it ends. */
  private static int fitting(String word, int from, int room) {
    int used = 0;
    int at = from;
    while (at < word.length()) {
      int point = word.codePointAt(at);
      used += columns(point);
      if (used > room) {
        break;
      }
      at += Character.charCount(point);
    }
    return Math.max(at, from + Character.charCount(word.codePointAt(from)));
  }
}
