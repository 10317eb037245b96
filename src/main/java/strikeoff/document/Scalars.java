package strikeoff.document;

import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/** Words as YAML takes them back unchanged, inside braces too. */
public final class Scalars {

  /** What other readers of YAML take for something else than text. */
  private static final Set<String> SPECIAL =
      Set.of("", "~", "null", "true", "false", "yes", "no", "on", "off");

  private static final Pattern PLAIN =
      Pattern.compile("[\\p{L}\\p{N}][\\p{L}\\p{N} ./%°²³·'()+_-]*");

  private Scalars() {}

  /** A name, in double quotes where it needs them. */
  public static String text(String name) {
    boolean plain =
        PLAIN.matcher(name).matches()
            && !name.endsWith(" ")
            && !name.contains(" #")
            && !SPECIAL.contains(name.toLowerCase(Locale.ROOT));
    return plain ? name : quoted(name);
  }

  /** Any text, in double quotes. */
  public static String quoted(String text) {
    StringBuilder quoted = new StringBuilder("\"");
    text.codePoints()
        .forEach(
            c -> {
              if (c == '"' || c == '\\') {
                quoted.append('\\').appendCodePoint(c);
              } else if (Character.isISOControl(c)) {
                quoted.append(String.format(Locale.ROOT, "\\x%02x", c));
              } else {
                quoted.appendCodePoint(c);
              }
            });
    return quoted.append('"').toString();
  }
}
