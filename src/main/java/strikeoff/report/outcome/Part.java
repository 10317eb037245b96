package strikeoff.report.outcome;

import java.util.Optional;

/**
 * One part of a batch that several machines share.
 *
 * @param number which part, from 1
 * @param of how many parts there are
 */
public record Part(int number, int of) {

  /** More machines than anyone has. */
  private static final int MOST = 1000;

  public Part {
    if (of < 1 || of > MOST || number < 1 || number > of) {
      throw new IllegalArgumentException("no part of a batch: " + number + "/" + of);
    }
  }

  /** Reads {@code 2/7}; empty if it isn't one. */
  public static Optional<Part> parse(String text) {
    if (!text.matches("\\d{1,4}/\\d{1,4}")) {
      return Optional.empty();
    }
    int slash = text.indexOf('/');
    int number = Integer.parseInt(text.substring(0, slash));
    int of = Integer.parseInt(text.substring(slash + 1));
    return number >= 1 && number <= of && of <= MOST
        ? Optional.of(new Part(number, of))
        : Optional.empty();
  }

  /** True if the plan of this number belongs to the part: every {@code of}-th one. */
  public boolean holds(int plan) {
    return (plan - 1) % of == number - 1;
  }

  @Override
  public String toString() {
    return number + "/" + of;
  }
}
