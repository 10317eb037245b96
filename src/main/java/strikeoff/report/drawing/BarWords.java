package strikeoff.report.drawing;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What bars of a chart mean: said on the bar where it has room, beside it where that is free, else
 * by a number that a key below the chart explains. No word is cut.
 */
final class BarWords {

  private static final double AROUND = 3;

  /** Numbers above bars are smaller than words. */
  private static final double SMALL = 9;

  /** A key that is longer is not read. */
  private static final int MOST_KEYS = 40;

  private final Map<String, Integer> key = new LinkedHashMap<>();

  /**
   * A bar that is to be told.
   *
   * @param words what it means; none if its look says it
   */
  record Told(double left, double right, String words) {}

  /**
   * Adds what the bars of a row mean.
   *
   * @param bars from left to right
   * @param top upper edge of the bars
   * @param end where the row ends at the right
   */
  void add(Svg row, List<Told> bars, double top, double end) {
    double lastAbove = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < bars.size(); i++) {
      Told bar = bars.get(i);
      double next = i + 1 < bars.size() ? bars.get(i + 1).left() : end;
      if (bar.words().isEmpty()) {
        continue;
      }
      double base = top + RunRows.BAR - 3;
      double room = bar.right() - bar.left() - 2 * AROUND;
      double beside = next - bar.right() - 2 * AROUND;
      if (fits(bar.words(), room)) {
        row.add(Svg.text(bar.left() + AROUND, base, bar.words()));
      } else if (fits(bar.words(), beside)) {
        row.add(Svg.text(bar.right() + AROUND, base, bar.words()));
      } else {
        Integer known = key.get(bar.words());
        if (known == null && key.size() == MOST_KEYS) {
          continue;
        }
        String number = Integer.toString(known == null ? key.size() + 1 : known);
        boolean inside = fits(number, room + AROUND);
        if (inside) {
          row.add(Svg.text(bar.left() + AROUND, base, number));
        } else if (bar.left() - lastAbove > SMALL * number.length()) {
          row.add(Svg.text(bar.left(), top - 2, number).with("class", "above"));
          lastAbove = bar.left();
        } else {
          // Two bars so close are told apart by nobody.
          continue;
        }
        key.putIfAbsent(bar.words(), key.size() + 1);
      }
    }
  }

  private static boolean fits(String words, double room) {
    return FittedWords.fitting(room, RunRows.LETTER) >= words.codePointCount(0, words.length());
  }

  /** What the numbers mean, from 1 on. */
  List<String> key() {
    return List.copyOf(key.keySet());
  }
}
