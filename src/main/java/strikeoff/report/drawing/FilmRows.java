package strikeoff.report.drawing;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import strikeoff.day.Contact;
import strikeoff.day.Impression;
import strikeoff.day.Moment;
import strikeoff.day.facts.Timeline;

/** A day's prints: a row for each colour with its drying, and for each station of the table. */
final class FilmRows {

  /** Single prints of a colour, and contacts, that a day's row has room for. */
  private static final int MOST_BARS = 190;

  /** Colours that a day has rows for. */
  private static final int MOST_ROWS = 60;

  /** Stations that a day has rows for. */
  private static final int MOST_STATIONS = 40;

  private static final int LONGEST_NAME = 40;

  private final Timeline timeline;
  private final PrintDay day;
  private final RunRows rows;

  FilmRows(Timeline timeline, PrintDay day, RunRows rows) {
    this.timeline = timeline;
    this.day = day;
    this.rows = rows;
  }

  /** A row for each colour of each print step: its impressions, and how its films dry. */
  void colours() {
    Map<String, List<Impression>> byColour = new LinkedHashMap<>();
    for (Impression impression : timeline.impressions()) {
      if (isToday(impression)) {
        byColour.computeIfAbsent(colourOf(impression), key -> new ArrayList<>()).add(impression);
      }
    }
    byColour.entrySet().stream().limit(MOST_ROWS).forEach(e -> colour(e.getKey(), e.getValue()));
    if (byColour.size() > MOST_ROWS) {
      rows.row("and " + (byColour.size() - MOST_ROWS) + " more colours", "colour");
    }
  }

  private boolean isToday(Impression impression) {
    return impression.laid().compareTo(day.from()) >= 0
        && impression.laid().compareTo(day.to()) < 0;
  }

  /**
   * A row for each station that is printed on: what is laid there, and how long it is wet.
   *
   * @param stations all prints of the run, by station
   */
  void stations(Map<Integer, List<Impression>> stations) {
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
              Svg row = rows.row("station " + station.getKey(), "station");
              if (many) {
                setsAt(row, station.getValue());
              } else {
                printsAt(row, station.getValue());
              }
            });
    int left = today.size() - MOST_STATIONS;
    if (left > 0) {
      rows.row("and " + left + (left == 1 ? " station" : " stations") + " more", "station");
    }
  }

  /** Each film is shown until the next frame is laid on the station. */
  private void printsAt(Svg row, List<Impression> prints) {
    for (int i = 0; i < prints.size(); i++) {
      Impression print = prints.get(i);
      double next = i + 1 < prints.size() ? rows.x(prints.get(i + 1).laid()) : rows.end();
      String hex = print.footprint().paste().colour().hex();
      row.add(DryingBand.of(List.of(print), m -> Math.min(next, rows.x(m)), rows.top(), hex));
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
    bySet.forEach((set, all) -> row.add(together(all, "work")));
  }

  private Svg together(List<Impression> prints, String look) {
    return bar(prints.get(0).laid(), prints.get(prints.size() - 1).lifted(), look)
        .titled(prints.size() == 1 ? "1 print" : prints.size() + " prints");
  }

  private Svg bar(Moment from, Moment to, String look) {
    double left = rows.x(from);
    return Svg.rect(left, rows.top(), Math.max(1.2, rows.x(to) - left), RunRows.BAR)
        .with("class", look);
  }

  /** The bar of one impression in its colour. */
  private Svg print(Impression impression, String with) {
    return bar(impression.laid(), impression.lifted(), "print")
        .with("fill", impression.footprint().paste().colour().hex())
        .titled(
            FittedWords.shortened(impression.footprint().placement().name(), LONGEST_NAME)
                + (with.isEmpty() ? "" : ", " + FittedWords.shortened(with, LONGEST_NAME))
                + ", "
                + impression.laid().clock()
                + "–"
                + impression.lifted().clock());
  }

  private void colour(String name, List<Impression> impressions) {
    String step = "step " + impressions.get(0).step() + ": ";
    Svg row = rows.row(step + name.substring(name.indexOf(' ') + 1), "colour");
    String hex = impressions.get(0).footprint().paste().colour().hex();
    Map<Integer, List<Impression>> bySet = new LinkedHashMap<>();
    impressions.forEach(i -> bySet.computeIfAbsent(i.set(), set -> new ArrayList<>()).add(i));
    bySet.forEach((set, films) -> row.add(DryingBand.of(films, rows::x, rows.top(), hex)));
    if (impressions.size() > MOST_BARS) {
      bySet.forEach((set, prints) -> row.add(together(prints, "print").with("fill", hex)));
    } else {
      impressions.forEach(impression -> row.add(print(impression, "")));
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
    double at = rows.x(contact.later().laid());
    double middle = rows.top() + RunRows.BAR / 2;
    boolean surely = contact.shortBest().minutes() > 0;
    Svg mark =
        surely
            ? Svg.path("M" + Svg.pair(at - 5, middle - 5) + "l10 10m0-10l-10 10")
            : Svg.of("circle").with("cx", at).with("cy", middle).with("r", 4.5);
    return mark.with("class", surely ? "contact" : "contact perhaps")
        .titled(
            FittedWords.shortened(contact.later().footprint().screen().name(), LONGEST_NAME)
                + " laid on "
                + FittedWords.shortened(
                    contact.earlier().footprint().placement().name(), LONGEST_NAME)
                + " at "
                + contact.later().laid().clock()
                + (surely
                    ? ", " + contact.shortBest().text() + " too early"
                    : ", too early by " + contact.shortMost().text() + " if it dries slowly"));
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
