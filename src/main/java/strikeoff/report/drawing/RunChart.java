package strikeoff.report.drawing;

import gg.jte.Content;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import strikeoff.day.Contact;
import strikeoff.day.Impression;
import strikeoff.day.Moment;
import strikeoff.day.Stations;
import strikeoff.day.Task;
import strikeoff.day.facts.Timeline;
import strikeoff.plan.Hours;
import strikeoff.plan.PrintPlan;

/**
 * One day of the run over clock time: people, cloth, each colour with its drying, the table's
 * stations, and screens.
 *
 * @param day its number, from 1
 * @param drawn the chart; a letter of it is 11 units high, a minute 2.4 units wide
 */
public record RunChart(int day, Content drawn) {

  static final double MINUTE = 2.4;
  static final double LETTER = 11;
  static final double ROW = 33;
  static final double BAR = 13;
  private static final double TOP = 26;
  private static final double SIDE = 12;
  private static final double LEAST = 620;

  /** Single prints of a colour, and contacts, that a day's row has room for. */
  private static final int MOST_BARS = 190;

  /** Colours, and screens, that a day has rows for. */
  private static final int MOST_ROWS = 60;

  /** Stations that a day has rows for. */
  private static final int MOST_STATIONS = 40;

  /** The days of a run, each on a chart of its own. */
  public static List<RunChart> of(PrintPlan plan, Timeline timeline) {
    List<RunChart> charts = new ArrayList<>();
    Map<Integer, List<Impression>> stations = Stations.of(plan, timeline.impressions());
    for (PrintDay day : PrintDay.of(plan, timeline)) {
      charts.add(new RunChart(day.number(), new Drawing(plan, timeline, stations, day).drawn()));
    }
    return charts;
  }

  /** Draws one day. */
  private static final class Drawing {

    private final PrintPlan plan;
    private final Timeline timeline;
    private final PrintDay day;
    private final double minute;
    private final double width;
    private final Map<Integer, List<Impression>> stations;
    private final Svg rows = Svg.group("rows");
    private double y = TOP;

    Drawing(
        PrintPlan plan, Timeline timeline, Map<Integer, List<Impression>> stations, PrintDay day) {
      this.plan = plan;
      this.timeline = timeline;
      this.day = day;
      this.stations = stations;
      double minutes = day.to().since(day.from()).minutes();
      this.minute = Math.max(MINUTE, LEAST / minutes);
      this.width = minutes * minute + 2 * SIDE;
    }

    Content drawn() {
      people();
      cloth();
      colours();
      stations();
      screens();
      double height = y + 4;
      return Svg.window(0, 0, width, height)
          .with("class", "run")
          .with("width", width)
          .with("height", height)
          .with("role", "img")
          .with(
              "aria-label",
              "Chart of day " + day.number() + "; the day sheet says the same in words")
          .add(hours(height))
          .add(rows);
    }

    private Svg hours(double height) {
      Svg layer = Svg.group("hours");
      long midnight = Moment.of(day.number(), 0).seconds();
      for (Hours.Break rest : plan.hours().of(day.number()).breaks()) {
        Moment from = new Moment(midnight + rest.from() * 60L);
        Moment to = new Moment(midnight + rest.to() * 60L);
        if (x(to) > x(from)) {
          layer.add(
              Svg.rect(x(from), TOP - 8, x(to) - x(from), height - TOP + 8)
                  .with("class", "wait")
                  .titled("break, " + from.clock() + "–" + to.clock()));
        }
      }
      long half = 30 * 60;
      for (long at = day.from().seconds(); at <= day.to().seconds(); at += half) {
        Moment moment = new Moment(at);
        boolean full = at % (2 * half) == 0;
        layer.add(
            Svg.line(x(moment), TOP - 8, x(moment), height).with("class", full ? "full" : "half"));
        if (full && at < day.to().seconds()) {
          layer.add(Svg.text(x(moment) + 3, LETTER, moment.clock()));
        }
      }
      return layer;
    }

    private void people() {
      for (String person : plan.crew().names()) {
        List<Task> tasks = day.tasks().stream().filter(t -> t.people().contains(person)).toList();
        if (!tasks.isEmpty()) {
          Svg row = row(person, "people");
          Bars.merged(tasks, plan.measures())
              .forEach(bar -> row.add(bar(bar.from(), bar.to(), kind(bar, "work"), bar.words())));
        }
      }
    }

    private void cloth() {
      List<Task> tasks =
          day.tasks().stream()
              .filter(t -> t.screen().isEmpty() && t.kind() != Task.Kind.MIX)
              .toList();
      if (!tasks.isEmpty()) {
        Svg row = row("cloth", "cloth");
        Bars.merged(tasks, plan.measures())
            .forEach(
                bar ->
                    row.add(
                        bar(
                            bar.from(),
                            bar.to(),
                            bar.kind() == Task.Kind.WAIT ? "wait" : kind(bar, "work"),
                            bar.words())));
      }
    }

    /** A row for each colour of each print step: its impressions, and how its films dry. */
    private void colours() {
      Map<String, List<Impression>> byColour = new LinkedHashMap<>();
      for (Impression impression : timeline.impressions()) {
        if (isToday(impression)) {
          byColour.computeIfAbsent(colourOf(impression), key -> new ArrayList<>()).add(impression);
        }
      }
      byColour.entrySet().stream().limit(MOST_ROWS).forEach(e -> colour(e.getKey(), e.getValue()));
      left(byColour.size(), "colours", "colour");
    }

    private boolean isToday(Impression impression) {
      return impression.laid().compareTo(day.from()) >= 0
          && impression.laid().compareTo(day.to()) < 0;
    }

    /** A row for each station that is printed on: what is laid there, and how long it is wet. */
    private void stations() {
      Map<Integer, List<Impression>> today = new LinkedHashMap<>();
      stations.forEach(
          (station, all) -> {
            List<Impression> prints = all.stream().filter(this::isToday).toList();
            if (!prints.isEmpty()) {
              today.put(station, prints);
            }
          });
      boolean many = today.values().stream().mapToInt(List::size).sum() > MOST_BARS;
      today.entrySet().stream()
          .limit(MOST_STATIONS)
          .forEach(
              station -> {
                Svg row = row("station " + station.getKey(), "station");
                if (many) {
                  setsAt(row, station.getValue());
                } else {
                  printsAt(row, station.getValue());
                }
              });
      int left = today.size() - MOST_STATIONS;
      if (left > 0) {
        row("and " + left + (left == 1 ? " station" : " stations") + " more", "station");
      }
    }

    /** Each film is shown until the next frame is laid on the station. */
    private void printsAt(Svg row, List<Impression> prints) {
      for (int i = 0; i < prints.size(); i++) {
        Impression print = prints.get(i);
        double next = i + 1 < prints.size() ? x(prints.get(i + 1).laid()) : width - SIDE;
        String hex = print.footprint().paste().colour().hex();
        row.add(DryingBand.of(List.of(print), m -> Math.min(next, x(m)), y - BAR - 4, hex));
      }
      prints.forEach(print -> row.add(print(print, print.footprint().paste().name())));
    }

    /** Too many to tell apart: one bar for what is printed in a set. */
    private void setsAt(Svg row, List<Impression> prints) {
      Map<List<Object>, List<Impression>> bySet = new LinkedHashMap<>();
      for (Impression print : prints) {
        bySet
            .computeIfAbsent(List.of(print.step(), print.set()), set -> new ArrayList<>())
            .add(print);
      }
      bySet.forEach(
          (set, all) ->
              row.add(
                  bar(all.get(0).laid(), all.get(all.size() - 1).lifted(), "work", "")
                      .titled(all.size() == 1 ? "1 print" : all.size() + " prints")));
    }

    /** The bar of one impression in its colour. */
    private Svg print(Impression impression, String with) {
      return bar(impression.laid(), impression.lifted(), "print", "")
          .with("fill", impression.footprint().paste().colour().hex())
          .titled(
              FittedWords.shortened(impression.footprint().placement().name(), 40)
                  + (with.isEmpty() ? "" : ", " + FittedWords.shortened(with, 40))
                  + ", "
                  + impression.laid().clock()
                  + "–"
                  + impression.lifted().clock());
    }

    private void colour(String name, List<Impression> impressions) {
      Svg row =
          row(
              "step " + impressions.get(0).step() + ": " + name.substring(name.indexOf(' ') + 1),
              "colour");
      String hex = impressions.get(0).footprint().paste().colour().hex();
      Map<Integer, List<Impression>> bySet = new LinkedHashMap<>();
      impressions.forEach(i -> bySet.computeIfAbsent(i.set(), set -> new ArrayList<>()).add(i));
      bySet.forEach((set, films) -> row.add(DryingBand.of(films, this::x, y - BAR - 4, hex)));
      if (impressions.size() > MOST_BARS) {
        bySet.forEach(
            (set, prints) ->
                row.add(
                    bar(prints.get(0).laid(), prints.get(prints.size() - 1).lifted(), "print", "")
                        .with("fill", hex)
                        .titled(prints.size() + " prints")));
      }
      for (Impression impression :
          impressions.size() > MOST_BARS ? List.<Impression>of() : impressions) {
        row.add(print(impression, ""));
      }
      Set<Moment> marked = new HashSet<>();
      Set<Integer> ids = new HashSet<>();
      impressions.forEach(i -> ids.add(i.id()));
      for (Contact contact : timeline.contacts()) {
        if (ids.contains(contact.earlier().id())
            && marked.size() < MOST_BARS
            && contact.later().laid().compareTo(day.to()) < 0
            && marked.add(contact.later().laid())) {
          row.add(contact(contact));
        }
      }
    }

    private Svg contact(Contact contact) {
      double at = x(contact.later().laid());
      double middle = y - 4 - BAR / 2;
      return Svg.path("M" + Svg.pair(at - 5, middle - 5) + "l10 10m0-10l-10 10")
          .with("class", "contact")
          .titled(
              FittedWords.shortened(contact.later().footprint().screen().name(), 40)
                  + " laid on "
                  + FittedWords.shortened(contact.earlier().footprint().placement().name(), 40)
                  + " at "
                  + contact.later().laid().clock()
                  + (contact.shortBest().minutes() > 0
                      ? ", " + contact.shortBest().text() + " too early"
                      : ", too early by " + contact.shortMost().text() + " if it dries slowly"));
    }

    private void screens() {
      Map<String, List<Task>> byScreen = new LinkedHashMap<>();
      for (Task task : day.tasks()) {
        task.screen()
            .ifPresent(s -> byScreen.computeIfAbsent(s, key -> new ArrayList<>()).add(task));
      }
      byScreen.entrySet().stream().limit(MOST_ROWS).forEach(e -> screen(e.getKey(), e.getValue()));
      left(byScreen.size(), "screens", "screen");
    }

    /** A row that counts those that have none. */
    private void left(int all, String what, String kind) {
      if (all > MOST_ROWS) {
        row("and " + (all - MOST_ROWS) + " more " + what, kind);
      }
    }

    private void screen(String screen, List<Task> tasks) {
      Svg row = row("screen " + screen, "screen");
      for (Bars.Bar bar : Bars.merged(tasks, plan.measures())) {
        row.add(
            bar(
                bar.from(),
                bar.to(),
                bar.kind() == Task.Kind.PRINT ? "print" : kind(bar, "wash"),
                bar.kind() == Task.Kind.PRINT ? "" : bar.words()));
      }
    }

    private static String kind(Bars.Bar bar, String otherwise) {
      return bar.kind() == Task.Kind.QUEUE ? "wait" : otherwise;
    }

    private Svg row(String name, String kind) {
      Svg row = Svg.group("row " + kind);
      rows.add(row);
      row.add(Svg.text(SIDE, y + LETTER, FittedWords.shortened(name, 60)).with("class", "name"));
      y += ROW;
      row.add(Svg.line(0, y - 1, width, y - 1).with("class", "rule"));
      return row;
    }

    private Svg bar(Moment from, Moment to, String kind, String words) {
      double left = x(from);
      double length = Math.max(1.2, x(to) - left);
      double top = y - BAR - 4;
      Svg bar = Svg.rect(left, top, length, BAR).with("class", kind);
      int fitting = FittedWords.fitting(length - 6, LETTER);
      if (words.isEmpty() || fitting < 3) {
        return words.isEmpty() ? bar : bar.titled(FittedWords.shortened(words, 80));
      }
      return Svg.of("g")
          .add(bar)
          .add(
              Svg.text(left + 3, top + BAR - 3, FittedWords.shortened(words, fitting))
                  .with("class", kind));
    }

    private double x(Moment moment) {
      double minutes = moment.since(day.from()).minutes();
      double shown = day.to().since(day.from()).minutes();
      return SIDE + Math.max(0, Math.min(shown, minutes)) * minute;
    }

    private static String colourOf(Impression impression) {
      return impression.step()
          + "."
          + impression.footprint().separation().number()
          + " "
          + impression.footprint().placement().arrangement()
          + " · "
          + impression.footprint().paste().name();
    }
  }
}
