package strikeoff.document.yaml;

import java.util.ArrayList;
import java.util.List;
import strikeoff.document.Position;

/** Lines of a text, by offsets counted from 0; each keeps the line end that it has. */
final class LineOffsets {

  private final String text;
  private final List<Integer> starts = new ArrayList<>(List.of(0));

  LineOffsets(String text) {
    this.text = text;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '\n' || (c == '\r' && !text.startsWith("\n", i + 1))) {
        starts.add(i + 1);
      }
    }
  }

  int offset(Position position) {
    int line = Math.min(position.line(), starts.size()) - 1;
    return Math.min(starts.get(line) + position.column() - 1, text.length());
  }

  Position position(int offset) {
    int line = lineOf(offset);
    return new Position(line + 1, offset - starts.get(line) + 1);
  }

  int column(Position position) {
    return position.column() - 1;
  }

  int lineOf(int offset) {
    int low = 0;
    int high = starts.size() - 1;
    while (low < high) {
      int middle = (low + high + 1) / 2;
      if (starts.get(middle) <= offset) {
        low = middle;
      } else {
        high = middle - 1;
      }
    }
    return low;
  }

  int start(int line) {
    return starts.get(line);
  }

  /** Behind the last character of the line that ends with or holds what stands before an offset. */
  int lineEnd(int offset) {
    int end = offset;
    while (end < text.length() && text.charAt(end) != '\n' && text.charAt(end) != '\r') {
      end++;
    }
    return end;
  }

  /** Where the line behind that of an offset begins; the end of the text if there is none. */
  int nextLine(int offset) {
    int line = lineOf(offset);
    return line + 1 < starts.size() ? starts.get(line + 1) : text.length();
  }

  boolean isFirstOnLine(int offset) {
    return text.substring(starts.get(lineOf(offset)), offset).isBlank();
  }

  /** Above the comments that stand in front of a line, indented as it is: they belong to it. */
  int aboveComments(int line, int indent) {
    int above = line;
    String begins = " ".repeat(indent) + "#";
    while (above > 0 && text.startsWith(begins, starts.get(above - 1))) {
      above--;
    }
    return starts.get(above);
  }

  /** As the first line ends. */
  String separator() {
    int end = lineEnd(0);
    if (text.startsWith("\r\n", end)) {
      return "\r\n";
    }
    return text.startsWith("\r", end) ? "\r" : "\n";
  }
}
