package strikeoff.yaml;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import strikeoff.document.Position;
import strikeoff.yaml.Slips.Slip;

/** Brackets left open or closed wrongly, commas left out, colours that became comments. */
final class BracketSlips {

  private static final Pattern COLOUR =
      Pattern.compile("(?<=[\\s:])#(?:[0-9a-fA-F]{6}|[0-9a-fA-F]{3})(?![0-9a-zA-Z])");

  private BracketSlips() {}

  static Optional<Slip> find(Fault fault, Mended text) {
    String problem = fault.problem();
    if (problem.contains("expected ',' or")) {
      return colour(fault, text).or(() -> separator(fault, text));
    }
    if (fault.context().contains("flow") && problem.contains("expected the node content")) {
      return colour(fault, text).or(() -> nothing(fault, text));
    }
    return problem.contains("'}'") || problem.contains("']'")
        ? tooMany(fault.at(), text)
        : Optional.empty();
  }

  /** An unquoted colour swallows the rest of its line, closing bracket and all. */
  private static Optional<Slip> colour(Fault fault, Mended text) {
    for (int n = fault.from().line(); n <= fault.at().line(); n++) {
      String line = text.line(n);
      int comment = Lines.end(line);
      Matcher m = COLOUR.matcher(line);
      if (m.find(Math.max(0, comment)) && line.substring(comment, m.start()).isBlank()) {
        Position written = text.original(new Position(n, m.start() + 1));
        text.replace(n, m.start(), m.end(), '"' + m.group() + '"');
        return Optional.of(
            new Slip(
                written,
                "“#” starts a comment here; put the colour in quotes: \"" + m.group() + "\""));
      }
    }
    return Optional.empty();
  }

  private static Optional<Slip> separator(Fault fault, Mended text) {
    String problem = fault.problem();
    char close = problem.contains("or ']'") ? ']' : '}';
    char open = close == ']' ? '[' : '{';
    Position from = fault.from();
    Position at = fault.at();
    String line = text.line(at.line());
    char found = at.column() <= line.length() ? line.charAt(at.column() - 1) : 0;
    if (found != close && (found == ']' || found == '}')) {
      Position written = text.original(at);
      text.replace(at.line(), at.column() - 1, at.column(), String.valueOf(close));
      return Optional.of(
          new Slip(
              written,
              "“" + open + "” at " + text.original(from) + " is closed by “" + close + "”"));
    }
    if (at.line() == from.line() && !followsOn(from, text)) {
      return comma(at, text);
    }
    return unclosed(from, at, open, close, text);
  }

  /** True if the bracket opens at the end of its line, or the line ends with a comma. */
  private static boolean followsOn(Position from, Mended text) {
    String line = text.line(from.line());
    int end = Lines.end(line);
    return end == from.column() || end > 0 && line.charAt(end - 1) == ',';
  }

  /** Before the word in front of a second colon, or where a second value begins. */
  private static Optional<Slip> comma(Position at, Mended text) {
    String line = text.line(at.line());
    int here = at.column() - 1;
    if (here >= line.length()) {
      return Optional.empty();
    }
    int word = here;
    if (line.charAt(here) == ':') {
      while (word > 0 && line.charAt(word - 1) != ' ') {
        word--;
      }
    }
    if (word == 0) {
      return Optional.empty();
    }
    if (line.charAt(here) == '[' && line.charAt(here - 1) != ' ') {
      return place(at, text);
    }
    Optional<Slip> sentence = sentence(at, word, text);
    if (sentence.isPresent()) {
      return sentence;
    }
    Position written = text.original(new Position(at.line(), word + 1));
    int end = word;
    while (end < line.length() && " ,:}]".indexOf(line.charAt(end)) < 0) {
      end++;
    }
    String name = line.substring(word, end);
    int gap = line.charAt(word - 1) == ' ' ? word - 1 : word;
    text.insert(at.line(), gap, ",");
    return Optional.of(new Slip(written, "a comma is missing before “" + name + "”"));
  }

  /** A place such as {@code run[2].bath}, whose bracket opens a list here. */
  private static Optional<Slip> place(Position at, Mended text) {
    String line = text.line(at.line());
    int from = at.column() - 1;
    while (from > 0 && " {[,".indexOf(line.charAt(from - 1)) < 0) {
      from--;
    }
    int to = at.column() - 1;
    while (to < line.length() && ",}".indexOf(line.charAt(to)) < 0) {
      to++;
    }
    Position written = text.original(new Position(at.line(), from + 1));
    String value = line.substring(from, to).strip();
    text.replace(at.line(), from, to, QuoteSlips.quoted(value));
    return Optional.of(
        new Slip(
            written, "in braces “[” begins a list; put the value in quotes: \"" + value + "\""));
  }

  /** Several words without a number before the colon are a sentence that holds one. */
  private static Optional<Slip> sentence(Position at, int word, Mended text) {
    String line = text.line(at.line());
    int colon = Lines.bare(line).lastIndexOf(": ", at.column() - 2);
    if (colon < 0 || line.charAt(at.column() - 1) != ':') {
      return Optional.empty();
    }
    int from = colon + 2;
    if (!line.substring(from, word).matches("\\p{L}+ (?:\\p{L}+ )+")) {
      return Optional.empty();
    }
    int to = from;
    while (to < line.length() && "}]".indexOf(line.charAt(to)) < 0) {
      to++;
    }
    Position written = text.original(at);
    text.replace(at.line(), from, to, QuoteSlips.quoted(line.substring(from, to).strip()));
    return Optional.of(
        new Slip(written, "a second “: ” stands in this value; put the value in quotes"));
  }

  private static Optional<Slip> unclosed(
      Position from, Position at, char open, char close, Mended text) {
    if (followsOn(from, text)) {
      int above = Lines.above(text.lines(), at.line());
      if (above < from.line() || Lines.isEmpty(text.line(at.line()))) {
        return Optional.empty();
      }
      int end = Lines.end(text.line(above));
      if (end == 0 || ",{[".indexOf(text.line(above).charAt(end - 1)) >= 0) {
        return Optional.empty();
      }
      Position written = text.original(new Position(above, end + 1));
      text.insert(above, end, ",");
      return Optional.of(new Slip(written, "a comma is missing at the end of this line"));
    }
    int end = Lines.end(text.line(from.line()));
    Position written = text.original(from);
    text.insert(from.line(), end, String.valueOf(close));
    return Optional.of(
        new Slip(
            written, "“" + open + "” opens here and is never closed; “" + close + "” is missing"));
  }

  private static Optional<Slip> nothing(Fault fault, Mended text) {
    Position at = fault.at();
    String line = text.line(at.line());
    if (at.column() > line.length() || line.charAt(at.column() - 1) != ',') {
      return Optional.empty();
    }
    Position written = text.original(at);
    text.replace(at.line(), at.column() - 1, at.column(), " ");
    return Optional.of(new Slip(written, "a value is missing before this comma"));
  }

  private static Optional<Slip> tooMany(Position at, Mended text) {
    String line = text.line(at.line());
    int here = at.column() - 1;
    if (here >= line.length() || "}]".indexOf(line.charAt(here)) < 0) {
      return Optional.empty();
    }
    Position written = text.original(at);
    String sign = line.substring(here, here + 1);
    text.replace(at.line(), here, here + 1, " ");
    return Optional.of(new Slip(written, "this “" + sign + "” closes nothing; leave it out"));
  }
}
