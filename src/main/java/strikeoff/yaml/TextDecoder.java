package strikeoff.yaml;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import strikeoff.plan.PlanPath;
import strikeoff.plan.Position;

/** Turns a file's bytes into text, strictly: what is no UTF-8 or cannot be seen is a problem. */
final class TextDecoder {

  /** The parser takes seconds for lines of a million characters. */
  private static final int LONGEST_LINE = 10_000;

  private final Problems problems;

  TextDecoder(Problems problems) {
    this.problems = problems;
  }

  /** The text without its byte-order mark, or an empty one with a problem reported. */
  String decode(byte[] bytes) {
    Optional<String> other = Encodings.otherThanUtf8(bytes);
    if (other.isPresent()) {
      problems.add(
          new Position(1, 1),
          PlanPath.ROOT,
          "the file is " + other.get() + "; save it as UTF-8 and try again");
      return "";
    }
    CharsetDecoder decoder =
        StandardCharsets.UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
    ByteBuffer in = ByteBuffer.wrap(bytes);
    CharBuffer out = CharBuffer.allocate(bytes.length + 1);
    CoderResult result = decoder.decode(in, out, true);
    String text = out.flip().toString();
    if (result.isError()) {
      int bad = bytes[in.position()] & 0xFF;
      List<String> before = lines(text);
      String last = before.get(before.size() - 1);
      problems.add(
          new Position(before.size(), last.length() + 1),
          PlanPath.ROOT,
          String.format(
              Locale.ROOT,
              "the byte 0x%02X is no UTF-8; save the file as UTF-8 and try again",
              bad));
    }
    return withoutMark(text);
  }

  /** Some editors begin UTF-8 with a byte-order mark; it does no harm. */
  static String withoutMark(String text) {
    return text.startsWith("\ufeff") ? text.substring(1) : text;
  }

  /** Reports what cannot be seen or does not belong in text; true if there is nothing such. */
  boolean isClean(String text) {
    int line = 1;
    int column = 1;
    boolean clean = true;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '\n' || c == '\r') {
        if (c == '\r' && i + 1 < text.length() && text.charAt(i + 1) == '\n') {
          i++;
        }
        line++;
        column = 1;
        continue;
      }
      if (isUnseen(text, i)) {
        clean = false;
        int from = i;
        if (i == 0 || !isUnseen(text, i - 1)) { // once for all that stand in a row
          problems.add(new Position(line, column), PlanPath.ROOT, () -> unseen(text, from));
        }
      }
      column++;
      if (column == LONGEST_LINE + 1) {
        clean = false;
        problems.add(
            new Position(line, column),
            PlanPath.ROOT,
            "the line is longer than " + LONGEST_LINE + " characters; no plan written by hand is");
      }
    }
    return clean;
  }

  /** True for control characters, half characters, and marks that change lines or direction. */
  static boolean isUnseen(String text, int i) {
    char c = text.charAt(i);
    if (c >= ' ' && c <= '~' || c == '\t' || c == '\n' || c == '\r') {
      return false;
    }
    if (Character.isHighSurrogate(c)) {
      return i + 1 >= text.length() || !Character.isLowSurrogate(text.charAt(i + 1));
    }
    if (Character.isLowSurrogate(c)) {
      return i == 0 || !Character.isHighSurrogate(text.charAt(i - 1));
    }
    return Character.isISOControl(c)
        || c == '\u2028'
        || c == '\u2029'
        || c >= '\u202a' && c <= '\u202e'
        || c >= '\u2066' && c <= '\u2069'
        || c == '\ufeff'
        || c >= '\ufff0' && c != '\ufffc' && c != '\ufffd';
  }

  private static String unseen(String text, int from) {
    char c = text.charAt(from);
    String code = String.format(Locale.ROOT, "U+%04X", (int) c);
    int end = from + 1;
    while (end < text.length() && isUnseen(text, end)) {
      end++;
    }
    return c == 0
        ? "a zero byte stands here; the file may be no text at all, save it as UTF-8"
        : end == from + 1
            ? "the invisible character " + code + " stands here; delete it"
            : (end - from)
                + " invisible characters in a row stand here, the first is "
                + code
                + "; delete them";
  }

  /** Lines as editors count them. */
  static List<String> lines(String text) {
    List<String> lines = new ArrayList<>();
    int start = 0;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '\n' || c == '\r') {
        lines.add(text.substring(start, i));
        if (c == '\r' && i + 1 < text.length() && text.charAt(i + 1) == '\n') {
          i++;
        }
        start = i + 1;
      }
    }
    lines.add(text.substring(start));
    return lines;
  }
}
