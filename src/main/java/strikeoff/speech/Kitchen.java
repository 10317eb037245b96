package strikeoff.speech;

import java.util.ArrayList;
import java.util.List;

/**
 * A volume in cups and spoons, level, to the nearest quarter of a teaspoon. They are US ones, as a
 * plan's bare cup and spoon are; metric ones hold 1 to 6 % more.
 */
public final class Kitchen {

  private static final int QUARTERS_A_TEASPOON = 4;
  private static final int QUARTERS_A_TABLESPOON = 12;
  private static final int QUARTERS_A_CUP = 192;
  private static final double ML_A_QUARTER = 4.92892159375 / QUARTERS_A_TEASPOON;

  /** Nobody counts more cups than that; such an amount is weighed. */
  private static final double MOST = 1e6;

  private static final List<String> PARTS = List.of("", "¼", "½", "¾");

  private Kitchen() {}

  public static String measure(double millilitres) {
    if (!(millilitres <= MOST)) {
      return "weigh it";
    }
    long quarters = Math.round(millilitres / ML_A_QUARTER);
    if (quarters == 0) {
      return millilitres > 0 ? "less than ¼ tsp" : "none";
    }
    List<String> words = new ArrayList<>();
    // Whole and quarter cups first, then tablespoons, then teaspoons and their quarters.
    long cups = quarters / (QUARTERS_A_CUP / 4);
    add(words, cups / 4, (int) (cups % 4), "cup");
    long rest = quarters % (QUARTERS_A_CUP / 4);
    add(words, rest / QUARTERS_A_TABLESPOON, 0, "tbsp");
    rest = rest % QUARTERS_A_TABLESPOON;
    add(words, rest / QUARTERS_A_TEASPOON, (int) (rest % QUARTERS_A_TEASPOON), "tsp");
    return String.join(" + ", words);
  }

  private static void add(List<String> words, long whole, int part, String unit) {
    if (whole > 0 || part > 0) {
      words.add((whole > 0 ? Long.toString(whole) : "") + PARTS.get(part) + " " + unit);
    }
  }
}
