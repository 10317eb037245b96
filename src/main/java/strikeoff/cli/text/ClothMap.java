package strikeoff.cli.text;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.locationtech.jts.geom.Envelope;
import strikeoff.check.Checked;
import strikeoff.layout.Placement;
import strikeoff.plan.PrintPlan;
import strikeoff.units.Measures;

/**
 * A plan's cloth and the copies on it, drawn in letters: seen from above, the end that one starts
 * at on the left, the near edge at the bottom.
 */
public final class ClothMap {

  private static final int MOST_ROWS = 16;
  private static final int FEWEST_ROWS = 3;

  /** Letters stand about twice as high as they are wide. */
  private static final double HEIGHT = 2;

  private static final String PLAIN = "+-|#";
  private static final String DRAWN = "┼─│▒";

  private ClothMap() {}

  /** True if the locale has more letters than ASCII, by the usual variables in their order. */
  public static boolean drawn(Map<String, String> environment) {
    for (String name : List.of("LC_ALL", "LC_CTYPE", "LANG")) {
      String locale = environment.getOrDefault(name, "");
      if (!locale.isEmpty()) {
        return locale.toUpperCase(Locale.ROOT).replace("-", "").contains("UTF8");
      }
    }
    return false;
  }

  /**
   * Lines no longer than the width.
   *
   * @param drawn false for ASCII alone
   */
  public static List<String> lines(Checked.Judged judged, int width, boolean drawn) {
    PrintPlan plan = judged.plan();
    double length = plan.cloth().length().mm();
    double across = plan.cloth().width().mm();
    int columns = Math.max(10, Math.min(width, 80) - 4);
    double scale = length / columns;
    int rows = (int) Math.round(across / scale / HEIGHT);
    if (rows > MOST_ROWS) {
      scale = across / MOST_ROWS / HEIGHT;
      columns = Math.max(10, (int) Math.round(length / scale));
    }
    rows = Math.max(FEWEST_ROWS, Math.min(MOST_ROWS, rows));
    char[][] cells = new char[rows][columns];
    for (char[] row : cells) {
      Arrays.fill(row, ' ');
    }
    String letters = drawn ? DRAWN : PLAIN;
    for (Placement copy : judged.facts().layout().placements()) {
      Envelope seen = copy.outline().getEnvelopeInternal();
      int left = cell(seen.getMinX() / length, columns);
      int right = Math.max(left, cell(seen.getMaxX() / length, columns) - 1);
      int low = cell(seen.getMinY() / across, rows);
      int high = Math.max(low, cell(seen.getMaxY() / across, rows) - 1);
      for (int y = low; y <= high; y++) {
        Arrays.fill(cells[rows - 1 - y], left, right + 1, letters.charAt(3));
      }
    }
    Measures units = plan.measures();
    List<String> lines = new ArrayList<>();
    String edge = letters.charAt(0) + letters.substring(1, 2).repeat(columns) + letters.charAt(0);
    lines.add(edge);
    for (char[] row : cells) {
      lines.add(letters.charAt(2) + new String(row) + letters.charAt(2));
    }
    lines.add(edge);
    lines.add(
        "start; "
            + plan.cloth().length().text(units)
            + " along, "
            + plan.cloth().width().text(units)
            + " across, near edge below");
    return lines;
  }

  private static int cell(double share, int cells) {
    return (int) Math.max(0, Math.min(cells - 1, Math.round(share * cells)));
  }
}
