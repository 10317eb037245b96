package strikeoff.yaml;

import java.util.Arrays;
import java.util.List;

/** What can be told of single lines. */
final class Lines {

  private Lines() {}

  static int indent(String line) {
    int i = 0;
    while (i < line.length() && (line.charAt(i) == ' ' || line.charAt(i) == '\t')) {
      i++;
    }
    return i;
  }

  /** True if nothing stands there but perhaps a comment. */
  static boolean isEmpty(String line) {
    String text = line.strip();
    return text.isEmpty() || text.startsWith("#");
  }

  /** Where the first key or value begins, behind the dashes of lists. */
  static int content(String line) {
    int i = indent(line);
    while (line.startsWith("- ", i)) {
      i += 2;
      while (i < line.length() && line.charAt(i) == ' ') {
        i++;
      }
    }
    return i;
  }

  /** The same line with everything in quotes and comments made blank, of the same length. */
  static String bare(String line) {
    char[] shown = line.toCharArray();
    char quote = 0;
    for (int i = 0; i < shown.length; i++) {
      char c = shown[i];
      if (quote != 0) {
        shown[i] = '_';
        quote = c == quote ? 0 : quote;
      } else if ((c == '"' || c == '\'') && opens(line, i)) {
        quote = c;
        shown[i] = '_';
      } else if (c == '#' && (i == 0 || Character.isWhitespace(line.charAt(i - 1)))) {
        Arrays.fill(shown, i, shown.length, ' ');
        return new String(shown);
      }
    }
    return new String(shown);
  }

  /** A quotation mark inside a word is an apostrophe. */
  private static boolean opens(String line, int i) {
    return i == 0 || " \t:,[{-".indexOf(line.charAt(i - 1)) >= 0;
  }

  /** Where a line's text ends, before a comment and trailing blanks. */
  static int end(String line) {
    return bare(line).stripTrailing().length();
  }

  /** Where a colon ends the line's first key: before a blank or the end; -1 if none does. */
  static int colon(String line) {
    String bare = bare(line);
    int at = content(line);
    if (at < bare.length() && "{[".indexOf(bare.charAt(at)) >= 0) {
      return -1;
    }
    for (int i = at; i < bare.length(); i++) {
      if (bare.charAt(i) == ':'
          && (i + 1 == bare.length() || Character.isWhitespace(bare.charAt(i + 1)))) {
        return i;
      }
    }
    return -1;
  }

  /** The number of the nearest line above that holds something, or 0. */
  static int above(List<String> lines, int number) {
    int n = number - 1;
    while (n > 0 && isEmpty(lines.get(n - 1))) {
      n--;
    }
    return n;
  }

  /** The number of the next line below that holds something, or 0. */
  static int below(List<String> lines, int number) {
    for (int n = number + 1; n <= lines.size(); n++) {
      if (!isEmpty(lines.get(n - 1))) {
        return n;
      }
    }
    return 0;
  }
}
