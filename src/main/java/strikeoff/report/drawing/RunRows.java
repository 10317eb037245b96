package strikeoff.report.drawing;

import gg.jte.Content;
import java.util.ArrayList;
import java.util.List;
import strikeoff.day.Moment;
import strikeoff.plan.Hours;

/** The rows of a day's chart: names that stay in sight at the left, and what stands in them. */
final class RunRows {

  static final double LETTER = 11;
  static final double BAR = 13;

  /** What the names take, in units of the drawing. */
  private static final double NAMES = 170;

  private static final double TOP = 20;
  private static final double ROW = 31;
  private static final double SIDE = 8;

  /** A bold letter is wider than others. */
  private static final double BOLD = 1.12;

  private final RunScale scale;
  private final PrintDay day;
  private final Svg names = Svg.group("rows");
  private final Svg rows = Svg.group("rows");
  private double y = TOP;

  RunRows(RunScale scale, PrintDay day) {
    this.scale = scale;
    this.day = day;
  }

  /** A new row below the others. */
  Svg row(String name, String kind) {
    Svg row = Svg.group("row " + kind);
    List<String> lines = inTwo(name);
    for (int i = 0; i < lines.size(); i++) {
      double line = lines.size() == 1 ? y + ROW - 9 : y + ROW - 17 + i * (LETTER + 1);
      names.add(Svg.text(SIDE, line, lines.get(i)).with("class", "name"));
    }
    y += ROW;
    names.add(Svg.line(0, y - 1, NAMES, y - 1).with("class", "rule"));
    row.add(Svg.line(0, y - 1, RunScale.WIDTH, y - 1).with("class", "rule"));
    rows.add(row);
    return row;
  }

  /** Upper edge of the bars of the row that was made last. */
  double top() {
    return y - BAR - 5;
  }

  double x(Moment moment) {
    return scale.x(day, moment);
  }

  /** Where the row ends at the right. */
  double end() {
    return scale.end();
  }

  private static List<String> inTwo(String name) {
    int most = FittedWords.fitting(NAMES - 2 * SIDE, LETTER * BOLD);
    if (name.codePointCount(0, name.length()) <= most) {
      return List.of(name);
    }
    int cut = name.offsetByCodePoints(0, most);
    int blank = name.lastIndexOf(' ', cut);
    int from = blank > 0 ? blank : cut;
    return List.of(
        name.substring(0, from).strip(), FittedWords.shortened(name.substring(from).strip(), most));
  }

  /** The names, as wide as all days have them. */
  Content namesDrawn() {
    return window(NAMES).with("class", "run names").with("aria-hidden", "true").add(names);
  }

  /**
   * The rows over the hours.
   *
   * @param label what the chart shows, for who can't see it
   */
  Content drawn(Hours.Day hours, String label) {
    return window(RunScale.WIDTH)
        .with("class", "run day")
        .with("role", "img")
        .with("aria-label", label)
        .add(hours(hours))
        .add(rows);
  }

  private Svg window(double width) {
    double height = y + 4;
    return Svg.window(0, 0, width, height).with("width", width).with("height", height);
  }

  private Svg hours(Hours.Day open) {
    Svg layer = Svg.group("hours");
    double bottom = y + 4;
    for (Hours.Break rest : open.breaks()) {
      Moment from = Moment.of(day.number(), rest.from());
      Moment to = Moment.of(day.number(), rest.to());
      if (x(to) > x(from)) {
        layer.add(
            Svg.rect(x(from), TOP - 4, x(to) - x(from), bottom - TOP + 4)
                .with("class", "wait")
                .titled("break, " + from.clock() + "–" + to.clock()));
      }
    }
    List<Svg> labels = new ArrayList<>();
    for (int minute = (int) scale.from(); minute <= scale.to(); minute += 30) {
      Moment moment = Moment.of(day.number(), minute);
      boolean full = minute % 60 == 0;
      layer.add(
          Svg.line(x(moment), TOP - 4, x(moment), bottom).with("class", full ? "full" : "half"));
      if (full && minute < scale.to() && minute / 60 % scale.labelledHours() == 0) {
        labels.add(Svg.text(x(moment) + 2, LETTER, moment.clock()));
      }
    }
    labels.forEach(layer::add);
    return layer;
  }
}
