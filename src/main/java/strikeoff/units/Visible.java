package strikeoff.units;

import java.util.Locale;

/**
 * Makes visible what people can't see and a terminal or a browser would obey: control and format
 * characters (escape sequences, marks that turn the writing direction, zero-width ones) become
 * their code in brackets, so that a name can't forge what stands beside it.
 */
public final class Visible {

  private Visible() {}

  /** Ends of lines stay, other blanks become spaces. */
  public static String of(String text) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if ((c < ' ' && c != '\n') || (c > '~' && !isSeen(c))) {
        return shown(text);
      }
    }
    return text;
  }

  /** A single line: ends of lines become spaces as well. */
  public static String line(String text) {
    return of(text).replace('\n', ' ');
  }

  private static String shown(String text) {
    StringBuilder shown = new StringBuilder(text.length() + 16);
    int point;
    for (int at = 0; at < text.length(); at += Character.charCount(point)) {
      point = text.codePointAt(at);
      if (point == '\t' || point == '\r') {
        shown.append(' ');
      } else if (point == '\n' || isSeen(point) || joins(text, at)) {
        shown.appendCodePoint(point);
      } else {
        shown.append(String.format(Locale.ROOT, "[U+%04X]", point));
      }
    }
    return shown.toString();
  }

  /** Joiners and non-joiners belong to how some scripts, and pictures of several, are written. */
  private static boolean joins(String text, int at) {
    char c = text.charAt(at);
    return (c == '\u200C' || c == '\u200D')
        && at > 0
        && at + 1 < text.length()
        && isWritten(text.codePointBefore(at))
        && isWritten(text.codePointAt(at + 1));
  }

  private static boolean isWritten(int point) {
    return point > '~' && isSeen(point) && !Character.isSpaceChar(point);
  }

  /** What no script has yet may be seen: JDKs differ in what they know of. */
  private static boolean isSeen(int point) {
    return switch (Character.getType(point)) {
      case Character.CONTROL,
          Character.FORMAT,
          Character.SURROGATE,
          Character.PRIVATE_USE,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR ->
          false;
      case Character.UNASSIGNED ->
          (point & 0xFFFE) != 0xFFFE
              && (point < 0xFDD0 || point > 0xFDEF)
              && (point < 0xFFF0 || point > 0xFFFF)
              && (point < 0xE0000 || point > 0xE0FFF)
              && point != 0x2065;
      default -> true;
    };
  }
}
