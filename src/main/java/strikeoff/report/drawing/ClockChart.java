package strikeoff.report.drawing;

import gg.jte.Content;
import java.util.List;
import strikeoff.day.Moment;
import strikeoff.propose.TwoClocks;
import strikeoff.propose.TwoClocks.Row;
import strikeoff.propose.TwoClocks.Stretch;
import strikeoff.propose.TwoClocks.What;

/**
 * A run by the clock: a row for each person and day, and for the cloth while it dries. Charts of
 * one pair have the same scale.
 */
public final class ClockChart {

  private static final double MINUTE = 1.7;
  private static final double SIDE = 12;
  private static final double NAMES = 120;
  private static final double TOP = 26;
  private static final double ROW = 20;
  private static final double BAR = 15;
  private static final int MOST_ROWS = 60;

  private ClockChart() {}

  /**
   * @param rows those of one run
   * @param label what it shows, for who can't see it
   */
  public static Content of(TwoClocks scale, List<Row> rows, String label) {
    int shown = Math.min(MOST_ROWS, rows.size());
    double width = x(scale, 60.0 * scale.toHour()) + SIDE;
    double height = TOP + ROW * (shown + (rows.size() > shown ? 1 : 0)) + 6;
    Svg all = Svg.group("rows");
    double y = TOP;
    int day = 0;
    for (Row row : rows.subList(0, shown)) {
      all.add(row(scale, row, day, y, width));
      day = row.day();
      y += ROW;
    }
    if (rows.size() > shown) {
      all.add(name("and " + (rows.size() - shown) + " rows more", SIDE, y));
    }
    return Svg.window(0, 0, width, height)
        .with("class", "run")
        .with("width", width)
        .with("height", height)
        .with("role", "img")
        .with("aria-label", label)
        .add(hours(scale, height))
        .add(all);
  }

  private static Svg hours(TwoClocks scale, double height) {
    Svg layer = Svg.group("hours");
    for (int hour = scale.fromHour(); hour <= scale.toHour(); hour++) {
      double x = x(scale, 60.0 * hour);
      layer.add(Svg.line(x, TOP - 8, x, height).with("class", "full"));
      if (hour < scale.toHour()) {
        layer.add(Svg.text(x + 3, RunRows.LETTER, Moment.of(1, 60 * hour).clock()));
      }
    }
    return layer;
  }

  private static Svg row(TwoClocks scale, Row row, int dayBefore, double y, double width) {
    Svg drawn = Svg.group("row");
    boolean first = row.day() != dayBefore;
    if (first) {
      drawn.add(Svg.line(0, y, width, y).with("class", "rule"));
      drawn.add(name("day " + row.day(), SIDE, y));
    }
    drawn.add(name(row.ofCloth() ? "cloth" : FittedWords.shortened(row.who(), 10), SIDE + 46, y));
    for (Stretch stretch : row.stretches()) {
      drawn.add(bar(scale, stretch, y));
    }
    return drawn;
  }

  private static Svg name(String words, double x, double y) {
    return Svg.text(x, y + BAR - 1, words).with("class", "name");
  }

  private static Svg bar(TwoClocks scale, Stretch stretch, double y) {
    double left = x(scale, stretch.from());
    double length = Math.max(1.2, x(scale, stretch.to()) - left);
    Svg bar = Svg.rect(left, y + 2, length, BAR).with("class", look(stretch.what()));
    String words =
        stretch.what().words() + ", " + clock(stretch.from()) + "–" + clock(stretch.to());
    String inside = stretch.what() == What.DRIES ? "dries" : firstWord(stretch.what());
    if (FittedWords.fitting(length - 6, RunRows.LETTER) < inside.length()) {
      return bar.titled(words);
    }
    return Svg.of("g")
        .add(bar.titled(words))
        .add(Svg.text(left + 3, y + BAR - 2, inside).with("class", look(stretch.what())));
  }

  private static String firstWord(What what) {
    return what.words().split("[ ,]", 2)[0];
  }

  private static String clock(double minutes) {
    return Moment.of(1, (int) Math.floor(minutes)).clock();
  }

  /** Printing is filled, what else people do is open, and what dries is dashed. */
  private static String look(What what) {
    return switch (what) {
      case PRINTS -> "work";
      case DRIES -> "wait";
      default -> "wash";
    };
  }

  private static double x(TwoClocks scale, double minutes) {
    return NAMES + (minutes - 60.0 * scale.fromHour()) * MINUTE;
  }
}
