package strikeoff.report.drawing;

import gg.jte.Content;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import strikeoff.day.Impression;
import strikeoff.day.Stations;
import strikeoff.day.Task;
import strikeoff.day.facts.Timeline;
import strikeoff.plan.PrintPlan;

/**
 * One day of the run over clock time: people, cloth, each colour with its drying, the table's
 * stations, and screens. All days of a run have one scale.
 *
 * @param day its number, from 1
 * @param names of the rows, to stand at their left
 * @param drawn the rows; a letter of them is 11 units high
 * @param key what numbers on bars mean, from 1 on
 */
public record RunChart(int day, Content names, Content drawn, List<String> key) {

  /** Screens that a day has rows for. */
  private static final int MOST_ROWS = 60;

  public RunChart {
    key = List.copyOf(key);
  }

  /** The days of a run, each on a chart of its own. */
  public static List<RunChart> of(PrintPlan plan, Timeline timeline) {
    List<RunChart> charts = new ArrayList<>();
    Map<Integer, List<Impression>> stations = Stations.of(plan, timeline.impressions());
    List<PrintDay> days = PrintDay.of(plan, timeline);
    RunScale scale = RunScale.of(days);
    for (PrintDay day : days) {
      Drawing drawing = new Drawing(plan, day, new RunRows(scale, day));
      drawing.people();
      drawing.cloth();
      FilmRows films = new FilmRows(timeline, day, drawing.rows);
      films.colours();
      films.stations(stations);
      drawing.screens();
      charts.add(
          new RunChart(
              day.number(),
              drawing.rows.namesDrawn(),
              drawing.rows.drawn(
                  plan.hours().of(day.number()),
                  "Chart of day " + day.number() + "; the day sheet says the same in words"),
              drawing.words.key()));
    }
    return charts;
  }

  /** Draws what is done in a day, by whom and with what. */
  private record Drawing(PrintPlan plan, PrintDay day, RunRows rows, BarWords words) {

    Drawing(PrintPlan plan, PrintDay day, RunRows rows) {
      this(plan, day, rows, new BarWords());
    }

    void people() {
      for (String person : plan.crew().names()) {
        List<Task> tasks = day.tasks().stream().filter(t -> t.people().contains(person)).toList();
        if (!tasks.isEmpty()) {
          bars(rows.row(person, "people"), tasks, false);
        }
      }
    }

    void cloth() {
      List<Task> tasks =
          day.tasks().stream()
              .filter(t -> t.screen().isEmpty() && t.kind() != Task.Kind.MIX)
              .toList();
      if (!tasks.isEmpty()) {
        bars(rows.row("cloth", "cloth"), tasks, false);
      }
    }

    void screens() {
      Map<String, List<Task>> byScreen = new LinkedHashMap<>();
      for (Task task : day.tasks()) {
        task.screen()
            .ifPresent(s -> byScreen.computeIfAbsent(s, key -> new ArrayList<>()).add(task));
      }
      byScreen.entrySet().stream()
          .limit(MOST_ROWS)
          .forEach(e -> bars(rows.row("screen " + e.getKey(), "screen"), e.getValue(), true));
      if (byScreen.size() > MOST_ROWS) {
        rows.row("and " + (byScreen.size() - MOST_ROWS) + " more screens", "screen");
      }
    }

    private void bars(Svg row, List<Task> tasks, boolean ofScreen) {
      List<BarWords.Told> told = new ArrayList<>();
      for (Bars.Bar bar : Bars.merged(tasks, plan.measures())) {
        double left = rows.x(bar.from());
        double right = Math.max(left + 1.2, rows.x(bar.to()));
        row.add(
            Svg.rect(left, rows.top(), right - left, RunRows.BAR)
                .with("class", look(bar.kind(), ofScreen))
                .titled(
                    FittedWords.shortened(bar.words(), 80)
                        + ", "
                        + bar.from().clock()
                        + "–"
                        + bar.to().clock()));
        told.add(new BarWords.Told(left, right, words(bar, ofScreen)));
      }
      words.add(row, told, rows.top(), rows.end());
    }

    /** A screen's own row needs no name again, and printing is told by its look. */
    private static String words(Bars.Bar bar, boolean ofScreen) {
      return switch (bar.kind()) {
        case PRINT -> "";
        case WASH_SCREEN -> ofScreen ? "washed out" : FittedWords.shortened(bar.words(), 80);
        case DRY_SCREEN -> "dries";
        default -> FittedWords.shortened(bar.words(), 80);
      };
    }

    private static String look(Task.Kind kind, boolean ofScreen) {
      return switch (kind) {
        case PRINT -> "print";
        case WAIT, QUEUE -> "wait";
        case WASH_SCREEN, DRY_SCREEN -> ofScreen ? "wash" : "work";
        default -> "work";
      };
    }
  }
}
