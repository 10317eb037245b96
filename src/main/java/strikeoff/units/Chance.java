package strikeoff.units;

/** How likely something is, as the share of days on which it happens: 0 to 1. */
public record Chance(double share) implements Comparable<Chance> {

  private static final String[] TENTHS = {
    "",
    "one day",
    "two days",
    "three days",
    "four days",
    "five days",
    "six days",
    "seven days",
    "eight days",
    "nine days"
  };

  private static final double NEARLY_ALL = 0.95;

  /** Sums of tenths are not exact. */
  private static final double ROUNDING = 1e-9;

  /**
   * @throws IllegalArgumentException unless 0 ≤ share ≤ 1
   */
  public Chance {
    if (!(share >= 0 && share <= 1)) {
      throw new IllegalArgumentException("no chance: " + share);
    }
  }

  /**
   * As people say it: {@code about four days in ten}. Rounded down, so that no words go beyond what
   * decides how grave it is.
   */
  public String text() {
    long tenths = (long) Math.floor(share * 10 + ROUNDING);
    if (share == 0) {
      return "no day";
    }
    if (share == 1) {
      return "every day";
    }
    return tenths == 0
        ? "fewer than one day in ten"
        : share >= NEARLY_ALL ? "nearly every day" : "about " + TENTHS[(int) tenths] + " in ten";
  }

  @Override
  public int compareTo(Chance other) {
    return Double.compare(share, other.share);
  }

  @Override
  public String toString() {
    return text();
  }
}
