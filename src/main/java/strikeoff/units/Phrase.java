package strikeoff.units;

import java.util.List;
import java.util.Locale;

/** Puts words together. */
public final class Phrase {

  private Phrase() {}

  /** Several as one, as in {@code sand, rust and ink}; {@code none} of none. */
  public static String list(List<String> words) {
    int last = words.size() - 1;
    if (last < 0) {
      return "none";
    }
    return last == 0
        ? words.get(0)
        : String.join(", ", words.subList(0, last)) + " and " + words.get(last);
  }

  /** How often: {@code once}, {@code twice}, {@code 5 times}. */
  public static String times(int count) {
    return count == 1 ? "once" : count == 2 ? "twice" : count + " times";
  }

  /** As a sentence begins. */
  public static String capital(String words) {
    int first = first(words);
    return words.substring(0, first).toUpperCase(Locale.ROOT) + words.substring(first);
  }

  /** As a sentence goes on. */
  public static String small(String words) {
    int first = first(words);
    return words.substring(0, first).toLowerCase(Locale.ROOT) + words.substring(first);
  }

  private static int first(String words) {
    return words.isEmpty() ? 0 : words.offsetByCodePoints(0, 1);
  }
}
