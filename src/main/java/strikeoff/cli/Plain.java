package strikeoff.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Makes untrusted text harmless for a terminal, and fits it into columns. */
final class Plain {

  private Plain() {}

  /**
   * One line of visible text: control and format characters (escape sequences, marks that turn the
   * writing direction, zero-width ones) become their code in brackets, so that a name in a plan
   * can't forge a line of output.
   */
  static String line(String text) {
    StringBuilder safe = new StringBuilder(text.length());
    text.codePoints()
        .forEach(
            point -> {
              if (point == '\t' || point == '\n' || point == '\r') {
                safe.append(' ');
              } else if (isVisible(point)) {
                safe.appendCodePoint(point);
              } else {
                safe.append("[U+").append(code(point)).append(']');
              }
            });
    return safe.toString();
  }

  private static String code(int point) {
    String hex = Integer.toHexString(point).toUpperCase(Locale.ROOT);
    return "0".repeat(Math.max(0, 4 - hex.length())) + hex;
  }

  private static boolean isVisible(int point) {
    return switch (Character.getType(point)) {
      case Character.CONTROL,
          Character.FORMAT,
          Character.SURROGATE,
          Character.UNASSIGNED,
          Character.PRIVATE_USE,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR ->
          false;
      default -> true;
    };
  }

  /** Columns that a text takes on a terminal. */
  static int columns(String text) {
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
  static List<String> wrap(String first, String rest, String text, int width) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder(first);
    boolean empty = true;
    for (String word : line(text).split(" +")) {
      String left = word;
      if (!empty && columns(line.toString()) + 1 + columns(left) > width) {
        lines.add(line.toString());
        line = new StringBuilder(rest);
        empty = true;
      }
      while (columns(line.toString()) + columns(left) > width && left.length() > 1) {
        int cut = fitting(left, width - columns(line.toString()));
        lines.add(line + left.substring(0, cut));
        left = left.substring(cut);
        line = new StringBuilder(rest);
      }
      line.append(empty ? "" : " ").append(left);
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

  /** How much of a word fits, at least one character so that it ends. */
  private static int fitting(String word, int room) {
    int used = 0;
    int at = 0;
    while (at < word.length()) {
      int point = word.codePointAt(at);
      used += columns(point);
      if (used > room) {
        break;
      }
      at += Character.charCount(point);
    }
    return Math.max(at, Character.charCount(word.codePointAt(0)));
  }
}
