package strikeoff.cli.text;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import strikeoff.propose.TwoClocks;
import strikeoff.propose.TwoClocks.Row;
import strikeoff.propose.TwoClocks.Stretch;
import strikeoff.propose.TwoClocks.What;

/** Draws two runs by the clock, one below the other, with a letter for some minutes. */
final class ClockText {

  /** Minutes that a letter may stand for. */
  private static final List<Integer> STEPS = List.of(5, 6, 10, 12, 15, 20, 30, 60);

  private static final int MOST_ROWS = 40;
  private static final int MOST_NAME = 10;
  private static final String INDENT = "  ";

  private static final Map<What, Character> LETTERS =
      new EnumMap<>(
          Map.of(
              What.MIXES, 'm',
              What.PRINTS, '#',
              What.HANDLES, 'h',
              What.SEWS, 's',
              What.CLEANS, 'w',
              What.FIXES, 'f',
              What.DRIES, '.'));

  private final TwoClocks clocks;
  private final int minutes;
  private final int names;
  private final Set<What> seen = EnumSet.noneOf(What.class);

  private ClockText(TwoClocks clocks, int width) {
    this.clocks = clocks;
    int widest = "cloth".length();
    for (List<Row> rows : List.of(clocks.today(), clocks.proposed())) {
      for (Row row : rows) {
        widest = Math.max(widest, Plain.columns(name(row)));
      }
    }
    this.names = "day 99 ".length() + widest;
    int room = width - INDENT.length() - names - 1;
    int span = 60 * (clocks.toHour() - clocks.fromHour());
    this.minutes = STEPS.stream().filter(step -> span / step <= room).findFirst().orElse(0);
  }

  /** Lines; none where there is no room for them. */
  static List<String> of(TwoClocks clocks, int width) {
    ClockText text = new ClockText(clocks, width);
    return text.minutes == 0 ? List.of() : text.lines(width);
  }

  private List<String> lines(int width) {
    List<String> lines = new ArrayList<>();
    rows(lines, "Yours", clocks.today());
    rows(lines, "Proposed", clocks.proposed());
    List<String> legend = new ArrayList<>();
    seen.forEach(what -> legend.add(LETTERS.get(what) + " " + what.words()));
    lines.addAll(
        Plain.wrap(
            INDENT,
            INDENT + INDENT,
            "A letter is " + minutes + " min: " + String.join(", ", legend) + ".",
            width));
    return lines;
  }

  private void rows(List<String> lines, String title, List<Row> rows) {
    if (rows.isEmpty()) {
      return;
    }
    lines.add(INDENT + title + " ".repeat(Math.max(1, names - title.length())) + hours());
    int day = 0;
    for (Row row : rows.subList(0, Math.min(MOST_ROWS, rows.size()))) {
      String before = row.day() == day ? "" : "day " + row.day();
      day = row.day();
      String name = name(row);
      String head = before + " ".repeat(Math.max(0, "day 99 ".length() - before.length())) + name;
      lines.add(
          (INDENT + head + " ".repeat(Math.max(1, names - Plain.columns(head))) + letters(row))
              .stripTrailing());
    }
    if (rows.size() > MOST_ROWS) {
      lines.add(INDENT + "and " + (rows.size() - MOST_ROWS) + " more rows");
    }
  }

  private static String name(Row row) {
    String name = row.ofCloth() ? "cloth" : Plain.line(row.who());
    return name.length() > MOST_NAME ? name.substring(0, MOST_NAME - 1) + "…" : name;
  }

  /** Full hours above the letters that begin with them, as far apart as they need. */
  private String hours() {
    StringBuilder line = new StringBuilder();
    int each = 60 / minutes;
    for (int hour = clocks.fromHour(); hour <= clocks.toHour(); hour++) {
      int at = (hour - clocks.fromHour()) * each;
      if (at >= line.length() + (line.isEmpty() ? 0 : 1)) {
        line.append(" ".repeat(at - line.length())).append(hour);
      }
    }
    return line.toString();
  }

  private String letters(Row row) {
    StringBuilder line = new StringBuilder();
    int cells = 60 * (clocks.toHour() - clocks.fromHour()) / minutes;
    for (int cell = 0; cell < cells; cell++) {
      double from = 60.0 * clocks.fromHour() + (double) cell * minutes;
      line.append(letter(row, from));
    }
    return line.toString();
  }

  /** What takes most of the time; work before waiting, so that short work is seen. */
  private char letter(Row row, double from) {
    What most = null;
    double longest = 0;
    for (Stretch stretch : row.stretches()) {
      double within = Math.min(stretch.to(), from + minutes) - Math.max(stretch.from(), from);
      double counted = stretch.what() == What.DRIES ? within / minutes : within;
      if (counted > longest) {
        longest = counted;
        most = stretch.what();
      }
    }
    if (most == null) {
      return ' ';
    }
    seen.add(most);
    return LETTERS.get(most);
  }
}
