package strikeoff.yaml;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import strikeoff.document.Position;
import strikeoff.units.Script;
import strikeoff.yaml.Slips.Slip;

/** Colons left out, without their space, or one too many. */
final class ColonSlips {

  private static final Pattern TIGHT = Pattern.compile("([^\\s:\"'{\\[#][^:\"'{\\[#]*):(?=\\S)");
  private static final Pattern EQUALS = Pattern.compile("([^\\s=]+(?: [^\\s=]+)*)( *=+ *)(?=\\S)");
  private static final Pattern KEY_AND_VALUE =
      Pattern.compile("([^\\s\"'{\\[#0-9]+(?: [^\\s\"'{\\[#0-9]+)*?)( +)(?=[\"'{\\[#0-9])");
  private static final Pattern TWO_WORDS = Pattern.compile("(\\S+)( +)(?=\\S)");

  private static final Pattern WORD_AND_COLON = Pattern.compile("[a-z]+: ");

  private ColonSlips() {}

  static Optional<Slip> find(Fault fault, Mended text) {
    if (fault.problem().contains("could not find expected ':'")) {
      return left(fault.from().line(), text);
    }
    return fault.problem().contains("mapping values are not allowed")
        ? second(fault.at(), text)
        : Optional.empty();
  }

  /** The parser stumbles over a colon that is right: what is wrong stands before it. */
  private static Optional<Slip> second(Position at, Mended text) {
    int number = at.line();
    String line = text.line(number);
    int first = Lines.colon(line);
    int bracket = Lines.bare(line).indexOf('{');
    if (bracket > Lines.content(line)
        && bracket < at.column() - 1
        && (first < 0 || bracket < first)) {
      return left(number, text);
    }
    if (first >= 0 && first < at.column() - 1) {
      return value(number, first, at, text);
    }
    int above = Lines.above(text.lines(), number);
    return above > 0 && Lines.colon(text.line(above)) < 0 ? left(above, text) : Optional.empty();
  }

  /** A value holds a colon. */
  private static Optional<Slip> value(int number, int first, Position at, Mended text) {
    String line = text.line(number);
    int from = first + 1;
    while (line.charAt(from) == ' ') {
      from++;
    }
    int to = Lines.end(line);
    Position written = text.original(at);
    if (line.charAt(from) == '(' && line.charAt(to - 1) == ')') {
      Position bracket = text.original(new Position(number, from + 1));
      text.replace(number, to - 1, to, "}");
      text.replace(number, from, from + 1, "{");
      return Optional.of(new Slip(bracket, "keys on one line stand in braces: {…}, not (…)"));
    }
    String value = line.substring(from, to);
    if (Lines.indent(line) > 0 && WORD_AND_COLON.matcher(value).lookingAt()) {
      Position start = text.original(new Position(number, from + 1));
      text.insert(number, to, "}");
      text.insert(number, from, "{");
      return Optional.of(
          new Slip(start, "keys behind a key stand in braces, as in {" + shown(value) + "}"));
    }
    text.replace(number, from, to, QuoteSlips.quoted(value));
    String shown = value.length() <= 40 ? ": \"" + value.replace("\"", "\\\"") + "\"" : "";
    return Optional.of(
        new Slip(written, "a second “: ” stands in this line; put the value in quotes" + shown));
  }

  /** A line that has no colon where its key ends. */
  private static Optional<Slip> left(int number, Mended text) {
    String line = text.line(number);
    int from = Lines.content(line);
    int end = Lines.end(line);
    if (from >= end) {
      return Optional.empty();
    }
    String content = line.substring(from, end);
    Matcher tight = TIGHT.matcher(content);
    if (tight.lookingAt()) {
      int colon = from + tight.end();
      Position written = text.original(new Position(number, colon + 1));
      text.insert(number, colon, " ");
      return Optional.of(
          new Slip(written, "a space is missing after “" + shown(tight.group(1)) + ":”"));
    }
    Matcher equals = EQUALS.matcher(content);
    if (equals.lookingAt()) {
      Position written = text.original(new Position(number, from + equals.start(2) + 1));
      text.replace(number, from + equals.start(2), from + equals.end(2), ": ");
      return Optional.of(
          new Slip(written, "write “" + shown(equals.group(1)) + ": ”, with a colon"));
    }
    int below = Lines.below(text.lines(), number);
    boolean leads = below > 0 && Lines.indent(text.line(below)) > from;
    String phrase = text.phrase(content);
    int length = phrase.isEmpty() ? keyLength(content) : phrase.length();
    boolean alone = text.isPhrase(content);
    int key = from + (leads || alone ? content.length() : length);
    Position written = text.original(new Position(number, key + 1));
    text.insert(number, key, ":");
    if (alone && !leads && from > Lines.indent(line)) {
      return Optional.of(new Slip(written, ""));
    }
    return Optional.of(
        new Slip(written, "a colon is missing after “" + shown(line.substring(from, key)) + "”"));
  }

  /** How many letters of a line without a colon are its key. */
  static int keyLength(String content) {
    Matcher value = KEY_AND_VALUE.matcher(content);
    if (value.lookingAt()) {
      return value.end(1);
    }
    Matcher words = TWO_WORDS.matcher(content);
    return words.lookingAt() ? words.end(1) : content.length();
  }

  private static String shown(String key) {
    String quoted = Script.quoted(key);
    return quoted.substring(1, quoted.length() - 1);
  }
}
