package strikeoff.check;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The example of a rule: a whole plan that fires it, and its near twin that doesn't, kept in one
 * text so that they can't drift apart. Marks at a line's end tell them apart:
 *
 * <ul>
 *   <li>{@code #> finds family/fault}: that rule finds something at exactly this line;
 *   <li>{@code #> instead TEXT}: in the twin the line reads TEXT, indented alike; without TEXT it
 *       goes;
 *   <li>a whole line {@code #+ TEXT} comes alive in the twin.
 *   <li>a whole line {@code #: TEXT} is a line of the studio's policy, under which both are
 *       checked.
 * </ul>
 *
 * Both plans have the text's own line numbers.
 *
 * @param folder of the program's resources that it and its films lie in, between slashes
 * @param situation what the first comment says of it
 * @param firing the plan that fires the rule, line by line
 * @param twin the mended plan, line by line, as many lines
 * @param policy the studio's policy file, or nothing
 * @param marks what the firing plan must have found
 */
public record Example(
    String folder,
    String situation,
    List<String> firing,
    List<String> twin,
    String policy,
    Set<Mark> marks) {

  private static final String POLICY = "#: ";

  private static final Pattern ADDED = Pattern.compile("(\\s*)#\\+(?: (.*))?");

  private static final Pattern MARK =
      Pattern.compile("\\s*#>\\s*(\\w+)\\s*([^#]*(?:#(?!>)[^#]*)*)");

  public Example {
    firing = List.copyOf(firing);
    twin = List.copyOf(twin);
    marks = Set.copyOf(marks);
  }

  /** A finding that the example's text promises. */
  public record Mark(String rule, int line) {}

  /**
   * Reads an example.
   *
   * @throws IllegalArgumentException if a mark is none of those above
   */
  public static Example of(String text) {
    return of("/", text);
  }

  private static Example of(String folder, String text) {
    List<String> firing = new ArrayList<>();
    List<String> twin = new ArrayList<>();
    Set<Mark> marks = new LinkedHashSet<>();
    String situation = "";
    StringBuilder policy = new StringBuilder();
    for (String line : text.lines().toList()) {
      Matcher added = ADDED.matcher(line);
      if (added.matches()) {
        firing.add("");
        twin.add(added.group(1) + (added.group(2) == null ? "" : added.group(2)));
        continue;
      }
      if (line.startsWith(POLICY)) {
        policy.append(line.substring(POLICY.length())).append('\n');
        firing.add(line);
        twin.add(line);
        continue;
      }
      int cut = line.indexOf("#>");
      String plain = cut < 0 ? line : line.substring(0, cut).stripTrailing();
      if (situation.isEmpty() && plain.startsWith("#")) {
        situation = plain.substring(1).strip();
      }
      firing.add(plain);
      twin.add(cut < 0 ? plain : marked(plain, line.substring(cut), firing.size(), marks));
    }
    return new Example(folder, situation, firing, twin, policy.toString(), marks);
  }

  /**
   * The example that stands beside a built-in rule.
   *
   * @throws IllegalStateException if it has none: the program was built wrong
   */
  public static Example packaged(String rule) {
    String folder = "/rules/" + rule + "/";
    String name = folder + "example.yaml";
    try (InputStream in = Example.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException("no example " + name);
      }
      return of(folder, new String(in.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  public String firingText() {
    return String.join("\n", firing) + "\n";
  }

  public String twinText() {
    return String.join("\n", twin) + "\n";
  }

  /** Takes a line's marks and gives the line as it stands in the twin. */
  private static String marked(String plain, String tail, int number, Set<Mark> marks) {
    String twin = plain;
    Matcher mark = MARK.matcher(tail);
    int end = 0;
    while (mark.find() && mark.start() == end) {
      String words = mark.group(2).strip();
      switch (mark.group(1)) {
        case "finds" -> marks.add(new Mark(words, number));
        case "instead" -> twin = words.isEmpty() ? "" : indentation(plain) + words;
        default -> throw odd(number, tail);
      }
      end = mark.end();
    }
    if (end < tail.length()) {
      throw odd(number, tail);
    }
    return twin;
  }

  private static IllegalArgumentException odd(int number, String tail) {
    return new IllegalArgumentException("line " + number + ": not a mark of an example: " + tail);
  }

  private static String indentation(String line) {
    int at = 0;
    while (at < line.length() && Character.isWhitespace(line.charAt(at))) {
      at++;
    }
    return line.substring(0, at);
  }
}
