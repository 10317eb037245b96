package strikeoff.report.page;

import java.util.ArrayList;
import java.util.List;

/**
 * A piece of a sentence: plain words, or what is to be written into a plan letter by letter, which
 * rules put between backticks.
 *
 * @param text without its backticks
 * @param code true for what is to be written
 */
public record PhrasePart(String text, boolean code) {

  /** The pieces of a sentence. A backtick without its fellow stays where it stands. */
  public static List<PhrasePart> of(String sentence) {
    List<PhrasePart> phrases = new ArrayList<>();
    int at = 0;
    while (at < sentence.length()) {
      int opens = sentence.indexOf('`', at);
      int closes = opens < 0 ? -1 : sentence.indexOf('`', opens + 1);
      if (closes < 0) {
        phrases.add(new PhrasePart(sentence.substring(at), false));
        break;
      }
      if (opens > at) {
        phrases.add(new PhrasePart(sentence.substring(at, opens), false));
      }
      phrases.add(new PhrasePart(sentence.substring(opens + 1, closes), true));
      at = closes + 1;
    }
    return List.copyOf(phrases);
  }
}
