package strikeoff.units;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/** Finds the known word that somebody most likely meant. */
public final class Spelling {

  /** Longer words are nobody's slip; comparing them would only cost time. */
  private static final int LONGEST = 60;

  private Spelling() {}

  /**
   * The nearest known word: within about a third of its letters by inserting, dropping, changing or
   * swapping letters, or one that begins with what was written. Case does not count.
   */
  public static Optional<String> nearest(String written, Collection<String> known) {
    String word = fold(written);
    if (word.isEmpty() || word.length() > LONGEST) {
      return Optional.empty();
    }
    String best = null;
    int least = Math.max(1, word.length() / 3) + 1;
    for (String candidate : known) {
      String other = fold(candidate);
      int away = Math.abs(other.length() - word.length()) < least ? distance(word, other) : least;
      // A single letter tells nothing of which word was meant.
      if (word.length() == 1 && other.length() == 1) {
        away = least;
      }
      if (away < least && isOtherWord(word, other)) {
        away = least;
      }
      if (away < least) {
        least = away;
        best = candidate;
      }
    }
    if (best == null && word.length() >= 3) {
      return known.stream()
          .filter(k -> fold(k).startsWith(word) || (k.length() >= 3 && word.startsWith(fold(k))))
          .findFirst()
          .or(() -> within(word, known));
    }
    return Optional.ofNullable(best);
  }

  /** True for names of as many words of which one is another word: sodium phosphate, sulphate. */
  private static boolean isOtherWord(String word, String other) {
    String[] words = word.split(" ");
    String[] others = other.split(" ");
    if (words.length < 2 || words.length != others.length) {
      return false;
    }
    for (int i = 0; i < words.length; i++) {
      if (distance(words[i], others[i]) > Math.max(1, words[i].length() / 3)) {
        return true;
      }
    }
    return false;
  }

  /** A known word that stands as a whole word in what was written: dye in reactive dye. */
  private static Optional<String> within(String word, Collection<String> known) {
    return known.stream()
        .filter(k -> k.length() >= 3 && (" " + word + " ").contains(" " + fold(k) + " "))
        .findFirst();
  }

  /**
   * True if a word can only be a slip for another: one letter in three or four off, whatever the
   * case. Words of one or two letters are too short to tell.
   */
  public static boolean isSlip(String written, String known) {
    String word = written.strip();
    String other = known.strip();
    int shorter = Math.min(word.length(), other.length());
    int most = Math.max(1, shorter / 4);
    return shorter > 2
        && word.length() <= LONGEST
        && Math.abs(word.length() - other.length()) <= most
        && distance(fold(word), fold(other)) <= most;
  }

  /** As {@code ; did you mean “pitch”?}, or nothing. */
  public static String didYouMean(String written, Collection<String> known) {
    return nearest(written, known).map(w -> "; did you mean “" + w + "”?").orElse("");
  }

  /** Hyphens and underscores are typed for spaces and the other way round. */
  private static String fold(String text) {
    return text.toLowerCase(Locale.ROOT).replace('-', ' ').replace('_', ' ').strip();
  }

  /** Letters inserted, dropped, changed, or swapped with their neighbour. */
  private static int distance(String a, String b) {
    int[] before = new int[b.length() + 1];
    int[] last = new int[b.length() + 1];
    int[] row = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      last[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      row[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int cost = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
        row[j] = Math.min(Math.min(row[j - 1], last[j]) + 1, last[j - 1] + cost);
        if (i > 1
            && j > 1
            && a.charAt(i - 1) == b.charAt(j - 2)
            && a.charAt(i - 2) == b.charAt(j - 1)) {
          row[j] = Math.min(row[j], before[j - 2] + 1);
        }
      }
      int[] free = before;
      before = last;
      last = row;
      row = free;
    }
    return last[b.length()];
  }
}
