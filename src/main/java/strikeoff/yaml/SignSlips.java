package strikeoff.yaml;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import strikeoff.document.Position;
import strikeoff.units.Script;
import strikeoff.yaml.Slips.Slip;

/** Signs that YAML keeps for itself: tabs, {@code %}, {@code @}, a bar, a dash behind a colon. */
final class SignSlips {

  private static final Pattern CHARACTER =
      Pattern.compile("found character '(.).*", Pattern.DOTALL);
  private static final Pattern PERCENT = Pattern.compile("%\\s*([0-9]+(?:\\.[0-9]+)?)");

  private SignSlips() {}

  static Optional<Slip> find(Fault fault, Mended text) {
    String problem = fault.problem();
    Optional<Slip> directive = directive(fault, text);
    if (directive.isPresent()) {
      return directive;
    }
    if (problem.contains("TAB") || problem.contains("'\\t'")) {
      return tab(fault.at(), text);
    }
    Matcher character = CHARACTER.matcher(problem);
    if (character.matches()) {
      return reserved(character.group(1), fault.at(), text);
    }
    if (problem.contains("expected a comment or a line break")) {
      return bar(fault, text);
    }
    if (problem.contains("sequence entries are not allowed")) {
      return dash(fault.at(), text);
    }
    return problem.contains("undefined alias")
            || problem.contains("unexpected character found")
            || problem.contains("'<scalar>'")
        ? star(fault.at(), text)
        : Optional.empty();
  }

  /** A directive that the parser doesn't take, or one that no line of dashes ends. */
  private static Optional<Slip> directive(Fault fault, Mended text) {
    int number = fault.at().line();
    if (fault.problem().contains("<document start>")) {
      while (number > 1 && !text.line(number).startsWith("%")) {
        number--;
      }
    }
    String line = text.line(number);
    if (!line.startsWith("%")) {
      return Optional.empty();
    }
    Position written = text.original(new Position(number, 1));
    text.blank(number);
    return Optional.of(
        new Slip(
            written,
            Script.quoted(line.stripTrailing())
                + " speaks to programs that read YAML, and no plan needs it; delete this line"));
  }

  /** Whoever indents with tabs does so all over the file: one slip, told at the first. */
  private static Optional<Slip> tab(Position at, Mended text) {
    String line = text.line(at.line());
    int tab = line.indexOf('\t', Math.max(0, at.column() - 1));
    if (tab < 0) {
      return Optional.empty();
    }
    Position written = text.original(new Position(at.line(), tab + 1));
    if (!line.substring(0, tab).isBlank()) {
      text.replace(at.line(), tab, tab + 1, " ");
      return Optional.of(new Slip(written, "a tab stands here; put a space instead"));
    }
    int step = step(text.lines());
    int more = 0;
    for (int n = 1; n <= text.lines().size(); n++) {
      String each = text.line(n);
      int blank = Lines.indent(each);
      String before = each.substring(0, blank);
      if (before.indexOf('\t') >= 0 && blank < each.length()) {
        long tabs = before.chars().filter(c -> c == '\t').count();
        text.indent(n, Math.min((int) (tabs * step + blank - tabs), deepest(n, text)));
        more += n == at.line() ? 0 : 1;
      }
    }
    String also =
        more == 0 ? "" : ", and in " + (more == 1 ? "one more line" : more + " more lines");
    return Optional.of(new Slip(written, "a tab stands here" + also + "; indent with spaces"));
  }

  /** Below a key that has its value already nothing goes in further. */
  private static int deepest(int number, Mended text) {
    int above = Lines.above(text.lines(), number);
    String line = text.line(above);
    int colon = Lines.colon(line);
    return colon < 0 || colon + 1 == Lines.end(line) ? Integer.MAX_VALUE : Lines.content(line);
  }

  /** By how many spaces the lines that have any go in. */
  private static int step(List<String> lines) {
    return lines.stream()
        .filter(l -> !Lines.isEmpty(l) && l.charAt(0) == ' ' && l.indexOf('\t') < 0)
        .mapToInt(Lines::indent)
        .min()
        .orElse(2);
  }

  private static Optional<Slip> reserved(String sign, Position at, Mended text) {
    String line = text.line(at.line());
    int from = at.column() - 1;
    Position written = text.original(at);
    Matcher percent = PERCENT.matcher(line);
    if (percent.find(from) && percent.start() == from) {
      String share = percent.group(1) + " %";
      text.replace(at.line(), from, percent.end(), share);
      return Optional.of(new Slip(written, "the sign stands behind the number: write " + share));
    }
    if (">|".contains(sign) && line.substring(from + 1).matches("[-+0-9]*\\s*")) {
      text.replace(at.line(), from, line.length(), "\"");
      QuoteSlips.closeBelow(at, text);
      return Optional.of(
          new Slip(written, "in brackets no “" + sign + "” begins a text; put the text in quotes"));
    }
    int to = QuoteSlips.valueEnd(line, from);
    if (to <= from) {
      return Optional.empty();
    }
    text.replace(at.line(), from, to, QuoteSlips.quoted(line.substring(from, to)));
    return Optional.of(
        new Slip(written, "a value cannot begin with “" + sign + "”; put it in quotes"));
  }

  private static Optional<Slip> bar(Fault fault, Mended text) {
    int number = fault.from().line();
    int from = fault.from().column() - 1;
    String line = text.line(number);
    if (from >= line.length()) {
      return Optional.empty();
    }
    Position written = text.original(fault.from());
    String sign = line.substring(from, from + 1);
    text.replace(
        number, from, line.length(), QuoteSlips.quoted(line.substring(from).stripTrailing()));
    return Optional.of(
        new Slip(
            written,
            "“"
                + sign
                + "” begins a text in the lines below; put a value that begins with it in quotes"));
  }

  private static Optional<Slip> dash(Position at, Mended text) {
    String line = text.line(at.line());
    int from = at.column() - 1;
    Position written = text.original(at);
    if (!line.startsWith("- ", from)) {
      return Optional.empty();
    }
    text.replace(at.line(), from, from + 2, "");
    return Optional.of(
        new Slip(written, "a list cannot begin behind a colon; write [a, b], or a line for each"));
  }

  private static Optional<Slip> star(Position at, Mended text) {
    String line = text.line(at.line());
    int colon = Lines.colon(line);
    int from = colon < 0 ? Lines.content(line) : colon + 1;
    while (from < line.length() && line.charAt(from) == ' ') {
      from++;
    }
    if (!line.startsWith("*", from)) {
      return Optional.empty();
    }
    Position written = text.original(new Position(at.line(), from + 1));
    int to = QuoteSlips.valueEnd(line, from);
    String value = line.substring(from, to);
    text.replace(at.line(), from, to, QuoteSlips.quoted(value));
    return Optional.of(
        new Slip(
            written,
            Script.quoted(value)
                + " begins with “*”, which refers to an anchor; put it in quotes"));
  }
}
