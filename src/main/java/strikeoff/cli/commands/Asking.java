package strikeoff.cli.commands;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import strikeoff.cli.text.ClothMap;
import strikeoff.cli.text.Plain;
import strikeoff.cli.text.Surroundings;
import strikeoff.units.Parsed;

/**
 * Asks a person, line by line: on the error output, so that what is printed stays clean. Letters
 * that the locale may lack are written in ASCII.
 */
final class Asking {

  /** Nobody answers any more. */
  static final class Ended extends Exception {
    private static final long serialVersionUID = 1;
  }

  private final Surroundings here;
  private final BufferedReader answers;
  private final boolean drawn;

  Asking(Surroundings here) {
    this.here = here;
    this.answers = new BufferedReader(new InputStreamReader(here.in(), StandardCharsets.UTF_8));
    this.drawn = ClothMap.drawn(here.environment());
  }

  boolean isDrawn() {
    return drawn;
  }

  /**
   * An answer that can be read; a bad one is told why, and asked for again.
   *
   * @param usual what is taken for an empty line
   */
  <T> T ask(String question, String usual, Function<String, Parsed<T>> read) throws Ended {
    while (true) {
      here.err().print(shown(question + " [" + usual + "] "));
      here.err().flush();
      String line = line();
      Parsed<T> answer = read.apply(line.isBlank() ? usual : line.strip());
      if (answer instanceof Parsed.Value<T> value) {
        return value.value();
      }
      say("  ", ((Parsed.Refused<T>) answer).message());
    }
  }

  private String line() throws Ended {
    try {
      String line = answers.readLine();
      if (line == null) {
        here.err().print("\n");
        throw new Ended();
      }
      return line;
    } catch (IOException e) {
      throw new Ended();
    }
  }

  /** Tells something beside the questions. */
  void say(String indent, String words) {
    for (String line : Plain.wrap(indent, indent, words, here.width())) {
      here.err().print(shown(line) + "\n");
    }
  }

  void draw(List<String> lines) {
    lines.forEach(line -> here.err().print(shown(line) + "\n"));
  }

  private String shown(String text) {
    if (drawn) {
      return text;
    }
    String plain = text.replace("²", "2").replace("µ", "u").replace("°", " deg ").replace("×", "x");
    return plain.replaceAll("[“”]", "\"").replace("’", "'").replace("½", "1/2").replace("…", "...");
  }

  /** One of a few words, or their beginning. */
  static <T> Function<String, Parsed<T>> word(List<String> words, List<T> meant) {
    return text -> {
      for (int i = 0; i < words.size(); i++) {
        if (words.get(i).startsWith(text.toLowerCase(Locale.ROOT))) {
          return Parsed.value(meant.get(i));
        }
      }
      return Parsed.refused("Say one of " + String.join(", ", words) + ".");
    };
  }
}
