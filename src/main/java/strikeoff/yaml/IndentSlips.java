package strikeoff.yaml;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import strikeoff.document.Position;
import strikeoff.units.Script;
import strikeoff.yaml.Slips.Slip;

/** Lines that are indented too far or too little, and dashes without their space. */
final class IndentSlips {

  private IndentSlips() {}

  static Optional<Slip> find(Fault fault, Mended text) {
    String problem = fault.problem();
    int number = fault.at().line();
    if (problem.contains("<document start>")) {
      return firstLine(number, text);
    }
    if (problem.contains("<block end>")) {
      return dash(number, text).or(() -> out(number, text));
    }
    return problem.contains("mapping values are not allowed")
        ? deeper(number, text)
        : Optional.empty();
  }

  /** {@code -print: row} in a list. */
  static Optional<Slip> dash(int number, Mended text) {
    String line = text.line(number);
    int at = Lines.indent(line);
    if (at + 1 >= line.length() || line.charAt(at) != '-' || line.charAt(at + 1) == ' ') {
      return Optional.empty();
    }
    Position written = text.original(new Position(number, at + 2));
    text.insert(number, at + 1, " ");
    return Optional.of(new Slip(written, "a space is missing after “-”"));
  }

  /** The file's first line goes in, and those below do not. */
  private static Optional<Slip> firstLine(int number, Mended text) {
    int first = Lines.below(text.lines(), 0);
    int indent = first == 0 ? 0 : Lines.indent(text.line(first));
    for (int n = number - 1; n >= 1; n--) {
      if (text.line(n).strip().equals("...")) {
        Position written = text.original(new Position(n, 1));
        text.blank(n);
        return Optional.of(new Slip(written, "“...” ends the file here; leave it out"));
      }
    }
    if (indent == 0 || first >= number) {
      return Optional.empty();
    }
    Position written = text.original(new Position(first, 1));
    for (int n = first; n < number; n++) {
      if (!Lines.isEmpty(text.line(n))) {
        text.indent(n, Math.max(0, Lines.indent(text.line(n)) - indent));
      }
    }
    return Optional.of(
        new Slip(
            written, "the first line is indented, and those below are not; begin at the margin"));
  }

  /** A line that no line above prepared. */
  private static Optional<Slip> out(int number, Mended text) {
    String line = text.line(number);
    int indent = Lines.indent(line);
    boolean item = line.startsWith("- ", indent);
    TreeSet<Integer> open = open(number, text);
    List<Integer> fit = new ArrayList<>();
    for (int column : open) {
      if (item == isList(column, number, text) && column != indent) {
        fit.add(column);
      }
    }
    Optional<Integer> best =
        fit.stream()
            .min(
                Comparator.<Integer>comparingInt(c -> Math.abs(c - indent))
                    .thenComparing(Comparator.reverseOrder()));
    if (best.isEmpty()) {
      return item ? strayDash(number, indent, open, text) : Optional.empty();
    }
    Position written = text.original(new Position(number, indent + 1));
    int more = shift(number, best.get() - indent, text);
    return Optional.of(
        new Slip(
            written,
            "this line is indented by "
                + spaces(indent)
                + lines(more)
                + ", and "
                + best.get()
                + " would fit what stands above"));
  }

  /** A dash among keys that have none, or a key among dashes that has none. */
  private static Optional<Slip> strayDash(
      int number, int indent, TreeSet<Integer> open, Mended text) {
    int first = number;
    for (int n = number - 1; n >= 1; n--) {
      if (!Lines.isEmpty(text.line(n))) {
        if (Lines.indent(text.line(n)) < indent) {
          break;
        }
        first = n;
      }
    }
    Position written = text.original(new Position(number, indent + 1));
    if (open.contains(indent)) {
      text.replace(number, indent, Lines.content(text.line(number)), "");
      return Optional.of(
          new Slip(written, "a dash begins this line, and those above it have none; leave it out"));
    }
    if (first == number || text.line(first).startsWith("- ", Lines.indent(text.line(first)))) {
      return Optional.empty();
    }
    int from = Lines.indent(text.line(first));
    Position there = text.original(new Position(first, from + 1));
    text.replace(first, 0, from, " ".repeat(indent) + "- ");
    return Optional.of(
        new Slip(there, "“- ” is missing at the beginning of this line, as the next ones have it"));
  }

  /** A line below a key that has its value already. */
  private static Optional<Slip> deeper(int number, Mended text) {
    int above = Lines.above(text.lines(), number);
    String line = text.line(number);
    if (above == 0 || Lines.content(line) <= Lines.content(text.line(above))) {
      return Optional.empty();
    }
    String before = text.line(above);
    int colon = Lines.colon(before);
    int column = Lines.content(before);
    if (colon < 0) {
      return Optional.empty();
    }
    Optional<Slip> dashes = dashes(above, text);
    if (dashes.isPresent()) {
      return dashes;
    }
    String key = Script.quoted(before.substring(column, colon));
    boolean section = Lines.end(line) == Lines.colon(line) + 1;
    int over = Lines.above(text.lines(), above);
    if (over > 0 && Lines.indent(text.line(over)) == Lines.indent(line) && !section) {
      Position written = text.original(new Position(above, Lines.indent(before) + 1));
      int indent = Lines.indent(line);
      text.indent(above, indent);
      return Optional.of(
          new Slip(
              written,
              "this line is indented less than those above and below it, by "
                  + spaces(indent)
                  + "; indent it like them"));
    }
    if (Lines.indent(before) == 0 && !section) {
      int value = colon + 1;
      while (value < before.length() && before.charAt(value) == ' ') {
        value++;
      }
      Position written = text.original(new Position(above, value + 1));
      String stands = Script.quoted(before.substring(value, Lines.end(before)));
      text.replace(above, colon + 1, Lines.end(before), "");
      return Optional.of(
          new Slip(
              written,
              key
                  + " has keys in the lines below, so "
                  + stands
                  + " needs a key of its own there"));
    }
    int indent = Lines.indent(line);
    Position written = text.original(new Position(number, indent + 1));
    int more = shift(number, column - indent, text);
    return Optional.of(
        new Slip(
            written,
            "this line is indented further than "
                + key
                + " above, which has its value already"
                + lines(more)
                + "; indent it by "
                + spaces(column)));
  }

  /**
   * Several lines of one indentation that have values and, in lines below, keys as well: the items
   * of a list without their dashes.
   */
  private static Optional<Slip> dashes(int item, Mended text) {
    int indent = Lines.indent(text.line(item));
    int first = item;
    int last = item;
    while (inside(Lines.above(text.lines(), first), indent, text)) {
      first = Lines.above(text.lines(), first);
    }
    while (inside(Lines.below(text.lines(), last), indent, text)) {
      last = Lines.below(text.lines(), last);
    }
    int items = 0;
    int withKeys = 0;
    for (int n = first; n <= last; n++) {
      String line = text.line(n);
      if (!Lines.isEmpty(line) && Lines.indent(line) == indent) {
        int below = Lines.below(text.lines(), n);
        boolean deeper = below > 0 && below <= last && Lines.indent(text.line(below)) > indent;
        items++;
        withKeys += deeper && Lines.colon(line) >= 0 && hasValue(line) ? 1 : 0;
      }
    }
    if (indent < 2 || withKeys < 2 || Lines.indent(text.line(first)) != indent) {
      return Optional.empty();
    }
    Position written = text.original(new Position(first, indent + 1));
    for (int n = first; n <= last; n++) {
      int here = Lines.indent(text.line(n));
      if (here == indent && !Lines.isEmpty(text.line(n))) {
        text.replace(n, 0, indent, " ".repeat(indent - 2) + "- ");
      } else if (!Lines.isEmpty(text.line(n))) {
        text.indent(n, Math.max(indent, here - 2));
      }
    }
    return Optional.of(
        new Slip(
            written,
            "“- ” is missing at the beginning of this line, as of the next "
                + (items - 1)
                + " that begin a step or a part of their own"));
  }

  private static boolean hasValue(String line) {
    return Lines.end(line) > Lines.colon(line) + 1;
  }

  /** True of a line that goes in as far or further and begins with no dash. */
  private static boolean inside(int number, int indent, Mended text) {
    return number > 0
        && Lines.indent(text.line(number)) >= indent
        && !text.line(number).startsWith("- ", Lines.indent(text.line(number)));
  }

  private static String spaces(int count) {
    return count == 0 ? "none" : count == 1 ? "1 space" : count + " spaces";
  }

  private static String lines(int more) {
    return more == 0 ? "" : more == 1 ? ", like the next" : ", like the next " + more;
  }

  /** Moves a line, those of the same indentation that follow at once, and what belongs to them. */
  private static int shift(int number, int by, Mended text) {
    int indent = Lines.indent(text.line(number));
    boolean items = text.line(number).startsWith("- ", indent);
    int more = 0;
    boolean children = false;
    int childFrom = 0;
    int fits = -1;
    for (int n = number; n <= text.lines().size(); n++) {
      String line = text.line(n);
      if (Lines.isEmpty(line)) {
        continue;
      }
      int here = Lines.indent(line);
      boolean item = line.startsWith("- ", here);
      if (here == indent && item == items) {
        more += n == number ? 0 : 1;
        children = item || Lines.end(line) == Lines.colon(line) + 1;
        childFrom = item ? Lines.content(line) : indent + 1;
        fits = item ? Lines.content(line) + by : -1;
      } else if (!children || here < childFrom || here == fits) {
        break;
      }
      text.indent(n, Math.max(0, here + by));
    }
    return more;
  }

  /** Columns at which lines above a line begin and which it may go on at. */
  private static TreeSet<Integer> open(int number, Mended text) {
    TreeSet<Integer> columns = new TreeSet<>();
    int least = Integer.MAX_VALUE;
    for (int n = number - 1; n >= 1 && least > 0; n--) {
      String line = text.line(n);
      if (Lines.isEmpty(line)) {
        continue;
      }
      int indent = Lines.indent(line);
      int content = Lines.content(line);
      if (content < least || indent < least) {
        if (content < least) {
          columns.add(content);
        }
        columns.add(indent);
        least = indent;
      }
    }
    return columns;
  }

  /** True if the nearest line above that begins at a column begins with a dash there. */
  private static boolean isList(int column, int number, Mended text) {
    for (int n = number - 1; n >= 1; n--) {
      String line = text.line(n);
      if (!Lines.isEmpty(line)) {
        if (Lines.indent(line) == column) {
          return line.startsWith("- ", column);
        }
        if (Lines.content(line) == column) {
          return false;
        }
      }
    }
    return false;
  }
}
