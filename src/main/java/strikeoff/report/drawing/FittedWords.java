package strikeoff.report.drawing;

/** Fits words of a plan, which may be of any length, into a drawing. */
public final class FittedWords {

  private FittedWords() {}

  /** The words, cut between characters with an ellipsis if there are more than {@code most}. */
  public static String shortened(String words, int most) {
    if (words.codePointCount(0, words.length()) <= most) {
      return words;
    }
    return words.substring(0, words.offsetByCodePoints(0, Math.max(1, most - 1))) + "…";
  }

  /** How many letters of the given size fit. */
  static int fitting(double room, double letter) {
    return (int) Math.floor(room / (letter * 0.56));
  }
}
