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
import java.util.Set;
import java.util.regex.Pattern;
import strikeoff.document.PlanPath;
import strikeoff.document.Position;

/** Turns a file's bytes into text, strictly: what is no UTF-8 or cannot be seen is a problem. */
final class TextDecoder {

  /** The parser takes seconds for lines of a million characters. */
  private static final int LONGEST_LINE = 10_000;

  private static final Set<Character> SPACES = Set.of('\u00a0', '\u2007', '\u202f', '\u3000');

  /** What stands before the space behind a first key, a dash, or a key in brackets. */
  private static final Pattern PARTS =
      Pattern.compile("\\s*-|\\s*(?:- )*[^\"'{}\\[\\]#:]+:|.*[{,] *[^\"'{}\\[\\]#:,]+:");

  private final Problems problems;

  TextDecoder(Problems problems) {
    this.problems = problems;
  }

  /** The text without its byte-order mark, or none with a problem reported. */
  Optional<String> decode(byte[] bytes) {
    Optional<String> other = Encodings.otherThanUtf8(bytes);
    if (other.isPresent()) {
      problems.add(
          new Position(1, 1),
          PlanPath.ROOT,
          "the file is " + other.get() + "; save it as UTF-8 and try again");
      return Optional.empty();
    }
    CharsetDecoder decoder =
        StandardCharsets.UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
    ByteBuffer in = ByteBuffer.wrap(bytes);
    CharBuffer out = CharBuffer.allocate(bytes.length + 1);
    CoderResult result = decoder.decode(in, out, true);
    for (int bad = 0; result.isError(); bad++) {
      String meant = new String(bytes, in.position(), result.length(), Encodings.WINDOWS);
      if (bad == 0) {
        foreign(bytes[in.position()] & 0xFF, meant, out.duplicate().flip().toString());
      }
      in.position(in.position() + result.length());
      out.put(meant);
      result = decoder.decode(in, out, true);
    }
    return Optional.of(withoutMark(out.flip().toString()));
  }

  /** Told once a file: whoever saves it anew mends all such bytes. */
  private void foreign(int bad, String meant, String before) {
    List<String> lines = lines(withoutMark(before));
    boolean shown = meant.codePoints().allMatch(c -> c > 0x9F && c != 0xFFFD);
    problems.add(
        new Position(lines.size(), lines.get(lines.size() - 1).length() + 1),
        PlanPath.ROOT,
        String.format(
            Locale.ROOT,
            "the byte 0x%02X is no UTF-8%s; save the file as UTF-8 and try again",
            bad,
            shown ? " (Windows-1252 has “" + meant + "” for it)" : ""));
  }

  /** Some editors begin UTF-8 with a byte-order mark; it does no harm. */
  static String withoutMark(String text) {
    return text.startsWith("\ufeff") ? text.substring(1) : text;
  }

  /**
   * Reports what cannot be seen or does not belong in text, and takes it out; false if what is left
   * is not worth reading.
   */
  boolean clean(Mended text) {
    boolean worth = true;
    int found = 0;
    for (int n = 1; n <= text.lines().size(); n++) {
      String line = text.line(n);
      if (line.length() > LONGEST_LINE) {
        worth = false;
        problems.add(
            new Position(n, LONGEST_LINE + 1),
            PlanPath.ROOT,
            "the line is longer than " + LONGEST_LINE + " characters; no plan written by hand is");
      }
      for (int i = 0; i < line.length(); i++) {
        int from = i;
        while (i < line.length() && isUnseen(line, i)) {
          i++;
        }
        if (i > from) { // once for all that stand in a row
          worth &= line.charAt(from) != 0 && ++found < Problems.MOST;
          problems.add(new Position(n, from + 1), PlanPath.ROOT, () -> unseen(line, from));
        }
      }
      if (worth && found > 0) {
        takeOut(text, n, TextDecoder::isUnseen);
      }
      spaces(text, n);
    }
    return worth;
  }

  private interface Place {
    boolean is(String line, int i);
  }

  private static void takeOut(Mended text, int number, Place place) {
    String line = text.line(number);
    for (int i = line.length() - 1; i >= 0; i--) {
      if (place.is(line, i)) {
        text.replace(number, i, i + 1, "");
      }
    }
  }

  /** A space that looks like one and is none to YAML, where it parts keys from values. */
  private void spaces(Mended text, int number) {
    String line = text.line(number);
    for (int i = 0; i < line.length(); i++) {
      if (!isSpace(line.charAt(i))) {
        continue;
      }
      int from = i;
      while (i + 1 < line.length() && isSpace(line.charAt(i + 1))) {
        i++;
      }
      String before = line.substring(0, from);
      if (before.isBlank() || PARTS.matcher(before).matches()) {
        problems.add(
            new Position(number, from + 1),
            PlanPath.ROOT,
            "a no-break space stands here, which YAML takes for a letter; type a plain one");
        text.replace(number, from, i + 1, " ".repeat(i + 1 - from));
      }
    }
  }

  private static boolean isSpace(char c) {
    return c > '~' && SPACES.contains(c);
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
