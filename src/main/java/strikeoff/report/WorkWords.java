package strikeoff.report;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import strikeoff.layout.Placement;
import strikeoff.plan.PrintPlan;
import strikeoff.report.page.DaySheet.Detail;
import strikeoff.timeline.Film;
import strikeoff.timeline.Impression;
import strikeoff.timeline.Moment;
import strikeoff.timeline.Reached;
import strikeoff.timeline.Task;

/** Says what a block of work is, as one printer tells another. */
final class WorkWords {

  private WorkWords() {}

  /** One line: what is done, on which placements, with which colour. */
  static String title(PrintPlan plan, Work work) {
    if (work.impressions().isEmpty()) {
      Set<String> words = new LinkedHashSet<>();
      work.tasks().forEach(t -> words.add(t.what()));
      return capital(String.join(", ", words));
    }
    return "Print " + where(work.impressions()) + " in " + first(work).footprint().paste().name();
  }

  static List<Detail> details(PrintPlan plan, Work work) {
    List<Detail> details = new ArrayList<>();
    if (work.impressions().isEmpty()) {
      return details;
    }
    Impression first = first(work);
    int pulls = first.footprint().separation().pulls();
    details.add(new Detail("Screen", first.footprint().screen().name()));
    details.add(new Detail("Paste", first.footprint().paste().name() + ", " + pulls(pulls)));
    details.add(new Detail("Place at", corners(work.impressions())));
    details.add(
        new Detail(
            "Next frame on it",
            "from "
                + latest(work, Film::frameSafe)
                + "; move the cloth from "
                + latest(work, Film::liftSafe)));
    return details;
  }

  private static String pulls(int pulls) {
    return pulls == 1 ? "1 pull" : pulls + " pulls";
  }

  private static String where(List<Impression> impressions) {
    Placement first = impressions.get(0).footprint().placement();
    StringBuilder words = new StringBuilder(first.arrangement());
    for (int i = 0; i < impressions.size(); i++) {
      words.append(i == 0 ? " " : ", ").append(impressions.get(i).footprint().placement().number());
    }
    return words.toString();
  }

  /** Lower left corners as the tape shows them, one common measure across named once. */
  private static String corners(List<Impression> impressions) {
    Set<String> across = new LinkedHashSet<>();
    List<String> along = new ArrayList<>();
    List<String> both = new ArrayList<>();
    for (Impression impression : impressions) {
      Placement placement = impression.footprint().placement();
      String x = cm(placement.x().cm());
      String y = cm(placement.y().cm());
      across.add(y);
      along.add(x);
      both.add(x + " / " + y);
    }
    return across.size() == 1
        ? String.join(", ", along)
            + " cm along, "
            + across.iterator().next()
            + " cm from the near edge"
        : String.join(", ", both) + " cm along / from the near edge";
  }

  private static String cm(double cm) {
    String text = String.format(Locale.ROOT, "%.1f", cm);
    return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
  }

  private static String latest(Work work, java.util.function.Function<Film, Reached> state) {
    Reached last =
        work.impressions().stream()
            .map(i -> state.apply(i.film()))
            .max(java.util.Comparator.comparing(Reached::best))
            .orElseThrow();
    if (last.never()) {
      return "never in this air";
    }
    int day = work.start().day();
    String best = clock(last.best(), day);
    String late = clock(last.latest(), day);
    return late.equals(best) ? best : best + " (at the latest " + late + ")";
  }

  private static String clock(Moment moment, int day) {
    return moment.day() == day ? moment.clock() : moment.text();
  }

  static String people(Work work) {
    Set<String> people = new LinkedHashSet<>();
    work.tasks().forEach(t -> t.person().ifPresent(people::add));
    return String.join(", ", people);
  }

  static String cssClass(Work work) {
    return work.kind() == Task.Kind.PRINT
        ? "print"
        : work.kind() == Task.Kind.WAIT ? "wait" : "other";
  }

  private static Impression first(Work work) {
    return work.impressions().get(0);
  }

  private static String capital(String words) {
    if (words.isEmpty()) {
      return words;
    }
    int first = words.offsetByCodePoints(0, 1);
    return words.substring(0, first).toUpperCase(Locale.ROOT) + words.substring(first);
  }
}
