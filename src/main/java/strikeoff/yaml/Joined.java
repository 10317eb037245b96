package strikeoff.yaml;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import strikeoff.document.Position;
import strikeoff.units.Script;
import strikeoff.yaml.Slips.Slip;

/** Slips that YAML reads without complaint, as keys and items that nobody meant. */
final class Joined {

  private static final Pattern TIGHT = Pattern.compile("([^:]+):(?=\\S)");
  private static final Pattern TIGHT_BRACKET = Pattern.compile("([^:{\\[\"']+):(?=[{\\[\"'])");
  private static final Pattern BEFORE_BRACE = Pattern.compile("([^{\\[]*[^{\\[\\s])\\s+[{\\[]");
  private static final Pattern EQUALS = Pattern.compile(" *=+ *(?=\\S)");
  private static final Pattern NUMBER = Pattern.compile("[-+−]?\\d+");
  private static final Pattern MORE = Pattern.compile(",\\s*[^,:{}\\[\\]\"']+(?=[,}])");
  private static final Pattern MORE_DECIMALS = Pattern.compile(",\\d+[^,{}\\[\\]\"']*(?<=\\S)");
  private static final Pattern REST = Pattern.compile("\\d+\\s*[^\\d\\s,].*");

  private Joined() {}

  /**
   * @param before the entry before it in the mapping
   * @param flow true if the mapping stands in braces
   */
  static Supplier<Optional<Slip>> slip(
      Node.Entry entry, Optional<Node.Entry> before, boolean flow, Mended text) {
    return () -> {
      Position at = entry.at();
      String line = text.line(at.line());
      String key = entry.key();
      if (!line.startsWith(key, at.column() - 1)) {
        return Optional.empty();
      }
      if (!flow) {
        Matcher brace = BEFORE_BRACE.matcher(key);
        if (brace.lookingAt()) {
          int end = at.column() - 1 + brace.end(1);
          Position written = text.original(new Position(at.line(), end + 1));
          text.insert(at.line(), end, ":");
          return Optional.of(
              new Slip(written, "a colon is missing after “" + shown(brace.group(1)) + "”"));
        }
        boolean dash =
            key.length() > 1 && key.charAt(0) == '-' && Character.isLetter(key.charAt(1));
        return dash ? IndentSlips.dash(at.line(), text) : tight(TIGHT_BRACKET, entry, text);
      }
      int behind = at.column() - 1 + key.length();
      boolean colon =
          line.substring(Math.min(behind, line.length())).stripLeading().startsWith(":");
      if (colon || !(entry.value() instanceof Node.Nothing)) {
        return Optional.empty();
      }
      Optional<Slip> comma = before.flatMap(b -> decimal(b.value(), at, key, text));
      return comma.isPresent()
          ? comma
          : tight(TIGHT, entry, text)
              .or(() -> before.flatMap(b -> several(b, entry, text)))
              .or(() -> colon(entry, text));
    };
  }

  /** A number, a comma without a space, and more of the number with its unit. */
  static Optional<Slip> comma(List<Node> items, Mended text) {
    for (int i = 0; i + 1 < items.size(); i++) {
      if (items.get(i + 1) instanceof Node.Scalar rest) {
        Optional<Slip> slip = decimal(items.get(i), rest.at(), rest.text(), text);
        if (slip.isPresent()) {
          return slip;
        }
      }
    }
    return Optional.empty();
  }

  private static Optional<Slip> decimal(Node first, Position at, String rest, Mended text) {
    int comma = at.column() - 2;
    if (comma < 1
        || !(first instanceof Node.Scalar number)
        || !NUMBER.matcher(number.text()).matches()
        || !REST.matcher(rest).matches()
        || number.at().line() != at.line()
        || number.at().column() - 1 + number.text().length() != comma
        || text.line(at.line()).charAt(comma) != ',') {
      return Optional.empty();
    }
    Position written = text.original(number.at());
    String line = text.line(at.line());
    int from = number.at().column() - 1;
    int to = comma + 1 + rest.length();
    // A size has two of them.
    Matcher more = MORE_DECIMALS.matcher(line).region(to, line.length());
    to = Character.isDigit(line.charAt(to - 1)) && more.lookingAt() ? more.end() : to;
    String value = line.substring(from, to);
    String fresh = value.replace(',', '.');
    text.replace(at.line(), from, to, fresh);
    return Optional.of(
        new Slip(
            written,
            Script.quoted(value)
                + " has a comma; write decimals with a point and thousands without a mark, such as "
                + Script.quoted(fresh)));
  }

  /** Several values with commas, where in braces a comma ends the value. */
  private static Optional<Slip> several(Node.Entry before, Node.Entry entry, Mended text) {
    String key = entry.key();
    int number = entry.at().line();
    boolean value = Character.isDigit(key.charAt(0)) || key.charAt(0) == '-' || !key.contains(" ");
    if (!value
        || !(before.value() instanceof Node.Scalar first)
        || first.at().line() != number
        || first.end().line() != number) {
      return Optional.empty();
    }
    String line = text.line(number);
    int from = first.at().column() - 1;
    int to = entry.at().column() - 1 + key.length();
    Matcher more = MORE.matcher(line);
    while (more.find(to) && more.start() == to) {
      to = more.end();
    }
    String all = line.substring(from, to);
    if (all.indexOf('"') >= 0 || all.indexOf('\'') >= 0) {
      return Optional.empty();
    }
    boolean words = Character.isLetter(all.charAt(0));
    String fresh = words ? "[" + all + "]" : "\"" + all + "\"";
    Position written = text.original(first.at());
    text.replace(number, from, to, fresh);
    return Optional.of(
        new Slip(
            written,
            "in braces a comma ends the value; write "
                + (words ? "several in brackets: " : "it in quotes: ")
                + fresh));
  }

  private static Optional<Slip> tight(Pattern pattern, Node.Entry entry, Mended text) {
    Matcher m = pattern.matcher(entry.key());
    if (!m.lookingAt()) {
      return Optional.empty();
    }
    int number = entry.at().line();
    int colon = entry.at().column() - 1 + m.end();
    Position written = text.original(new Position(number, colon + 1));
    text.insert(number, colon, " ");
    return Optional.of(new Slip(written, "a space is missing after “" + shown(m.group(1)) + ":”"));
  }

  private static Optional<Slip> colon(Node.Entry entry, Mended text) {
    int length = ColonSlips.keyLength(entry.key());
    if (length == entry.key().length()) {
      return Optional.empty();
    }
    int number = entry.at().line();
    int at = entry.at().column() - 1 + length;
    Position written = text.original(new Position(number, at + 1));
    Matcher equals = EQUALS.matcher(entry.key()).region(length, entry.key().length());
    if (equals.lookingAt()) {
      text.replace(number, at, at + equals.end() - length, ": ");
      return Optional.of(
          new Slip(
              written, "write “" + shown(entry.key().substring(0, length)) + ": ”, with a colon"));
    }
    text.insert(number, at, ":");
    return Optional.of(
        new Slip(
            written, "a colon is missing after “" + shown(entry.key().substring(0, length)) + "”"));
  }

  private static String shown(String key) {
    String quoted = Script.quoted(key);
    return quoted.substring(1, quoted.length() - 1);
  }
}
