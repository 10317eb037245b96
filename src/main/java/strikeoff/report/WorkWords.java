package strikeoff.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import strikeoff.layout.Numbering;
import strikeoff.layout.Placement;
import strikeoff.timeline.Film;
import strikeoff.timeline.Impression;
import strikeoff.timeline.Moment;
import strikeoff.timeline.Reached;
import strikeoff.timeline.Task;

/** Says what a block of work is, as one printer tells another. */
final class WorkWords {

  private WorkWords() {}

  /** One line: what is done, on which placements, in which colour. */
  static String title(Work work) {
    if (!work.prints()) {
      Set<String> words = new LinkedHashSet<>();
      work.tasks().forEach(t -> words.add(t.what()));
      boolean untold = work.kind() == Task.Kind.WAIT && work.first().what().startsWith("before");
      return capital((untold ? "wait " : "") + String.join(", ", words));
    }
    return capital(paste(work)) + " on " + placements(work.impressions());
  }

  static String paste(Work work) {
    return work.impressions().get(0).footprint().paste().name();
  }

  static String screen(Work work) {
    return work.impressions().get(0).footprint().screen().name();
  }

  static String pulls(Work work) {
    int pulls = work.impressions().get(0).footprint().separation().pulls();
    return pulls == 1 ? "1 pull" : pulls + " pulls";
  }

  /** As {@code herons 1, 3, 2}: in the order of printing, each once. */
  static String placements(List<Impression> impressions) {
    return impressions.get(0).footprint().placement().arrangement() + " " + numbers(impressions);
  }

  static String numbers(List<Impression> impressions) {
    return Numbering.runs(
        impressions.stream().map(i -> i.footprint().placement().number()).distinct().toList());
  }

  /**
   * Lower left corners as the tape shows them: a common measure across is named once, and corners
   * at one measure along are told together.
   */
  static String corners(List<Impression> impressions) {
    Map<String, Set<String>> acrossByAlong = new LinkedHashMap<>();
    Set<String> across = new LinkedHashSet<>();
    for (Impression impression : impressions) {
      Placement placement = impression.footprint().placement();
      String y = cm(placement.y().cm());
      across.add(y);
      acrossByAlong.computeIfAbsent(cm(placement.x().cm()), x -> new LinkedHashSet<>()).add(y);
    }
    if (across.size() == 1) {
      return String.join(", ", acrossByAlong.keySet())
          + " cm along, "
          + String.join("", across)
          + " cm from near";
    }
    List<String> columns = new ArrayList<>();
    acrossByAlong.forEach((x, ys) -> columns.add(x + " / " + String.join(", ", ys)));
    return String.join("; ", columns) + " cm along / from near";
  }

  private static String cm(double cm) {
    String text = String.format(Locale.ROOT, "%.1f", cm);
    return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
  }

  /** When the slowest of the films reaches a state: the likely moment, then the safe one. */
  static String reached(List<Impression> films, Function<Film, Reached> state, int day) {
    Reached last =
        films.stream()
            .map(i -> state.apply(i.film()))
            .max(Comparator.comparing(Reached::best))
            .orElseThrow();
    if (last.never()) {
      return "never in this air";
    }
    String best = clock(last.best(), day);
    if (last.latest().seconds() >= Reached.NEVER.seconds()) {
      return best + ", perhaps never in this air";
    }
    String latest = clock(last.latest(), day);
    return latest.equals(best) ? best : best + "–" + latest;
  }

  /** The clock, with the day if it is another one. */
  static String clock(Moment moment, int day) {
    return moment.day() == day ? moment.clock() : moment.text();
  }

  static Set<String> people(Work work) {
    Set<String> people = new LinkedHashSet<>();
    work.tasks().forEach(t -> t.person().ifPresent(people::add));
    return people;
  }

  static String capital(String words) {
    if (words.isEmpty()) {
      return words;
    }
    int first = words.offsetByCodePoints(0, 1);
    return words.substring(0, first).toUpperCase(Locale.ROOT) + words.substring(first);
  }
}
