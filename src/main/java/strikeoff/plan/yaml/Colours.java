package strikeoff.plan.yaml;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import strikeoff.plan.Colour;
import strikeoff.units.Parsed;
import strikeoff.units.Script;
import strikeoff.units.Spelling;
import strikeoff.yaml.Expected;
import strikeoff.yaml.ValueKinds;

/** Reads colours: hexadecimal triples, or names of CSS Color Module Level 4. */
final class Colours {

  private static final String WORDS = "a colour such as \"#b5653a\" or teal";
  private static final Pattern HEX = Pattern.compile("#(?:[0-9a-fA-F]{3}|[0-9a-fA-F]{6})");
  private static final Pattern HEX_WITHOUT_MARK = Pattern.compile("[0-9a-fA-F]{6}");

  /** Most plans name no colour, and need not read the names. */
  private static final class Named {
    static final Map<String, String> ALL = named();
  }

  private Colours() {}

  static Expected<Colour> colour() {
    return ValueKinds.scalar(WORDS, new Colour(255, 255, 255, "white"), Colours::parse);
  }

  /** Every colour name that is known, in small letters. */
  static List<String> names() {
    return List.copyOf(Named.ALL.keySet());
  }

  private static Parsed<Colour> parse(String text) {
    if (HEX.matcher(text).matches()) {
      return Parsed.value(of(text, text));
    }
    String named = Named.ALL.get(text.toLowerCase(Locale.ROOT));
    if (named != null) {
      return Parsed.value(of(named, text));
    }
    String words = WORDS + " was expected; " + Script.quoted(text) + " is not one";
    if (text.startsWith("#")) {
      return Parsed.refused(words + ": three or six hexadecimal digits follow the #");
    }
    return Parsed.refused(
        HEX_WITHOUT_MARK.matcher(text).matches()
            ? words + "; did you mean “#" + text + "”?"
            : words
                + Everyday.colour(text)
                    .map(near -> "; “" + near + "” comes near it")
                    .orElseGet(() -> Spelling.didYouMean(text, Named.ALL.keySet())));
  }

  private static Colour of(String hex, String written) {
    boolean brief = hex.length() == 4;
    int[] rgb = new int[3];
    for (int i = 0; i < 3; i++) {
      String digits =
          brief ? hex.substring(i + 1, i + 2).repeat(2) : hex.substring(2 * i + 1, 2 * i + 3);
      rgb[i] = Integer.parseInt(digits, 16);
    }
    return new Colour(rgb[0], rgb[1], rgb[2], written);
  }

  private static Map<String, String> named() {
    Map<String, String> named = new LinkedHashMap<>();
    try (InputStream in = Colours.class.getResourceAsStream("css-colours.txt");
        BufferedReader lines =
            new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
      lines
          .lines()
          .filter(l -> !l.startsWith("#"))
          .map(l -> l.split(" "))
          .forEach(p -> named.put(p[0], p[1]));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return named;
  }
}
